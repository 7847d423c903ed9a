// SPDX-License-Identifier: MIT

#include "app/desk/service/service_rows.h"
#include "app/desk/service/service_words.h"
#include "app/desk/words/spoken.h"
#include "app/garage/bench_wash.h"

#include <algorithm>

namespace flarestock {

namespace {

QString kindOfPosition(const std::string &position, const GarageBook &book)
{
    if (position.ends_with(".element"))
        return QStringLiteral("element");
    if (position.ends_with(".hose"))
        return QStringLiteral("hose");
    if (position.ends_with(".ring") || position.ends_with(".washer"))
        return QStringLiteral("ring");
    return book.garage.words.contains(position) ? QStringLiteral("station") : QStringLiteral("own");
}

QString lineHeadOf(const std::string &position, const GarageBook &book)
{
    const BuildPlan *plan = book.garage.words.contains(position) ? book.buildOf(position) : nullptr;
    if (!plan)
        return ServiceWords::tr("named by the shop");
    return ServiceWords::tr("%1: %2").arg(saidSystem(book.systemOf(position)),
                                          said(plan->title.empty() ? plan->id : plan->title));
}

Row positionRow(const std::string &position, const GarageBook &book, const PositionsAsked &asked)
{
    const FittedPiece *piece = book.piece({asked.car, position});
    const PieceStanding stands = standingOf(piece, book, asked.car);
    const QString title = said(book.saidPosition({asked.car, position}));
    const QString what = piece ? saidPiece(*piece, *book.workshop, asked.units) : QString();
    const QString since = piece ? saidDate(piece->since) : QString();
    const QString use = piece ? saidUse(piece->sinceFitted) : QString();
    const QString washed = piece ? saidWash(*piece, book, asked.car) : QString();
    const QString note = piece ? saidProtection(*piece, book, asked.car) : QString();
    QStringList says{title};
    if (piece)
        says += {what, ServiceWords::tr("in since %1").arg(since), use};
    if (!washed.isEmpty())
        says.append(ServiceWords::tr("washed %1").arg(washed));
    says.append(stands.words);
    if (!note.isEmpty())
        says.append(note);
    return {said(position),
            {lineHeadOf(position, book), kindOfPosition(position, book), stands.mark, title, what,
             since, use, washed, stands.words, stands.share, note,
             says.join(QStringLiteral(", "))}};
}

/// A piece that is out of the car and waits to be looked at.
Row outRow(const PieceOut &out, const GarageBook &book, const PositionsAsked &asked)
{
    const CarPosition at{asked.car, outPosition(out)};
    const PieceStanding stands = standingAt(at, book);
    const QString title = said(book.saidPosition(at));
    const QString was =
        ServiceWords::tr("was %1").arg(said(book.saidPosition({asked.car, out.position})));
    const QString since = ServiceWords::tr("out %1").arg(saidDate(out.day));
    const QString washed = saidWash(asFitted(out), book, asked.car);
    const QString use = saidUse(out.life);
    const QStringList says{title, was, since, use, stands.words};
    return {said(at.position),
            {ServiceWords::tr("out of the car, to be checked"), QStringLiteral("own"), stands.mark,
             title, was, since, use, washed, stands.words, stands.share, QString(),
             says.join(QStringLiteral(", "))}};
}

/// The worst of a car; how many works of it are due by now, and how many are listed for later.
struct CarStanding {
    DueStanding worst = DueStanding::Fine;
    int due = 0;
    int later = 0;
};

CarStanding carStanding(const GarageBook &book, const std::string &car)
{
    CarStanding standing;
    for (const DueLine &line : book.works) {
        if (!car.empty() && line.car != car)
            continue;
        standing.worst = std::max(standing.worst, line.work.standing);
        standing.due += line.work.standing >= DueStanding::Now ? 1 : 0;
        standing.later +=
            line.work.standing == DueStanding::Before || line.work.standing == DueStanding::Soon
                ? 1
                : 0;
    }
    return standing;
}

Row tabRow(const QString &key, const QString &title, const QString &detail, int mark)
{
    return {key, {title, detail, mark, ServiceWords::tr("%1: %2").arg(title, detail)}};
}

QString saidDueCount(const CarStanding &standing)
{
    if (standing.due == 0)
        return standing.later == 0
                   ? ServiceWords::tr("nothing is due")
                   : ServiceWords::tr("nothing is due, %1 later").arg(standing.later);
    if (standing.later > 0)
        return ServiceWords::tr("%1 due now, %2 later").arg(standing.due).arg(standing.later);
    return standing.due == 1 ? ServiceWords::tr("1 thing is due")
                             : ServiceWords::tr("%1 things are due").arg(standing.due);
}

} // namespace

QStringList sheetTabCells()
{
    return {QStringLiteral("title"), QStringLiteral("detail"), QStringLiteral("mark"),
            QStringLiteral("says")};
}

std::vector<Row> sheetTabRows(const GarageBook &book)
{
    std::vector<Row> rows;
    const CarStanding all = carStanding(book, {});
    rows.push_back(tabRow(QStringLiteral("due"), ServiceWords::tr("All cars"), saidDueCount(all),
                          markOf(all.worst)));
    for (const std::string &car : book.cars) {
        const CarStanding one = carStanding(book, car);
        const bool isKnown = !book.garage.life(car).fitted.empty();
        rows.push_back(tabRow(QString(QStringLiteral("car|") + said(car)),
                              said(book.car(car)->title),
                              isKnown ? saidDueCount(one) : ServiceWords::tr("nothing known of it"),
                              isKnown ? markOf(one.worst) : Standing::Short));
    }
    return rows;
}

QStringList positionCells()
{
    return {QStringLiteral("head"),  QStringLiteral("kind"),   QStringLiteral("mark"),
            QStringLiteral("title"), QStringLiteral("piece"),  QStringLiteral("since"),
            QStringLiteral("use"),   QStringLiteral("washed"), QStringLiteral("standing"),
            QStringLiteral("share"), QStringLiteral("note"),   QStringLiteral("says")};
}

std::vector<Row> positionRows(const GarageBook &book, const PositionsAsked &asked)
{
    std::vector<Row> rows;
    for (const std::string &position : book.positionsOf(asked.car, asked.rings)) {
        Row row = positionRow(position, book, asked);
        if (saysAll(row.cells.last().toString(), asked.words))
            rows.push_back(std::move(row));
    }
    for (const PieceOut *out : book.outOf(asked.car)) {
        Row row = outRow(*out, book, asked);
        if (saysAll(row.cells.last().toString(), asked.words))
            rows.push_back(std::move(row));
    }
    return rows;
}

bool saysAll(const QString &sentence, const QString &words)
{
    const QStringList all = words.split(u' ', Qt::SkipEmptyParts);
    return std::all_of(all.begin(), all.end(), [&sentence](const QString &word) {
        return sentence.contains(word, Qt::CaseInsensitive);
    });
}

QString saidProtection(const FittedPiece &piece, const GarageBook &book, const std::string &car)
{
    const PieceKind kind = book.garage.kindOf(piece);
    if (!kind.isSealed || kind.kind != Kind::Pump)
        return {};
    const FittedPiece *filter = book.garage.protecting(piece, book.garage.life(car));
    if (!filter)
        return ServiceWords::tr("cannot be opened, and no filter stands before it");
    const bool isWashed = filter->washed > 0 && filter->worked != filter->since;
    const QString which = ServiceWords::tr("%1 (%2)").arg(
        said(book.saidPosition({car, filter->position})), saidPiece(filter->piece));
    return isWashed ? ServiceWords::tr("cannot be opened; protected by %1, washed %2")
                          .arg(which, saidDate(filter->worked))
                    : ServiceWords::tr("cannot be opened; protected by %1, in since %2")
                          .arg(which, saidDate(filter->since));
}

} // namespace flarestock
