// SPDX-License-Identifier: MIT
//
// Picks that something else would now better. A pick stays; this only says so.

#include "model/checks/rules/rules.h"

namespace flarestock::rules {

namespace {

Finding outdone(const std::string &where, const std::string &what, const std::string &now,
                const std::string &better)
{
    return {.severity = Severity::Note,
            .matter = Matter::Stock,
            .about = BuildUnderCheck::capital(what) + ": you picked " + now + ", " + better +
                     " would now be taken",
            .where = where,
            .text = "The pick stays until you let go of it.",
            .source = "your pick, against the answers and the shelf as they are now",
            .remedy = "Take " + better + ", or leave it.",
            .mend = {{where, better}}};
}

} // namespace

void outdonePicks(const BuildUnderCheck &build, Findings &found)
{
    const auto &expansion = build.expansion();
    for (const auto &station : expansion.stations) {
        if (station.picked && station.part != nullptr && station.better != nullptr)
            found.push_back(outdone(station.id, station.station->title, station.part->number,
                                    station.better->number));
    }
    for (const auto &run : expansion.runs) {
        if (run.picked && run.line != nullptr && run.better != nullptr)
            found.push_back(
                outdone(run.id, "the line " + run.id, run.line->number, run.better->number));
    }
    for (const auto &joint : expansion.joints) {
        // Where the pick does not fit at all, joint_verdicts.cpp says so and what would.
        if (joint.outdone && joint.way && fits(joint.way->verdict()) && !joint.others.empty())
            found.push_back(
                outdone(joint.id, joint.at, joint.way->key(), joint.others.front().key()));
    }
}

} // namespace flarestock::rules
