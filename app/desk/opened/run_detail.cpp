// SPDX-License-Identifier: MIT

#include "app/desk/opened/detail.h"
#include "app/desk/opened/detail_words.h"
#include "app/desk/words/spoken.h"

namespace flarestock {

namespace {

QString boreOf(const Part &line, Units units)
{
    std::optional<double> bore;
    if (const auto *hose = line.as<HoseFacts>())
        bore = hose->boreMm;
    else if (const auto *tubing = line.as<TubingFacts>())
        bore = tubing->boreMm;
    return bore ? saidBore(*bore, units) : DetailWords::tr("bore not published");
}

/// How one end of the run stands, as the link that it is.
Row endRow(const PlacedJoint &joint)
{
    const QString standing = saidStanding(joint);
    const QString title = DetailWords::tr("%1: %2").arg(said(joint.at), standing);
    return {said(joint.id),
            {QStringLiteral("link"), title, QString(), QString(), false,
             static_cast<int>(flarestock::standing(joint)), title}};
}

Row lineRow(const WorkedOut &worked, const PlacedRun &run, Units units)
{
    if (run.line == nullptr)
        return {QStringLiteral("line"),
                {QStringLiteral("gap"), DetailWords::tr("nothing in the catalogue makes this line"),
                 said(run.wanted), DetailWords::tr("none"), true, -1,
                 DetailWords::tr("no line in the catalogue: %1").arg(said(run.wanted))}};
    const QString number = said(run.line->number);
    const Whereabouts at = whereabouts(*worked.shelf, *run.line, run.length.amount, units);
    const QString detail = QString(said(run.line->description) + QStringLiteral("  ·  ") +
                                   saidAmount(run.length, units));
    return {QStringLiteral("line"),
            {QStringLiteral("line"), number, detail, at.text, at.isShort, -1,
             QStringList{number, detail, at.text}.join(QStringLiteral(", "))}};
}

/// The length is in the unit of the line that makes the run now, or in inches.
Row wayRow(const WorkedOut &worked, const PlacedRun &run, const Part &line, Units units)
{
    const auto exact = run.length.in(line.unit);
    const Quantity length = exact ? upToTapeMark(*exact, line.unit) : run.length;
    const Whereabouts at = whereabouts(*worked.shelf, line, length.amount, units);
    const QString where =
        at.isShort ? DetailWords::tr("no piece long enough (%1)").arg(at.text) : at.text;
    const QString detail =
        QStringList{said(line.description), boreOf(line, units), where}.join(QStringLiteral("; "));
    return {said(line.number),
            {said(line.number), detail, saidPrice(worked, line, length.amount), at.isShort ? 1 : 0,
             &line == run.line, said(line.number)}};
}

} // namespace

Detail runDetail(const WorkedOut &worked, const PlacedRun &run, Units units)
{
    Detail detail;
    detail.title =
        DetailWords::tr("line, %1 to %2").arg(titleOf(worked, run.from), titleOf(worked, run.to));
    detail.slot = said(run.id);
    detail.picked = run.picked;
    detail.waysTitle = run.others.empty() ? DetailWords::tr("no other line suits the fluid")
                                          : DetailWords::tr("hose and tube that suit the fluid");
    detail.subtitle =
        DetailWords::tr("asked for: %1, %2").arg(said(run.wanted), saidAmount(run.length, units));
    if (run.line == nullptr) {
        detail.mark = Standing::Open;
        detail.standing = DetailWords::tr("open");
    } else {
        const bool isShort =
            whereabouts(*worked.shelf, *run.line, run.length.amount, units).isShort;
        detail.mark = isShort ? Standing::Short : Standing::Made;
        detail.standing = QString(boreOf(*run.line, units) + QStringLiteral("; ") +
                                  (isShort ? DetailWords::tr("no piece long enough here")
                                           : DetailWords::tr("a piece long enough is here")));
        detail.ways.push_back(wayRow(worked, run, *run.line, units));
    }
    for (const std::string &id : run.joints) {
        if (detail.pieces.size() == 1)
            detail.pieces.push_back(lineRow(worked, run, units));
        if (const PlacedJoint *joint = worked.expansion->joint(id))
            detail.pieces.push_back(endRow(*joint));
    }
    for (const Part *other : run.others)
        detail.ways.push_back(wayRow(worked, run, *other, units));
    if (run.picked && run.better != nullptr) {
        detail.betterPick = said(run.better->number);
        detail.better = DetailWords::tr("Your pick stays. %1 would now be taken: %2.")
                            .arg(detail.betterPick, said(run.better->description));
    }
    return detail;
}

} // namespace flarestock
