// SPDX-License-Identifier: MIT
//
// The words of the aims, and what waiting would save.

#include "model/buying/plan/purchase_plan.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

constexpr std::array<std::string_view, 3> AimWords = {"cheapest", "earliest", "parcels"};

} // namespace

std::string_view text(PlanAim aim) noexcept
{
    return AimWords[static_cast<std::size_t>(aim)];
}

Result<PlanAim> parsePlanAim(std::string_view text)
{
    const auto found = std::find(AimWords.begin(), AimWords.end(), text);
    if (found == AimWords.end())
        return problem("", quotedStart(text) + " is nothing that a plan can put first",
                       "Write cheapest, earliest or parcels.");
    return static_cast<PlanAim>(found - AimWords.begin());
}

std::optional<LaterSaving> laterSaving(PlanTask task, const PurchasePlan &plan)
{
    const bool hasDays =
        std::any_of(task.shortages.begin(), task.shortages.end(),
                    [](const Shortage &shortage) { return !shortage.day.empty(); });
    if (!hasDays)
        return std::nullopt;
    for (Shortage &shortage : task.shortages)
        shortage.day.clear();
    task.first = PlanAim::Cheapest;
    const PurchasePlan later = planPurchases(task);
    if (later.unplaced.size() != plan.unplaced.size() || later.figures.worth >= plan.figures.worth)
        return std::nullopt;
    return LaterSaving{later.figures.hereBy, plan.figures.worth - later.figures.worth};
}

} // namespace flarestock
