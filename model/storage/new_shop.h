// SPDX-License-Identifier: MIT
//
// New shop: all that a shop begins with, and what is written into it besides the journal.
// Everything here is called inside a transaction.

#pragma once

#include "model/storage/shop_connection.h"
#include "model/storage/shop_file.h"

namespace flarestock {

/// A chain of its own, without an entry yet, for who writes from now on.
void beginReplica(ShopConnection &connection);

/// Into tables that are there, empty but for a chain to write on. Throws StorageFailure: a movement
/// is refused.
void writeShop(ShopConnection &connection, const NewShop &shop);

/// Who wrote something, and when (milliseconds since 1970, UTC).
struct Written {
    std::string who;
    std::int64_t at = 0;
};
/// A version of a document, sealed over the one written before; none where it is the newest
/// already. A byte-order mark at its beginning is left out.
void writeDocument(ShopConnection &connection, const std::string &name, const std::string &content,
                   const Written &by);
void writeBoxCheck(ShopConnection &connection, const BoxCheck &check);

/// Inside a transaction.
void writePlace(ShopConnection &connection, const Place &place, std::int64_t sequence);
struct ShopRow {
    std::string title;
    std::string currency;
    std::string costing; ///< Empty in version 1, which had none.
    std::int64_t madeAt = 0;
};
[[nodiscard]] QByteArray shopSeal(const ShopRow &shop);
void writeShopRow(ShopConnection &connection, const ShopRow &shop); ///< Inside a transaction.

} // namespace flarestock
