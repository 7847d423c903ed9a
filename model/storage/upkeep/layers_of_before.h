// SPDX-License-Identifier: MIT
//
// Layers of before: shops of first in, first out that were kept before their layers stood in a
// table get them out of their journal.

#pragma once

#include "model/storage/shop_connection.h"

namespace flarestock {

/// Writes the layers that the journal adds up to; none of a moving average. The table is there and
/// empty. Inside a transaction. Throws StorageFailure where the journal does not add up.
void writeLayersOfBefore(ShopConnection &connection);

} // namespace flarestock
