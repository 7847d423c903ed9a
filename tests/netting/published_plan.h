// SPDX-License-Identifier: MIT
//
// Plans of textbooks, said shortly: items, what is wanted and what comes, by period.

#pragma once

#include "model/netting/over_time/netting_over_time.h"

namespace flarestock::tests {

/// "135@3 90@5 60@6": the orders of an item by the period in which they are given.
inline std::string releases(const NettedPlan &plan, std::string_view id)
{
    std::string said;
    for (const PlannedOrder &order : plan.item(id)->orders)
        said += (said.empty() ? "" : " ") + order.quantity.stripped().text() + "@" +
                std::to_string(order.release);
    return said;
}

/// "117 117 227": what an item comes to at the end of periods 1 to `last`.
inline std::string balances(const NettedPlan &plan, std::string_view id, DayNumber last)
{
    std::string said;
    for (DayNumber period = 1; period <= last; ++period)
        said += (said.empty() ? "" : " ") + plan.item(id)->balanceAt(period).stripped().text();
    return said;
}

/// Lot for lot.
inline NettedItem item(std::string id, DayNumber lead, int onHand = 0,
                       std::vector<NettedItem::Made> madeOf = {})
{
    NettedItem made;
    made.id = std::move(id);
    made.lead = lead;
    made.onHand = onHand;
    made.madeOf = std::move(madeOf);
    return made;
}

inline NettedItem inLots(NettedItem of, int lot)
{
    of.lot = lot;
    return of;
}

/// So many in period 1, 2, 3 …
inline std::vector<WantedItem> everyPeriod(const std::string &id, const std::vector<int> &wanted)
{
    std::vector<WantedItem> all;
    for (std::size_t i = 0; i < wanted.size(); ++i)
        if (wanted[i] > 0)
            all.push_back({id, static_cast<DayNumber>(i + 1), wanted[i], "sales"});
    return all;
}

} // namespace flarestock::tests
