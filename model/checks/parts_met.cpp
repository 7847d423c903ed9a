// SPDX-License-Identifier: MIT

#include "model/checks/parts_met.h"

#include "model/checks/joint_parts.h"

#include <algorithm>

namespace flarestock {

namespace {

void meet(std::vector<Met> &all, const Part *part, const std::string &where)
{
    const bool counts = part != nullptr && part->kind != Kind::Tank && part->kind != Kind::Tool;
    const auto known = [part](const Met &met) { return met.part == part; };
    if (counts && std::none_of(all.begin(), all.end(), known))
        all.push_back({part, where});
}

} // namespace

std::vector<Met> partsMet(const Expansion &expansion, Reach reach)
{
    std::vector<Met> all;
    for (const auto &run : expansion.runs) {
        if (reach == Reach::UnderPressure && run.run->level != Level::Pressure)
            continue;
        for (const auto &id : {run.from, run.to}) {
            const auto *station = expansion.station(id);
            meet(all, station == nullptr ? nullptr : station->part, id);
        }
        meet(all, run.line, run.id);
    }
    for (const auto &joint : expansion.joints) {
        if (reach == Reach::UnderPressure && !isUnderPressure(joint, expansion))
            continue;
        for (const Part *part : partsOf(joint, expansion))
            meet(all, part, joint.id);
    }
    return all;
}

} // namespace flarestock
