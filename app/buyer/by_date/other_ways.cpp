// SPDX-License-Identifier: MIT

#include "app/buyer/by_date/other_ways.h"

#include <algorithm>

namespace flarestock {

namespace {

std::string keyOf(const PlacedJoint *joint)
{
    return joint && joint->way ? joint->way->key() : std::string("-");
}

} // namespace

std::vector<OtherWay> otherWays(const Workshop &workshop, const TakingByDate &taking,
                                const std::vector<std::string> &builds)
{
    std::vector<OtherWay> others;
    ShelfInTurn shelf(workshop, workshop.bars);
    for (const auto &taken : taking.builds()) {
        const BuildPlan &plan = *workshop.build(taken->plan.id);
        if (!builds.empty() && std::find(builds.begin(), builds.end(), plan.id) == builds.end())
            continue;
        const auto bill = workBuild(workshop, plan, shelf.of(plan, workshop.ledger),
                                    JointSearch{std::chrono::seconds(1), {}});
        if (!bill)
            continue; // It could be worked out a moment ago by another day only: nothing to
                      // compare.
        for (const PlacedJoint &joint : taken->worked.expansion.joints) {
            const std::string way = keyOf(&joint);
            const std::string said = keyOf(bill->expansion.joint(joint.id));
            if (joint.way && way != said)
                others.push_back({plan.id, joint.id, way, said});
        }
    }
    return others;
}

} // namespace flarestock
