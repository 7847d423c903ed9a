// SPDX-License-Identifier: MIT
//
// New file: a shop file made with all that it begins with, or not at all: it is written under a
// name of its own beside its place, and gets its name when everything is on the disk.

#pragma once

#include "model/storage/file/file_connection.h"
#include "model/storage/shop_file.h"

namespace flarestock {

/// `write` fills the tables, which are there and empty. Throws StorageFailure: the file exists
/// already, its folder is not there or cannot be written, the disk is full; and what `write`
/// throws.
void makeFile(const std::filesystem::path &path,
              const std::function<void(FileConnection &connection)> &write);
/// Also where a movement is refused.
void makeShopFile(const std::filesystem::path &path, const NewShop &shop);

} // namespace flarestock
