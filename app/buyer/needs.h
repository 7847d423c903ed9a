// SPDX-License-Identifier: MIT
//
// Needs: what the shop's builds, cars and places want, by day, and what of it is short. Every build
// that is not done is worked out, the earliest first: what it takes is gone for the later ones, as
// if it were promised; their joints are chosen together, so that it takes nothing that a later one
// needs where something else is as good for it. What a build is promised or has got stays its own.
// What is due to be replaced in a car takes its parts by its own day among them. What then lacks is
// met by open orders that come in time, the earliest want first; places that lie below their
// minimum come last.
//
//   auto needs = needsOf(workshop, {.today = "2026-11-28", .by = "2026-12-31"});

#pragma once

#include "app/garage/due_list.h"
#include "app/workshop/workshop.h"
#include "model/joints/sharing/way_order.h"
#include "model/netting/shortage.h"

#include <memory>

namespace flarestock {

/// On its way to the shop.
struct OnOrder {
    std::string part; ///< As the catalogue spells it.
    Decimal quantity; ///< In the part's unit, still to come.
    std::string
        day; ///< When it is to be here; empty: nobody has said, and so it is not counted on.
    std::string order; ///< Its number; of what a supplier has promised to make good, the claim's.
};

/// Who takes which pieces where the builds stand in one order: app/buyer/by_date/taken_in_order.h.
struct TakenInOrder;

/// Builds by another day than they have in the shop, by their ids.
using MovedBuilds = std::map<std::string, std::string, std::less<>>;

struct NeedsAsked {
    std::string today;                    ///< "2026-11-28"
    std::string by = {};                  ///< Only what is wanted by that day; empty: all.
    std::vector<std::string> builds = {}; ///< Only these are told of; empty: all, and the places.
    MovedBuilds moved = {};
    std::vector<OnOrder> onOrder = {}; ///< Besides the shop's own open orders.
    bool otherWays =
        false; ///< Also where the bills of the builds have other ways: it takes longer.
    std::vector<DueLine> due = {}; ///< What is to be done to the cars: dueList().
    /// Worked out before, of the same workshop: where the builds stand in one of these orders by
    /// their days, nothing is searched anew.
    std::vector<std::shared_ptr<const TakenInOrder>> known = {};
};

/// One part for one build, one work on a car, or one place.
struct NeedLine {
    struct Coming {
        std::string order;
        std::string day;
        Decimal quantity;
    };
    const Part *part = nullptr;
    std::string whom; ///< A build's id, a car's, or a place's that is to be filled up.
    bool isPlace = false;
    std::string work = {};      ///< What is to be replaced in the car, in words; else empty.
    std::string day;            ///< Empty where nobody has said one; of a place.
    Decimal need;               ///< In the part's unit; of a place what it lacks to its maximum.
    Decimal own;                ///< Promised to it, or issued.
    Decimal free;               ///< Free to it besides; of a place what another place can give.
    std::vector<Coming> coming; ///< Of open orders, in time.
    std::vector<Coming> late;   ///< What comes of it after that day and is nobody's yet.
    Decimal shortBy;            ///< need - own - free - coming
    std::string orderBy;    ///< The last day to order it of the best offer; empty where nothing is
                            ///< short, nobody sells it, or no day was said.
    bool isPastDue = false; ///< That day is over.
    /// Then: a supplier who still brings it in time, at his price, and the last day to order it
    /// there.
    std::string quicker;
    std::string quickerBy;
    std::vector<std::string> instead; ///< Substitutes of which so much stays free: part numbers.

    /// That day is over, and nobody else brings it in time.
    [[nodiscard]] bool isTooLate() const { return isPastDue && quicker.empty(); }
    /// The last day to order it of whoever brings it in time; else orderBy.
    [[nodiscard]] const std::string &lastDay() const
    {
        return quicker.empty() ? orderBy : quickerBy;
    }
};

/// A joint that is counted on in another way than the bill of its build has it.
struct OtherWay {
    std::string build;
    std::string joint; ///< As a pick names it.
    std::string way;   ///< As a pick says it: "AD-810 + HE-10S".
    std::string bill;  ///< What the bill has; "-" where it leaves the joint open.
};

/// What the joints of all builds come to where they are chosen together, the earliest build first.
struct NeedsTogether {
    std::vector<std::pair<std::string, WayRank>> builds; ///< By day; of each its own joints.
    bool isSearched = false;                             ///< Not each joint had its best alone.
    /// Nothing: no choice of ways is better. Else what that build cannot go below where those
    /// before it stay as they are.
    struct Bound {
        std::string build;
        Criterion of = Criterion::ToBuy;
        std::int64_t atLeast = 0;
        std::int64_t is = 0;
    };
    std::optional<Bound> bound;
    std::vector<OtherWay> otherWays; ///< Where they were asked for.
};

struct ShopNeeds {
    std::vector<NeedLine> lines;    ///< By day, then as the builds stand in the shop, then by bill.
    std::vector<LevelSeen> levels;  ///< Low or out, of what nobody counts.
    std::vector<std::string> notes; ///< What may cover something of it and is not counted on.
    NeedsTogether together;
    std::shared_ptr<const TakenInOrder> taken; ///< What it was worked out from.
};

/// The builds that are not done, by their days, or those that they are moved to; those without a
/// day last, those of one day as they stand in the shop.
[[nodiscard]] std::vector<BuildPlan> buildsByDate(const Workshop &workshop,
                                                  const MovedBuilds &moved);

/// Problem: a build that the shop does not have, or is done; a day that is none; a plan that cannot
/// be worked out.
[[nodiscard]] Result<ShopNeeds> needsOf(const Workshop &workshop, const NeedsAsked &asked);

/// What is short of it, by day and part; what one part lacks for one day is one shortage.
[[nodiscard]] std::vector<Shortage> shortagesIn(const ShopNeeds &needs);
[[nodiscard]] Result<std::vector<Shortage>> shortagesOf(const Workshop &workshop,
                                                        const NeedsAsked &asked);

} // namespace flarestock
