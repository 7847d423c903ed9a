// SPDX-License-Identifier: MIT
//
// Condition words: what a piece is, and what was done with it, in the person's language.

#pragma once

#include "model/journal/movement.h"

#include <QStringList>

namespace flarestock {

[[nodiscard]] QString saidCondition(PieceCondition condition); ///< "new", "to be checked" …
/// All of them, in the order of PieceCondition.
[[nodiscard]] QStringList allConditions();
[[nodiscard]] QString saidDeed(Deed deed); ///< "moved", "received" …

} // namespace flarestock
