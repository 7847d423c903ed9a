// SPDX-License-Identifier: MIT
//
// News: what one of two journals of a shop has and the other does not know, chain by chain.

#pragma once

#include "model/storage/trailer/taken_in.h"

namespace flarestock {

/// How far somebody knows each chain: its entries, by id.
using KnownChains = std::map<QByteArray, std::int64_t>;
/// Throws StorageFailure.
[[nodiscard]] KnownChains chainsOf(const ShopConnection &connection);

/// An entry, as it stands in the journal that it was read from.
struct NewsEntry {
    ChainPlace place;
    QByteArray replica;     ///< The id of its chain.
    std::int64_t count = 0; ///< What it bears in that.
    std::optional<Movement> movement;
    std::optional<Record> record;
    std::vector<std::uint8_t> bytes; ///< What its hash is over, besides its place.

    [[nodiscard]] MovementId id() const { return movement ? movement->id : record->id; }
};

/// What stands behind what is known, in the order of this journal's fold. Throws StorageFailure.
[[nodiscard]] std::vector<NewsEntry> newsBehind(const KnownChains &known,
                                                const ShopConnection &connection);

/// A chain by its number in one journal, as far as it goes there.
[[nodiscard]] std::map<QByteArray, ChainEnd> chainEnds(const ShopConnection &connection);
/// The hash of an entry of a chain. Throws StorageFailure: it is not there.
[[nodiscard]] QByteArray hashOf(const ShopConnection &connection, std::int64_t replica,
                                std::int64_t sequence);

} // namespace flarestock
