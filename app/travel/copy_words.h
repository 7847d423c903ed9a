// SPDX-License-Identifier: MIT
//
// Copy words: what is said of copies of the shop that travel, for commands and desk alike. What is
// done with them is model/storage/trailer/travelling.h.

#pragma once

#include "model/storage/trailer/travelling.h"

namespace flarestock {

/// "with Ada Berg, out since 2026-11-27: T1, T2".
[[nodiscard]] std::string standingOf(const TravellingCopy &copy);
/// "away", "away, brought 2026-11-27", "back 2026-11-28", "ended 2026-11-28".
[[nodiscard]] std::string stateOf(const TravellingCopy &copy);
/// "5 movements, 1 record, builds.toml, place T3"; "nothing new" where there is none.
[[nodiscard]] std::string cameWith(const BroughtBack &back);
/// What the shop has that the copy does not know; empty where there is nothing.
[[nodiscard]] std::string missingIn(const BroughtBack &back);
/// How to decide what is open, as a sentence; empty where nothing is.
[[nodiscard]] std::string openIn(const BroughtBack &back);

} // namespace flarestock
