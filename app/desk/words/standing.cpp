// SPDX-License-Identifier: MIT

#include "app/desk/words/standing.h"

#include "app/desk/words/spoken.h"

namespace flarestock {

namespace {

Standing::Mark markOf(Verdict verdict, bool takesAids)
{
    switch (verdict) {
    case Verdict::SameGender:
    case Verdict::NoFit:
        return Standing::Open;
    case Verdict::Jams:
    case Verdict::Loose:
    case Verdict::Leaks:
        return Standing::Trap;
    case Verdict::FitsWithCaution:
        return Standing::Caution;
    case Verdict::FitsWithAid:
        return Standing::Needs;
    case Verdict::Fits:
        break;
    }
    return takesAids ? Standing::Needs : Standing::Made;
}

} // namespace

Standing::Mark standing(const PlacedJoint &joint)
{
    if (!joint.way || !joint.way->unanswered().empty())
        return Standing::Open;
    return markOf(joint.way->verdict(), !joint.way->aids.empty());
}

Standing::Mark standing(const Link &link)
{
    return markOf(link.mating.verdict, !link.mating.needs.empty());
}

Standing::Mark standing(const Finding &finding)
{
    if (finding.isShortage)
        return Standing::Short;
    switch (finding.severity) {
    case Severity::Stop:
        return Standing::Trap;
    case Severity::Caution:
        return Standing::Caution;
    case Severity::Note:
        break;
    }
    return Standing::Note;
}

int gravity(Standing::Mark mark)
{
    switch (mark) {
    case Standing::Open:
        return 4;
    case Standing::Trap:
        return 3;
    case Standing::Caution:
        return 2;
    case Standing::Short:
        return 1;
    default:
        return 0;
    }
}

QString saidVerdict(Verdict verdict)
{
    switch (verdict) {
    case Verdict::SameGender:
        return Standing::tr("both male or both female: nothing screws in");
    case Verdict::NoFit:
        return Standing::tr("does not go together");
    case Verdict::Jams:
        return Standing::tr("starts, then jams");
    case Verdict::Loose:
        return Standing::tr("goes in loose");
    case Verdict::Leaks:
        return Standing::tr("screws together, but leaks");
    case Verdict::FitsWithCaution:
        return Standing::tr("made to fit, with a caution");
    case Verdict::FitsWithAid:
        return Standing::tr("fits with what it needs beside it");
    case Verdict::Fits:
        break;
    }
    return Standing::tr("made for each other");
}

QString saidStanding(const PlacedJoint &joint)
{
    if (!joint.way)
        return Standing::tr("open: nothing in the catalogue closes it");
    if (!joint.way->unanswered().empty())
        return Standing::tr("open: the catalogue lacks what it needs beside it");
    if (standing(joint) == Standing::Needs)
        return Standing::tr("closed with a ring, washer or sealant");
    return saidVerdict(joint.way->verdict());
}

QString saidPort(const Port &port)
{
    return port.size.empty() ? Standing::tr("no such port") : said(port.text());
}

bool lacksPieces(const PlacedJoint &joint)
{
    return !joint.way || joint.way->toBuy > 0;
}

} // namespace flarestock
