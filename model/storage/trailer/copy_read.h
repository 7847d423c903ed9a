// SPDX-License-Identifier: MIT
//
// Copy read: a copy as it was read at one moment to be brought, and whether it is of this shop.

#pragma once

#include "model/storage/trailer/documents_brought.h"
#include "model/storage/trailer/news.h"
#include "model/storage/trailer/travelling.h"

namespace flarestock {

/// A copy as it was read at one moment: its chains and all that the shop may not know of them.
struct CopyRead {
    std::map<QByteArray, ChainEnd> ends;
    /// By chain: the last entry that both know, and its hash.
    std::map<QByteArray, std::pair<std::int64_t, QByteArray>> hashes;
    std::vector<NewsEntry> news;
    BesideJournal beside;
    std::string trip; ///< The newest of its own.
    QByteArray shopSeal;
};
/// Inside atOneMoment(). `known`: how far the shop knows each chain. Throws StorageFailure: it is
/// no copy that travels.
[[nodiscard]] CopyRead readCopy(const ShopConnection &copy, const KnownChains &known);

/// Throws StorageFailure where whoever brings it does not go on.
void goOn(const Bringing &bringing, std::size_t done, std::size_t of);

/// Throws StorageFailure where it is a copy of another shop, where the shop was put back to before
/// it was taken, or where two went on from the same copy.
void throwUnlessOfThisShop(const CopyRead &copy, const ShopConnection &shop);

} // namespace flarestock
