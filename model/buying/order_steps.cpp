// SPDX-License-Identifier: MIT

#include "model/buying/order_steps.h"

#include "model/buying/steps_that_hold.h"

#include <tuple>

namespace flarestock {

namespace {

bool buysTheSame(const Order &a, const Order &b)
{
    const auto bought = [](const Order &order) {
        return std::tie(order.supplier, order.currency, order.lines, order.discount, order.freight,
                        order.tax, order.rate);
    };
    return bought(a) == bought(b);
}

std::string_view stateAs(const Order &order)
{
    return order.state == OrderState::Draft ? "a draft" : text(order.state);
}

/// What the order said before the step that makes it say what it says now; nullptr: nothing.
const Order *saidBefore(const BookedOrder &standing)
{
    const auto holding = stepsThatHold(standing.steps);
    return holding.size() > 1 ? holding[holding.size() - 2] : nullptr;
}

/// Of a placed order.
std::string notPlacedOnBecause(const BookedOrder &standing, const Order &next)
{
    if (next.state == OrderState::Draft)
        return "is placed, and no draft any more";
    if (!buysTheSame(standing.now(), next))
        return "is placed: only its days and its note can change";
    return {};
}

} // namespace

std::string notWrittenBecause(const BookedOrder *standing, const Order &next)
{
    if (!standing) {
        if (next.before)
            return "does not stand in this shop";
        return next.state == OrderState::Draft || next.state == OrderState::Placed
                   ? ""
                   : "cannot be " + std::string(stateAs(next)) + " before it is a draft";
    }
    if (!next.before)
        return "stands in this shop already";
    const Order &now = standing->now();
    if (*next.before != now.id)
        return "was changed by somebody else meanwhile";
    const bool needsNothingHere =
        next.state == OrderState::Draft || next.state == OrderState::Cancelled;
    if (needsNothingHere && standing->hasCome())
        return "cannot be " + std::string(stateAs(next)) + ": something of it has come";
    for (const Order *former : {standing->former(), saidBefore(*standing)}) {
        if (former != nullptr && former->saysAs(next))
            return {};
    }
    switch (now.state) {
    case OrderState::Draft:
        return next.state == OrderState::Closed ? "is a draft: nothing of it was ever awaited" : "";
    case OrderState::Placed:
        return notPlacedOnBecause(*standing, next);
    case OrderState::Closed:
    case OrderState::Cancelled:
        break;
    }
    return "is " + std::string(stateAs(now));
}

Result<Order> stepBack(const BookedOrder &standing, const MovementId &step)
{
    const Order &now = standing.now();
    const bool isNewest = now.id == step;
    if (!isNewest && stepsThatHold(standing.steps).back()->id != step)
        return problem("order " + now.number, "has gone on since",
                       "Take back its newest step: flarestock order show.");
    const Order *former = isNewest ? standing.former() : saidBefore(standing);
    Order back = former ? *former : now;
    if (!former)
        back.state = OrderState::Cancelled;
    back.before = now.id;
    back.id = {};
    back.who.clear();
    back.at = 0;
    if (const auto why = notWrittenBecause(&standing, back); !why.empty())
        return problem("order " + now.number, why, "Take back what was received first.");
    return back;
}

} // namespace flarestock
