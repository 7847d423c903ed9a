// SPDX-License-Identifier: MIT

#include "model/checks/joint_parts.h"

#include <algorithm>

namespace flarestock {

namespace {

/// What lies behind the last piece; nullptr for a plug and for what is not there.
const Part *behind(const PlacedJoint &joint, const Expansion &expansion)
{
    const PlacedRun *run = expansion.run(joint.run);
    if (run == nullptr)
        return nullptr;
    if (run->line != nullptr || run->joints.size() != 1)
        return run->line;
    const auto *other = expansion.station(run->from == joint.station ? run->to : run->from);
    return other == nullptr ? nullptr : other->part;
}

} // namespace

std::vector<const Part *> partsOf(const PlacedJoint &joint, const Expansion &expansion)
{
    const auto *station = expansion.station(joint.station);
    std::vector<const Part *> parts{station == nullptr ? nullptr : station->part};
    if (!joint.way)
        return parts;
    for (const Piece &piece : joint.way->pieces)
        parts.push_back(piece.part);
    if (joint.way->links.size() > joint.way->pieces.size())
        parts.push_back(behind(joint, expansion));
    return parts;
}

std::vector<PartedLink> linksOf(const PlacedJoint &joint, const Expansion &expansion)
{
    std::vector<PartedLink> links;
    if (!joint.way)
        return links;
    const auto parts = partsOf(joint, expansion);
    for (std::size_t i = 0; i < joint.way->links.size() && i + 1 < parts.size(); ++i)
        links.push_back({&joint.way->links[i], parts[i], parts[i + 1]});
    return links;
}

bool isUnderPressure(const PlacedJoint &joint, const Expansion &expansion)
{
    if (const PlacedRun *run = expansion.run(joint.run))
        return run->run->level == Level::Pressure;
    return std::any_of(expansion.runs.begin(), expansion.runs.end(), [&](const PlacedRun &run) {
        return run.run->level == Level::Pressure &&
               (run.to == joint.station || run.from == joint.station);
    });
}

} // namespace flarestock
