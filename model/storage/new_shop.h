// SPDX-License-Identifier: MIT
//
// New shop: a shop file made with all that it begins with, or not at all: it is written under a
// name of its own beside its place, and gets its name when everything is on the disk.

#pragma once

#include "model/storage/shop_connection.h"
#include "model/storage/shop_file.h"

namespace flarestock {

/// Throws StorageFailure: the file exists already, its folder is not there or cannot be written,
/// the disk is full, a movement is refused.
void makeShopFile(const std::filesystem::path &path, const NewShop &shop);

/// Who wrote something, and when (milliseconds since 1970, UTC).
struct Written {
    std::string who;
    std::int64_t at = 0;
};
/// A version of a document, sealed over the one written before; none where it is the newest
/// already. A byte-order mark at its beginning is left out. Inside a transaction.
void writeDocument(ShopConnection &connection, const std::string &name, const std::string &content,
                   const Written &by);
/// Inside a transaction.
void writeBoxCheck(ShopConnection &connection, const BoxCheck &check);

} // namespace flarestock
