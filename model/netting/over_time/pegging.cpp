// SPDX-License-Identifier: MIT

#include "model/netting/over_time/pegging.h"

#include <algorithm>
#include <cassert>

namespace flarestock {

namespace {

/// Gives `left` its pegs out of `supplies` that come by its day, and lessens both.
void give(MetWant &want, Decimal &left, std::vector<Peg> &supplies)
{
    for (Peg &supply : supplies) {
        if (supply.day > want.want.day || left.sign() <= 0)
            break;
        const Decimal given = std::min(left, supply.quantity);
        if (given.sign() <= 0)
            continue;
        Peg taken = supply;
        taken.quantity = given;
        want.pegs.push_back(std::move(taken));
        supply.quantity -= given;
        left -= given;
    }
}

} // namespace

void peg(std::vector<MetWant> &wants, const PegSupply &supply)
{
    std::vector<Peg> firm{{Peg::From::OnHand, supply.onHand, supply.first, {}, 0}};
    for (const DueItem &due : supply.due)
        firm.push_back({Peg::From::Scheduled, due.quantity, due.day, due.order, 0});
    std::vector<Peg> planned;
    for (const PlannedOrder &order : supply.orders)
        planned.push_back({Peg::From::Planned, order.quantity, order.receipt, {}, order.release});
    for (MetWant &want : wants) {
        Decimal left = want.want.quantity;
        give(want, left, firm);
        give(want, left, planned);
        assert(left.sign() <= 0);
    }
}

Decimal MetWant::covered() const
{
    return want.quantity - shortBy();
}

Decimal MetWant::shortBy() const
{
    Decimal lacking;
    for (const Peg &one : pegs)
        if (one.from == Peg::From::Planned)
            lacking += one.quantity;
    return lacking;
}

std::optional<DayNumber> MetWant::orderBy() const
{
    std::optional<DayNumber> earliest;
    for (const Peg &one : pegs)
        if (one.from == Peg::From::Planned && (!earliest || one.orderBy < *earliest))
            earliest = one.orderBy;
    return earliest;
}

} // namespace flarestock
