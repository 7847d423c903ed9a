// SPDX-License-Identifier: MIT
//
// Planned: a purchase plan of a shop, with its own offers and rates, and its orders as drafts.

#pragma once

#include "app/workshop/workshop.h"
#include "model/buying/order.h"
#include "model/buying/plan/purchase_plan.h"

namespace flarestock {

/// What is asked of a plan. `today` and the days of the shortages are dates.
struct PlanWanted {
    std::vector<Shortage> shortages;
    std::string today;
    PlanAim first = PlanAim::Cheapest;
};

struct Planned {
    PurchasePlan plan;
    std::vector<PurchasePlan> others; ///< By the other aims, to hold this one against.
    std::optional<LaterSaving> later;
};

/// The rates that the shop wrote down. Problem: rates.csv does not read.
[[nodiscard]] Result<Rates> ratesOf(const ShopFile &file);

/// For how many of the shortages there is nothing to choose from: nobody sells it, or in a currency
/// of which no rate is known. So no plan orders them.
[[nodiscard]] int onNoSlip(const Workshop &workshop, const Rates &rates, const PlanWanted &wanted);
/// The plan alone. Points into the catalogue of the workshop, which must outlive it.
[[nodiscard]] PurchasePlan plannedFor(const Workshop &workshop, const Rates &rates,
                                      const PlanWanted &wanted);
/// With what the other aims would come to, and what waiting would save. Points into the catalogue
/// of the workshop, which must outlive it.
[[nodiscard]] Planned plannedAndCompared(const Workshop &workshop, const Rates &rates,
                                         const PlanWanted &wanted);

/// Its orders as drafts of that day, without ids, numbers and hands. A part stands in one line of
/// an order: where a supplier's packs and single pieces go together, the further ones stand in a
/// further draft, whose freight is nothing.
[[nodiscard]] std::vector<Order> draftsOf(const PurchasePlan &plan, const Catalogue &catalogue,
                                          const std::string &day);

} // namespace flarestock
