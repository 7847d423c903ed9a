// SPDX-License-Identifier: MIT

#include "model/fluids/filter/clean_loss.h"

#include "model/fluids/bounds.h"
#include "model/fluids/measure.h"
#include "model/fluids/table_cells.h"

#include <array>
#include <cassert>
#include <cmath>
#include <utility>

namespace flarestock {

namespace embedded {
extern const std::string_view filterLossesCsv; // model/fluids/data/filter_losses.csv
}

namespace {

std::optional<Problem> impossible(const CleanLoss &filter)
{
    if (filter.points.empty())
        return Problem{"filter", "has no published loss", "Enter the loss at its rated flow."};
    CleanLoss::Point before;
    for (const auto &point : filter.points) {
        if (auto wrong = firstImpossible({{"flow", point.flowM3S}, {"loss", point.lossPa}}))
            return wrong;
        if (point.flowM3S <= before.flowM3S || point.lossPa <= before.lossPa)
            return Problem{"filter", "loses no more at more flow",
                           "Enter the points of its curve by rising flow, each once."};
        before = point;
    }
    return filter.viscosityPaS ? firstImpossible({{"viscosity", *filter.viscosityPaS}})
                               : std::nullopt;
}

std::array<LossBudget, 2> readBudgets()
{
    const auto rows = rowsOfTable(embedded::filterLossesCsv);
    assert(rows.size() == 3 && rows[1][0] == "suction" && rows[2][0] == "pressure");
    std::array<LossBudget, 2> budgets;
    for (std::size_t at = 0; at < budgets.size(); ++at) {
        const auto &row = rows[at + 1];
        budgets[at] = {Measure::parse(row[1], Dimension::Count).value().si * 1000, row[2], row[3]};
    }
    return budgets;
}

} // namespace

const LossBudget &cleanLossBudget(FilterPlace place)
{
    static const auto Budgets = readBudgets();
    return Budgets[static_cast<std::size_t>(place)];
}

Result<CleanLossAt> cleanLossAt(const CleanLoss &filter, double flowM3S, double viscosityPaS)
{
    if (auto wrong = impossible(filter))
        return tl::unexpected<Problem>(*std::move(wrong));
    if (auto wrong = firstImpossible(
            {{"flow", flowM3S, Allowed::NothingOrMore}, {"viscosity", viscosityPaS}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    constexpr double LitreHourM3S = 1 / 3.6e6;
    const double last = filter.points.back().flowM3S;
    if (flowM3S > last)
        if (auto wrong =
                beyond({"flow", "L/h", 0, last / LitreHourM3S}, flowM3S / LitreHourM3S, "filter"))
            return tl::unexpected<Problem>(*std::move(wrong));
    CleanLoss::Point before;
    CleanLoss::Point after = filter.points.front();
    for (std::size_t at = 1; at < filter.points.size() && after.flowM3S < flowM3S; ++at) {
        before = after;
        after = filter.points[at];
    }
    const double part = (flowM3S - before.flowM3S) / (after.flowM3S - before.flowM3S);
    CleanLossAt loss;
    loss.pascal = std::lerp(before.lossPa, after.lossPa, part);
    loss.fromRatedPoint = filter.points.size() == 1;
    loss.viscosityScaled = filter.viscosityPaS.has_value();
    if (filter.viscosityPaS)
        loss.pascal *= viscosityPaS / *filter.viscosityPaS;
    return loss;
}

} // namespace flarestock
