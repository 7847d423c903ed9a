// SPDX-License-Identifier: MIT

#include "app/desk/map/map_rows.h"

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
    return found == shelf.end() || found->second.free.amount < Decimal(1);
}

Row plateRow(const MapPlate &plate, const PlacedStation &station, const Shelf &shelf)
{
    const QString role = said(station.station != nullptr ? station.station->title : station.id);
    const QRectF box = plate.box;
    if (plate.echo)
        return {QString(said(plate.station) + QStringLiteral("|echo") + QString::number(plate.row)),
                {box.x(), box.y(), box.width(), box.height(), role, MapWords::tr("return"),
                 QString(), false, true, false, MapWords::tr("back to the %1").arg(role),
                 said(plate.station)}};
    if (station.part == nullptr)
        return {said(plate.station),
                {box.x(), box.y(), box.width(), box.height(), role, MapWords::tr("no part"),
                 MapWords::tr("none meets the demand"), station.picked, false, true,
                 MapWords::tr("station %1: no part meets the demand").arg(role),
                 said(plate.station)}};
    const QString part = said(station.part->number);
    const QString fact = keyFact(*station.part);
    const bool lacks = isLacking(shelf, *station.part);
    QString says = MapWords::tr("station %1: %2, %3").arg(role, part, fact);
    if (station.picked)
        says += MapWords::tr(", picked");
    if (lacks)
        says += MapWords::tr(", not on the shelf");
    return {said(plate.station),
            {box.x(), box.y(), box.width(), box.height(), role, part, fact, station.picked, false,
             lacks, says, said(plate.station)}};
}

} // namespace

QStringList plateCells()
{
    return {QStringLiteral("atX"),   QStringLiteral("atY"),    QStringLiteral("wide"),
            QStringLiteral("high"),  QStringLiteral("role"),   QStringLiteral("part"),
            QStringLiteral("fact"),  QStringLiteral("picked"), QStringLiteral("echo"),
            QStringLiteral("lacks"), QStringLiteral("says"),   QStringLiteral("station")};
}

std::vector<Row> plateRows(const MapLayout &map, const Expansion &expansion, const Shelf &shelf)
{
    std::vector<Row> rows;
    for (const MapPlate &plate : map.plates) {
        if (const PlacedStation *station = expansion.station(plate.station))
            rows.push_back(plateRow(plate, *station, shelf));
    }
    return rows;
}

QStringList markCells()
{
    return {QStringLiteral("atX"),   QStringLiteral("atY"),    QStringLiteral("mark"),
            QStringLiteral("toBuy"), QStringLiteral("picked"), QStringLiteral("says")};
}

std::vector<Row> markRows(const MapLayout &map, const Expansion &expansion)
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
        if (joint->picked)
            says += MapWords::tr(", picked");
        rows.push_back({said(joint->id),
                        {mark.at.x(), mark.at.y(), static_cast<int>(standing(*joint)), toBuy,
                         joint->picked, says}});
    }
    return rows;
}

QStringList runCells()
{
    return {QStringLiteral("atX"),  QStringLiteral("atY"),    QStringLiteral("room"),
            QStringLiteral("dash"), QStringLiteral("length"), QStringLiteral("thickness"),
            QStringLiteral("says")};
}

std::vector<Row> runRows(const MapLayout &map, const Expansion &expansion)
{
    std::vector<Row> rows;
    for (const MapStroke &stroke : map.strokes) {
        const PlacedRun *run = expansion.run(stroke.run);
        if (run == nullptr || stroke.direct)
            continue;
        QString size =
            run->dash != 0 ? QString(u'-' + QString::number(std::abs(run->dash))) : QString();
        if (run->line != nullptr && size.isEmpty()) {
            if (const auto *tubing = run->line->as<TubingFacts>())
                size = said(tubing->tubeSize);
        }
        const QString length = saidQuantity(run->length);
        const QString what = run->line != nullptr
                                 ? said(run->line->number)
                                 : MapWords::tr("no line: %1").arg(said(run->wanted));
        rows.push_back({said(stroke.run),
                        {stroke.middle.x(), stroke.middle.y(), stroke.middleLength, size, length,
                         strokeThickness(stroke.boreMm),
                         MapWords::tr("run %1, %2, %3").arg(size, length, what)}});
    }
    return rows;
}

QStringList bandCells()
{
    return {QStringLiteral("atY"), QStringLiteral("atX"), QStringLiteral("title")};
}

std::vector<Row> bandRows(const MapLayout &map)
{
    const bool above = map.plates.empty() || map.plates.front().box.left() < 60;
    std::vector<Row> rows;
    for (const MapBand &band : map.bands)
        rows.push_back(
            {said(text(band.level)),
             {above ? band.top - 16 : band.y - 8, above ? 42.0 : 14.0, said(text(band.level))}});
    return rows;
}

} // namespace flarestock
