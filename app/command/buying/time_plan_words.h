// SPDX-License-Identifier: MIT
//
// Time plan in words: a plan over periods or days as a JSON document and as tables.

#pragma once

#include "app/command/command.h"
#include "model/netting/over_time/netting_over_time.h"

namespace flarestock {

/// How the days of a plan are said.
struct SaidPlan {
    const NettedPlan &plan;
    DayNumber first = 1;
    bool isCalendar = false;

    [[nodiscard]] std::string day(DayNumber number) const; ///< "4", "2026-12-12"
    /// Of an item: those on which something happens; of periods each, up to the last of the plan.
    [[nodiscard]] std::vector<NettedDay> days(const NettedPlan::Item &item) const;
};

[[nodiscard]] QJsonObject planDocument(const SaidPlan &said);
/// Of each item what happens to it, what has to be ordered, and which needs are short.
[[nodiscard]] std::string planTables(const SaidPlan &said);
/// Whether a need is short, or an order past due.
[[nodiscard]] bool isShort(const NettedPlan &plan);

} // namespace flarestock
