// SPDX-License-Identifier: MIT

#include "app/desk/plot/cost/all_builds.h"

#include "app/buyer/by_date/taken_in_order.h"
#include "app/desk/words/spoken.h"

#include <algorithm>

namespace flarestock {

namespace {

CostedBuild summedUp(const BuildPlan &plan, const Expansion &expansion, const PricedBill &bill)
{
    CostedBuild cost;
    cost.system = expansion.system;
    cost.bar.name = said(plan.title.empty() ? expansion.title : plan.title);
    cost.bar.opens = QString(QStringLiteral("build|") + said(plan.id));
    for (const PricedLine &line : bill.lines) {
        const CostOfLine one = costOf(line);
        cost.bar.here += one.here;
        cost.bar.toBuy += one.toBuy;
        ++cost.bar.lines;
        cost.bar.unpriced += line.cost ? 0 : 1;
    }
    return cost;
}

bool isEarlier(const BuildPlan &a, const BuildPlan &b)
{
    return std::pair(a.by.empty(), a.by) < std::pair(b.by.empty(), b.by);
}

/// All that is not done, by day; the one on the desk as it is there.
std::vector<BuildPlan> plansOf(const Workshop &workshop, const BuildPlan &onDesk)
{
    std::vector<BuildPlan> plans = buildsByDate(workshop, {});
    const auto same = std::find_if(plans.begin(), plans.end(),
                                   [&onDesk](const BuildPlan &one) { return one.id == onDesk.id; });
    if (same == plans.end())
        plans.push_back(onDesk);
    else
        *same = onDesk;
    std::stable_sort(plans.begin(), plans.end(), isEarlier);
    return plans;
}

Result<std::shared_ptr<const TakenInOrder>> taken(const Workshop &workshop,
                                                  const std::vector<BuildPlan> &plans)
{
    std::vector<Due> due;
    due.reserve(plans.size());
    for (const BuildPlan &plan : plans)
        due.push_back({plan.id, plan.car, plan.by});
    return TakenInOrder::of(workshop, barsOf(workshop.notes.lots, due), plans, {});
}

} // namespace

std::vector<CostedBuild> costOfBuilds(const WorkedOut &onDesk, const BuildPlan &plan)
{
    std::vector<CostedBuild> costs;
    if (onDesk.workshop == nullptr)
        return costs;
    const Workshop &workshop = *onDesk.workshop;
    std::vector<BuildPlan> plans = plansOf(workshop, plan);
    auto all = taken(workshop, plans);
    if (!all) { // One that cannot be worked out is no reason to say nothing of the others.
        std::erase_if(plans,
                      [&workshop](const BuildPlan &one) { return !workBuild(workshop, one); });
        all = taken(workshop, plans);
    }
    if (!all)
        return costs;
    for (const auto &one : (*all)->by.taking->builds())
        costs.push_back(summedUp(one->plan, one->worked.expansion, one->worked.bill));
    return costs;
}

} // namespace flarestock
