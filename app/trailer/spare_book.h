// SPDX-License-Identifier: MIT
//
// Spare book: what the shop knows of how its parts are spent: its spares.csv, what was used at past
// events by its used.csv and by its journal, and how far its cars ran.
//
// What was used at an event: what went out of a drawer into a car, to be used up or to scrap, on
// its days or before the next event's; and what went there from elsewhere on its days. Issues to
// builds are none.

#pragma once

#include "app/trailer/carry_line.h"
#include "app/trailer/part_running.h"
#include "model/servicing/car_life.h"

namespace flarestock {

struct SpareBook {
    std::vector<PartSpending> spendings;
    std::vector<PastUse> pastUses;
    std::vector<Movement> movements; ///< All of the journal that were not taken back.
    std::vector<Record> outings;     ///< How far cars have run.
    CarLives lives = {}; ///< What is in the cars, as their garage says it; may be empty.

    /// Problem: spares.csv or used.csv does not read; a damaged file.
    [[nodiscard]] static Result<SpareBook> of(const ShopFile &file);
    [[nodiscard]] const PartSpending *spending(std::string_view part) const;
};

/// What the running and the uses of a part are looked up in.
struct LookedUpIn {
    const Workshop &workshop;
    const SpareBook &book;
    const PartRunning &running; ///< Of that part.
    std::string_view today;
};
/// What was used at the events before today of which the shop knows, and how far the pieces ran
/// there; none of it where it knows of no event.
struct SeenUses {
    UseHistory history;
    std::vector<std::string> events; ///< Their ids.
};
[[nodiscard]] SeenUses seenUses(const Part &part, const LookedUpIn &in);

/// What each fitted piece has run since it went into its car, car by car: as the car's life has it;
/// of a piece that is not in it, what the car ran since the part last came to it.
[[nodiscard]] std::vector<Decimal> runSoFar(const Part &part, const LookedUpIn &in);

} // namespace flarestock
