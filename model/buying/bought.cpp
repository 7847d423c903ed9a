// SPDX-License-Identifier: MIT

#include "model/buying/bought.h"

namespace flarestock {

namespace {

/// Those of a kind that count, as what they are.
template <class T>
Result<std::vector<T>> readAll(RecordKind kind, const std::vector<Record> &records,
                               const Ledger &ledger)
{
    std::vector<T> all;
    for (const Record &record : records) {
        if (record.kind != kind)
            continue;
        const auto action = MovementId::parse(record.field("action"));
        if (action && ledger.isTakenBack(*action))
            continue;
        auto read = T::read(record);
        if (!read)
            return tl::unexpected(read.error());
        all.push_back(std::move(*read));
    }
    return all;
}

/// What the order had still awaited, and was paid back for or let go.
void leaveOutSettled(const ClaimBook &claims, BuyingBook &book)
{
    for (const ClaimStanding &claim : claims.claims) {
        const SupplierClaim &now = claim.now;
        const auto order = book.orders.find(now.order);
        if (now.isAwaitedByOrder() && now.isLetGo() && order != book.orders.end() &&
            now.quantity > claim.came)
            order->second.notComing[now.part] += now.quantity - claim.came;
    }
}

} // namespace

Result<Bought> Bought::of(const std::vector<Record> &records, const Ledger &ledger)
{
    auto orders = BuyingBook::of(records, ledger);
    if (!orders)
        return tl::unexpected(orders.error());
    const auto receipts = readAll<Receipt>(RecordKind::Receipt, records, ledger);
    if (!receipts)
        return tl::unexpected(receipts.error());
    const auto steps = readAll<SupplierClaim>(RecordKind::SupplierClaim, records, ledger);
    if (!steps)
        return tl::unexpected(steps.error());
    auto late = readAll<LateCost>(RecordKind::LateCost, records, ledger);
    if (!late)
        return tl::unexpected(late.error());
    Bought bought{std::move(*orders), ClaimBook::of(*steps, *receipts), std::move(*late)};
    for (const Record &record : records) {
        if (record.kind == RecordKind::SupplierClaim) // Also where it was taken back.
            bought.claims.giveNumber(record.subject);
    }
    leaveOutSettled(bought.claims, bought.orders);
    return bought;
}

} // namespace flarestock
