// SPDX-License-Identifier: MIT
//
// Beginning: a shop of one's own, made out of a folder of CSV and TOML files, for the command
// `begin` and for the desk alike. Everything is read before the file is made.

#pragma once

#include "model/storage/shop_file.h"

namespace flarestock {

/// Problem: a document that does not read, with its place; as ShopFile::create(). Then there is no
/// new file. `now`: milliseconds since 1970, UTC.
[[nodiscard]] Result<ShopFile> shopBegun(const std::filesystem::path &folder,
                                         const std::filesystem::path &file, std::int64_t now);

} // namespace flarestock
