// SPDX-License-Identifier: MIT

#include "app/command/buying/time_plan_words.h"

#include "app/command/text_table.h"
#include "model/netting/over_time/calendar_day.h"

#include <QJsonArray>

#include <algorithm>

namespace flarestock {

namespace {

QJsonValue dayValue(const SaidPlan &said, DayNumber number)
{
    if (said.isCalendar)
        return jsonText(said.day(number));
    return static_cast<qint64>(number);
}

QString key(const SaidPlan &said)
{
    return said.isCalendar ? QStringLiteral("day") : QStringLiteral("period");
}

QJsonArray daysOf(const SaidPlan &said, const NettedPlan::Item &item)
{
    QJsonArray days;
    for (const NettedDay &day : said.days(item))
        days.append(QJsonObject{{key(said), dayValue(said, day.day)},
                                {QStringLiteral("gross"), jsonAmount(day.gross)},
                                {QStringLiteral("scheduled"), jsonAmount(day.scheduled)},
                                {QStringLiteral("net"), jsonAmount(day.net)},
                                {QStringLiteral("receipt"), jsonAmount(day.planned)},
                                {QStringLiteral("balance"), jsonAmount(day.balance)}});
    return days;
}

QJsonArray releasesOf(const SaidPlan &said, const NettedPlan::Item &item)
{
    QJsonArray releases;
    for (const PlannedOrder &order : item.orders)
        releases.append(QJsonObject{{QStringLiteral("release"), dayValue(said, order.release)},
                                    {QStringLiteral("receipt"), dayValue(said, order.receipt)},
                                    {QStringLiteral("quantity"), jsonAmount(order.quantity)},
                                    {QStringLiteral("pastDue"), order.isPastDue}});
    return releases;
}

QJsonObject pegOf(const SaidPlan &said, const Peg &peg)
{
    QJsonObject document{{QStringLiteral("quantity"), jsonAmount(peg.quantity)}};
    switch (peg.from) {
    case Peg::From::OnHand:
        document.insert(QStringLiteral("from"), QStringLiteral("on hand"));
        return document;
    case Peg::From::Scheduled:
        document.insert(QStringLiteral("from"), QStringLiteral("due"));
        document.insert(QStringLiteral("order"), jsonText(peg.order));
        break;
    case Peg::From::Planned:
        document.insert(QStringLiteral("from"), QStringLiteral("planned"));
        document.insert(QStringLiteral("orderBy"), dayValue(said, peg.orderBy));
        document.insert(QStringLiteral("pastDue"), peg.orderBy < said.first);
        break;
    }
    document.insert(key(said), dayValue(said, peg.day));
    return document;
}

QJsonObject needOf(const SaidPlan &said, const MetWant &met)
{
    QJsonArray pegs;
    for (const Peg &peg : met.pegs)
        pegs.append(pegOf(said, peg));
    const auto orderBy = met.orderBy();
    return {{QStringLiteral("item"), jsonText(met.want.item)},
            {key(said), dayValue(said, met.want.day)},
            {QStringLiteral("quantity"), jsonAmount(met.want.quantity)},
            {QStringLiteral("for"), jsonText(met.want.whom)},
            {QStringLiteral("forItem"), met.byItem},
            {QStringLiteral("covered"), jsonAmount(met.covered())},
            {QStringLiteral("short"), jsonAmount(met.shortBy())},
            {QStringLiteral("orderBy"), orderBy ? dayValue(said, *orderBy) : QJsonValue()},
            {QStringLiteral("pastDue"), orderBy && *orderBy < said.first},
            {QStringLiteral("metBy"), pegs}};
}

std::string filled(const Decimal &number)
{
    return number.isZero() ? std::string() : number.stripped().text();
}

std::string itemTable(const SaidPlan &said, const NettedPlan::Item &item)
{
    using Side = TextTable::Side;
    TextTable table({{said.isCalendar ? "day" : "period", Side::Right},
                     {"wanted", Side::Right},
                     {"comes", Side::Right},
                     {"to order", Side::Right},
                     {"order by", Side::Right},
                     {"left", Side::Right},
                     {"", Side::Left}});
    for (const NettedDay &day : said.days(item)) {
        const auto order =
            std::find_if(item.orders.begin(), item.orders.end(),
                         [&day](const PlannedOrder &one) { return one.receipt == day.day; });
        const bool isOrdered = order != item.orders.end();
        table.add({said.day(day.day), filled(day.gross), filled(day.scheduled), filled(day.planned),
                   isOrdered ? said.day(order->release) : std::string(),
                   day.balance.stripped().text(),
                   isOrdered && order->isPastDue ? "past due" : std::string()});
    }
    return table.text();
}

} // namespace

std::string SaidPlan::day(DayNumber number) const
{
    return isCalendar ? calendarDay(number) : std::to_string(number);
}

std::vector<NettedDay> SaidPlan::days(const NettedPlan::Item &item) const
{
    if (isCalendar)
        return item.days;
    constexpr DayNumber PeriodsShown = 1000;
    DayNumber last = first;
    for (const NettedPlan::Item &other : plan.items)
        last = std::max(last, other.days.back().day);
    if (last - first > PeriodsShown)
        return item.days;
    std::vector<NettedDay> all;
    for (DayNumber period = first; period <= last; ++period) {
        const auto at = std::find_if(item.days.begin(), item.days.end(),
                                     [period](const NettedDay &day) { return day.day == period; });
        NettedDay quiet;
        quiet.day = period;
        quiet.balance = item.balanceAt(period);
        all.push_back(at == item.days.end() ? quiet : *at);
    }
    return all;
}

QJsonObject planDocument(const SaidPlan &said)
{
    QJsonArray items;
    QJsonArray needs;
    for (const NettedPlan::Item &item : said.plan.items) {
        QJsonArray balances;
        for (const NettedDay &day : said.days(item))
            balances.append(jsonAmount(day.balance));
        items.append(
            QJsonObject{{QStringLiteral("item"), jsonText(item.id)},
                        {QStringLiteral("level"), item.lowLevel},
                        {QStringLiteral("onHand"), jsonAmount(item.onHand)},
                        {said.isCalendar ? QStringLiteral("days") : QStringLiteral("periods"),
                         daysOf(said, item)},
                        {QStringLiteral("balances"), balances},
                        {QStringLiteral("releases"), releasesOf(said, item)}});
        for (const MetWant &met : item.wants)
            needs.append(needOf(said, met));
    }
    return {{QStringLiteral("first"), dayValue(said, said.first)},
            {QStringLiteral("items"), items},
            {QStringLiteral("needs"), needs}};
}

std::string planTables(const SaidPlan &said)
{
    std::string all;
    for (const NettedPlan::Item &item : said.plan.items)
        all += item.id + ", level " + std::to_string(item.lowLevel) + ", on hand " +
               item.onHand.stripped().text() + "\n" + itemTable(said, item) + "\n";
    for (const NettedPlan::Item &item : said.plan.items)
        for (const MetWant &met : item.wants) {
            const auto by = met.orderBy();
            if (!by)
                continue;
            all += item.id + ": " + met.shortBy().stripped().text() + " of " +
                   met.want.quantity.stripped().text() + " short";
            if (!met.want.whom.empty())
                all += " for " + met.want.whom;
            all += ", needed by " + said.day(met.want.day) + ", order by " + said.day(*by) +
                   (*by < said.first ? ", which is past due" : "") + "\n";
        }
    return all;
}

bool isShort(const NettedPlan &plan)
{
    return std::any_of(plan.items.begin(), plan.items.end(),
                       [](const NettedPlan::Item &item) { return !item.orders.empty(); });
}

} // namespace flarestock
