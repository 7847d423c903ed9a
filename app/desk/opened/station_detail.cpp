// SPDX-License-Identifier: MIT

#include "app/desk/language/sentences.h"
#include "app/desk/opened/detail.h"
#include "app/desk/opened/detail_words.h"
#include "app/desk/words/key_fact.h"
#include "app/desk/words/spoken.h"

namespace flarestock {

namespace {

std::vector<Row> portRows(const PlacedStation &station)
{
    std::vector<Row> rows;
    for (const PartPort &port : station.part->ports) {
        const QString role = port.role == PortRole::Either ? QString() : inWords(text(port.role));
        rows.push_back(
            {said(port.name),
             {QStringLiteral("port"), said(port.port.text()),
              role.isEmpty() || role == said(port.name)
                  ? said(port.name)
                  : QString(said(port.name) + QStringLiteral(", ") + role),
              QString(), false, -1, QString(said(port.name) + u' ' + said(port.port.text()))}});
    }
    return rows;
}

Row partRow(const WorkedOut &worked, const Part &part, bool inUse)
{
    const Whereabouts at = whereabouts(*worked.shelf, part, Decimal(1), Units::Metric); // Counted.
    const QString where = at.isShort ? DetailWords::tr("leaves 1 short") : at.text;
    return {said(part.number),
            {said(part.number), QString(said(part.description) + QStringLiteral("; ") + where),
             saidPrice(worked, part, Decimal(1)), at.isShort ? 1 : 0, inUse, said(part.number)}};
}

} // namespace

Detail stationDetail(const WorkedOut &worked, const PlacedStation &station, Units units)
{
    Detail detail;
    detail.title = titleOf(worked, station.id);
    detail.slot = said(station.id);
    detail.picked = station.picked;
    detail.why = inWords(station.why);
    detail.waysTitle = DetailWords::tr("parts that meet the demand");
    if (station.part == nullptr) {
        detail.subtitle = DetailWords::tr("nothing in the catalogue meets this station's demand");
        detail.mark = Standing::Open;
        detail.toBuy = true;
        detail.standing = DetailWords::tr("open");
    } else {
        const Whereabouts at = whereabouts(*worked.shelf, *station.part, Decimal(1), units);
        detail.subtitle = QString(said(station.part->number) + QStringLiteral("  ·  ") +
                                  said(station.part->description));
        detail.mark = at.isShort ? Standing::Short : Standing::Made;
        detail.toBuy = at.isShort;
        detail.standing = at.isShort ? DetailWords::tr("not on the shelf") : at.text;
        if (const QString fact = keyFact(*station.part, units); !fact.isEmpty())
            detail.standing = QString(fact + QStringLiteral("; ") + detail.standing);
        detail.pieces = portRows(station);
        detail.ways.push_back(partRow(worked, *station.part, true));
    }
    for (const Part *other : station.others) {
        if (other != station.part)
            detail.ways.push_back(partRow(worked, *other, false));
    }
    if (station.picked && station.better != nullptr && station.better != station.part) {
        detail.betterPick = said(station.better->number);
        detail.better = DetailWords::tr("Your pick stays. %1 would now be taken: %2.")
                            .arg(detail.betterPick, said(station.better->description));
    }
    return detail;
}

} // namespace flarestock
