// SPDX-License-Identifier: MIT

#include "app/buyer/by_date/taken_in_order.h"

#include <algorithm>

namespace flarestock {

Result<std::shared_ptr<const TakenInOrder>>
TakenInOrder::of(const Workshop &workshop, Bars bars, const std::vector<BuildPlan> &plans,
                 const std::vector<std::shared_ptr<const TakenInOrder>> &known)
{
    auto taken = std::make_shared<TakenInOrder>();
    taken->workshop = &workshop;
    taken->bars = std::move(bars);
    for (const BuildPlan &plan : plans)
        taken->order.push_back(plan.id);
    const auto same = std::find_if(known.begin(), known.end(), [&taken](const auto &one) {
        return one->workshop == taken->workshop && one->order == taken->order &&
               one->bars == taken->bars;
    });
    if (same != known.end())
        return *same;
    auto by = jointsByDate(workshop, taken->bars, plans);
    if (!by)
        return tl::unexpected(by.error());
    taken->by = std::move(*by);
    return taken;
}

std::vector<NeedLine> TakenInOrder::lines(const std::vector<BuildPlan> &plans) const
{
    std::vector<NeedLine> lines = by.taking->lines();
    for (NeedLine &line : lines) {
        const auto plan = std::find_if(plans.begin(), plans.end(), [&line](const BuildPlan &one) {
            return one.id == line.whom;
        });
        if (plan != plans.end())
            line.day = plan->by;
    }
    return lines;
}

} // namespace flarestock
