// SPDX-License-Identifier: MIT
//
// Made up for: where a copy is brought and both sides had taken the same pieces from a place, a
// difference makes up for what is not there. From then on what one of the two took does not go back
// alone, or a piece would lie there that is not.

#pragma once

#include "model/journal/movement.h"
#include "model/storage/shop_file.h"

namespace flarestock {

/// Problem: something of what moved was made up for, and stays; the journal cannot be read.
[[nodiscard]] Result<void> nothingMadeUpFor(const std::vector<Movement> &moved,
                                            const ShopFile &file, const Ledger &shop);

} // namespace flarestock
