// SPDX-License-Identifier: MIT
//
// Verification: proves a shop whole: the database's own check, the chain of every replica, the
// seals of everything else, and each balance against the fold. Reads only.

#pragma once

#include "model/storage/shop_connection.h"
#include "model/storage/shop_file.h"

namespace flarestock {

/// Throws StorageFailure where it cannot be read as a shop at all.
[[nodiscard]] Verification verified(const ShopConnection &connection);

} // namespace flarestock
