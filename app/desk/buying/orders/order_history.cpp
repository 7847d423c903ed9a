// SPDX-License-Identifier: MIT

#include "app/desk/buying/orders/order_history.h"

#include "app/desk/buying/buying_words.h"
#include "app/desk/words/spoken.h"
#include "app/workshop/made_up.h"

#include <algorithm>

namespace flarestock {

namespace {

/// `former`: how it stood before; nullptr of the step that opened it.
QString saidStep(const Order &step, const Order *former)
{
    if (former && former->state == step.state)
        return BuyingWords::tr("changed");
    switch (step.state) {
    case OrderState::Draft:
        return former ? BuyingWords::tr("a draft again") : BuyingWords::tr("drafted");
    case OrderState::Placed:
        return former && former->state != OrderState::Draft ? BuyingWords::tr("open again")
                                                            : BuyingWords::tr("placed");
    case OrderState::Closed:
        return BuyingWords::tr("closed");
    case OrderState::Cancelled:
        break;
    }
    return BuyingWords::tr("cancelled");
}

} // namespace

bool wentOut(const BookedOrder &order)
{
    return std::any_of(order.steps.begin(), order.steps.end(),
                       [](const Order &step) { return step.state == OrderState::Placed; });
}

bool isGivenUpDraft(const BookedOrder &order)
{
    return order.standing() == OrderStanding::Cancelled && !wentOut(order);
}

std::vector<Row> orderHistory(const BookedOrder &order, const std::string &today)
{
    std::vector<Row> rows;
    const Order *former = nullptr;
    for (const Order &step : order.steps) {
        const QString day = saidDayOf(dayOf(step.at), today);
        const QVariantList cells{
            saidStep(step, former),
            step.who.empty() ? day : BuyingWords::tr("%1, %2").arg(day, said(step.who)), false};
        if (rows.empty() || rows.back().cells != cells)
            rows.push_back({QStringLiteral("step|%1").arg(rows.size()), cells});
        former = &step;
    }
    return rows;
}

} // namespace flarestock
