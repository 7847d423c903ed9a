// SPDX-License-Identifier: MIT
//
// Build sheet: a build as the bench makes it, step by step: what is cut, each joint in the order of
// the flow with its pieces, rings and published torques, what was built differently from plan, the
// leak test; a box to tick for each.

#pragma once

#include "app/buyer/papers/paper_words.h"
#include "app/sheet/workbook.h"
#include "app/workshop/worked_build.h"

namespace flarestock {

enum class BenchWork : std::uint8_t { Cut, Join, Swapped, Test };
[[nodiscard]] std::string_view text(BenchWork work) noexcept; ///< "cut", "join", "built", "test"

struct BenchStep {
    BenchWork work = BenchWork::Join;
    std::string at;     ///< "pump inlet"; of a cut the hose or tube.
    std::string what;   ///< Its pieces one after the other; the lengths that are cut.
    std::string with;   ///< Rings, washers, sealant.
    std::string torque; ///< In N·m, a line for each thing that is turned; empty where nothing is.
};

struct BuildSheet {
    std::vector<BenchStep> steps; ///< In the order of the work.
    /// Each published torque once, with its source: "AN -10: 45.2–54.2 N·m, 33.3–40.0 lbf·ft
    /// (S19)".
    std::vector<std::string> torques;
    std::vector<std::string> sources; ///< "S19: what it is", each once.
};

/// Cuts, joints in flow order, pieces built instead of planned ones, the test. An open joint says
/// so instead of pieces.
[[nodiscard]] BuildSheet buildSheet(const WorkedBuild &build, const Workshop &workshop,
                                    const BuildPlan &plan, const Speech &speech = *plainSpeech());

/// `day`: that the sheet says it was made on.
[[nodiscard]] Workbook buildSheetRows(const BuildSheet &sheet, const std::string &day);
/// `paper` comes from the shop, and is empty besides; the sheet was said in its speech.
[[nodiscard]] PaperWords buildSheetPaper(const BuildSheet &sheet, const BuildPlan &plan,
                                         const std::string &day, PaperWords paper);

} // namespace flarestock
