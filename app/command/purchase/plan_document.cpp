// SPDX-License-Identifier: MIT

#include "app/command/purchase/plan_document.h"

#include <QJsonArray>

namespace flarestock {

namespace {

QJsonValue dayOrNull(const std::string &day)
{
    return day.empty() ? QJsonValue() : QJsonValue(jsonText(day));
}

QJsonObject lineDocument(const PlannedLine &line)
{
    return {{QStringLiteral("part"), jsonText(line.offer->part)},
            {QStringLiteral("supplierPart"), jsonText(line.offer->supplierNumber)},
            {QStringLiteral("quantity"), jsonAmount(line.quantity)},
            {QStringLiteral("pack"), jsonAmount(line.offer->pack)},
            {QStringLiteral("unitPrice"), jsonText(line.priceEach.text())},
            {QStringLiteral("cost"), jsonText(line.cost.text())},
            {QStringLiteral("hereBy"), jsonText(line.hereBy)},
            {QStringLiteral("why"), jsonText(whyMore(line))}};
}

QJsonObject orderDocument(const ProposedOrder &order)
{
    QJsonArray lines;
    for (const PlannedLine &line : order.lines)
        lines.append(lineDocument(line));
    return {{QStringLiteral("supplier"), jsonText(order.supplier->id)},
            {QStringLiteral("name"), jsonText(order.supplier->name)},
            {QStringLiteral("currency"), jsonText(order.currency.code())},
            {QStringLiteral("rate"), jsonText(order.rate.text())},
            {QStringLiteral("lines"), lines},
            {QStringLiteral("goods"), jsonText(order.goods.text())},
            {QStringLiteral("freight"), jsonText(order.freight.text())},
            {QStringLiteral("tax"), jsonText(order.tax.text())},
            {QStringLiteral("total"), jsonText(order.total.text())},
            {QStringLiteral("worth"), jsonText(order.worth.text())},
            {QStringLiteral("orderBy"), dayOrNull(order.orderBy)},
            {QStringLiteral("hereBy"), jsonText(order.hereBy)}};
}

QJsonObject partDocument(const PlannedPart &part)
{
    QJsonArray late;
    for (const auto &one : part.late)
        late.append(QJsonObject{{QStringLiteral("day"), jsonText(one.day)},
                                {QStringLiteral("quantity"), jsonAmount(one.quantity)},
                                {QStringLiteral("hereBy"), jsonText(one.hereBy)}});
    return {{QStringLiteral("part"), jsonText(part.part)},
            {QStringLiteral("short"), jsonAmount(part.shortBy)},
            {QStringLiteral("bought"), jsonAmount(part.bought)},
            {QStringLiteral("leftOver"), jsonAmount(part.leftOver)},
            {QStringLiteral("late"), late}};
}

QJsonObject figuresDocument(const PurchasePlan &plan)
{
    const PlanFigures &figures = plan.figures;
    return {{QStringLiteral("prefer"), jsonText(text(plan.first))},
            {QStringLiteral("total"), jsonText(figures.worth.text())},
            {QStringLiteral("hereBy"), dayOrNull(figures.hereBy)},
            {QStringLiteral("parcels"), static_cast<int>(figures.parcels)},
            {QStringLiteral("unplaced"), static_cast<int>(plan.unplaced.size())},
            {QStringLiteral("proven"), figures.isProven},
            {QStringLiteral("least"),
             figures.least ? QJsonValue(jsonText(figures.least->text())) : QJsonValue()}};
}

} // namespace

QJsonObject planDocument(const Planned &planned, const Workshop &workshop)
{
    const PurchasePlan &plan = planned.plan;
    QJsonObject document = figuresDocument(plan);
    QJsonArray orders;
    for (const ProposedOrder &order : plan.orders)
        orders.append(orderDocument(order));
    QJsonArray parts;
    for (const PlannedPart &part : plan.parts)
        parts.append(partDocument(part));
    QJsonArray unplaced;
    for (const Unplaced &one : plan.unplaced)
        unplaced.append(QJsonObject{{QStringLiteral("part"), jsonText(one.shortage.part)},
                                    {QStringLiteral("quantity"), jsonAmount(one.shortage.quantity)},
                                    {QStringLiteral("day"), dayOrNull(one.shortage.day)},
                                    {QStringLiteral("why"), jsonText(one.why)}});
    QJsonArray others;
    for (const PurchasePlan &other : planned.others)
        others.append(figuresDocument(other));
    document.insert(QStringLiteral("currency"), jsonText(workshop.settings.currency.code()));
    document.insert(QStringLiteral("orders"), orders);
    document.insert(QStringLiteral("parts"), parts);
    document.insert(QStringLiteral("unplaced"), unplaced);
    document.insert(QStringLiteral("others"), others);
    document.insert(QStringLiteral("later"),
                    planned.later
                        ? QJsonValue(QJsonObject{
                              {QStringLiteral("day"), jsonText(planned.later->day)},
                              {QStringLiteral("saves"), jsonText(planned.later->saves.text())}})
                        : QJsonValue());
    return document;
}

} // namespace flarestock
