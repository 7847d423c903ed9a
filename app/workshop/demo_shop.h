// SPDX-License-Identifier: MIT
//
// Demo shop: makes a shop file out of the invented data that is built into the program.

#pragma once

#include "model/storage/shop_file.h"

namespace flarestock {

/// The files of demo-data, by their names there ("parts/adapters.csv").
[[nodiscard]] TextFiles demoDocuments();

/// A shop that begins with these documents: shop.toml and stock.csv become settings, places and
/// opening movements, the rest is kept as it is. Problem: a document that does not read.
[[nodiscard]] Result<NewShop> newShopOf(const TextFiles &documents, std::int64_t now);

/// Problem: as ShopFile::create().
[[nodiscard]] Result<ShopFile> makeDemoShop(const std::filesystem::path &path, std::int64_t now);

} // namespace flarestock
