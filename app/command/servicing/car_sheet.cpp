// SPDX-License-Identifier: MIT

#include "app/command/servicing/car_sheet.h"

#include "app/command/text_table.h"
#include "app/garage/cautions.h"

#include <QJsonArray>

namespace flarestock {

namespace {

std::string hoursText(const Decimal &hours)
{
    return hours.stripped().text();
}

QJsonObject documentOf(const FittedPiece &piece, const Garage &garage, const CarLife &life)
{
    const Part *part = garage.workshop->part(piece.piece.part);
    const std::string state = stateOf(piece, garage, life.car);
    const auto spent = spentBecause(piece, garage.intervalsOf(piece, life.car));
    return {{QStringLiteral("position"), jsonText(piece.position)},
            {QStringLiteral("said"), jsonText(garage.said(piece))},
            {QStringLiteral("build"), textOrNull(piece.build)},
            {QStringLiteral("part"), jsonText(piece.piece.part)},
            {QStringLiteral("description"), part ? jsonText(part->description) : QJsonValue()},
            {QStringLiteral("lot"), textOrNull(piece.piece.lot)},
            {QStringLiteral("quantity"),
             part ? jsonText(amountText(piece.quantity, *part)) : QStringLiteral("1")},
            {QStringLiteral("unit"), part ? jsonText(text(part->unit)) : QJsonValue()},
            {QStringLiteral("since"), jsonText(piece.since)},
            {QStringLiteral("washedOn"), piece.worked == piece.since && piece.washed == 0
                                             ? QJsonValue()
                                             : jsonText(piece.worked)},
            {QStringLiteral("seenOn"), jsonText(piece.seen)},
            {QStringLiteral("washed"), static_cast<qint64>(piece.washed)},
            {QStringLiteral("made"), textOrNull(piece.made)},
            {QStringLiteral("useBy"), textOrNull(piece.useBy)},
            {QStringLiteral("sinceFitted"), useDocument(piece.sinceFitted)},
            {QStringLiteral("sinceWashed"), useDocument(piece.sinceWorked)},
            {QStringLiteral("sinceSeen"), useDocument(piece.sinceSeen)},
            {QStringLiteral("life"), useDocument(piece.life)},
            {QStringLiteral("state"), jsonText(state)},
            {QStringLiteral("spentBecause"), textOrNull(spent)},
            {QStringLiteral("protectedBy"), textOrNull(protectedBy(piece, garage, life))},
            {QStringLiteral("note"), textOrNull(piece.note)}};
}

QJsonObject documentOf(const PieceOut &out)
{
    return {{QStringLiteral("part"), jsonText(out.piece.part)},
            {QStringLiteral("lot"), jsonText(out.piece.lot)},
            {QStringLiteral("position"), jsonText(out.position)},
            {QStringLiteral("day"), jsonText(out.day)},
            {QStringLiteral("is"), jsonText(text(out.is))},
            {QStringLiteral("washed"), static_cast<qint64>(out.washed)},
            {QStringLiteral("life"), useDocument(out.life)}};
}

} // namespace

QJsonObject useDocument(const Use &use)
{
    return {{QStringLiteral("runs"), static_cast<qint64>(use.runs)},
            {QStringLiteral("hours"), jsonText(hoursText(use.hours))},
            {QStringLiteral("events"), static_cast<qint64>(use.eventCount())}};
}

std::string protectedBy(const FittedPiece &piece, const Garage &garage, const CarLife &life)
{
    const FittedPiece *last = garage.protecting(piece, life);
    if (!last)
        return {};
    const bool washed = last->washed > 0 && last->worked != last->since;
    return garage.said(*last) + " " + pieceText(last->piece) +
           (washed ? ", washed " + last->worked : ", in since " + last->since);
}

std::string carSheet(const std::string &car, const Garage &garage, bool all)
{
    using Side = TextTable::Side;
    using Shown = TextTable::Shown;
    const CarLife &life = garage.life(car);
    TextTable table({{"position", Side::Left},
                     {"piece", Side::Left},
                     {"since", Side::Left},
                     {"runs", Side::Right},
                     {"h", Side::Right},
                     {"events", Side::Right},
                     {"washed", Side::Right, Shown::WhereFilled},
                     {"last", Side::Left, Shown::WhereFilled},
                     {"until", Side::Left, Shown::WhereFilled},
                     {"state", Side::Left},
                     {"protected by", Side::Left, Shown::WhereFilled}});
    for (const FittedPiece &piece : life.fitted) {
        if (!all && isPlainRing(piece))
            continue;
        const std::string spent = spentBecause(piece, garage.intervalsOf(piece, car));
        table.add({piece.position, pieceText(piece.piece), piece.since,
                   std::to_string(piece.sinceFitted.runs), hoursText(piece.sinceFitted.hours),
                   std::to_string(piece.sinceFitted.eventCount()),
                   piece.washed == 0 ? "" : std::to_string(piece.washed),
                   piece.washed == 0 ? "" : piece.worked, piece.useBy,
                   spent.empty() ? "in" : "spent: " + spent, protectedBy(piece, garage, life)});
    }
    const Use use = life.use();
    std::string text = car + ": " + counted(static_cast<std::size_t>(use.runs), "run") + ", " +
                       hoursText(use.hours) + " h at " +
                       counted(static_cast<std::size_t>(use.eventCount()), "event") + "\n" +
                       table.text();
    for (const PieceOut &out : life.out)
        text += "  out since " + out.day + ": " + pieceText(out.piece) + " of " + out.position +
                ", " + std::string(flarestock::text(out.is)) +
                (out.washed == 0 ? "" : ", washed " + std::to_string(out.washed) + " times") + "\n";
    return text;
}

QJsonObject carDocument(const std::string &car, const Garage &garage)
{
    const CarLife &life = garage.life(car);
    QJsonArray positions;
    for (const FittedPiece &piece : life.fitted)
        positions.append(documentOf(piece, garage, life));
    QJsonArray out;
    for (const PieceOut &one : life.out)
        out.append(documentOf(one));
    QJsonArray outings;
    for (const Outing &one : life.outings)
        outings.append(QJsonObject{{QStringLiteral("record"), jsonText(one.id.text())},
                                   {QStringLiteral("event"), jsonText(one.event)},
                                   {QStringLiteral("day"), jsonText(one.day)},
                                   {QStringLiteral("runs"), static_cast<qint64>(one.runs)},
                                   {QStringLiteral("hours"), jsonText(hoursText(one.hours))}});
    QJsonArray done;
    for (const Serviced &one : life.done)
        done.append(QJsonObject{{QStringLiteral("record"), jsonText(one.id.text())},
                                {QStringLiteral("day"), jsonText(one.day)},
                                {QStringLiteral("work"), jsonText(text(one.work))},
                                {QStringLiteral("position"), jsonText(one.position)},
                                {QStringLiteral("part"), jsonText(one.piece.part)},
                                {QStringLiteral("lot"), jsonText(one.piece.lot)},
                                {QStringLiteral("who"), jsonText(one.who)},
                                {QStringLiteral("why"), jsonText(one.note)}});
    return {
        {QStringLiteral("car"), jsonText(car)},   {QStringLiteral("ran"), useDocument(life.use())},
        {QStringLiteral("positions"), positions}, {QStringLiteral("out"), out},
        {QStringLiteral("outings"), outings},     {QStringLiteral("done"), done}};
}

std::string saidOf(const WorkDone &done)
{
    std::string said;
    for (const Renewed &ring : done.rings)
        said += "  " + ring.part->number + ": " + spoken(ring.taken, *ring.part) + " fresh" +
                (ring.shortBy() > 0 ? ", " + spoken(ring.shortBy(), *ring.part) + " short" : "") +
                "\n";
    const bool wasOpened =
        done.serviced.work != Work::Inspected && done.serviced.work != Work::Damaged;
    if (wasOpened)
        said += "  " + std::string(OpeningCaution) + "\n";
    if (done.isOpen)
        said += "  " + done.serviced.build + " is open again: leak-test it\n";
    return said + std::string(text(done.serviced.work)) + ": " + done.said + " of " +
           done.serviced.car + ", " + pieceText(done.serviced.piece);
}

QJsonObject documentOf(const WorkDone &done, const Workshop &workshop)
{
    QJsonArray rings;
    for (const Renewed &ring : done.rings)
        rings.append(QJsonObject{
            {QStringLiteral("part"), jsonText(ring.part->number)},
            {QStringLiteral("need"), jsonText(amountText(ring.need, *ring.part))},
            {QStringLiteral("taken"), jsonText(amountText(ring.taken, *ring.part))},
            {QStringLiteral("short"), jsonText(amountText(ring.shortBy(), *ring.part))}});
    QJsonArray movements;
    for (const Movement &movement : done.action.movements)
        movements.append(movementDocument(movement, workshop));
    const Serviced &one = done.serviced;
    return {{QStringLiteral("car"), jsonText(one.car)},
            {QStringLiteral("work"), jsonText(text(one.work))},
            {QStringLiteral("position"), jsonText(one.position)},
            {QStringLiteral("part"), jsonText(one.piece.part)},
            {QStringLiteral("lot"), jsonText(one.piece.lot)},
            {QStringLiteral("day"), jsonText(one.day)},
            {QStringLiteral("rings"), rings},
            {QStringLiteral("movements"), movements},
            {QStringLiteral("leakTestDue"), done.isOpen},
            {QStringLiteral("caution"), jsonText(OpeningCaution)}};
}

} // namespace flarestock
