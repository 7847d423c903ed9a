// SPDX-License-Identifier: MIT
//
// Standing moves: the movements whose pieces are where they went: without those that were taken
// back, and what took them back; of what was taken back and that taken back again the last.

#pragma once

#include "model/journal/ledger.h"

namespace flarestock {

struct StandingMove {
    const Movement *movement = nullptr;
    const Movement *first = nullptr; ///< That it does again; itself where nothing was taken back.
};

/// In their order. `movements` have to outlive it.
[[nodiscard]] std::vector<StandingMove> standingMoves(const std::vector<Movement> &movements,
                                                      const Ledger &ledger);

} // namespace flarestock
