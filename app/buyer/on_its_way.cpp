// SPDX-License-Identifier: MIT

#include "app/buyer/on_its_way.h"

namespace flarestock {

namespace {

/// Of a line of an order what it awaits and claims speak of already, each with a day of its own.
Decimal claimedOf(const OrderLine &line, std::string_view order, const ClaimBook &book)
{
    Decimal sum;
    for (const ClaimStanding &claim : book.claims) {
        if (claim.now.isAwaitedByOrder() && claim.now.order == order && claim.now.part == line.part)
            sum += Quantity::ofSmallest(claim.owed(), line.unit).amount;
    }
    return sum;
}

} // namespace

std::vector<OnOrder> onItsWay(const Workshop &workshop)
{
    std::vector<OnOrder> coming;
    for (const auto &[number, order] : workshop.bought.orders.orders)
        for (const OrderLine &line : order.now().lines) {
            const Decimal awaited =
                order.awaited(line) - claimedOf(line, number, workshop.bought.claims);
            if (awaited.sign() > 0)
                coming.push_back({line.part, awaited, order.now().dueOf(line), number});
        }
    for (const ClaimStanding &claim : workshop.bought.claims.claims) {
        const auto day = claim.coversFrom();
        const Part *const part = day ? workshop.part(claim.now.part) : nullptr;
        if (part != nullptr)
            coming.push_back({part->number, Quantity::ofSmallest(claim.owed(), part->unit).amount,
                              *day, claim.now.number});
    }
    return coming;
}

std::vector<std::string> unsureOnItsWay(const Workshop &workshop, const std::string &today)
{
    std::vector<std::string> notes;
    std::string before; // Its lines stand together.
    for (const OnOrder &one : onItsWay(workshop)) {
        if (one.order == before || (!one.day.empty() && one.day >= today))
            continue;
        before = one.order;
        const std::string name = (isClaimNumber(one.order) ? "Claim " : "Order ") + one.order;
        notes.push_back(one.day.empty()
                            ? name + " says no day: what is to come of it is not counted on."
                            : name + " was due on " + one.day +
                                  ": what is to come of it is counted on for today. Ask for it.");
    }
    return notes;
}

} // namespace flarestock
