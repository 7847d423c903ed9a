// SPDX-License-Identifier: MIT
//
// Serviced: what was done to a piece at its position in a car: put in, washed, replaced, looked at,
// found damaged, taken out.

#pragma once

#include "model/exact/decimal.h"
#include "model/journal/movement.h"
#include "model/journal/notes/lot_facts.h"

#include <set>
#include <string>
#include <vector>

namespace flarestock {

enum class Work : std::uint8_t {
    Fitted,    ///< It is in from then on; it was there before the program, or was put in anew.
    Washed,    ///< Opened, washed, back in; of a pump or a filter: opened, cleaned, back in.
    Replaced,  ///< The old one out, another in.
    Inspected, ///< Looked at, found good.
    Damaged,   ///< Looked at, found damaged: it is spent.
    TakenOut,  ///< The position is empty from then on.
};
[[nodiscard]] std::string_view text(Work work) noexcept; ///< "fitted", "washed" …
[[nodiscard]] Result<Work> parseWork(std::string_view text);

struct Serviced {
    MovementId id;
    std::string car; ///< Place id.
    Work work = Work::Fitted;
    std::string position;      ///< "coupe-fuel/filters/prefilter.element", or the shop's own name.
    std::string build;         ///< That the position belongs to; empty where it is the shop's own.
    LotKey piece;              ///< What is there from then on, or was worked on.
    std::int64_t quantity = 1; ///< Smallest units: one, or a hose's length.
    LotKey old;                ///< What went out, as it is called from then on.
    PieceCondition oldIs = PieceCondition::ToBeChecked;
    std::int64_t washed = 0;  ///< How often the piece was washed before it was fitted.
    std::int64_t hadRuns = 0; ///< What the piece ran before it was fitted.
    Decimal hadHours;
    std::string made;  ///< The day it was made, cured, or its bottle opened; may be empty.
    std::string useBy; ///< The last day by its maker or its certificate; may be empty.
    std::string day;   ///< When it was done: "2026-12-12".
    std::string note;
    std::string action; ///< The id of the movement that belongs to it; empty where none does.
    std::string who;
    std::int64_t at = 0;

    [[nodiscard]] Record asRecord() const;
    [[nodiscard]] static Result<Serviced> read(const Record &record); ///< Problem: not one.
};

/// Of a servicing that is said again with another old piece, because a copy was brought that had
/// done it too: the id of what was said before, and of what it follows.
inline constexpr const char *SaidBeforeField = "said before";
inline constexpr const char *FollowsField = "follows";
/// The ids of all such, and of what they name: none of them goes back alone.
[[nodiscard]] std::set<std::string> decidedWhenBrought(const std::vector<Record> &records);

} // namespace flarestock
