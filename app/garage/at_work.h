// SPDX-License-Identifier: MIT
//
// At work: what is done to a piece in a car, made into one action of the journal: what was done,
// the stock movements that belong to it, fresh rings for the joints that are opened, and the build
// open again until it is leak-tested.

#pragma once

#include "app/garage/garage.h"
#include "app/stockroom/deed.h"
#include "app/stockroom/renewing.h"

namespace flarestock {

/// As a hand says it; what is empty was not said.
struct WorkWords {
    std::string car;
    std::string position; ///< For fit: a position that may be new; else one that is there.
    std::string part;     ///< Fitted, or the other part that goes in.
    std::string lot;      ///< Of what goes in.
    std::string from;     ///< Where that is taken: a place, or the car itself for what lies in it.
    std::string oldTo;    ///< Where the old one goes.
    std::string oldIs;    ///< What it is from then on.
    std::string tag;      ///< What the old one is called from then on.
    std::string day;      ///< When it was done; empty: today.
    std::string made;
    std::string useBy;
    std::string length; ///< Of a hose.
    std::int64_t washed = 0;
    std::int64_t hadRuns = 0;
    std::string hadHours;
    std::vector<std::string> joints; ///< Joints that are opened for it, besides those of the piece.
    bool keepRings = false;          ///< No rings are renewed.
};

struct WorkDone {
    Action action;
    Serviced serviced;
    std::string said;           ///< The position, as people say it.
    std::vector<Renewed> rings; ///< Of all joints that were opened, and of the piece itself.
    bool isOpen = false;        ///< The build is open again: a leak test is due.
};

/// Problem: no such car, position, part, place or piece; a day that is none.
[[nodiscard]] Result<WorkDone> fitted(const WorkWords &asked, const Garage &garage, const By &by);
/// Problem: also what is never washed, cannot be opened, or is spent.
[[nodiscard]] Result<WorkDone> washed(const WorkWords &asked, const Garage &garage, const By &by);
[[nodiscard]] Result<WorkDone> replaced(const WorkWords &asked, const Garage &garage, const By &by);
/// `work`: Inspected or Damaged.
[[nodiscard]] Result<WorkDone> lookedAt(Work work, const WorkWords &asked, const Garage &garage,
                                        const By &by);
[[nodiscard]] Result<WorkDone> takenOut(const WorkWords &asked, const Garage &garage, const By &by);

/// How far a car ran, as a hand says it.
struct OutingWords {
    std::string car;
    std::string event;
    std::string day;
    std::int64_t runs = 0;
    std::string hours;
};
/// Problem: no such car, no event, neither runs nor hours, hours that are none.
[[nodiscard]] Result<Outing> ran(const OutingWords &asked, const Workshop &workshop, const By &by);

} // namespace flarestock
