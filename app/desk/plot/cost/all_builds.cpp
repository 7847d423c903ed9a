// SPDX-License-Identifier: MIT

#include "app/desk/plot/cost/all_builds.h"

#include "app/desk/words/spoken.h"
#include "app/workshop/worked_build.h"

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

} // namespace

std::vector<CostedBuild> costOfBuilds(const WorkedOut &onDesk, const BuildPlan &plan)
{
    std::vector<CostedBuild> costs;
    if (onDesk.workshop == nullptr)
        return costs;
    for (const BuildPlan &other : onDesk.workshop->builds) {
        if (other.id == plan.id) {
            costs.push_back(summedUp(plan, *onDesk.expansion, *onDesk.bill));
            continue;
        }
        const Shelf shelf = onDesk.workshop->shelfFor(other);
        if (const auto built = workBuild(*onDesk.workshop, other, shelf))
            costs.push_back(summedUp(other, built->expansion, built->bill));
    }
    return costs;
}

} // namespace flarestock
