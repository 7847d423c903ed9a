// SPDX-License-Identifier: MIT
//
// Serials: what of a part is told apart piece by piece. A pump is: what it is called is one piece,
// which is in one place, so that a serial that is still here does not come in once more.

#pragma once

#include "app/workshop/workshop.h"

namespace flarestock {

/// Whether what its pieces are called is a serial and not a lot.
[[nodiscard]] bool isKeptBySerial(const Part &part) noexcept;

/// So much of a part comes in under a name. Problem: the name is a serial, and it is of more than
/// one piece, or the piece of that serial is in the shop, in a car, lent or out for repair.
[[nodiscard]] Result<void> onePiece(const Part &part, const std::string &name,
                                    std::int64_t quantity, const Ledger &ledger);

} // namespace flarestock
