// SPDX-License-Identifier: MIT

#include "model/checks/torque_card.h"

#include "model/checks/joint_parts.h"

namespace flarestock {

namespace {

/// Whether something is turned to close it.
bool isScrewed(const Link &link)
{
    const auto turned = [](const Port &port) {
        switch (port.family) {
        case Family::Hose:
        case Family::Tube:
        case Family::Barb:
        case Family::QuickConnect:
        case Family::Weld:
            return false;
        default:
            return true;
        }
    };
    return turned(link.a) && turned(link.b);
}

/// The female side is turned where it is a nut over a cone or face; else the male stud or nut.
bool isNutFamily(Family family)
{
    switch (family) {
    case Family::An:
    case Family::Jic:
    case Family::Sae45:
    case Family::Orfs:
    case Family::Bspp60:
    case Family::Jis60:
    case Family::Jis30:
    case Family::Din24L:
    case Family::Din24S:
        return true;
    default:
        return false;
    }
}

bool turnsA(const Link &link)
{
    const auto turning =
        isNutFamily(link.a.family) && isNutFamily(link.b.family) ? Gender::Female : Gender::Male;
    return link.a.gender == turning;
}

/// The nut of a hard tube is made of one thing and holds another: the tube decides.
const Part *tubeBehind(const PlacedJoint &joint, const Expansion &expansion)
{
    const auto *run = expansion.run(joint.run);
    return run == nullptr ? nullptr : run->line;
}

NutOn heldBy(const Part *nut, const PlacedJoint &joint, const Expansion &expansion)
{
    if (nut == nullptr || nut->kind == Kind::HoseEnd)
        return nut == nullptr ? NutOn::Fitting : NutOn::Hose;
    if (nut->kind != Kind::TubeNut)
        return NutOn::Fitting;
    const Part *tube = tubeBehind(joint, expansion);
    if (tube == nullptr)
        return NutOn::OtherTube;
    if (isFerrous(tube->material))
        return NutOn::SteelTube;
    return tube->material.starts_with("aluminium") ? NutOn::AluminiumTube : NutOn::OtherTube;
}

TorqueLine lineOf(const PartedLink &parted, const PlacedJoint &joint, const Expansion &expansion)
{
    const bool turnedIsA = turnsA(*parted.link);
    const Part *turned = turnedIsA ? parted.a : parted.b;
    const Part *other = turnedIsA ? parted.b : parted.a;
    TorqueLine line;
    line.joint = joint.id;
    line.at = joint.at;
    line.asked.port = turnedIsA ? parted.link->a : parted.link->b;
    line.into = turnedIsA ? parted.link->b : parted.link->a;
    line.asked.on = heldBy(turned, joint, expansion);
    line.asked.ferrous = turned != nullptr && other != nullptr && isFerrous(turned->material) &&
                         isFerrous(other->material);
    line.torques = torquesFor(line.asked);
    line.disagreement = disagreement(line.torques);
    line.rating = ratingOf(joint, expansion);
    return line;
}

} // namespace

bool isFerrous(std::string_view material) noexcept
{
    return material.starts_with("steel") || material.starts_with("stainless");
}

std::vector<TorqueLine> torqueCard(const Expansion &expansion)
{
    std::vector<TorqueLine> card;
    for (const PlacedJoint &joint : expansion.joints)
        for (const PartedLink &parted : linksOf(joint, expansion))
            if (isScrewed(*parted.link) && fits(parted.link->mating.verdict))
                card.push_back(lineOf(parted, joint, expansion));
    return card;
}

} // namespace flarestock
