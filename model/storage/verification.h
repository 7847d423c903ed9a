// SPDX-License-Identifier: MIT
//
// Verification: proves a shop file whole: SQLite's own check, the chain of every replica, the seals
// of everything else, and each balance against the fold. Reads only.

#pragma once

#include "model/storage/shop_connection.h"
#include "model/storage/shop_file.h"

namespace flarestock {

/// Throws StorageFailure where the file cannot be read as a shop file at all.
[[nodiscard]] Verification verified(const ShopConnection &connection);

} // namespace flarestock
