// SPDX-License-Identifier: MIT
//
// Work begun: what was typed of some work looked up: the car, the position and what is there, the
// day, and what is known of what goes in.

#pragma once

#include "app/garage/at_work.h"

namespace flarestock {

/// What all work begins with: the car, the position, the day.
struct Begun {
    const Place *car = nullptr;
    const CarLife *life = nullptr;
    const FittedPiece *piece = nullptr; ///< nullptr where only the car was asked for.
    const BuildPlan *plan = nullptr;    ///< Of the position's build; nullptr where it is of none.
    Serviced serviced;
};

/// Problem: no such car, no day.
[[nodiscard]] Result<Begun> begunAtCar(Work work, const WorkWords &asked, const Garage &garage,
                                       const By &by);
/// Problem: also no such position, a day before the piece was fitted.
[[nodiscard]] Result<Begun> begunAt(Work work, const WorkWords &asked, const Garage &garage,
                                    const By &by);
/// What was typed of what goes in. Problem: a day or a number that is none.
[[nodiscard]] Result<void> readFacts(const WorkWords &asked, Serviced &serviced);
/// What the shop knows of a lot or a made-up hose goes along where nobody said it.
void addKnownDays(Serviced &serviced, const Workshop &workshop);
/// "2.5"; none where nothing was typed. Problem: no number, below zero.
[[nodiscard]] Result<Decimal> hoursAsked(const std::string &typed);

} // namespace flarestock
