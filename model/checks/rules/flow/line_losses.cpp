// SPDX-License-Identifier: MIT
//
// Line losses: what the lines take of the pressure, before and behind a regulator, against what
// they may.

#include "model/checks/rules/flow/flow_judgement.h"
#include "model/checks/rules/rules.h"

namespace flarestock::rules {

namespace {

constexpr auto LossSource =
    "friction by Darcy-Weisbach and Colebrook-White, ends by textbook coefficients (half of it "
    "either way); what a line may take is ";

/// The run of the section that takes most.
std::string heaviestRun(const BuildUnderCheck &build, const LineSection &section)
{
    const RunFlow *heaviest = nullptr;
    for (const auto &id : section.runs) {
        const auto *run = build.flow().run(id);
        if (run != nullptr && (heaviest == nullptr || run->loss.dropPa > heaviest->loss.dropPa))
            heaviest = run;
    }
    return heaviest == nullptr ? section.runs.front() : heaviest->run;
}

/// The filter that takes more than half of it, and so is its cause; nothing else.
std::optional<FilterShare> filterAtFault(const BuildUnderCheck &build, const LineSection &section)
{
    const auto filters = filtersIn(build, section);
    if (filters.empty() || filters.front().dropPa < section.dropPa / 2)
        return std::nullopt;
    return filters.front();
}

/// What does not come through because of it, where its pump is short and is not told itself.
std::string whatComes(const Delivery &delivery)
{
    if (delivery.reach == CurveReach::BeyondItsEnd)
        return " Against it the pump works beyond the end of its curve.";
    return " Against it the pump gives " + litresPerHour(delivery.working->flowM3S) + " where " +
           litresPerHour(delivery.wantedM3S) + " is wanted.";
}

Finding takesTooMuch(const BuildUnderCheck &build, const Delivery &delivery,
                     const LossBudget &budget)
{
    const auto &section = *budget.section;
    const bool lacks = isShort(delivery) || delivery.reach == CurveReach::BeyondItsEnd;
    const bool starves = lacks && &section == &delivery.line && isLineAtFault(build, delivery);
    const auto filter = filterAtFault(build, section);
    const bool either = section.dropLeastPa <= budget.bounds.cautionPa;
    return {.severity = budget.isStop() || starves ? Severity::Stop : Severity::Caution,
            .matter = Matter::Flow,
            .about = "The line " + wayOf(build, section) + " takes " + kilopascals(section.dropPa),
            .where = filter ? filter->filter->id : heaviestRun(build, section),
            .text = "At " + litresPerHour(section.flowM3S) + " it may take " +
                    kilopascals(budget.bounds.cautionPa) + " of " + kilopascals(*delivery.setPa) +
                    (either ? "; where it runs laminar it takes " +
                                  kilopascals(section.dropLeastPa) + "."
                            : ".") +
                    (filter ? " Of it " + nameOf(build, filter->filter->id) + " takes " +
                                  kilopascals(filter->dropPa) + ", clean."
                            : std::string()) +
                    (starves ? whatComes(delivery) : std::string()),
            .source = LossSource + std::string(budget.bounds.source),
            .remedy = filter ? "Use a filter with more area."
                             : "Use a wider or shorter line and fewer bends in it.",
            .mend = {}};
}

} // namespace

void lineLosses(const BuildUnderCheck &build, Findings &found)
{
    for (const auto &delivery : build.flow().deliveries)
        for (const auto &budget : lossBudgets(build, delivery))
            if (budget.isExceeded())
                found.push_back(takesTooMuch(build, delivery, budget));
}

} // namespace flarestock::rules
