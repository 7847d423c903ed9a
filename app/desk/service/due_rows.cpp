// SPDX-License-Identifier: MIT

#include "app/desk/service/service_rows.h"
#include "app/desk/service/service_words.h"
#include "app/desk/words/spoken.h"
#include "app/stockroom/asked.h"

#include <algorithm>

namespace flarestock {

namespace {

/// The day or event by which it stands in the list.
QString dueHeadOf(const DueLine &line, const GarageBook &book)
{
    switch (line.work.standing) {
    case DueStanding::Over:
    case DueStanding::Now:
        return ServiceWords::tr("now");
    case DueStanding::Fine:
    case DueStanding::Soon:
        return ServiceWords::tr("soon");
    case DueStanding::Before:
        break;
    }
    for (const Event &event : book.workshop->season.events()) {
        if (event.firstDay == line.by && event.takes(line.car))
            return ServiceWords::tr("before %1, %2").arg(said(event.title), saidDate(line.by));
    }
    return ServiceWords::tr("before %1").arg(saidDate(line.by));
}

/// The car, and which piece it is there.
QString saidWhich(const DueLine &line, const GarageBook &book)
{
    const Place *car = book.car(line.car);
    return ServiceWords::tr("%1; %2").arg(said(car ? car->title : line.car),
                                          saidPiece(line.work.piece->piece));
}

bool lacksParts(const DueLine &line)
{
    return std::any_of(line.parts.begin(), line.parts.end(),
                       [](const DuePart &part) { return part.shortBy() > 0; });
}

Row dueRow(const DueLine &line, const GarageBook &book, std::size_t number)
{
    const DueWork &work = line.work;
    const QString where = said(line.said);
    const QString piece = saidWhich(line, book);
    const QString state = saidStanding(line, book);
    const QString takes = saidTakes(line);
    QStringList says{where, piece, state, saidReasons(work)};
    if (!takes.isEmpty())
        says.append(ServiceWords::tr("takes %1").arg(takes));
    const PieceStanding stands = standingOf(work.piece, book, line.car);
    const int mark = stands.mark == Standing::Open ? stands.mark : markOf(work.standing);
    const QString key =
        QStringLiteral("%1|%2|%3").arg(said(line.car), said(work.piece->position)).arg(number);
    return {key,
            {dueHeadOf(line, book), mark, where, piece, state, saidReasons(work), takes,
             lacksParts(line), says.join(QStringLiteral(", "))}};
}

} // namespace

QStringList dueCells()
{
    return {QStringLiteral("head"),  QStringLiteral("mark"),     QStringLiteral("title"),
            QStringLiteral("piece"), QStringLiteral("standing"), QStringLiteral("why"),
            QStringLiteral("takes"), QStringLiteral("lacks"),    QStringLiteral("says")};
}

std::vector<Row> dueRows(const GarageBook &book, const QString &words)
{
    std::vector<Row> rows;
    std::map<const FittedPiece *, std::size_t> numbers;
    for (const DueLine &line : book.works) {
        if (line.work.standing == DueStanding::Fine)
            continue;
        Row row = dueRow(line, book, ++numbers[line.work.piece]);
        if (saysAll(row.cells.last().toString(), words))
            rows.push_back(std::move(row));
    }
    // Two cars may go to different events on one day: each event stands once.
    std::map<QString, std::size_t> first;
    for (std::size_t at = 0; at < rows.size(); ++at)
        first.try_emplace(rows[at].cells.first().toString(), at);
    std::stable_sort(rows.begin(), rows.end(), [&first](const Row &a, const Row &b) {
        return first.at(a.cells.first().toString()) < first.at(b.cells.first().toString());
    });
    return rows;
}

CarPosition dueAt(const QString &key)
{
    return {key.section(u'|', 0, 0).toStdString(), key.section(u'|', 1, -2).toStdString()};
}

QString saidTakes(const DueLine &line)
{
    QStringList all;
    for (const DuePart &one : line.parts) {
        const QString part = ServiceWords::tr("%1 × %2").arg(
            localised(said(spoken(one.need, *one.part))), said(one.part->number));
        all.append(one.shortBy() == 0
                       ? part
                       : ServiceWords::tr("%1, %2 short")
                             .arg(part, localised(said(spoken(one.shortBy(), *one.part)))));
    }
    return all.join(QStringLiteral("; "));
}

QString saidOverdue(const GarageBook &book)
{
    const auto count = std::count_if(book.works.begin(), book.works.end(), [](const DueLine &line) {
        return line.work.standing >= DueStanding::Now;
    });
    if (count == 0)
        return ServiceWords::tr("nothing");
    const QString first = said(book.works.front().said);
    return count == 1 ? first : ServiceWords::tr("%1 things").arg(count);
}

QString saidDueNext(const GarageBook &book)
{
    const auto next = std::find_if(book.works.begin(), book.works.end(), [](const DueLine &line) {
        return line.work.standing == DueStanding::Before;
    });
    if (next == book.works.end())
        return ServiceWords::tr("nothing before the next events");
    const auto count = std::count_if(next, book.works.end(), [&by = next->by](const DueLine &line) {
        return line.work.standing == DueStanding::Before && line.by == by;
    });
    return count == 1 ? ServiceWords::tr("1 thing before %1").arg(saidDate(next->by))
                      : ServiceWords::tr("%1 things before %2").arg(count).arg(saidDate(next->by));
}

Standing::Mark markOverdue(const GarageBook &book)
{
    const bool any = !book.works.empty() && book.works.front().work.standing >= DueStanding::Now;
    return any ? Standing::Trap : Standing::Made;
}

} // namespace flarestock
