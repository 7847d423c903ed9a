// SPDX-License-Identifier: MIT

#include "app/desk/buying/orders/orders_told.h"

#include "app/desk/buying/buying_words.h"
#include "app/desk/buying/orders/order_history.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/standing.h"
#include "app/workshop/made_up.h"
#include "model/buying/totals.h"

#include <algorithm>

namespace flarestock {

namespace {

/// Where it stands in the list: the lower the nearer to the top.
int groupOf(const BookedOrder &order)
{
    if (order.standing() == OrderStanding::Draft)
        return 0;
    return order.isOnItsWay() ? 1 : 2;
}

QString groupTitle(int group)
{
    return group == 0   ? BuyingWords::tr("drafts")
           : group == 1 ? BuyingWords::tr("on their way")
                        : BuyingWords::tr("over");
}

bool isBefore(const BookedOrder &a, const BookedOrder &b)
{
    const int first = groupOf(a);
    if (first != groupOf(b))
        return first < groupOf(b);
    if (first == 1 && a.nextDue() != b.nextDue())
        return a.nextDue() < b.nextDue();
    return a.now().number > b.now().number;
}

bool isLate(const BookedOrder &order, const std::string &today)
{
    return order.isOnItsWay() && !order.nextDue().empty() && order.nextDue() < today;
}

QString saidDue(const BookedOrder &order, const std::string &today)
{
    const Order &now = order.now();
    const int open = static_cast<int>(
        std::count_if(now.lines.begin(), now.lines.end(),
                      [&](const OrderLine &line) { return order.awaited(line).sign() > 0; }));
    if (order.standing() == OrderStanding::Draft)
        return BuyingWords::tr("made %1").arg(saidDayOf(now.day, today));
    if (open == 0)
        return BuyingWords::tr("placed %1").arg(saidDayOf(now.day, today));
    const QString lines = open == 1 ? BuyingWords::tr("1 line to come")
                                    : BuyingWords::tr("%1 lines to come").arg(open);
    const std::string due = order.nextDue();
    if (due.empty())
        return BuyingWords::tr("%1, no day said").arg(lines);
    return isLate(order, today)
               ? BuyingWords::tr("! %1, was due %2").arg(lines, saidDayOf(due, today))
               : BuyingWords::tr("%1, due %2").arg(lines, saidDayOf(due, today));
}

int markOf(const BookedOrder &order, const std::string &today)
{
    if (isLate(order, today))
        return Standing::Caution;
    switch (order.standing()) {
    case OrderStanding::Draft:
    case OrderStanding::Cancelled:
        return Standing::Note;
    case OrderStanding::Placed:
    case OrderStanding::PartlyReceived:
        return Standing::Needs;
    case OrderStanding::Closed:
        break;
    }
    return Standing::Made;
}

Row listRow(const BookedOrder &order, const Workshop &shop, const std::string &today)
{
    const Order &now = order.now();
    const QString supplier = saidSupplier(now.supplier, shop.catalogue);
    const QString state = saidOrderState(order.standing());
    const QString total = saidMoney({totalsOf(now).all.total(), now.currency});
    const QString due = saidDue(order, today);
    return {said(now.number),
            {said(now.number), supplier, state, due, total, groupTitle(groupOf(order)),
             markOf(order, today),
             BuyingWords::tr("order %1, %2, %3, %4, %5")
                 .arg(said(now.number), supplier, state, due, total)}};
}

Row fact(const QString &key, const QString &title, const QString &detail, bool flagged = false)
{
    return {key, {title, detail, flagged}};
}

QString saidLate(LateKind kind)
{
    switch (kind) {
    case LateKind::Freight:
        return BuyingWords::tr("freight that came late");
    case LateKind::Duty:
        return BuyingWords::tr("duty that came late");
    case LateKind::Tax:
        return BuyingWords::tr("tax that came late");
    case LateKind::Credit:
        return BuyingWords::tr("credit");
    case LateKind::Other:
        break;
    }
    return BuyingWords::tr("charged late");
}

void addLate(std::vector<Row> &facts, const BookedOrder &order, const Workshop &shop)
{
    for (const LateCost &late : shop.bought.lateCosts) {
        if (late.order != order.now().number)
            continue;
        std::int64_t inStock = 0;
        for (const LateShare &share : late.shares)
            inStock += share.inStock;
        const auto money = [&](std::int64_t micro) {
            return saidMoney({Decimal::scaled(micro, 6).rescaled(2, Rounding::HalfEven),
                              shop.settings.currency});
        };
        facts.push_back(fact(said(late.id.text()), saidLate(late.kind),
                             BuyingWords::tr("%1, of it %2 on what is still here")
                                 .arg(money(late.amount), money(inStock))));
    }
}

} // namespace

QString saidOrderState(OrderStanding standing)
{
    switch (standing) {
    case OrderStanding::Draft:
        return BuyingWords::tr("draft");
    case OrderStanding::Placed:
        return BuyingWords::tr("placed");
    case OrderStanding::PartlyReceived:
        return BuyingWords::tr("partly received");
    case OrderStanding::Closed:
        return BuyingWords::tr("closed");
    case OrderStanding::Cancelled:
        break;
    }
    return BuyingWords::tr("cancelled");
}

QStringList orderListCells()
{
    return {QStringLiteral("number"), QStringLiteral("supplier"), QStringLiteral("stands"),
            QStringLiteral("days"),   QStringLiteral("total"),    QStringLiteral("section"),
            QStringLiteral("mark"),   QStringLiteral("says")};
}

std::vector<Row> orderListRows(const Workshop &shop, const std::string &today)
{
    std::vector<const BookedOrder *> orders;
    for (const auto &[number, order] : shop.bought.orders.orders) {
        if (!isGivenUpDraft(order))
            orders.push_back(&order);
    }
    std::sort(orders.begin(), orders.end(),
              [](const BookedOrder *a, const BookedOrder *b) { return isBefore(*a, *b); });
    std::vector<Row> rows;
    rows.reserve(orders.size());
    for (const BookedOrder *order : orders)
        rows.push_back(listRow(*order, shop, today));
    return rows;
}

QStringList orderLineCells()
{
    return {QStringLiteral("part"), QStringLiteral("what"), QStringLiteral("quantity"),
            QStringLiteral("came"), QStringLiteral("each"), QStringLiteral("cost"),
            QStringLiteral("open"), QStringLiteral("says")};
}

std::vector<Row> orderLineRows(const BookedOrder &order, const Workshop &shop, Units units,
                               const std::string &today)
{
    std::vector<Row> rows;
    const Order &now = order.now();
    for (const OrderLine &line : now.lines) {
        const auto much = [&](const Decimal &amount) {
            return saidAmount(Quantity{amount.stripped(), line.unit}, units);
        };
        const Part *part = shop.part(line.part);
        const Decimal came =
            Quantity::ofSmallest(order.received(line.part), line.unit).amount.stripped();
        const Decimal awaited = order.awaited(line);
        const QString cost = saidNumber(line.cost(now.currency.minorDigits()));
        const QString price = saidPriceOf(line.priceEach, now.currency, line.unit);
        const QString each = isLength(line.unit) ? price : BuyingWords::tr("%1 each").arg(price);
        const bool hasOwnDay =
            now.hasDaysByLine() && (awaited.sign() > 0 || now.state == OrderState::Draft);
        const QString stands =
            awaited.sign() > 0 && came.sign() > 0
                ? BuyingWords::tr("%1 came, %2 to come").arg(much(came), much(awaited))
            : came.sign() > 0    ? BuyingWords::tr("%1 came").arg(much(came))
            : hasOwnDay          ? BuyingWords::tr("due %1").arg(saidDayOf(now.dueOf(line), today))
            : awaited.sign() > 0 ? BuyingWords::tr("to come")
                                 : QString();
        rows.push_back({said(line.part),
                        {said(line.part), said(part ? part->description : line.description),
                         much(line.quantity), stands, each, cost, awaited.sign() > 0,
                         BuyingWords::tr("%1 of %2, %3, %4; %5")
                             .arg(much(line.quantity), said(line.part), each, cost, stands)}});
    }
    return rows;
}

QStringList orderSumCells()
{
    return {QStringLiteral("title"), QStringLiteral("figure"), QStringLiteral("strong")};
}

std::vector<Row> orderSumRows(const BookedOrder &order, const Workshop &shop)
{
    const Order &now = order.now();
    const Amounts all = totalsOf(now).all;
    std::vector<Row> rows{
        {QStringLiteral("goods"), {BuyingWords::tr("goods"), saidNumber(all.goods), false}}};
    if (all.discount.sign() > 0)
        rows.push_back({QStringLiteral("discount"),
                        {BuyingWords::tr("less discount"), saidNumber(all.discount), false}});
    rows.push_back(
        {QStringLiteral("freight"), {BuyingWords::tr("freight"), saidNumber(all.freight), false}});
    rows.push_back({QStringLiteral("tax"),
                    {now.tax.recovered && all.tax.sign() > 0 ? BuyingWords::tr("tax, got back")
                                                             : BuyingWords::tr("tax"),
                     saidNumber(all.tax), false}});
    rows.push_back({QStringLiteral("total"),
                    {BuyingWords::tr("total"), saidMoney({all.total(), now.currency}), true}});
    if (!(now.currency == shop.settings.currency))
        rows.push_back({QStringLiteral("rate"),
                        {BuyingWords::tr("one %1 counts as").arg(said(now.currency.code())),
                         saidMoney({now.rate.stripped(), shop.settings.currency}), false}});
    return rows;
}

QStringList orderFactCells()
{
    return {QStringLiteral("title"), QStringLiteral("detail"), QStringLiteral("flagged")};
}

std::vector<Row> orderFactRows(const BookedOrder &order, const Workshop &shop,
                               const std::string &today)
{
    const Order &now = order.now();
    std::vector<Row> facts;
    if (!now.due.empty()) {
        const auto away = daysBetween(today, now.due);
        facts.push_back(fact(QStringLiteral("due"), BuyingWords::tr("is to be here"),
                             BuyingWords::tr("%1, %2").arg(saidDayOf(now.due, today),
                                                           away ? saidAway(*away) : QString()),
                             isLate(order, today)));
    }
    if (!now.note.empty())
        facts.push_back(
            fact(QStringLiteral("note"), BuyingWords::tr("note for the supplier"), said(now.note)));
    for (const ClaimStanding &claim : shop.bought.claims.claims)
        if (claim.now.order == now.number && !claim.now.isSettled())
            facts.push_back(fact(
                said(claim.now.number), BuyingWords::tr("owed"),
                BuyingWords::tr("claim %1: %2").arg(said(claim.now.number), said(claim.now.part)),
                true));
    addLate(facts, order, shop);
    const std::vector<Row> history = orderHistory(order, today);
    facts.insert(facts.end(), history.begin(), history.end());
    return facts;
}

} // namespace flarestock
