// SPDX-License-Identifier: MIT
//
// Loading: what should be in the trailer's drawers, what is, and what to bring from which bin; and
// after an event what lies in them that does not belong there. What a drawer should hold is what
// `keep` says of it.

#pragma once

#include "app/stockroom/deed.h"

namespace flarestock {

/// So much of what lies somewhere.
struct LoadTake {
    BalanceKey from;
    std::int64_t quantity = 0; ///< Smallest units.
};

struct LoadLine {
    const Part *part = nullptr;
    Keeping keeping;
    std::int64_t has = 0;        ///< Free there, and good on the day.
    std::int64_t lacks = 0;      ///< To the maximum, where it is below its minimum; else 0.
    std::vector<LoadTake> bring; ///< Nearest first. Of what is cut whole pieces.
    std::int64_t toBuy = 0;      ///< What is then still lacking.
    std::string held;            ///< Why others that lie nearby stay there; empty where none does.
};

/// What is asked for; each empty for all.
struct LoadAsked {
    std::string drawer; ///< A place's id, as the shop has it.
    std::set<std::string> parts;
    std::string day; ///< On which it is wanted: "2026-12-19"; what is past its day then stays.
};

/// Every part of which a drawer is to hold so much, by drawer, then by part. Bins and shelves give
/// what is free there down to their own minimum; what is promised stays. Of what two drawers lack
/// of one part the first gets it.
[[nodiscard]] std::vector<LoadLine> loadLines(const Workshop &workshop, const LoadAsked &asked);
[[nodiscard]] std::vector<Movement> loadMovements(const std::vector<LoadLine> &lines);

/// Why something does not belong where it lies.
enum class Misplaced : std::uint8_t {
    NotKept,
    Surplus,
    ToBeChecked,
    NotToBeUsed,
    PastItsDay,
    OpenBox
};
[[nodiscard]] std::string_view text(Misplaced why) noexcept; ///< "does not belong here" …

struct UnloadLine {
    const Part *part = nullptr;
    LoadTake take;
    Misplaced why = Misplaced::NotKept;
    std::string home; ///< The nearest bin or shelf that keeps it or holds some; empty where none.
};
/// What to take out of the drawers, by drawer, then by part.
[[nodiscard]] std::vector<UnloadLine> unloadLines(const Workshop &workshop, const LoadAsked &asked);
/// Of those that have a home, or else to `otherwise` where that is a place.
[[nodiscard]] std::vector<Movement> unloadMovements(const std::vector<UnloadLine> &lines,
                                                    const std::string &otherwise);

} // namespace flarestock
