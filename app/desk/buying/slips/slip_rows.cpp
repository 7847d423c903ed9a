// SPDX-License-Identifier: MIT

#include "app/desk/buying/slips/slip_rows.h"

#include "app/desk/buying/buying_words.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/standing.h"

#include <algorithm>

namespace flarestock {

namespace {

QString aimTitle(PlanAim aim)
{
    switch (aim) {
    case PlanAim::Earliest:
        return BuyingWords::tr("earliest");
    case PlanAim::Parcels:
        return BuyingWords::tr("fewest parcels");
    case PlanAim::Cheapest:
        break;
    }
    return BuyingWords::tr("cheapest");
}

int lateParts(const PurchasePlan &plan)
{
    return static_cast<int>(
        std::count_if(plan.parts.begin(), plan.parts.end(),
                      [](const PlannedPart &one) { return !one.late.empty(); }));
}

/// Whether its worth is less than what is paid at first.
bool hasTaxBack(const PurchasePlan &plan)
{
    return std::any_of(plan.orders.begin(), plan.orders.end(), [](const ProposedOrder &order) {
        return order.tax.sign() > 0 && order.supplier->tax.recovered;
    });
}

QString saidProof(const PurchasePlan &plan, const Currency &currency)
{
    if (plan.figures.isProven)
        return BuyingWords::tr("proven: nothing is better");
    if (!plan.figures.least)
        return BuyingWords::tr("not proven to be the best");
    return BuyingWords::tr("not proven; at most %1 better")
        .arg(saidMoney({plan.figures.worth - *plan.figures.least, currency}));
}

/// Of a plan without an order, as where all that is short was ordered.
Row emptyAimRow(PlanAim aim, bool isShort)
{
    const QString about = isShort ? BuyingWords::tr("nobody sells what is short")
                                  : BuyingWords::tr("nothing is left to order");
    return {said(text(aim)),
            {aimTitle(aim), QString(), about, QString(),
             static_cast<int>(isShort ? Standing::Caution : Standing::Made),
             BuyingWords::tr("%1: %2").arg(aimTitle(aim), about)}};
}

Row aimRow(const SlipBook &book, PlanAim aim)
{
    const PurchasePlan &plan = book.plan(aim);
    if (plan.orders.empty())
        return emptyAimRow(aim, !plan.unplaced.empty());
    const Currency &currency = book.workshop->settings.currency;
    const auto parcels = static_cast<int>(plan.figures.parcels);
    QStringList detail{parcels == 1 ? BuyingWords::tr("1 parcel")
                                    : BuyingWords::tr("%1 parcels").arg(parcels)};
    if (!plan.figures.hereBy.empty())
        detail.append(BuyingWords::tr("last %1").arg(saidDayOf(plan.figures.hereBy, book.today)));
    const int late = lateParts(plan);
    detail.append(late == 0   ? BuyingWords::tr("all in time")
                  : late == 1 ? BuyingWords::tr("1 part late")
                              : BuyingWords::tr("%1 parts late").arg(late));
    if (hasTaxBack(plan))
        detail.append(BuyingWords::tr("without the tax that is got back"));
    const QString worth = saidMoney({plan.figures.worth, currency});
    const QString proof = saidProof(plan, currency);
    const QString about = detail.join(QStringLiteral(", "));
    return {said(text(aim)),
            {aimTitle(aim), worth, about, proof,
             static_cast<int>(late == 0 ? Standing::Made : Standing::Caution),
             BuyingWords::tr("%1: %2, %3, %4").arg(aimTitle(aim), worth, about, proof)}};
}

/// One order of a plan with what says it.
struct Slip {
    const SlipBook &book;
    const PurchasePlan &plan;
    const ProposedOrder &order;
    Units units;

    [[nodiscard]] QString money(const Decimal &amount) const { return saidNumber(amount); }
};

/// Why more is bought than would do; empty where it is not.
QString saidWhyMore(const Slip &slip, const PlannedLine &line, const Part &part)
{
    if (line.least >= line.quantity)
        return {};
    const QString more = saidMuch(line.quantity, part, slip.units);
    const QString least = saidMuch(line.least, part, slip.units);
    if (line.cost < line.leastCost)
        return BuyingWords::tr("%1 cost %2 less than %3")
            .arg(more, slip.money(line.leastCost - line.cost), least);
    if (line.cost == line.leastCost)
        return BuyingWords::tr("%1 cost the same as %2").arg(more, least);
    return BuyingWords::tr("%1 rather than %2: %3 more, for a better freight or his least order")
        .arg(more, least, slip.money(line.cost - line.leastCost));
}

QString saidPack(const Slip &slip, const Offer &offer, const Part &part)
{
    if (offer.pack <= Decimal(1))
        return {};
    return BuyingWords::tr("in packs of %1").arg(saidMuch(offer.pack, part, slip.units));
}

/// What of it stays on the bench, where this order is the only one of the part.
QString saidLeft(const Slip &slip, const Part &part)
{
    for (const PlannedPart &one : slip.plan.parts)
        if (one.part == part.number && one.leftOver.sign() > 0)
            return BuyingWords::tr("need %1, %2 left over")
                .arg(saidMuch(one.shortBy, part, slip.units),
                     saidMuch(one.leftOver, part, slip.units));
    return {};
}

QVariantMap slipLine(const Slip &slip, const PlannedLine &line)
{
    const Part *part = slip.book.workshop->part(line.offer->part);
    QStringList why;
    if (part != nullptr)
        for (const QString &one : {saidPack(slip, *line.offer, *part), saidLeft(slip, *part),
                                   saidWhyMore(slip, line, *part)})
            if (!one.isEmpty())
                why.append(one);
    return {
        {QStringLiteral("part"), said(line.offer->part)},
        {QStringLiteral("what"), part ? said(part->description) : QString()},
        {QStringLiteral("quantity"),
         part ? saidMuch(line.quantity, *part, slip.units) : saidNumber(line.quantity)},
        {QStringLiteral("each"), part ? saidPriceOf(line.priceEach, slip.order.currency, part->unit)
                                      : saidPrice(line.priceEach, slip.order.currency)},
        {QStringLiteral("cost"), slip.money(line.cost)},
        {QStringLiteral("why"), why.join(QStringLiteral("; "))}};
}

QString saidFreight(const Slip &slip)
{
    const Supplier &supplier = *slip.order.supplier;
    QStringList why;
    for (const Supplier::FreightStep &step : supplier.freight)
        if (step.from > slip.order.goods && step.cost < slip.order.freight) {
            why.append(step.cost.sign() == 0
                           ? BuyingWords::tr("none from %1 of goods").arg(slip.money(step.from))
                           : BuyingWords::tr("%1 from %2 of goods")
                                 .arg(slip.money(step.cost), slip.money(step.from)));
            break;
        }
    return why.join(QStringLiteral("; "));
}

/// The least that he sends; empty where he sends anything.
QString saidMinimum(const Slip &slip)
{
    const Decimal &least = slip.order.supplier->minimumOrder;
    return least.sign() > 0 ? BuyingWords::tr("at least %1").arg(slip.money(least)) : QString();
}

QString saidTax(const Slip &slip)
{
    const TaxRule &tax = slip.order.supplier->tax;
    if (tax.percent.sign() == 0)
        return BuyingWords::tr("none charged");
    const QString percent = saidNumber(tax.percent.stripped());
    return tax.recovered ? BuyingWords::tr("%1 %, got back").arg(percent)
                         : BuyingWords::tr("%1 %").arg(percent);
}

/// A draft of that supplier that has one of the slip's parts.
QString draftThere(const Slip &slip)
{
    for (const auto &[number, booked] : slip.book.workshop->bought.orders.orders) {
        const Order &order = booked.now();
        if (order.state != OrderState::Draft || order.supplier != slip.order.supplier->id)
            continue;
        for (const PlannedLine &line : slip.order.lines)
            if (order.line(line.offer->part))
                return said(number);
    }
    return {};
}

QString saidDays(const Slip &slip)
{
    const QString here = saidDayOf(slip.order.hereBy, slip.book.today);
    if (slip.order.orderBy.empty())
        return BuyingWords::tr("ordered today, all here %1").arg(here);
    const QString by = saidDayOf(slip.order.orderBy, slip.book.today);
    return slip.order.orderBy < slip.book.today
               ? BuyingWords::tr("to be ordered by %1, which is over; all here %2").arg(by, here)
               : BuyingWords::tr("order by %1; ordered today, all here %2").arg(by, here);
}

Row slipRow(const Slip &slip)
{
    const ProposedOrder &order = slip.order;
    QVariantList lines;
    for (const PlannedLine &line : order.lines)
        lines.append(slipLine(slip, line));
    const Currency &own = slip.book.workshop->settings.currency;
    const QString name =
        said(order.supplier->name.empty() ? order.supplier->id : order.supplier->name);
    const QString total = saidMoney({order.total, order.currency});
    const QString worth = order.currency == own
                              ? QString()
                              : BuyingWords::tr("counts as %1").arg(saidMoney({order.worth, own}));
    const auto count = static_cast<int>(order.lines.size());
    return {slipKey(order),
            {name, saidDays(slip), !order.orderBy.empty() && order.orderBy < slip.book.today, lines,
             slip.money(order.goods), saidMinimum(slip), slip.money(order.freight),
             saidFreight(slip), slip.money(order.tax), saidTax(slip), total, worth,
             draftThere(slip),
             (count == 1 ? BuyingWords::tr("%1, %2: 1 line, %3").arg(name, saidDays(slip), total)
                         : BuyingWords::tr("%1, %2: %3 lines, %4")
                               .arg(name, saidDays(slip), QString::number(count), total))}};
}

} // namespace

QStringList aimCells()
{
    return {QStringLiteral("title"), QStringLiteral("worth"), QStringLiteral("detail"),
            QStringLiteral("proof"), QStringLiteral("mark"),  QStringLiteral("says")};
}

std::vector<Row> aimRows(const SlipBook &book)
{
    std::vector<Row> rows;
    for (const PlanAim aim : {PlanAim::Cheapest, PlanAim::Earliest, PlanAim::Parcels})
        rows.push_back(aimRow(book, aim));
    return rows;
}

QStringList slipCells()
{
    return {QStringLiteral("name"),    QStringLiteral("days"),       QStringLiteral("late"),
            QStringLiteral("lines"),   QStringLiteral("goods"),      QStringLiteral("goodsWhy"),
            QStringLiteral("freight"), QStringLiteral("freightWhy"), QStringLiteral("tax"),
            QStringLiteral("taxWhy"),  QStringLiteral("total"),      QStringLiteral("worth"),
            QStringLiteral("draft"),   QStringLiteral("says")};
}

QString slipKey(const ProposedOrder &order)
{
    return QString(said(order.supplier->id) + u'|' + said(order.currency.code()));
}

std::vector<Row> slipRows(const SlipBook &book, PlanAim aim, Units units)
{
    std::vector<Row> rows;
    const PurchasePlan &plan = book.plan(aim);
    for (const ProposedOrder &order : plan.orders)
        rows.push_back(slipRow({book, plan, order, units}));
    return rows;
}

} // namespace flarestock
