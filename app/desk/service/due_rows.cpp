// SPDX-License-Identifier: MIT

#include "app/desk/service/service_rows.h"
#include "app/desk/service/service_words.h"
#include "app/desk/words/spoken.h"

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

Row dueRow(const DueLine &line, const GarageBook &book, std::size_t number, Units units)
{
    const DueWork &work = line.work;
    const QString where = said(line.said);
    const QString piece = saidWhich(line, book);
    const QString state = saidStanding(line, book);
    const QString takes = saidTakes(line, units);
    QStringList says{where, piece, state, saidReasons(work)};
    says.removeAll(QString());
    if (!takes.isEmpty())
        says.append(ServiceWords::tr("takes %1").arg(takes));
    const PieceStanding stands = standingOf(work.piece, book, line.car);
    const int mark = stands.mark == Standing::Open ? stands.mark : markOf(work.standing);
    const QString key =
        QStringLiteral("%1|%2|%3")
            .arg(said(line.car), said(work.piece->position), QString::number(number));
    return {key,
            {dueHeadOf(line, book), mark, where, piece, state, saidReasons(work), takes,
             lacksParts(line), says.join(QStringLiteral(", "))}};
}

/// What is to be done to a car, or to all where it is empty, in the order of the book.
template <class Wanted>
std::vector<const DueLine *> worksOf(const GarageBook &book, std::string_view car, Wanted isWanted)
{
    std::vector<const DueLine *> works;
    for (const DueLine &line : book.works) {
        if ((car.empty() || line.car == car) && isWanted(line))
            works.push_back(&line);
    }
    return works;
}

} // namespace

QStringList dueCells()
{
    return {QStringLiteral("head"),  QStringLiteral("mark"),     QStringLiteral("title"),
            QStringLiteral("piece"), QStringLiteral("standing"), QStringLiteral("why"),
            QStringLiteral("takes"), QStringLiteral("lacks"),    QStringLiteral("says")};
}

std::vector<Row> dueRows(const GarageBook &book, const QString &words, Units units)
{
    std::vector<Row> rows;
    std::map<const FittedPiece *, std::size_t> numbers;
    for (const DueLine &line : book.works) {
        if (line.work.standing == DueStanding::Fine)
            continue;
        Row row = dueRow(line, book, ++numbers[line.work.piece], units);
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

QString saidTakes(const DueLine &line, Units units)
{
    QStringList all;
    for (const DuePart &one : line.parts) {
        const auto much = [&one, units](std::int64_t smallest) {
            return saidAmount(Quantity::ofSmallest(smallest, one.part->unit), units);
        };
        const QString part =
            ServiceWords::tr("%1 × %2").arg(much(one.need), said(one.part->number));
        all.append(one.shortBy() == 0
                       ? part
                       : ServiceWords::tr("%1, %2 short").arg(part, much(one.shortBy())));
    }
    return all.join(QStringLiteral("; "));
}

QString saidOverdue(const GarageBook &book, std::string_view car)
{
    const auto over = worksOf(
        book, car, [](const DueLine &line) { return line.work.standing >= DueStanding::Now; });
    return over.empty()       ? ServiceWords::tr("nothing")
           : over.size() == 1 ? said(over.front()->said)
                              : ServiceWords::tr("%1 things").arg(over.size());
}

QString saidDueNext(const GarageBook &book, std::string_view car)
{
    const auto before = worksOf(
        book, car, [](const DueLine &line) { return line.work.standing == DueStanding::Before; });
    if (before.empty())
        return ServiceWords::tr("nothing before the next events");
    const std::string &by = before.front()->by;
    const auto count = std::count_if(before.begin(), before.end(),
                                     [&by](const DueLine *line) { return line->by == by; });
    return count == 1 ? ServiceWords::tr("1 thing before %1").arg(saidDate(by))
                      : ServiceWords::tr("%1 things before %2").arg(count).arg(saidDate(by));
}

Standing::Mark markOverdue(const GarageBook &book, std::string_view car)
{
    const auto over = worksOf(
        book, car, [](const DueLine &line) { return line.work.standing >= DueStanding::Now; });
    return over.empty() ? Standing::Made : Standing::Trap;
}

} // namespace flarestock
