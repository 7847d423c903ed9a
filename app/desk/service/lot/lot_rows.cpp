// SPDX-License-Identifier: MIT

#include "app/desk/service/lot/lot_rows.h"

#include "app/desk/service/service_words.h"
#include "app/desk/words/condition_words.h"
#include "app/desk/words/spoken.h"
#include "app/stockroom/asked.h"
#include "app/workshop/made_up.h"

namespace flarestock {

namespace {

/// Who looks a lot up has not said that it is bad.
QString saidAct(const TraceAct &act)
{
    if (act.todo == "stop using")
        return ServiceWords::tr("if it is bad: stop using it");
    if (act.todo == "set aside")
        return ServiceWords::tr("if it is bad: set it aside");
    if (act.todo == "inspect")
        return ServiceWords::tr("if it is bad: inspect it");
    return act.todo == "ask back" ? ServiceWords::tr("if it is bad: ask it back") : said(act.todo);
}

Standing::Mark markOf(const TraceAct &act)
{
    if (act.lies.place->kind == PlaceKind::Car)
        return act.system == "brakes" || act.system == "fuel" ? Standing::Trap : Standing::Caution;
    return isStock(act.lies.place->kind) ? Standing::Note : Standing::Caution;
}

QString saidSome(std::int64_t quantity, const std::string &number, const LotShown &shown)
{
    const Part *part = shown.book.workshop->part(number);
    return part ? saidAmount(Quantity::ofSmallest(quantity, part->unit), shown.units)
                : QLocale().toString(quantity);
}

/// In a car its positions as people say them, and before which event; else what it is.
QString detailOf(const TraceAct &act, const GarageBook &book)
{
    QStringList parts;
    const QString positions = said(act.lies.position);
    for (const QString &one : positions.split(QStringLiteral(", "), Qt::SkipEmptyParts))
        parts.append(said(book.saidPosition({act.lies.key.place, one.toStdString()})));
    if (!act.system.empty())
        parts.append(saidSystem(act.system));
    if (!act.event.empty())
        parts.append(ServiceWords::tr("before %1, %2")
                         .arg(saidEvent(act.event, *book.workshop), saidDate(act.by)));
    if (act.lies.place->kind != PlaceKind::Car)
        parts.append(saidCondition(act.lies.key.condition));
    return parts.join(QStringLiteral(", "));
}

class CameRows {
public:
    void add(const QString &head, const QString &title, const QString &detail = {},
             bool flagged = false)
    {
        const QString says =
            detail.isEmpty() ? title : ServiceWords::tr("%1, %2").arg(title, detail);
        m_rows.push_back(
            {QString::number(m_rows.size()),
             {head == m_head ? QString() : head, title, detail, QString(), flagged, says}});
        m_head = head;
    }
    [[nodiscard]] std::vector<Row> take() { return std::move(m_rows); }

private:
    QString m_head;
    std::vector<Row> m_rows;
};

QString listOf(const std::set<std::string> &all)
{
    QStringList words;
    for (const std::string &one : all)
        words.append(said(one));
    return words.join(QStringLiteral(", "));
}

void addCars(CameRows &rows, const LotShown &shown)
{
    for (const CarriedBy &one : shown.trace.cars) {
        const Place *car = shown.book.car(one.car);
        const QString title = said(car ? car->title : one.car);
        rows.add(ServiceWords::tr("Which cars"),
                 one.has ? ServiceWords::tr("%1 has it").arg(title)
                         : ServiceWords::tr("%1 had it").arg(title),
                 one.builds.empty() ? QString()
                                    : ServiceWords::tr("for %1").arg(listOf(one.builds)));
    }
}

} // namespace

QStringList lotActCells()
{
    return {QStringLiteral("mark"),   QStringLiteral("todo"),  QStringLiteral("title"),
            QStringLiteral("amount"), QStringLiteral("where"), QStringLiteral("detail"),
            QStringLiteral("free"),   QStringLiteral("says")};
}

std::vector<Row> lotActRows(const LotShown &shown)
{
    std::vector<Row> rows;
    for (const TraceAct &act : shown.trace.acts) {
        const QString title = saidPiece(LotKey{act.lies.key.part, act.lies.key.lot});
        const QString amount = saidSome(act.lies.quantity, act.lies.key.part, shown);
        const QString where = said(act.lies.place->title);
        const QString detail = detailOf(act, shown.book);
        const QString free =
            act.free.empty()
                ? QString()
                : ServiceWords::tr("%1 free to go in instead").arg(localised(said(act.free)));
        QStringList says{saidAct(act), title, amount, where};
        for (const QString &more : {detail, free}) {
            if (!more.isEmpty())
                says.append(more);
        }
        rows.push_back({QString::number(rows.size()),
                        {markOf(act), saidAct(act), title, amount, where, detail, free,
                         says.join(QStringLiteral(", "))}});
    }
    return rows;
}

std::vector<Row> lotCameRows(const LotShown &shown)
{
    CameRows rows;
    const Ledger &ledger = shown.book.workshop->ledger;
    for (const CameIn &one : shown.trace.cameIn) {
        const Movement &movement = one.movement;
        const Place *from = ledger.place(movement.from);
        const QString piece =
            saidPiece(LotKey{movement.part, movement.newLot.value_or(movement.lot)});
        const QString where = one.opening ? ServiceWords::tr("was there on the first day")
                                          : said(from ? from->title : movement.from);
        const QString amount = saidSome(movement.quantity, movement.part, shown);
        rows.add(ServiceWords::tr("Where it came from"),
                 ServiceWords::tr("%1 × %2").arg(amount, piece),
                 movement.document.empty()
                     ? ServiceWords::tr("%1, %2").arg(where, saidDate(dayOf(movement.at)))
                     : ServiceWords::tr("%1, %2, %3")
                           .arg(where, saidDate(dayOf(movement.at)), said(movement.document)));
    }
    addCars(rows, shown);
    if (!shown.trace.hoses.empty())
        rows.add(ServiceWords::tr("What was made of it"), listOf(shown.trace.hoses),
                 ServiceWords::tr("made-up hoses"));
    for (const LotKey &one : shown.trace.unnamed)
        rows.add(
            ServiceWords::tr("Not told apart"), said(one.part),
            ServiceWords::tr("some of it went among pieces without a lot: look at all of them"),
            true);
    return rows.take();
}

} // namespace flarestock
