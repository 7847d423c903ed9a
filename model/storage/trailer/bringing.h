// SPDX-License-Identifier: MIT
//
// Bringing: one copy into the shop, inside a transaction of the shop's.

#pragma once

#include "model/storage/trailer/copy_read.h"
#include "model/storage/trailer/doubts/doubts.h"

namespace flarestock {

/// Takes it in, judging by the shop as it is now; where a disagreement is left open nothing of it
/// may stay. Inside wholly(). Throws StorageFailure.
[[nodiscard]] BroughtBack broughtInto(ShopConnection &shop, const CopyRead &copy,
                                      const Bringing &bringing, const Said &said);

} // namespace flarestock
