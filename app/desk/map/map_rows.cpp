// SPDX-License-Identifier: MIT

#include "app/desk/map/map_rows.h"

#include "app/desk/language/sentences.h"
#include "app/desk/words/key_fact.h"
#include "app/desk/words/run_words.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/standing.h"

#include <QCoreApplication>

namespace flarestock {

namespace {

struct MapWords {
    Q_DECLARE_TR_FUNCTIONS(LineMap)
};

bool isLacking(const Shelf &shelf, const Part &part)
{
    const auto found = shelf.find(part.number);
    return found == shelf.end() || found->second.usable() < Decimal(1);
}

/// How a picked place is said, behind what it is.
QString saidPick(bool picked, bool outdone)
{
    if (!picked)
        return {};
    return outdone ? MapWords::tr(", picked, something else would now be taken")
                   : MapWords::tr(", picked");
}

struct PlateWords {
    QString part;
    QString fact;
    QString says;
    bool lacks = false;
};

PlateWords plateWords(const QString &role, const PlacedStation &station, const Shelf &shelf,
                      Units units)
{
    if (station.part == nullptr)
        return {MapWords::tr("no part"), MapWords::tr("none meets the demand"),
                MapWords::tr("station %1: no part meets the demand").arg(role), true};
    PlateWords words{said(station.part->number),
                     keyFact(*station.part, units),
                     {},
                     isLacking(shelf, *station.part)};
    words.says = MapWords::tr("station %1: %2, %3").arg(role, words.part, words.fact);
    words.says += saidPick(station.picked, station.better != nullptr);
    if (words.lacks)
        words.says += MapWords::tr(", not on the shelf");
    return words;
}

Row plateRow(const MapPlate &plate, const PlacedStation &station, const Shelf &shelf, Units units)
{
    const QString role = said(station.station != nullptr ? station.station->title : station.id);
    const QRectF box = plate.box;
    QVariantList cells{box.x(), box.y(), box.width(), box.height(), role};
    if (plate.echo) {
        cells << MapWords::tr("return") << QString() << false << false << true << false
              << MapWords::tr("back to the %1").arg(role) << said(plate.station);
        return {QString(said(plate.station) + QStringLiteral("|echo") + QString::number(plate.row)),
                cells};
    }
    const PlateWords words = plateWords(role, station, shelf, units);
    cells << words.part << words.fact << station.picked
          << (station.picked && station.better != nullptr) << false << words.lacks << words.says
          << said(plate.station);
    return {said(plate.station), cells};
}

} // namespace

QStringList plateCells()
{
    return {QStringLiteral("atX"),    QStringLiteral("atY"),    QStringLiteral("wide"),
            QStringLiteral("high"),   QStringLiteral("role"),   QStringLiteral("part"),
            QStringLiteral("fact"),   QStringLiteral("picked"), QStringLiteral("outdone"),
            QStringLiteral("echo"),   QStringLiteral("lacks"),  QStringLiteral("says"),
            QStringLiteral("station")};
}

std::vector<Row> plateRows(const MapLayout &map, const WorkedOut &worked, Units units)
{
    std::vector<Row> rows;
    for (const MapPlate &plate : map.plates) {
        if (const PlacedStation *station = worked.expansion->station(plate.station))
            rows.push_back(plateRow(plate, *station, *worked.shelf, units));
    }
    return rows;
}

QStringList markCells()
{
    return {QStringLiteral("atX"),   QStringLiteral("atY"),    QStringLiteral("mark"),
            QStringLiteral("toBuy"), QStringLiteral("picked"), QStringLiteral("outdone"),
            QStringLiteral("found"), QStringLiteral("says")};
}

std::vector<Row> markRows(const MapLayout &map, const Expansion &expansion,
                          const std::set<QString> &found)
{
    std::vector<Row> rows;
    for (const MapMark &mark : map.marks) {
        const PlacedJoint *joint = expansion.joint(mark.joint);
        if (joint == nullptr)
            continue;
        const bool toBuy = lacksPieces(*joint);
        QString says = MapWords::tr("joint %1, %2 to %3: %4")
                           .arg(said(joint->at), saidPort(joint->from), saidPort(joint->to),
                                saidStanding(*joint));
        if (joint->way && toBuy)
            says += MapWords::tr(", %n to buy", nullptr, joint->way->toBuy);
        says += saidPick(joint->picked, joint->outdone);
        const bool isFound = found.contains(said(joint->id));
        if (isFound)
            says += MapWords::tr(", found");
        rows.push_back({said(joint->id),
                        {mark.at.x(), mark.at.y(), static_cast<int>(standing(*joint)), toBuy,
                         joint->picked, joint->outdone, isFound, says}});
    }
    return rows;
}

QStringList runCells()
{
    return {QStringLiteral("atX"),    QStringLiteral("atY"),     QStringLiteral("room"),
            QStringLiteral("dash"),   QStringLiteral("length"),  QStringLiteral("thickness"),
            QStringLiteral("picked"), QStringLiteral("outdone"), QStringLiteral("says")};
}

std::vector<Row> runRows(const MapLayout &map, const Expansion &expansion, Units units)
{
    std::vector<Row> rows;
    for (const MapStroke &stroke : map.strokes) {
        const PlacedRun *run = expansion.run(stroke.run);
        if (run == nullptr || stroke.direct)
            continue;
        const QString size = saidRunSize(*run);
        const bool outdone = run->picked && run->better != nullptr;
        const QString length = saidRunLength(run->length, units);
        const QString what = run->line != nullptr
                                 ? said(run->line->number)
                                 : MapWords::tr("no line: %1").arg(said(run->wanted));
        rows.push_back(
            {said(stroke.run),
             {stroke.label.x(), stroke.label.y(), stroke.labelRoom, size, length,
              strokeThickness(stroke.boreMm) + 2 * stroke.labelClear, run->picked, outdone,
              QString(MapWords::tr("run %1, %2, %3").arg(size, length, what) +
                      saidPick(run->picked, outdone))}});
    }
    return rows;
}

QStringList bandCells()
{
    return {QStringLiteral("atY"), QStringLiteral("high"), QStringLiteral("title")};
}

std::vector<Row> bandRows(const MapLayout &map)
{
    std::vector<Row> rows;
    for (const MapBand &band : map.bands)
        rows.push_back({said(text(band.level)),
                        {band.top, band.bottom - band.top, inWords(text(band.level))}});
    return rows;
}

} // namespace flarestock
