// SPDX-License-Identifier: MIT
//
// Whether it can be put together at all. A thread is tightened by turning one side. Where both
// sides are fixed (a body bracketed to the car, a line whose other end is made up), one of them has
// to turn by itself: a swivel, a loose nut, an adjustable end, a banjo, a push-on end.

#include "model/checks/rules/rules.h"

#include <algorithm>

namespace flarestock::rules {

namespace {

constexpr auto Source = "thread assembly: one side has to turn; common practice, no source";

bool turnsByItself(const Port &port)
{
    return port.turning != Turning::Fixed || port.family == Family::QuickConnect ||
           port.family == Family::Banjo || port.family == Family::Barb;
}

/// Made up on the bench before the line goes into the car: the cut hose in its end.
bool isOnBench(const Link &link)
{
    return link.a.family == Family::Hose && link.b.family == Family::Hose;
}

bool canBeTightened(const Way &way)
{
    return std::any_of(way.links.begin(), way.links.end(), [](const Link &link) {
        return !isOnBench(link) && (turnsByItself(link.a) || turnsByItself(link.b));
    });
}

const PlacedJoint *fixedJoint(const BuildUnderCheck &build, const std::string &id)
{
    const auto *joint = build.expansion().joint(id);
    return joint != nullptr && joint->way && !canBeTightened(*joint->way) ? joint : nullptr;
}

bool isBracketed(const BuildUnderCheck &build, const std::string &id)
{
    const auto *station = build.expansion().station(id);
    return station != nullptr && station->station->bracketed;
}

Picks turningWay(const PlacedJoint &joint)
{
    for (const auto &other : joint.others) {
        if (canBeTightened(other) && other.verdict() >= Verdict::FitsWithCaution)
            return {{joint.id, other.key()}};
    }
    return {};
}

Finding cannotBeTightened(const PlacedJoint &joint, std::string about, std::string why)
{
    const auto mend = turningWay(joint);
    return {.severity = Severity::Stop,
            .matter = Matter::Assembly,
            .about = BuildUnderCheck::capital(std::move(about)),
            .where = joint.id,
            .text = std::move(why),
            .source = Source,
            .remedy = mend.empty() ? "Use an end with a swivel, a loose nut or an adjustable stud."
                                   : "Use " + mend.begin()->second + ".",
            .mend = mend};
}

} // namespace

void assembly(const BuildUnderCheck &build, Findings &found)
{
    for (const auto &run : build.expansion().runs) {
        if (run.joints.empty())
            continue;
        const auto *last = fixedJoint(build, run.joints.back());
        if (last == nullptr)
            continue;
        if (run.joints.size() == 1) { // The two bodies meet without a line between them.
            if (isBracketed(build, run.from) && isBracketed(build, run.to))
                found.push_back(cannotBeTightened(
                    *last, last->at + ": cannot be screwed up",
                    "Both bodies are bracketed to the car and neither side of the joint turns."));
        } else if (fixedJoint(build, run.joints.front()) != nullptr) {
            found.push_back(cannotBeTightened(
                *last, last->at + ": the line cannot be screwed up at its second end",
                "Both ends of the line are fixed threads: once the first is tight, turning the "
                "second would loosen it or twist the hose."));
        }
    }
}

} // namespace flarestock::rules
