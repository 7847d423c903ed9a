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
    return Bought{std::move(*orders), ClaimBook::of(*steps, *receipts), std::move(*late)};
}

} // namespace flarestock
