// SPDX-License-Identifier: MIT
//
// How each joint stands: open, leaking, jamming, loose, or made to fit with something to know. A
// caution that stands on most joints of a build is said once for the build.

#include "model/checks/rules/rules.h"
#include "model/ports/plain_meeting.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace flarestock::rules {

namespace {

std::string whatHappens(Verdict verdict)
{
    switch (verdict) {
    case Verdict::SameGender:
        return "two of one gender cannot be joined";
    case Verdict::NoFit:
        return "they do not go together";
    case Verdict::Jams:
        return "it starts and then jams";
    case Verdict::Loose:
        return "it goes in loose and can strip";
    case Verdict::Leaks:
        return "it screws together and leaks";
    case Verdict::FitsWithAid:
        return "what seals it is missing";
    case Verdict::FitsWithCaution:
    case Verdict::Fits:
        break;
    }
    return {};
}

/// The link that is worst, as the verdict of the way is.
const Link &worstLink(const Way &way)
{
    return *std::min_element(way.links.begin(), way.links.end(), [](const Link &a, const Link &b) {
        return a.mating.verdict < b.mating.verdict;
    });
}

/// Letting a bad pick go, or taking the best other way.
Picks mendOf(const PlacedJoint &joint)
{
    for (const auto &other : joint.others) {
        if (fits(other.verdict()) && other.verdict() != Verdict::FitsWithAid)
            return {{joint.id, other.key()}};
    }
    return joint.picked ? Picks{{joint.id, ""}} : Picks{};
}

std::string remedyOf(const PlacedJoint &joint)
{
    const auto mend = mendOf(joint);
    if (mend.empty())
        return "Use another part at this place, or enter an adapter that joins the two.";
    const auto &way = mend.begin()->second;
    if (way.empty())
        return "Let the picked pieces go, and the program looks for others.";
    return way == "direct" ? "Join the two directly." : "Use " + way + ".";
}

Finding openJoint(const PlacedJoint &joint)
{
    return {.severity = Severity::Stop,
            .matter = Matter::Fit,
            .about = BuildUnderCheck::capital(joint.at) + ": nothing in the catalogue closes it",
            .where = joint.id,
            .text = "No adapter or hose end of the catalogue leads from " + joint.from.text() +
                    " to " + joint.to.text() + ".",
            .source = "the catalogue, with each joint judged by its thread and seat",
            .remedy = "Enter an adapter that joins the two, or use another part at this place.",
            .mend = {}};
}

/// The part or the line that it would join is missing itself: that is the cause, and emptyPlaces()
/// says it.
bool isOfEmptyPlace(const BuildUnderCheck &build, const PlacedJoint &joint)
{
    const auto &expansion = build.expansion();
    const auto lacks = [&expansion](const std::string &id) {
        const auto *station = expansion.station(id);
        return station != nullptr && station->part == nullptr;
    };
    const auto *run = expansion.run(joint.run);
    if (run == nullptr || run->line != nullptr)
        return lacks(joint.station);
    return !run->wanted.empty() || lacks(run->from) || lacks(run->to);
}

Finding badJoint(const PlacedJoint &joint, Verdict verdict)
{
    const auto &link = worstLink(*joint.way);
    return {.severity = Severity::Stop,
            .matter = Matter::Fit,
            .about = BuildUnderCheck::capital(joint.at) + ": " + link.a.text() + " on " +
                     link.b.text() + ", " + whatHappens(verdict),
            .where = joint.id,
            .text = link.mating.why,
            .source = link.mating.source,
            .remedy = remedyOf(joint),
            .mend = mendOf(joint)};
}

/// An aid that nothing in the catalogue answers.
void missingAids(const PlacedJoint &joint, Findings &found)
{
    for (const Need &need : joint.way->unanswered()) {
        found.push_back({.severity = Severity::Stop,
                         .matter = Matter::Fit,
                         .about = BuildUnderCheck::capital(joint.at) + ": no " + need.text() +
                                  " in the catalogue",
                         .where = joint.id,
                         .text = "The joint needs it, and without it the joint leaks.",
                         .source = joint.way->links.front().mating.source,
                         .remedy = "Enter the part, so that it can be stocked and ordered.",
                         .mend = {}});
    }
}

/// Something to know of a pair that fits, and the joints where it stands.
struct Caution {
    const Link *link = nullptr;
    std::vector<const PlacedJoint *> joints;
};
/// The two families, in either order, and where the knowledge comes from.
using Cause = std::tuple<Family, Family, std::string>;

Cause causeOf(const Link &link)
{
    const auto [first, second] = std::minmax(link.a.family, link.b.family);
    return {first, second, link.mating.source};
}

Finding knownBefore(const Caution &said)
{
    const Link &link = *said.link;
    const bool one = said.joints.size() == 1;
    const bool screwed = !isPlain(link.a) && !isPlain(link.b);
    return {.severity = Severity::Caution,
            .matter = Matter::Fit,
            .about = one ? BuildUnderCheck::capital(said.joints.front()->at) + ": " +
                               link.a.text() + " with " + link.b.text()
                         : std::to_string(said.joints.size()) + " joints pair " +
                               std::string(text(link.a.family)) + " with " +
                               std::string(text(link.b.family)),
            .where = one ? said.joints.front()->id : std::string(),
            .text = link.mating.why,
            .source = link.mating.source,
            .remedy = screwed
                          ? "Start each thread by hand; do not force one that binds."
                          : "Try one on an offcut first, and test it under pressure before use.",
            .mend = {}};
}

} // namespace

void jointVerdicts(const BuildUnderCheck &build, Findings &found)
{
    std::map<Cause, Caution> cautions; // One finding a cause.
    for (const auto &joint : build.expansion().joints) {
        if (!joint.way) {
            if (!isOfEmptyPlace(build, joint))
                found.push_back(openJoint(joint));
            continue;
        }
        const auto verdict = joint.way->verdict();
        if (verdict < Verdict::FitsWithCaution)
            found.push_back(badJoint(joint, verdict));
        missingAids(joint, found);
        for (const auto &link : joint.way->links) {
            if (link.mating.verdict != Verdict::FitsWithCaution)
                continue;
            auto &said = cautions[causeOf(link)];
            said.link = &link;
            if (said.joints.empty() || said.joints.back() != &joint)
                said.joints.push_back(&joint);
        }
    }
    for (const auto &[cause, said] : cautions)
        found.push_back(knownBefore(said));
}

} // namespace flarestock::rules
