// SPDX-License-Identifier: MIT
//
// HandedOut: how far a build has come with its pieces, as the shop's snapshot says it: what could
// be promised to it, what is to be picked, what is in its car, what keeps it from being done. The
// lists of the desk are pure functions of it.

#pragma once

#include "app/desk/build/worked_out.h"
#include "app/desk/handing/origins.h"
#include "app/desk/rows/rows.h"
#include "app/desk/words/units.h"
#include "app/stockroom/handing_out.h"

#include <set>

namespace flarestock {

struct HandedOut {
    /// Pieces of one part, lot and condition in the car that were issued to the build.
    struct InCar {
        const Part *part = nullptr;
        BalanceKey key;
        std::int64_t quantity = 0;
    };
    std::vector<Promise> toPromise;
    PickList picks;
    LeftUndone left;
    std::vector<InCar> inCar;
    Origins origins; ///< Of what is in the car, as far as they were looked up.
    BuildStanding standing;
    bool brakes = false;
    std::string whyNotDone; ///< Empty where its leak tests let it be done.
};

/// Of a planned build in a shop; nothing of a template that is tried out.
[[nodiscard]] HandedOut handedOut(const WorkedOut &worked, const BuildPlan &plan);
/// Whether the plan is a build with pieces of its own.
[[nodiscard]] bool takesStock(const WorkedOut &worked, const BuildPlan &plan);

/// label ready detail says; the keys are "reserve" "pick" "give" "done", in this order.
[[nodiscard]] QStringList stepCells();
/// `barrier`: why nothing can be done at all, as a sentence; empty where it can.
[[nodiscard]] std::vector<Row> stepRows(const HandedOut &handed, const QString &barrier);

/// place part what take cut lot ticked says; the key is that of the pieces.
[[nodiscard]] QStringList pickCells();
[[nodiscard]] std::vector<Row> pickRows(const HandedOut &handed, const std::set<QString> &ticked,
                                        Units units);
[[nodiscard]] QString pickKey(const BalanceKey &key);
/// "not found: 2 of AD-8-8, 1 of HE-8"; empty where all was.
[[nodiscard]] QString saidLacking(const PickList &picks, Units units);

/// part what quantity typed lot condition to says; the key is that of the pieces. `typed` is the
/// whole quantity as one would type it, `to` the place that it came from, or where more of the part
/// lies.
[[nodiscard]] QStringList inCarCells();
[[nodiscard]] std::vector<Row> inCarRows(const HandedOut &handed, const Workshop &workshop,
                                         Units units);

/// What speaks against calling the build done: stops, what is short or was not taken to its car.
[[nodiscard]] QString saidAgainst(const HandedOut &handed);

/// "air, 60 psi held 10 min, passed, by Kim and Lee"; a sentence where there is none.
[[nodiscard]] QString saidTest(const std::vector<LeakTest> &tests);

} // namespace flarestock
