// SPDX-License-Identifier: MIT

#include "app/buyer/by_date/taking_by_date.h"

#include <algorithm>

namespace flarestock {

TakingByDate::TakingByDate(const Workshop &workshop, const Bars &bars)
    : m_workshop(workshop), m_ledger(workshop.ledger), m_shelf(workshop, bars)
{
}

Result<void> TakingByDate::take(const BuildPlan &plan, const JointSearch &search)
{
    const Shelf &shelf = m_shelf.of(plan, m_ledger);
    auto worked = workBuild(m_workshop, plan, shelf, search);
    if (!worked) {
        Problem wrong = worked.error();
        wrong.thing = "build " + plan.id + ": " + wrong.thing;
        return tl::unexpected(std::move(wrong));
    }
    m_builds.push_back(std::make_unique<Taken>(Taken{plan, std::move(*worked)}));
    for (const PricedLine &priced : m_builds.back()->worked.bill.lines)
        addLine(plan, priced, shelf);
    return {};
}

void TakingByDate::addLine(const BuildPlan &plan, const PricedLine &priced, const Shelf &shelf)
{
    const Part &part = *priced.line->part;
    NeedLine line;
    line.part = &part;
    line.whom = plan.id;
    line.day = plan.by;
    line.need = priced.line->need.amount;
    line.shortBy = priced.shortBy;
    const Claim claim = m_ledger.claim({part.number, plan.id});
    const std::int64_t has = claim.outstanding() + std::max<std::int64_t>(0, claim.issued);
    line.own = std::min(priced.free, Quantity::ofSmallest(has, part.unit).amount);
    line.free = priced.free - line.own;
    m_lines.push_back(std::move(line));
    const auto stock = shelf.find(part.number);
    const bool isSeenOnly = stock != shelf.end() && stock->second.level.has_value();
    if (!priced.line->consumed || isSeenOnly)
        return; // It comes back, or nobody counts it: who comes later has it, too.
    const auto taken = Quantity{priced.free, part.unit}.smallest();
    if (!taken || *taken <= claim.promised)
        return;
    m_ledger.carryOver(ClaimKey{part.number, plan.id}, Claim{*taken, claim.issued});
    m_shelf.changed(part);
}

} // namespace flarestock
