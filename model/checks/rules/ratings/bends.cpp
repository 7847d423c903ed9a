// SPDX-License-Identifier: MIT
//
// Bends: the tightest bend on a line's way against the radius that its maker allows, and the angle
// of its ends against what the template asks for.

#include "model/checks/rules/rules.h"

#include <cmath>
#include <numbers>

namespace flarestock::rules {

namespace {

constexpr auto MakersRadius = "the maker's smallest radius, as entered in the catalogue";

std::string millimetres(double value)
{
    return std::to_string(std::lround(value)) + " mm";
}

double lengthMm(const PlacedRun &run)
{
    const auto length = run.length.exactlyIn(Unit::Millimetre);
    return length ? length->amount.approximate() : 0;
}

/// The radius of the tightest bend that the template names; nothing where it names none.
std::optional<double> bendMm(const BuildUnderCheck &build, const PlacedRun &run)
{
    const auto said = build.said(run, run.run->bend);
    if (!said)
        return std::nullopt;
    const auto bend = Measure::parse(*said, Dimension::Length);
    return bend ? std::optional(bend->si * 1000) : std::nullopt;
}

void tooTight(const PlacedRun &run, double radius, double bend, Findings &found)
{
    found.push_back({.severity = Severity::Stop,
                     .matter = Matter::Assembly,
                     .about = "Line " + run.id + ": " + run.line->number + " bends to " +
                              millimetres(radius) + ", its way to " + millimetres(bend),
                     .where = run.id,
                     .text = "Bent tighter the hose kinks or its braid opens, and it chokes or "
                             "bursts there.",
                     .source = MakersRadius,
                     .remedy = "Lay it wider, use an angled end, or take hose with a smaller "
                               "radius.",
                     .mend = {}});
}

/// Too short even for a quarter turn at its smallest radius: the arc is π/2 × radius.
void tooShort(const PlacedRun &run, double radius, Findings &found)
{
    const double quarter = std::numbers::pi / 2 * radius;
    const double length = lengthMm(run);
    if (length <= 0 || length >= quarter)
        return;
    found.push_back(
        {.severity = Severity::Note,
         .matter = Matter::Assembly,
         .about =
             "Line " + run.id + ": " + run.length.spoken() + " is too short for a quarter turn",
         .where = run.id,
         .text = run.line->number + " may be bent to " + millimetres(radius) +
                 ", and a quarter turn at that takes " + millimetres(quarter) + " of hose.",
         .source = std::string(MakersRadius) + "; length of an arc, π/2 × radius",
         .remedy = "Let angled ends do the turning.",
         .mend = {}});
}

void endAngle(const PlacedJoint *joint, const std::optional<std::string> &said, Findings &found)
{
    if (joint == nullptr || !joint->way || joint->way->pieces.empty())
        return;
    const auto *end = joint->way->pieces.back().part->as<HoseEndFacts>();
    if (!said || end == nullptr || *said == std::to_string(end->angleDegrees))
        return;
    found.push_back({.severity = Severity::Caution,
                     .matter = Matter::Assembly,
                     .about = BuildUnderCheck::capital(joint->at) + ": the end is of " +
                              std::to_string(end->angleDegrees) + "°, " + *said + "° is asked for",
                     .where = joint->id,
                     .text = "The line leaves in another direction than it was planned to, and the "
                             "hose has to make up for it.",
                     .source = "the template's angle, and the maker's of " +
                               joint->way->pieces.back().part->number,
                     .remedy = "Use an end of that angle, or look whether the line still lies as "
                               "it should.",
                     .mend = {}});
}

} // namespace

void bends(const BuildUnderCheck &build, Findings &found)
{
    for (const auto &run : build.expansion().runs) {
        if (run.joints.size() == 2) {
            const auto &all = build.expansion();
            endAngle(all.joint(run.joints.front()), build.said(run, run.run->startAngle), found);
            endAngle(all.joint(run.joints.back()), build.said(run, run.run->endAngle), found);
        }
        const auto *hose = run.line == nullptr ? nullptr : run.line->as<HoseFacts>();
        if (hose == nullptr || !hose->bendRadiusMm)
            continue;
        const auto bend = bendMm(build, run);
        if (bend && *bend < *hose->bendRadiusMm * 0.999)
            tooTight(run, *hose->bendRadiusMm, *bend, found);
        else
            tooShort(run, *hose->bendRadiusMm, found);
    }
}

} // namespace flarestock::rules
