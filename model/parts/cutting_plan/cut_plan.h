// SPDX-License-Identifier: MIT
//
// Cut plan: which piece gives which lengths, the best that there is for what the builder is after.
// Whatever it is, nothing is left short that could be cut, and no coil more is bought than must be.
//
//   remnants first:  …, least length off whole coils, least waste, from shorter pieces
//   least waste:     …, least waste, fewest pieces begun, from shorter pieces
//
// Three hoses of 40 in between seats whose ends take up 3/4 in each are 38 1/2 in to cut. Off 144
// in and a remnant of 40 in, with 1/8 in of kerf: remnants first cuts one off the remnant, of which
// 1 3/8 in go to waste; least waste takes all three off the 144 in and leaves the remnant whole.
//
// Patterns of cutting and how often each is used: P. C. Gilmore and R. E. Gomory, "A linear
// programming approach to the cutting-stock problem", Operations Research 9 (1961). Here all
// patterns are written down at the start.

#pragma once

#include "model/parts/cutting_plan/cut_task.h"

#include <chrono>
#include <string_view>

namespace flarestock {

enum class CutAim : std::uint8_t { RemnantsFirst, LeastWaste };
[[nodiscard]] std::string_view text(CutAim aim) noexcept; ///< "remnants" "waste"
[[nodiscard]] Result<CutAim> parseCutAim(std::string_view text);

/// What plans are compared by; of each the less is the better.
enum class CutMeasure : std::uint8_t {
    Short,     ///< Length that is wanted and cut off nothing.
    Coils,     ///< New coils.
    FromCoils, ///< Length that is cut off whole coils, old or new (CutTask::wholeCoil()).
    Waste,     ///< Length of kerfs and of rests that are too short.
    Started,   ///< Pieces and coils that something is cut off.
    Longer,    ///< For each cut, how many different lengths there are of shorter pieces.
};
[[nodiscard]] std::string_view text(CutMeasure measure) noexcept; ///< "short" "new coils" …
[[nodiscard]] bool isLength(CutMeasure measure) noexcept; ///< In smallest units; else a number.
/// One after the other.
[[nodiscard]] std::vector<CutMeasure> measuresOf(CutAim aim);

/// What a plan cannot go below, where it is not proven to be the best.
struct CutBound {
    CutMeasure of = CutMeasure::Short; ///< Those that come before it are proven.
    std::int64_t atLeast = 0;
};

struct CutPlan {
    struct FromPiece {
        std::optional<std::size_t> piece; ///< As the task counts them; nothing: a new coil.
        std::int64_t had = 0;             ///< Its length.
        std::vector<std::size_t> lengths; ///< As the task counts them, longest first.
        std::int64_t rest = 0;            ///< What stays; zero where it is too short to be useful.
        std::int64_t waste = 0;
    };
    std::vector<FromPiece> from;      ///< Those that something is cut off, new coils last.
    std::vector<std::size_t> lacking; ///< Lengths that nothing is long enough for, or left for.
    std::optional<CutBound> bound;    ///< Nothing: no plan is better.

    [[nodiscard]] std::int64_t coils() const noexcept; ///< New ones.
    [[nodiscard]] std::int64_t waste() const noexcept;
    /// What one piece must have for all that is lacking, with the kerfs between; zero for nothing.
    [[nodiscard]] std::int64_t lengthToBuy(const CutTask &task) const;
    /// By measuresOf(aim).
    [[nodiscard]] std::vector<std::int64_t> measured(const CutTask &task, CutAim aim) const;
};

/// Ends after about `within`; small tasks take hundredths of a second. Where it runs out, or the
/// lengths can be put together in more than PatternsMost ways, the plan is at least as good as each
/// length, the longest first, off the shortest piece that holds it.
[[nodiscard]] CutPlan planCuts(const CutTask &task, CutAim aim,
                               std::chrono::milliseconds within = std::chrono::seconds(5));

inline constexpr std::size_t PatternsMost = 20'000;

} // namespace flarestock
