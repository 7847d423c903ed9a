// SPDX-License-Identifier: MIT

#include "app/buyer/receiving/receiving.h"

#include "app/workshop/suppliers.h"
#include "model/buying/totals.h"

#include <algorithm>

namespace flarestock {

namespace {

/// Far behind the ids of an action's movements and records.
constexpr std::uint64_t LooksFrom = 1'000'000;

/// Of an ordered part: what is on the paper alone, and in whose place another part came.
std::int64_t notCame(const Coming &coming, const std::string &part)
{
    std::int64_t away = 0;
    for (const Lacking &one : coming.lacking)
        away += one.part->number == part ? one.quantity : 0;
    for (const ComingPiece &piece : coming.pieces)
        away += piece.insteadOf == part ? piece.quantity : 0;
    return away;
}

/// More of a part than is awaited; nobody may have meant it.
Result<void> isNotOver(const Coming &coming)
{
    if (coming.over)
        return {};
    for (const OrderLine &line : coming.order->now().lines) {
        std::int64_t came = 0;
        const Part *part = nullptr;
        for (const ComingPiece &piece : coming.pieces) {
            if (!piece.insteadOf.empty() || piece.part->number != line.part)
                continue;
            came += piece.quantity;
            part = piece.part;
        }
        if (!part)
            continue;
        const auto awaited = Quantity{coming.order->awaited(line), part->unit}.smallest();
        if (!awaited)
            return tl::unexpected(awaited.error());
        const std::int64_t away = notCame(coming, line.part);
        if (away > 0 && came + away > *awaited)
            return problem(line.part,
                           spoken(came, *part) + " of it came and " + spoken(away, *part) +
                               " is said not to have come, of " + spoken(*awaited, *part) +
                               " that is awaited",
                           "Count again: what did not come is not among what came.");
        if (came > *awaited)
            return problem(line.part,
                           "came as " + spoken(came, *part) + ", and " + spoken(*awaited, *part) +
                               " of it is awaited",
                           "Count again; with --over it is taken in.");
    }
    return {};
}

/// The claims of what came, in order.
class Complaints {
public:
    Complaints(const Coming &coming, const Bought &bought) : m_coming(coming), m_book(bought.claims)
    {
    }

    std::vector<SupplierClaim> all()
    {
        for (const Lacking &one : m_coming.lacking)
            raise(one.part->number, one.quantity, ClaimFault::ShortDelivery);
        for (const ComingPiece &piece : m_coming.pieces) {
            if (!piece.insteadOf.empty())
                raise(piece.insteadOf, piece.quantity, ClaimFault::WrongPart).note =
                    "came: " + piece.part->number;
            if (piece.condition == PieceCondition::NotToBeUsed)
                raise(piece.part->number, piece.quantity, ClaimFault::Damaged);
            missingOf(piece);
        }
        return m_claims;
    }

private:
    /// A claim for each part that the box lacks.
    void missingOf(const ComingPiece &piece)
    {
        std::map<std::string, std::int64_t> counts;
        for (const std::string &one : piece.missing)
            ++counts[one];
        for (const auto &[part, count] : counts) {
            SupplierClaim &claim = raise(part, count, ClaimFault::Missing);
            claim.boxOf = piece.part->number;
            claim.boxLot = piece.lot;
        }
    }
    SupplierClaim &raise(const std::string &part, std::int64_t quantity, ClaimFault fault)
    {
        const Order &order = m_coming.order->now();
        SupplierClaim claim;
        claim.order = order.number;
        claim.supplier = order.supplier;
        claim.part = part;
        claim.quantity = quantity;
        claim.fault = fault;
        claim.number = m_book.nextNumber();
        m_claims.push_back(claim);
        m_book.giveNumber(claim.number);
        return m_claims.back();
    }

    const Coming &m_coming;
    ClaimBook m_book;
    std::vector<SupplierClaim> m_claims;
};

Result<std::vector<Receipt>> receiptsOf(const Coming &coming)
{
    const BookedOrder &order = *coming.order;
    std::map<std::string, CameOfLine> before;
    std::vector<Receipt> receipts;
    for (const ComingPiece &piece : coming.pieces) {
        Receipt receipt;
        receipt.order = order.now().number;
        receipt.part = piece.part->number;
        receipt.quantity = piece.quantity;
        receipt.lot = piece.lot;
        receipt.wrongPart = !piece.insteadOf.empty();
        if (receipt.wrongPart)
            receipt.note = "instead of " + piece.insteadOf;
        else if (piece.complete)
            receipt.note = "box complete";
        if (!receipt.wrongPart) {
            CameOfLine &so =
                before.try_emplace(receipt.part, cameBefore(order, receipt.part)).first->second;
            const auto value = valueOfComing(order, *piece.part, so, piece.quantity);
            if (!value)
                return tl::unexpected(value.error());
            receipt.value = *value;
            so.quantity += receipt.quantity;
            so.value += receipt.value;
        }
        receipts.push_back(std::move(receipt));
    }
    return receipts;
}

std::vector<BoxCheck> looksOf(const Coming &coming, const By &by)
{
    std::vector<BoxCheck> looks;
    for (const ComingPiece &piece : coming.pieces) {
        // A look at pieces without a mark would say it of all that lie there without one.
        if (piece.lot.empty() || (piece.missing.empty() && !piece.complete))
            continue;
        looks.push_back({idWithin(*by.action, LooksFrom + looks.size()), piece.part->number,
                         piece.lot, piece.missing, by.who, by.at});
    }
    return looks;
}

/// Ids and names for what is written down beside the movements.
void sign(ReceivedAction &made, const By &by)
{
    const MovementId first = *by.action;
    std::uint64_t n = made.action.movements.size();
    const std::string action = n > 0 ? first.text() : std::string();
    for (Receipt &receipt : made.receipts) {
        receipt.id = idWithin(first, n++);
        receipt.action = action;
        receipt.who = by.who;
        receipt.at = by.at;
        made.action.records.push_back(receipt.asRecord());
    }
    for (SupplierClaim &claim : made.claims) {
        claim.id = claim.claim = idWithin(first, n++);
        claim.action = action;
        claim.who = by.who;
        claim.at = by.at;
        made.action.records.push_back(claim.asRecord());
    }
}

/// What is awaited when all that came is there.
std::vector<OrderLine> stillAwaited(const Coming &coming)
{
    std::vector<OrderLine> awaited;
    for (OrderLine line : coming.order->now().lines) {
        line.quantity = coming.order->awaited(line);
        for (const ComingPiece &piece : coming.pieces) {
            if (piece.insteadOf.empty() && piece.part->number == line.part)
                line.quantity -= Quantity::ofSmallest(piece.quantity, piece.part->unit).amount;
        }
        if (line.quantity.sign() > 0)
            awaited.push_back(std::move(line));
    }
    return awaited;
}

} // namespace

Result<const Place *> placeOfSupplier(const std::string &supplier, const Ledger &ledger)
{
    for (const Place &place : ledger.places()) {
        if (isPlaceOf(supplier, place))
            return &place;
    }
    return problem("supplier " + supplier, "has no place that its parts come from",
                   "Add it: flarestock place supplier-" + supplier + " --kind supplier.");
}

CameOfLine cameBefore(const BookedOrder &order, std::string_view part)
{
    CameOfLine before;
    for (const Receipt &receipt : order.receipts) {
        if (!receipt.countsForOrder() || receipt.part != part)
            continue;
        before.quantity += receipt.quantity;
        before.value += receipt.value;
    }
    return before;
}

Result<std::vector<std::int64_t>> valuesOfLines(const Order &order)
{
    std::vector<Decimal> landed;
    for (const Amounts &line : totalsOf(order).lines)
        landed.push_back(line.landed(order.tax));
    return landedValues(landed, order.rate);
}

Result<std::int64_t> valueOfComing(const BookedOrder &order, const Part &part,
                                   const CameOfLine &before, std::int64_t coming)
{
    const Order &now = order.now();
    const auto values = valuesOfLines(now);
    if (!values)
        return tl::unexpected(values.error());
    for (std::size_t i = 0; i < now.lines.size(); ++i) {
        if (now.lines[i].part != part.number)
            continue;
        const auto ordered = Quantity{now.lines[i].quantity, part.unit}.smallest();
        if (!ordered)
            return tl::unexpected(ordered.error());
        return valueComing({*ordered, (*values)[i]}, before, coming);
    }
    return 0;
}

Result<ReceivedAction> received(const Coming &coming, const Bought &bought,
                                const Workshop &workshop, const By &by)
{
    if (const auto fits = isNotOver(coming); !fits)
        return tl::unexpected(fits.error());
    const Order &order = coming.order->now();
    const auto from = placeOfSupplier(order.supplier, workshop.ledger);
    if (!from)
        return tl::unexpected(from.error());
    auto receipts = receiptsOf(coming);
    if (!receipts)
        return tl::unexpected(receipts.error());
    std::vector<Movement> movements;
    for (std::size_t i = 0; i < coming.pieces.size(); ++i) {
        const ComingPiece &piece = coming.pieces[i];
        Movement movement =
            movementOf({piece.part->number, (*from)->id, piece.lot, piece.condition},
                       piece.quantity, piece.to, Deed::Receive);
        movement.value = (*receipts)[i].value;
        movement.document =
            coming.document.empty() ? order.number : order.number + ", " + coming.document;
        movements.push_back(std::move(movement));
    }
    ReceivedAction made;
    made.action = numbered(std::move(movements), by);
    made.looks = looksOf(coming, by);
    made.pieces = coming.pieces;
    made.receipts = std::move(*receipts);
    made.claims = Complaints(coming, bought).all();
    made.awaited = stillAwaited(coming);
    sign(made, by);
    return made;
}

} // namespace flarestock
