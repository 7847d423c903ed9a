// SPDX-License-Identifier: MIT
//
// Bonding: lines of which nobody says that they conduct, in a fuel that keeps its charge. A filter
// charges the fuel, and a hose that does not conduct lets the charge jump; a fuel that conducts
// carries it away.

#include "model/checks/rules/rules.h"
#include "model/fluids/liquids/conductivity.h"

#include <algorithm>
#include <cmath>

namespace flarestock::rules {

namespace {

/// The lines that are not entered as conductive, and the worse ones among them.
struct Insulating {
    std::vector<std::string> lines; ///< Part numbers, each once.
    std::string behindFilter;       ///< Run id of the first right behind a filter; may be empty.
    std::string ofPtfe;             ///< Run id of the first with a PTFE liner; may be empty.
};

Insulating insulating(const BuildUnderCheck &build)
{
    Insulating said;
    for (const auto &run : build.expansion().runs) {
        const auto *hose = run.line == nullptr ? nullptr : run.line->as<HoseFacts>();
        if (hose == nullptr || hose->conductive)
            continue;
        if (std::find(said.lines.begin(), said.lines.end(), run.line->number) == said.lines.end())
            said.lines.push_back(run.line->number);
        const auto *from = build.expansion().station(run.from);
        if (said.behindFilter.empty() && from != nullptr && from->part != nullptr &&
            from->part->kind == Kind::Filter)
            said.behindFilter = run.id;
        if (said.ofPtfe.empty() && hose->liner == "PTFE")
            said.ofPtfe = run.id;
    }
    return said;
}

} // namespace

void bonding(const BuildUnderCheck &build, Findings &found)
{
    const auto fluid = build.expansion().fluid;
    const auto conductivity = fluid ? conductivityOf(*fluid) : std::nullopt;
    if (!conductivity || conductivity->charge != ChargeKeeping::Accumulates)
        return;
    const auto lines = insulating(build);
    if (lines.lines.empty())
        return;
    const bool grave = !lines.behindFilter.empty() || !lines.ofPtfe.empty();
    const auto picosiemens = std::lround(conductivity->siemensPerM * 1e12);
    std::string why = std::string(text(*fluid)) + " conducts about " + std::to_string(picosiemens) +
                      " pS/m and keeps the charge that flow and filters give it.";
    if (!lines.behindFilter.empty())
        why += " Right behind a filter (run " + lines.behindFilter + ") the charge is greatest.";
    if (!lines.ofPtfe.empty())
        why +=
            " A PTFE liner without a conductive bore is pierced by it (run " + lines.ofPtfe + ").";
    found.push_back(
        {.severity = grave ? Severity::Caution : Severity::Note,
         .matter = Matter::FluidAndMaterial,
         .about = "Hose that is not said to conduct: " + listed(lines.lines),
         .where = !lines.behindFilter.empty() ? lines.behindFilter : lines.ofPtfe,
         .text = BuildUnderCheck::capital(std::move(why)),
         .source = "NFPA 77: below 50 pS/m a liquid keeps its charge, and hose behind a filter "
                   "should conduct; PTFE with a conductive bore: common practice, no source",
         .remedy =
             "Use hose that its maker calls conductive, or hard tube, and bond all metal ends, "
             "filter, pump and tank to the car.",
         .mend = {}});
}

} // namespace flarestock::rules
