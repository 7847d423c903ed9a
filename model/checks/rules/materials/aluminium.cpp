// SPDX-License-Identifier: MIT
//
// Aluminium where it is easily hurt: a steel nut on an aluminium cone, and fittings of aluminium in
// the brakes. Each is one finding for the build.

#include "model/checks/joint_parts.h"
#include "model/checks/rules/rules.h"
#include "model/checks/torque_card.h"

#include <algorithm>

namespace flarestock::rules {

namespace {

bool isAluminium(const Part *part)
{
    return part != nullptr && part->material.starts_with("aluminium");
}

bool isFlare(Family family)
{
    return family == Family::An || family == Family::Jic || family == Family::Sae45;
}

/// Of a flared pair the nut's side is the female, the cone the male.
bool isSteelOnAluminium(const PartedLink &parted)
{
    if (!isFlare(parted.link->a.family) || !isFlare(parted.link->b.family))
        return false;
    const bool nutIsA = parted.link->a.gender == Gender::Female;
    const Part *nut = nutIsA ? parted.a : parted.b;
    const Part *cone = nutIsA ? parted.b : parted.a;
    return nut != nullptr && isFerrous(nut->material) && isAluminium(cone);
}

/// What a hand chooses, not the makers' own bodies: callipers and cylinders are cast of it.
bool isFitting(Kind kind)
{
    return kind == Kind::HoseEnd || kind == Kind::Adapter || kind == Kind::Tubing ||
           kind == Kind::TubeNut || kind == Kind::TubeSleeve || kind == Kind::Tee ||
           kind == Kind::Bulkhead || kind == Kind::Plug || kind == Kind::Cap ||
           kind == Kind::Manifold;
}

} // namespace

void steelOnAluminium(const BuildUnderCheck &build, Findings &found)
{
    const Expansion &expansion = build.expansion();
    if (build.isBrakes())
        return; // There the aluminium itself is said.
    std::vector<std::string> where;
    std::string at;
    for (const auto &joint : expansion.joints) {
        const auto links = linksOf(joint, expansion);
        if (!std::any_of(links.begin(), links.end(), isSteelOnAluminium))
            continue;
        where.push_back(joint.id);
        at += (at.empty() ? "" : ", ") + joint.at;
    }
    if (where.empty())
        return;
    const bool one = where.size() == 1;
    found.push_back(
        {.severity = Severity::Caution,
         .matter = Matter::Assembly,
         .about = (one ? BuildUnderCheck::capital(at) + ": a steel nut"
                       : std::to_string(where.size()) + " joints turn a steel nut") +
                  " on an aluminium cone",
         .where = one ? where.front() : std::string(),
         .text = "Steel is the harder: tightened as steel it cracks or coins the cone, and dry it "
                 "galls the thread." +
                 (one ? std::string() : " They are: " + at + "."),
         .source = "common practice, no source; torques by the tables of flarestock torque",
         .remedy = "Oil thread and cone, and tighten to the torque for aluminium.",
         .mend = {}});
}

void aluminiumInBrakes(const BuildUnderCheck &build, Findings &found)
{
    if (!build.isBrakes())
        return;
    std::vector<std::string> numbers;
    std::string where;
    for (const auto &line : build.expansion().lines) {
        if (!isFitting(line.part->kind) || !isAluminium(line.part))
            continue;
        numbers.push_back(line.part->number);
        where = line.stations.empty() ? std::string() : line.stations.front();
    }
    if (numbers.empty())
        return;
    found.push_back({.severity = Severity::Caution,
                     .matter = Matter::FluidAndMaterial,
                     .about = "Aluminium fittings in the brakes: " + listed(numbers),
                     .where = numbers.size() == 1 ? where : std::string(),
                     .text = "Their threads and cones yield at a hard stop, and they tire; brakes "
                             "are commonly plumbed in steel.",
                     .source = "common practice, no source; the series' rulebook decides",
                     .remedy = "Use the same fittings of steel.",
                     .mend = {}});
}

} // namespace flarestock::rules
