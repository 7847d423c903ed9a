// SPDX-License-Identifier: MIT
//
// Sealed rows: what stands beside the journal and has a seal of its own - the shop, its places, its
// documents, what was seen in boxes.

#pragma once

#include "model/storage/shop_connection.h"

namespace flarestock {

/// Says what was changed, left out or put between since it was written. Throws StorageFailure where
/// a row cannot be read.
void checkSealed(const ShopConnection &connection,
                 const std::function<void(const std::string &)> &wrong);

} // namespace flarestock
