// SPDX-License-Identifier: MIT
//
// Handing out: what is done for a build besides the walk past the bins, each made into an action of
// the journal: promised, given back, tested, done. The commands and the desk call the same.

#pragma once

#include "app/stockroom/picking.h"

namespace flarestock {

/// The promises as one action: each gets an id, who, why and when.
[[nodiscard]] Action promised(std::vector<Promise> promises, const By &by);

/// What a build did not use, as it is named; lot and the conditions are empty where nobody has
/// said.
struct GiveBackWords {
    std::string build;
    std::string part;
    std::string quantity;
    std::string to; ///< Place id.
    std::string lot;
    std::string condition; ///< As it is in the car, where that leaves several.
    std::string now;       ///< What it is from now on.
};
/// "was issued to coupe-fuel only as 2", "was not issued to coupe-fuel".
[[nodiscard]] std::string issuedOnly(std::int64_t issued, const Part &part, const BuildPlan &plan);
/// The movement from the build's car. Problem: no such build, part, place or piece; more than was
/// issued to the build.
[[nodiscard]] Result<Movement> givenBack(const GiveBackWords &asked, const Workshop &workshop);

/// Every build that the movements of the action name is open again with it, where a leak test of it
/// stands or it is done: a test says nothing of pieces that came or went after it.
void openAgain(Action &action, const Workshop &workshop, const By &by);
/// The same of a build that was opened; where nothing moves `by` has the action's id.
void openAgain(Action &action, const Workshop &workshop, const BuildPlan &plan, const By &by);
/// Movements of pieces to or from a build as one action, with openAgain().
[[nodiscard]] Action changed(std::vector<Movement> movements, const Workshop &workshop,
                             const By &by);
/// The same of one build, whose plan may be newer than the one in the shop.
[[nodiscard]] Action changed(std::vector<Movement> movements, const Workshop &workshop,
                             const BuildPlan &plan, const By &by);

/// A leak test as it is written down.
struct LeakTestWords {
    std::string build;
    std::string medium;
    std::string pressure; ///< "60 psi"
    std::string held;     ///< "10 min"
    std::string result;   ///< "passed" or "failed"
    std::string second;
    std::string note;
};
/// Problem: no such build, no pressure or time above zero, no result, nobody's name.
[[nodiscard]] Result<LeakTest> leakTestOf(const LeakTestWords &asked, const Workshop &workshop,
                                          const By &by);

/// What speaks against calling a build done that its leak test allows: counts, all 0 where nothing.
/// The shop decides.
struct LeftUndone {
    std::size_t stops = 0;       ///< Findings that stop it.
    std::size_t shortLines = 0;  ///< Lines of the bill that are short.
    std::size_t notReserved = 0; ///< Lines of the bill.
    std::size_t notPicked = 0;   ///< What a hand has to take yet.
    friend bool operator==(const LeftUndone &, const LeftUndone &) = default;
};
/// `lacking` and `picks` as promisesLacking() and pickList() give them for the build.
[[nodiscard]] LeftUndone leftUndone(const WorkedBuild &built, const std::vector<Promise> &lacking,
                                    const PickList &picks);

/// A build that is done, with what it was promised and did not take let go; `test` is written down
/// before it in the same action. Whether it may be done is not asked here.
[[nodiscard]] Action doneAction(const Workshop &workshop, const BuildPlan &plan,
                                const std::optional<LeakTest> &test, const By &by);
/// A leak test written down and, where it has passed, the build done with it. Problem: as
/// leakTestOf(); even so the build is not done.
[[nodiscard]] Result<Action> tested(const LeakTestWords &asked, const Workshop &workshop,
                                    const By &by);
/// The build is open again.
[[nodiscard]] Action openedAgain(const BuildPlan &plan, const By &by);

} // namespace flarestock
