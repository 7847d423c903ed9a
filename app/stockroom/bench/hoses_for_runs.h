// SPDX-License-Identifier: MIT
//
// Hoses for runs: made-up hoses in stock that a run of a build could take instead of a new one: of
// the same hose, with the same ends, and as long within a tolerance.

#pragma once

#include "app/stockroom/stock_line.h"
#include "app/workshop/worked_build.h"

namespace flarestock {

struct HoseForRun {
    std::string run; ///< Id.
    std::string tag;
    std::string place;
    std::string clocking;       ///< Of the hose; whether it lies right only a hand can see.
    std::int64_t longer = 0;    ///< Than the run asks for, smallest units; below zero: shorter.
    const Part *hose = nullptr; ///< What it is made of, for the unit.
};

/// 1/4 in: common practice, no source.
[[nodiscard]] std::int64_t usualHoseTolerance() noexcept;

/// In flow order, the nearest in length first. A hose stands once for each run that it suits.
/// `within`: smallest units, not below zero; `day`: when it must not be past its own.
[[nodiscard]] std::vector<HoseForRun> hosesForRuns(const Expansion &expansion,
                                                   const Workshop &workshop, std::int64_t within,
                                                   std::string_view day);

} // namespace flarestock
