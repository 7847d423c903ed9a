// SPDX-License-Identifier: MIT
//
// Marks: which of the pieces that came bear which lot or serial, which are damaged, and which boxes
// lack something. A pump is kept by its serial, an element by its batch, hose by the name of each
// piece: a recall or a leak asks for them.

#pragma once

#include "app/buyer/receiving/receiving_words.h"

namespace flarestock {

/// Splits the pieces so that each bears what was said of it. A piece whose box lacks something and
/// that bears no mark gets a name of its own, so that the hole is known of it and no other.
/// Problem: as comingAsked() says of marks; a serial of two pieces, or of one that is here.
[[nodiscard]] Result<void> mark(std::vector<ComingPiece> &pieces, const ReceivingWords &asked,
                                const Workshop &workshop);

} // namespace flarestock
