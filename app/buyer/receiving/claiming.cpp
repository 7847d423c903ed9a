// SPDX-License-Identifier: MIT

#include "app/buyer/receiving/claiming.h"

#include "app/buyer/receiving/claim_ends.h"
#include "model/exact/case_fold.h"

namespace flarestock {

namespace {

Result<std::string> supplierOf(const RaiseWords &asked, const Bought &bought,
                               const Workshop &workshop)
{
    if (asked.order.empty()) {
        for (const Supplier &one : workshop.catalogue.suppliers()) {
            if (sameFolded(one.id, asked.supplier))
                return one.id;
        }
        return problem(asked.supplier, "is no supplier of this shop",
                       "Say --order, or --supplier.");
    }
    const BookedOrder *order = bought.orders.order(asked.order);
    if (!order)
        return problem(asked.order, "is no order of this shop",
                       "Look them up: flarestock order list.");
    return order->now().supplier;
}

Result<void> isOpen(const ClaimStanding &claim)
{
    if (!claim.now.isSettled())
        return {};
    return problem("claim " + claim.now.number, "is settled: " + std::string(text(claim.now.state)),
                   "Raise another, or take back what settled it.");
}

} // namespace

SupplierClaim nextStep(const ClaimStanding &claim, ClaimState state, const By &by)
{
    SupplierClaim next = claim.now;
    next.id = *by.action;
    next.state = state;
    next.action.clear();
    next.who = by.who;
    next.at = by.at;
    return next;
}

Result<SupplierClaim> raised(const RaiseWords &asked, const Bought &bought,
                             const Workshop &workshop, const By &by)
{
    const auto supplier = supplierOf(asked, bought, workshop);
    const auto part = partAsked(asked.part, workshop.catalogue);
    const auto fault = parseClaimFault(asked.fault);
    if (!supplier || !part || !fault)
        return tl::unexpected(!supplier ? supplier.error() : !part ? part.error() : fault.error());
    const auto quantity = quantityAsked(asked.quantity, **part);
    if (!quantity)
        return tl::unexpected(quantity.error());
    if (*quantity <= 0)
        return problem("the quantity " + asked.quantity, "is nothing that is owed",
                       "Write how many or how much.");
    SupplierClaim claim;
    if (!asked.boxOf.empty()) {
        const auto box = partAsked(asked.boxOf, workshop.catalogue);
        if (!box)
            return tl::unexpected(box.error());
        claim.boxOf = (*box)->number;
        claim.boxLot = asked.boxLot;
    }
    claim.id = claim.claim = *by.action;
    claim.number = bought.claims.nextNumber();
    claim.order = asked.order;
    claim.supplier = *supplier;
    claim.part = (*part)->number;
    claim.quantity = *quantity;
    claim.fault = *fault;
    claim.note = asked.note;
    claim.who = by.who;
    claim.at = by.at;
    return claim;
}

Result<SupplierClaim> promisedBy(const ClaimStanding &claim, const std::string &day, const By &by)
{
    if (const auto open = isOpen(claim); !open)
        return tl::unexpected(open.error());
    if (!isDay(day))
        return problem(day, "is no day", "Write it as 2026-12-01.");
    SupplierClaim next = nextStep(claim, ClaimState::Promised, by);
    next.day = day;
    return next;
}

Result<SettledAction> settled(const ClaimStanding &claim, const SettleWords &asked,
                              const Books &books, const By &by)
{
    if (const auto open = isOpen(claim); !open)
        return tl::unexpected(open.error());
    const int ends =
        (asked.came.empty() ? 0 : 1) + (asked.credit.empty() ? 0 : 1) + (asked.givenUp ? 1 : 0);
    if (ends != 1)
        return problem("claim " + claim.now.number,
                       ends == 0 ? "needs an end" : "has one end at a time",
                       "Say --came QUANTITY, --credit AMOUNT or --given-up.");
    const Settling settling{claim, asked, books, by};
    auto made = !asked.came.empty()     ? byPiece(settling)
                : !asked.credit.empty() ? byCredit(settling)
                                        : byGivingUp(settling);
    if (made && made->step && !asked.note.empty())
        made->step->note = asked.note;
    if (!made)
        return made;
    auto &action = made->action;
    if (made->step) {
        const bool moves = !action.movements.empty();
        made->step->id = idWithin(*by.action, action.movements.size() + action.records.size());
        made->step->action = moves ? by.action->text() : std::string();
        action.records.push_back(made->step->asRecord());
    }
    return made;
}

} // namespace flarestock
