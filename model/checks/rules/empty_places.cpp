// SPDX-License-Identifier: MIT
//
// Stations and runs for which the catalogue has nothing.

#include "model/checks/rules/rules.h"

namespace flarestock::rules {

void emptyPlaces(const BuildUnderCheck &build, Findings &found)
{
    for (const auto &station : build.expansion().stations) {
        if (station.part != nullptr)
            continue;
        const auto &title = station.station->title;
        found.push_back({.severity = Severity::Stop,
                         .matter = Matter::Fit,
                         .about = BuildUnderCheck::capital(title) + ": no part does what is asked",
                         .where = station.id,
                         .text = station.why.empty()
                                     ? "Nothing in the catalogue meets the demand of this station."
                                     : station.why + ".",
                         .source = "the catalogue and the template's demand",
                         .remedy = "Enter a part that does, or change the answer that asks for it.",
                         .mend = {}});
    }
    for (const auto &run : build.expansion().runs) {
        if (run.line != nullptr || run.wanted.empty())
            continue;
        found.push_back({.severity = Severity::Stop,
                         .matter = Matter::Fit,
                         .about = "No line for the run from " + run.from + " to " + run.to,
                         .where = run.id,
                         .text = "The catalogue has no " + run.wanted + " for it.",
                         .source = "the catalogue and the template's demand",
                         .remedy = "Enter such a line, or change the answer that asks for it.",
                         .mend = {}});
    }
}

} // namespace flarestock::rules
