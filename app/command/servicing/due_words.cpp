// SPDX-License-Identifier: MIT

#include "app/command/servicing/due_words.h"

#include "app/command/text_table.h"
#include "app/stockroom/asked.h"

#include <QJsonArray>

namespace flarestock {

namespace {

template <class T>
QJsonValue orNull(const std::optional<T> &number)
{
    return number ? QJsonValue(static_cast<qint64>(*number)) : QJsonValue();
}

} // namespace

std::string dueSheet(const std::vector<DueLine> &lines, const Garage &garage)
{
    using Side = TextTable::Side;
    using Shown = TextTable::Shown;
    if (lines.empty())
        return "nothing is due\n";
    TextTable table({{"when", Side::Left},
                     {"car", Side::Left},
                     {"do", Side::Left},
                     {"position", Side::Left},
                     {"piece", Side::Left},
                     {"by", Side::Left, Shown::WhereFilled},
                     {"before", Side::Left, Shown::WhereFilled},
                     {"why", Side::Left},
                     {"takes", Side::Left, Shown::WhereFilled}});
    for (const DueLine &line : lines) {
        const LotKey &piece = line.work.piece->piece;
        table.add({std::string(text(line.work.standing)), line.car,
                   std::string(doText(line.work.todo)), line.work.piece->position,
                   piece.lot.empty() ? piece.part : piece.part + " " + piece.lot, line.by,
                   line.work.before, whyText(line.work), partsText(line)});
    }
    return table.text() +
           (garage.ownIntervals
                ? ""
                : "  by the usual intervals: the shop has no intervals.csv of its own\n");
}

QJsonObject dueDocument(const DueLine &line)
{
    const DueWork &work = line.work;
    QJsonArray why;
    for (const std::string &one : work.why)
        why.append(jsonText(one));
    QJsonArray stops;
    for (const std::string &one : work.stops)
        stops.append(jsonText(one));
    QJsonArray parts;
    for (const DuePart &one : line.parts)
        parts.append(
            QJsonObject{{QStringLiteral("part"), jsonText(one.part->number)},
                        {QStringLiteral("need"), jsonText(amountText(one.need, *one.part))},
                        {QStringLiteral("free"), jsonText(amountText(one.free, *one.part))},
                        {QStringLiteral("short"), jsonText(amountText(one.shortBy(), *one.part))},
                        {QStringLiteral("unit"), jsonText(text(one.part->unit))}});
    return {{QStringLiteral("car"), jsonText(line.car)},
            {QStringLiteral("position"), jsonText(work.piece->position)},
            {QStringLiteral("said"), jsonText(line.said)},
            {QStringLiteral("part"), jsonText(work.piece->piece.part)},
            {QStringLiteral("lot"), textOrNull(work.piece->piece.lot)},
            {QStringLiteral("do"), jsonText(doText(work.todo))},
            {QStringLiteral("standing"), jsonText(text(work.standing))},
            {QStringLiteral("by"), textOrNull(line.by)},
            {QStringLiteral("runsLeft"), orNull(work.runsLeft)},
            {QStringLiteral("hoursLeft"),
             work.hoursLeft ? jsonText(work.hoursLeft->stripped().text()) : QJsonValue()},
            {QStringLiteral("eventsLeft"), orNull(work.eventsLeft)},
            {QStringLiteral("lastDay"), textOrNull(work.lastDay)},
            {QStringLiteral("before"), textOrNull(work.before)},
            {QStringLiteral("stops"), stops},
            {QStringLiteral("why"), why},
            {QStringLiteral("source"),
             work.interval ? textOrNull(work.interval->source) : QJsonValue()},
            {QStringLiteral("parts"), parts}};
}

} // namespace flarestock
