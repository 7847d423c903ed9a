// SPDX-License-Identifier: MIT

#include "app/desk/buying/box/box_rows.h"

#include "app/desk/buying/buying_words.h"
#include "app/desk/words/spoken.h"

namespace flarestock {

namespace {

QString markHint(TickMark marks)
{
    switch (marks) {
    case TickMark::Serial:
        return BuyingWords::tr("serial; - for none");
    case TickMark::Batch:
        return BuyingWords::tr("batch; - for none");
    case TickMark::PieceName:
        return BuyingWords::tr("name of the piece");
    case TickMark::None:
        break;
    }
    return {};
}

QString much(std::int64_t amount, const Tick &tick, Units units)
{
    return saidAmount(Quantity::ofSmallest(amount, tick.part->unit), units);
}

Row boxRow(const Ticks &ticks, std::size_t at, Units units)
{
    const Tick &tick = ticks.all()[at];
    const std::int64_t lacks = ticks.lacks(at);
    const bool full = tick.came >= tick.count;
    const QString amount = much(tick.count, tick, units);
    const QString came =
        tick.came == 0 || (full && tick.came == tick.count)
            ? QString()
            : BuyingWords::tr("%1 of %2").arg(much(tick.came, tick, units), amount);
    const QString says = tick.isContent() ? lacks > 0
                                                ? BuyingWords::tr("%1 of %2, in its box: not there")
                                                : BuyingWords::tr("%1 of %2, in its box")
                                          : BuyingWords::tr("%1 of %2");
    return {QString::number(at),
            {said(tick.part->number), said(tick.part->description), amount, came,
             isLength(tick.part->unit), said(tick.mark), markHint(tick.marks), said(tick.to),
             tick.isContent(), full, lacks > 0 ? BuyingWords::tr("not in the box") : QString(),
             says.arg(amount, said(tick.part->number)),
             typedAmount(Quantity::ofSmallest(tick.count, tick.part->unit), units)}};
}

/// What is there and nobody has ordered.
QString saidOver(const Ticks &ticks, Units units)
{
    QStringList all;
    for (const Tick &tick : ticks.all()) {
        if (tick.came > tick.count)
            all.append(
                BuyingWords::tr("%1 of %2")
                    .arg(much(tick.came - tick.count, tick, units), said(tick.part->number)));
    }
    return all.isEmpty() ? QString()
                         : BuyingWords::tr("More than was ordered, and shares its cost: %1. Count "
                                           "again, or leave them out and send them back.")
                               .arg(all.join(QStringLiteral(", ")));
}

} // namespace

QStringList boxCells()
{
    return {QStringLiteral("part"),     QStringLiteral("what"),   QStringLiteral("amount"),
            QStringLiteral("came"),     QStringLiteral("length"), QStringLiteral("mark"),
            QStringLiteral("markHint"), QStringLiteral("to"),     QStringLiteral("content"),
            QStringLiteral("full"),     QStringLiteral("lacks"),  QStringLiteral("says"),
            QStringLiteral("typed")};
}

std::vector<Row> boxRows(const Ticks &ticks, Units units)
{
    std::vector<Row> rows;
    for (std::size_t at = 0; at < ticks.all().size(); ++at)
        rows.push_back(boxRow(ticks, at, units));
    return rows;
}

QString saidLacking(const Ticks &ticks, Units units)
{
    QStringList all;
    for (std::size_t at = 0; at < ticks.all().size(); ++at)
        if (const std::int64_t lacks = ticks.lacks(at); lacks > 0)
            all.append(BuyingWords::tr("%1 %2 of the box of %3")
                           .arg(QString::number(lacks), said(ticks.all()[at].part->number),
                                said(ticks.all()[*ticks.all()[at].inBoxOf].part->number)));
    QStringList sentences;
    if (!all.isEmpty())
        sentences.append(
            BuyingWords::tr("Lacks, and becomes a claim: %1.").arg(all.join(QStringLiteral(", "))));
    if (const QString over = saidOver(ticks, units); !over.isEmpty())
        sentences.append(over);
    return sentences.join(QLatin1Char(' '));
}

} // namespace flarestock
