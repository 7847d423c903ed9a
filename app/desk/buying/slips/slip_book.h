// SPDX-License-Identifier: MIT
//
// Slip book: what of whom is best ordered for all that is short, by each of the three aims, worked
// out once from a shop; and its orders as drafts, made by the code that the commands draft by.

#pragma once

#include "app/buyer/planned.h"
#include "app/desk/shop/shop_on_desk.h"
#include "app/stockroom/deed.h"

#include <array>

namespace flarestock {

struct SlipBook {
    std::shared_ptr<const Workshop> workshop; ///< The plans point into its catalogue.
    std::string today;
    std::vector<Shortage> shortages;
    std::array<PurchasePlan, 3> plans; ///< By PlanAim.
    std::optional<LaterSaving> later;  ///< What waiting would save of the cheapest.
    std::string problem;               ///< Why there is no plan; empty where there is.

    /// `file`: the shop's, for its rates and what is due to its cars. Takes up to some seconds.
    [[nodiscard]] static std::shared_ptr<const SlipBook>
    of(const std::shared_ptr<const Workshop> &workshop, const ShopFile &file,
       const std::string &today);
    /// Why there is none.
    [[nodiscard]] static std::shared_ptr<const SlipBook>
    none(const std::shared_ptr<const Workshop> &workshop, const Problem &problem);

    [[nodiscard]] const PurchasePlan &plan(PlanAim aim) const
    {
        return plans.at(static_cast<std::size_t>(aim));
    }
    /// The drafts of one of the plan's orders.
    [[nodiscard]] std::vector<Order> drafts(PlanAim aim, const ProposedOrder &only) const;
};

/// Drafts of a book's plan.
struct Drafting {
    std::shared_ptr<const SlipBook> book;
    std::vector<Order> drafts;
};
/// The action that opens them. Problem: by now something else is short than they were planned for.
[[nodiscard]] Result<Action> drafted(const Drafting &drafting, const ShopFile &file,
                                     const Workshop &now, const By &by);

} // namespace flarestock
