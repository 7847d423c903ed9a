// SPDX-License-Identifier: MIT

#include "app/buyer/receiving/claim_ends.h"

#include "app/buyer/costing/late_charge.h"
#include "app/buyer/costing/value_moves.h"
#include "app/buyer/receiving/credit_asked.h"
#include "app/buyer/receiving/receiving.h"
#include "model/buying/late_cost.h"

#include <algorithm>

namespace flarestock {

namespace {

/// Far behind the ids of an action's movements and records.
constexpr std::uint64_t LookAt = 1'000'000;

const BookedOrder *orderOf(const Settling &settling)
{
    return settling.books.bought.orders.order(settling.claim.now.order);
}

/// What the order still has for so much of what is owed; nothing where it was booked already.
Result<std::int64_t> waitingValue(const Settling &settling, std::int64_t quantity)
{
    const SupplierClaim &claim = settling.claim.now;
    const BookedOrder *order = orderOf(settling);
    const Part *part = settling.books.workshop.part(claim.part);
    if (!order || !part || !claim.isAwaitedByOrder() || quantity <= 0)
        return 0;
    return valueOfComing(*order, *part, cameBefore(*order, claim.part), quantity);
}

/// The box is looked into again: what it lacked is in it.
std::optional<BoxCheck> lookAgain(const Settling &settling, std::int64_t count)
{
    const SupplierClaim &claim = settling.claim.now;
    std::optional<BoxCheck> newest;
    for (const BoxCheck &look : settling.books.workshop.looks) {
        if (look.part == claim.boxOf && look.lot == claim.boxLot)
            newest = look;
    }
    if (!newest)
        return std::nullopt;
    for (; count > 0; --count) {
        const auto at = std::find(newest->missing.begin(), newest->missing.end(), claim.part);
        if (at == newest->missing.end())
            break;
        newest->missing.erase(at);
    }
    newest->id = idWithin(*settling.by.action, LookAt);
    newest->who = settling.by.who;
    newest->at = settling.by.at;
    return newest;
}

/// Value that goes to the place of differences, without pieces.
Result<std::vector<Movement>> toDifferences(const Settling &settling, std::int64_t value)
{
    const SupplierClaim &claim = settling.claim.now;
    ValueMoves moves(settling.books.workshop, settling.books.file,
                     claim.order.empty() ? claim.number : claim.order);
    return moves.of(claim.supplier, {}, {{claim.part, value}});
}

/// Value that came with a piece into its box goes to what stands in the box, where that is here.
Result<std::vector<Movement>> intoBox(const Settling &settling, std::int64_t value)
{
    const SupplierClaim &claim = settling.claim.now;
    ValueChanges stock;
    const Ledger &ledger = settling.books.workshop.ledger;
    for (const auto &[key, held] : ledger.balancesOf(claim.boxOf)) {
        const Place *place = ledger.place(key.place);
        if (!place || !isStock(place->kind) || key.lot != claim.boxLot || held.quantity <= 0)
            continue;
        const Layers &layers = ledger.layersAt(key);
        value -= stock.add({key, layers.empty() ? 0 : layers.rbegin()->first}, value, ledger);
    }
    ValueMoves moves(settling.books.workshop, settling.books.file,
                     claim.order.empty() ? claim.number : claim.order);
    return moves.of(claim.supplier, stock, {{claim.boxOf, value}});
}

Receipt receiptOf(const Settling &settling, std::int64_t quantity, std::int64_t value)
{
    const SupplierClaim &claim = settling.claim.now;
    Receipt receipt;
    receipt.order = claim.order.empty() ? claim.number : claim.order;
    receipt.part = claim.part;
    receipt.quantity = quantity;
    receipt.value = value;
    receipt.lot = settling.asked.lot;
    receipt.claim = claim.claim.text();
    receipt.inPlace = !claim.isAwaitedByOrder();
    receipt.note = "for claim " + claim.number;
    receipt.action = settling.by.action->text();
    receipt.who = settling.by.who;
    receipt.at = settling.by.at;
    return receipt;
}

Result<std::int64_t> cameOf(const Settling &settling, const Part &part)
{
    const std::int64_t owed = settling.claim.owed();
    auto came = quantityAsked(settling.asked.came, part, "--came");
    if (came && (*came <= 0 || *came > owed))
        return problem("--came " + settling.asked.came,
                       "is not what is owed: " + spoken(owed, part), "Say how much of that came.");
    return came;
}

/// Where the piece goes: into its box, which is used up by it, or to a place.
Result<std::string> placeOfPiece(const Settling &settling, bool inBox)
{
    const Ledger &ledger = settling.books.workshop.ledger;
    const auto place =
        inBox ? placeOfKind(PlaceKind::UsedUp, ledger) : placeAsked(settling.asked.to, ledger);
    if (!place)
        return tl::unexpected(place.error());
    if (bringsValue((*place)->kind))
        return problem((*place)->id, "is not where pieces are put", "Name a place of yours.");
    return (*place)->id;
}

} // namespace

Result<SettledAction> byPiece(const Settling &settling)
{
    const SupplierClaim &claim = settling.claim.now;
    const auto part = partAsked(claim.part, settling.books.workshop.catalogue);
    if (!part)
        return tl::unexpected(part.error());
    const auto came = cameOf(settling, **part);
    if (!came)
        return tl::unexpected(came.error());
    const bool inBox = settling.asked.to.empty() && !claim.boxOf.empty();
    if (settling.asked.to.empty() && !inBox)
        return problem("claim " + claim.number, "does not say where the piece goes", "Say --to.");
    const auto to = placeOfPiece(settling, inBox);
    const auto from = placeOfSupplier(claim.supplier, settling.books.workshop.ledger);
    const auto value = settling.asked.value.empty() ? waitingValue(settling, *came)
                                                    : valueAsked(settling.asked.value, "--value");
    if (!to || !from || !value)
        return tl::unexpected(!to ? to.error() : !from ? from.error() : value.error());
    Movement movement =
        movementOf({claim.part, (*from)->id, settling.asked.lot, PieceCondition::New}, *came, *to,
                   Deed::Receive);
    movement.value = inBox ? 0 : *value;
    movement.document = (claim.order.empty() ? "" : claim.order + ", ") + "claim " + claim.number;
    std::vector<Movement> movements{movement};
    if (inBox) {
        const auto more = intoBox(settling, *value);
        if (!more)
            return tl::unexpected(more.error());
        movements.insert(movements.end(), more->begin(), more->end());
    }
    SettledAction made;
    made.value = *value;
    made.action = numbered(std::move(movements), settling.by);
    made.action.promised = Promised::MayGo; // What goes over the bench comes back with it.
    Receipt receipt = receiptOf(settling, *came, *value);
    receipt.id = idWithin(*settling.by.action, made.action.movements.size());
    made.action.records.push_back(receipt.asRecord());
    if (*came == settling.claim.owed())
        made.step = nextStep(settling.claim, ClaimState::PieceCame, settling.by);
    if (inBox)
        made.look = lookAgain(settling, *came);
    return made;
}

Result<SettledAction> byCredit(const Settling &settling)
{
    const SupplierClaim &claim = settling.claim.now;
    const auto credit = creditAsked(settling);
    if (!credit)
        return tl::unexpected(credit.error());
    const auto waiting = waitingValue(settling, settling.claim.owed());
    if (!waiting)
        return tl::unexpected(waiting.error());
    SettledAction made;
    made.step = nextStep(settling.claim, ClaimState::Credited, settling.by);
    made.step->credit = *credit;
    const std::int64_t change = *waiting - *credit;
    if (change == 0)
        return made;
    const BookedOrder *order = orderOf(settling);
    LateWords late{claim.order, LateKind::Credit,   change, {}, {}, {},
                   false,       claim.claim.text(), {}};
    if (!claim.isAwaitedByOrder()) {
        late.onlyPart = claim.boxOf.empty() ? claim.part : claim.boxOf;
        late.onlyLot = claim.boxLot;
        late.onlyDamaged = claim.fault == ClaimFault::Damaged;
    }
    const auto lies = late.onlyDamaged ? liesDamaged(claim.order, claim.part, settling.books)
                                       : Result<bool>(true);
    if (!lies)
        return tl::unexpected(lies.error());
    const bool borne =
        order && *lies &&
        std::any_of(order->receipts.begin(), order->receipts.end(), [&](const Receipt &one) {
            return !one.wrongPart && (late.onlyPart.empty() || one.part == late.onlyPart) &&
                   (late.onlyLot.empty() || one.lot == late.onlyLot);
        });
    if (!borne) {
        auto moved = toDifferences(settling, change);
        if (!moved)
            return tl::unexpected(moved.error());
        made.action = numbered(std::move(*moved), settling.by);
        return made;
    }
    auto charged = chargedLate(late, settling.books, settling.by);
    if (!charged)
        return tl::unexpected(charged.error());
    made.action = std::move(charged->action);
    made.late = std::move(charged->cost);
    return made;
}

Result<SettledAction> byGivingUp(const Settling &settling)
{
    const auto waiting = waitingValue(settling, settling.claim.owed());
    if (!waiting)
        return tl::unexpected(waiting.error());
    SettledAction made;
    made.step = nextStep(settling.claim, ClaimState::GivenUp, settling.by);
    auto moved = toDifferences(settling, *waiting);
    if (!moved)
        return tl::unexpected(moved.error());
    if (!moved->empty())
        made.action = numbered(std::move(*moved), settling.by);
    return made;
}

} // namespace flarestock
