// SPDX-License-Identifier: MIT
//
// Flow doubts: what the figures of flow rest on that nobody has entered, and where theory itself is
// uncertain. Each is said once for the build.

#include "model/checks/rules/flow/flow_judgement.h"
#include "model/checks/rules/rules.h"
#include "model/fluids/line/dash_bore.h"

#include <set>

namespace flarestock::rules {

namespace {

template <class Words>
std::string listed(const Words &words, std::string_view between)
{
    std::string all;
    for (const auto &word : words)
        all += (all.empty() ? "" : std::string(between)) + word;
    return all;
}

void boresAssumed(const SystemFlow &flow, Findings &found)
{
    std::set<std::string> parts;
    for (const auto &run : flow.runs)
        parts.insert(run.line.assumed.begin(), run.line.assumed.end());
    if (parts.empty())
        return;
    found.push_back({.severity = Severity::Note,
                     .matter = Matter::Flow,
                     .about = "Bores are assumed of " + listed(parts, ", "),
                     .where = {},
                     .text = "The dash size is no bore: that of a tube of that size was taken, and "
                             "a hose that counts its bore loses less than half as much.",
                     .source = std::string(assumedBore(6, DashNumbering::AsTube)->source),
                     .remedy = "Measure the bores and enter them.",
                     .mend = {}});
}

void notKnown(const SystemFlow &flow, Findings &found)
{
    if (flow.unknown.empty())
        return;
    found.push_back({.severity = Severity::Note,
                     .matter = Matter::Flow,
                     .about = "Flow could not be judged in full",
                     .where = {},
                     .text = "Not known: " + listed(flow.unknown, "; ") +
                             ". What is not known was counted as nothing.",
                     .source = "the catalogue as entered, and the liquids that are known",
                     .remedy = "Enter what the maker publishes or what was measured.",
                     .mend = {}});
}

void notJudged(const BuildUnderCheck &build, Findings &found)
{
    const auto &why = build.flow().notJudged;
    if (why.empty() || build.expansion().runs.empty())
        return;
    found.push_back({.severity = Severity::Note,
                     .matter = Matter::Flow,
                     .about = "Flow could not be judged",
                     .where = {},
                     .text = BuildUnderCheck::capital(why) +
                             ", so that velocities and losses of its lines are not known.",
                     .source = "the template and the catalogue as entered",
                     .remedy = "Size the lines by the maker's word.",
                     .mend = {}});
}

/// At a carburettor's pressure what an open regulator takes may matter.
void wideOpenAssumed(const BuildUnderCheck &build, Findings &found)
{
    if (systemOf(build) != FuelSystem::Carburettor)
        return;
    for (const auto &delivery : build.flow().deliveries) {
        if (!delivery.bypass || delivery.bypass->ownPa || isReturnTold(build, delivery))
            continue;
        found.push_back({.severity = Severity::Note,
                         .matter = Matter::Flow,
                         .about = capitalNameOf(build, delivery.to) +
                                  ": what it takes wide open is assumed to be nothing",
                         .where = delivery.to,
                         .text = "Its return keeps up " + kilopascals(delivery.bypass->floorPa) +
                                 " at " + litresPerHour(delivery.back->flowM3S) +
                                 "; what the open regulator takes comes on top.",
                         .source = "the catalogue as entered",
                         .remedy = "Enter what its maker says that it takes wide open.",
                         .mend = {}});
    }
}

void uncertainRegimes(const BuildUnderCheck &build, Findings &found)
{
    std::vector<const RunFlow *> runs;
    for (const auto &run : build.flow().runs)
        if (run.boreM > 0 && run.regime == Regime::Uncertain)
            runs.push_back(&run);
    if (runs.empty())
        return;
    std::vector<std::string> said;
    said.reserve(runs.size());
    for (const auto *run : runs)
        said.push_back(run->run + " (Re " + withDecimals(run->reynolds, 0) + ")");
    found.push_back(
        {.severity = Severity::Note,
         .matter = Matter::Flow,
         .about = runs.size() == 1
                      ? "One line runs between laminar and turbulent"
                      : std::to_string(runs.size()) + " lines run between laminar and turbulent",
         .where = runs.size() == 1 ? runs.front()->run : std::string(),
         .text = "Between Re 2040 and 4000 friction may be either: " + listed(said, ", ") +
                 ". The larger, turbulent figure was taken.",
         .source = "textbooks put the end of laminar flow at Re 2000 to 2300, and turbulence at "
                   "4000",
         .remedy = "Nothing need be done where the line has pressure to spare.",
         .mend = {}});
}

} // namespace

void flowDoubts(const BuildUnderCheck &build, Findings &found)
{
    boresAssumed(build.flow(), found);
    notKnown(build.flow(), found);
    notJudged(build, found);
    wideOpenAssumed(build, found);
    uncertainRegimes(build, found);
}

} // namespace flarestock::rules
