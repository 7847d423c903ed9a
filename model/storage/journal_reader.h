// SPDX-License-Identifier: MIT
//
// Journal reader: every entry in the order of the fold, movements and records merged.

#pragma once

#include "model/exchange/catalogue_csv.h"
#include "model/storage/shop_rows.h"

namespace flarestock {

/// By which way rows come: by the index of their order, or as the tables hold them and then sorted,
/// which an index that is damaged does not disturb.
enum class JournalRead : std::uint8_t { ByIndex, AsItLies };

/// Calls the one or the other for each entry. Throws StorageFailure: a row that is not ours, when
/// its turn comes.
void readJournal(const ShopConnection &connection, JournalRead way,
                 const std::function<void(const JournalRow &)> &onMovement,
                 const std::function<void(const RecordRow &)> &onRecord);

/// Throws StorageFailure where there is none.
[[nodiscard]] Record recordIn(const ShopConnection &connection, const MovementId &id);

/// The movements that were taken back. Throws StorageFailure.
[[nodiscard]] std::set<MovementId> takenBackIn(const ShopConnection &connection);
/// The newest version of every document, by name.
[[nodiscard]] TextFiles newestDocuments(const ShopConnection &connection);
/// The newest version of a document; nothing where there is none.
[[nodiscard]] std::optional<std::string> newestDocument(const ShopConnection &connection,
                                                        const std::string &name);

/// The lots of a part that each build may not use, by the newest plans of builds. Throws
/// StorageFailure.
[[nodiscard]] Bars barsIn(const ShopConnection &connection, const std::string &part);

/// The places as the shop has them, nearest first. Throws StorageFailure.
[[nodiscard]] std::vector<Place> placesIn(const ShopConnection &connection);
/// How the shop costs. Throws StorageFailure.
[[nodiscard]] Costing costingIn(const ShopConnection &connection);

} // namespace flarestock
