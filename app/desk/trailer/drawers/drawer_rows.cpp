// SPDX-License-Identifier: MIT

#include "app/desk/trailer/drawers/drawer_rows.h"

#include "app/desk/stock/stock_rows.h"
#include "app/desk/trailer/drawers/drawer_words.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/standing.h"

namespace flarestock {

namespace {

QString counted(std::int64_t pieces)
{
    return QLocale().toString(static_cast<qlonglong>(pieces));
}

QString saidCount(const Drawer &drawer, const Drawer::Pieces &pieces)
{
    const std::int64_t wanted = pieces.there + pieces.lack;
    if (wanted > 0)
        return DrawerWords::tr("%1 of %2").arg(counted(pieces.there), counted(wanted));
    return drawer.lines.empty() ? DrawerWords::tr("empty") : DrawerWords::tr("no list");
}

int markOf(const Drawer::Pieces &pieces)
{
    return pieces.lack > 0 ? Standing::Short : pieces.over > 0 ? Standing::Note : Standing::Made;
}

QString saidKeep(const DrawerLine &line, Units units)
{
    if (!line.load)
        return {};
    const Keeping &keeping = line.load->keeping;
    const QString least = saidStock(keeping.least, *line.part, units);
    return keeping.most == keeping.least
               ? least
               : DrawerWords::tr("%1 to %2").arg(least, saidStock(keeping.most, *line.part, units));
}

QString saidThere(const DrawerLine &line, Units units)
{
    if (line.level)
        return saidLevel(*line.level);
    return line.part == nullptr ? counted(line.lies) : saidStock(line.lies, *line.part, units);
}

QString saidFrom(const DrawerLine &line, Units units)
{
    QStringList all;
    if (!line.load)
        return {};
    for (const LoadTake &take : line.load->bring)
        all.append(DrawerWords::tr("%1 from %2")
                       .arg(saidStock(take.quantity, *line.part, units), said(take.from.place)));
    if (line.load->toBuy > 0)
        all.append(
            DrawerWords::tr("%1 to buy").arg(saidStock(line.load->toBuy, *line.part, units)));
    return all.join(QStringLiteral(", "));
}

QString saidOver(const DrawerLine &line, Units units)
{
    QStringList all;
    for (const UnloadLine &out : line.out)
        all.append(DrawerWords::tr("%1: %2").arg(saidStock(out.take.quantity, *line.part, units),
                                                 saidMisplaced(out.why)));
    return all.join(QStringLiteral("; "));
}

Row inDrawerRow(const DrawerLine &line, Units units)
{
    const QString what = line.part == nullptr ? DrawerWords::tr("not in the catalogue")
                                              : said(line.part->description);
    const QString keep = saidKeep(line, units);
    const QString there = saidThere(line, units);
    const bool isShort = line.load && line.load->lacks > 0;
    const QString missing =
        isShort ? DrawerWords::tr("%1 short").arg(saidStock(line.load->lacks, *line.part, units))
                : QString();
    const QString from = saidFrom(line, units);
    const QString over = saidOver(line, units);
    QStringList says{said(line.number), what, DrawerWords::tr("there: %1").arg(there)};
    if (!keep.isEmpty())
        says.append(DrawerWords::tr("to be there: %1").arg(keep));
    QStringList notes;
    for (const QString &more : {missing, from, over}) {
        if (!more.isEmpty())
            notes.append(more);
    }
    says.append(notes);
    return {said(line.number),
            {said(line.number), what, keep, there, notes.join(QStringLiteral("  ·  ")), isShort,
             says.join(QStringLiteral(", "))}};
}

} // namespace

QString saidMisplaced(Misplaced why)
{
    switch (why) {
    case Misplaced::NotKept:
        return DrawerWords::tr("not on its list");
    case Misplaced::Surplus:
        return DrawerWords::tr("more than it is to hold");
    case Misplaced::ToBeChecked:
        return DrawerWords::tr("to be checked");
    case Misplaced::NotToBeUsed:
        return DrawerWords::tr("not to be used");
    case Misplaced::PastItsDay:
        return DrawerWords::tr("past its day by then");
    case Misplaced::OpenBox:
        break;
    }
    return DrawerWords::tr("its box is open");
}

QString saidPieces(const Drawer::Pieces &pieces)
{
    QStringList all;
    if (pieces.lack > 0)
        all.append(DrawerWords::tr("%1 short").arg(counted(pieces.lack)));
    if (pieces.over > 0)
        all.append(DrawerWords::tr("%1 to take out").arg(counted(pieces.over)));
    if (!all.isEmpty())
        return all.join(QStringLiteral(", "));
    return pieces.there > 0 ? DrawerWords::tr("all is there") : DrawerWords::tr("nothing lacks");
}

QStringList drawerCells()
{
    return {QStringLiteral("title"), QStringLiteral("count"), QStringLiteral("stands"),
            QStringLiteral("mark"),  QStringLiteral("there"), QStringLiteral("lack"),
            QStringLiteral("over"),  QStringLiteral("away"),  QStringLiteral("says")};
}

std::vector<Row> drawerRows(const TrailerBook &book, const TripsSeen &trips)
{
    std::vector<Row> rows;
    for (const Drawer &drawer : book.drawers) {
        const auto pieces = drawer.pieces();
        const QString count = saidCount(drawer, pieces);
        const QString state = saidPieces(pieces);
        const QString away = trips.awayWith(drawer.id);
        QString says = DrawerWords::tr("%1, %2: %3, %4")
                           .arg(said(drawer.id), said(drawer.title), count, state);
        if (!away.isEmpty())
            says = DrawerWords::tr("%1, %2").arg(says, away);
        rows.push_back(
            {said(drawer.id),
             {said(drawer.title), count, state, markOf(pieces), static_cast<int>(pieces.there),
              static_cast<int>(pieces.lack), static_cast<int>(pieces.over), away, says}});
    }
    return rows;
}

QStringList inDrawerCells()
{
    return {QStringLiteral("part"),  QStringLiteral("what"), QStringLiteral("keep"),
            QStringLiteral("there"), QStringLiteral("note"), QStringLiteral("isShort"),
            QStringLiteral("says")};
}

std::vector<Row> inDrawerRows(const Drawer &drawer, Units units)
{
    std::vector<Row> rows;
    for (const DrawerLine &line : drawer.lines)
        rows.push_back(inDrawerRow(line, units));
    return rows;
}

} // namespace flarestock
