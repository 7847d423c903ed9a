// SPDX-License-Identifier: MIT
//
// Taken in: entries of other chains that a copy has brought. In this shop's order they stand where
// they were taken in, so that whatever was judged here before stays as it was judged; the counts
// that they bear in their own chain, which their hashes are over, stand in the record of the trip.

#pragma once

#include "model/storage/shop_rows.h"

#include <map>

namespace flarestock {

/// Whether it was written elsewhere.
[[nodiscard]] inline bool isTakenIn(const ChainPlace &place) noexcept
{
    return place.replica < 1;
}

/// The bytes that a record's hash is over: of an entry that is only kept, its own.
[[nodiscard]] std::vector<std::uint8_t> bytesOf(const RecordRow &row);

class TakenIn {
public:
    TakenIn() = default;
    /// Throws StorageFailure.
    explicit TakenIn(const ShopConnection &connection);

    /// The count in its own chain; of what was written here the one that stands there.
    [[nodiscard]] std::int64_t countOf(const ChainPlace &place) const;

private:
    /// By number of the chain and first entry: the count of that one; the next ones follow it.
    std::map<std::int64_t, std::map<std::int64_t, std::int64_t>> m_counts;
};

} // namespace flarestock
