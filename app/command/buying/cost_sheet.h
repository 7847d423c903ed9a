// SPDX-License-Identifier: MIT
//
// Cost sheet: what `flarestock cost` says, for people and as documents.

#pragma once

#include "app/buyer/costing/build_cost.h"
#include "app/buyer/costing/cost_history.h"
#include "app/command/command.h"
#include "model/buying/late_cost.h"

namespace flarestock {

[[nodiscard]] std::string lateSheet(const LateCost &cost, const Workshop &workshop);
[[nodiscard]] QJsonObject lateDocument(const LateCost &cost, const Workshop &workshop);

[[nodiscard]] std::string historySheet(const std::vector<CostStep> &steps, const Part &part,
                                       const Workshop &workshop);
[[nodiscard]] QJsonObject historyDocument(const std::vector<CostStep> &steps, const Part &part,
                                          const Workshop &workshop);

[[nodiscard]] std::string buildCostSheet(const BuildCost &cost, const BuildPlan &plan,
                                         const Workshop &workshop);
[[nodiscard]] QJsonObject buildCostDocument(const BuildCost &cost, const BuildPlan &plan,
                                            const Workshop &workshop);

} // namespace flarestock
