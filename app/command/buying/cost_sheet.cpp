// SPDX-License-Identifier: MIT

#include "app/command/buying/cost_sheet.h"

#include "app/command/shop_options.h"
#include "app/command/text_table.h"
#include "app/stockroom/asked.h"

#include <QJsonArray>

namespace flarestock {

namespace {

/// The journal has no bill of the day on which a build was begun.
constexpr const char *PlannedBy = "by its bill, prices and carried values as they are now";

using Side = TextTable::Side;

QJsonArray sumsOf(const std::vector<CostSum> &sums)
{
    QJsonArray all;
    for (const CostSum &sum : sums)
        all.append(QJsonObject{{QStringLiteral("name"), jsonText(sum.name)},
                               {QStringLiteral("planned"), jsonText(sum.planned.text())},
                               {QStringLiteral("actual"), jsonText(sum.actual.text())},
                               {QStringLiteral("difference"), jsonText(sum.difference().text())}});
    return all;
}

std::string tableOf(const char *of, const std::vector<CostSum> &sums, const CostSum &total)
{
    TextTable table({{of, Side::Left},
                     {"planned", Side::Right},
                     {"actual", Side::Right},
                     {"difference", Side::Right}});
    for (const CostSum &sum : sums)
        table.add({sum.name, sum.planned.text(), sum.actual.text(), sum.difference().text()});
    table.add({"total", total.planned.text(), total.actual.text(), total.difference().text()});
    return table.text();
}

} // namespace

std::string lateSheet(const LateCost &cost, const Workshop &workshop)
{
    TextTable table({{"part", Side::Left},
                     {"lot", Side::Left},
                     {"came", Side::Right},
                     {"here", Side::Right},
                     {"share", Side::Right},
                     {"into stock", Side::Right},
                     {"difference", Side::Right}});
    std::int64_t inStock = 0;
    for (const LateShare &share : cost.shares) {
        inStock += share.inStock;
        table.add({share.part, share.lot, amountText(share.quantity, share.part, workshop),
                   amountText(share.here, share.part, workshop), valueText(share.value),
                   valueText(share.inStock), valueText(share.value - share.inStock)});
    }
    return table.text() + std::string(text(cost.kind)) + " of order " + cost.order + ": " +
           valueText(cost.amount) + ", into stock " + valueText(inStock) + ", to the differences " +
           valueText(cost.amount - inStock) + " of what has left the stock";
}

QJsonObject lateDocument(const LateCost &cost, const Workshop &workshop)
{
    QJsonArray shares;
    std::int64_t inStock = 0;
    for (const LateShare &share : cost.shares) {
        inStock += share.inStock;
        shares.append(QJsonObject{
            {QStringLiteral("part"), jsonText(share.part)},
            {QStringLiteral("lot"), textOrNull(share.lot)},
            {QStringLiteral("came"), jsonText(amountText(share.quantity, share.part, workshop))},
            {QStringLiteral("here"), jsonText(amountText(share.here, share.part, workshop))},
            {QStringLiteral("share"), jsonText(valueText(share.value))},
            {QStringLiteral("intoStock"), jsonText(valueText(share.inStock))},
            {QStringLiteral("difference"), jsonText(valueText(share.value - share.inStock))}});
    }
    return {{QStringLiteral("order"), jsonText(cost.order)},
            {QStringLiteral("kind"), jsonText(text(cost.kind))},
            {QStringLiteral("amount"), jsonText(valueText(cost.amount))},
            {QStringLiteral("sharedBy"), jsonText(cost.sharedBy)},
            {QStringLiteral("shares"), shares},
            {QStringLiteral("intoStock"), jsonText(valueText(inStock))},
            {QStringLiteral("difference"), jsonText(valueText(cost.amount - inStock))},
            {QStringLiteral("currency"), jsonText(workshop.settings.currency.code())}};
}

std::string historySheet(const std::vector<CostStep> &steps, const Part &part,
                         const Workshop &workshop)
{
    TextTable table({{"day", Side::Left},
                     {"order", Side::Left},
                     {"supplier", Side::Left},
                     {"came", Side::Right},
                     {"price", Side::Right},
                     {"landed each", Side::Right},
                     {"of it late", Side::Right},
                     {"lot", Side::Left}});
    for (const CostStep &step : steps)
        table.add({step.day, step.order, step.supplier, spoken(step.quantity, part),
                   step.priceEach ? step.priceEach->text() : "", step.landedEach(part).text(),
                   valueText(step.late), step.lot});
    if (steps.empty())
        return part.number + " has never been bought by this shop\n";
    return table.text() + "Landed each in " + std::string(workshop.settings.currency.code()) +
           " for one " + std::string(text(part.unit)) + "\n";
}

QJsonObject historyDocument(const std::vector<CostStep> &steps, const Part &part,
                            const Workshop &workshop)
{
    QJsonArray all;
    for (const CostStep &step : steps)
        all.append(
            QJsonObject{{QStringLiteral("day"), jsonText(step.day)},
                        {QStringLiteral("order"), textOrNull(step.order)},
                        {QStringLiteral("supplier"), jsonText(step.supplier)},
                        {QStringLiteral("quantity"), jsonText(amountText(step.quantity, part))},
                        {QStringLiteral("unit"), jsonText(text(part.unit))},
                        {QStringLiteral("priceEach"),
                         step.priceEach ? jsonText(step.priceEach->amount.text()) : QJsonValue()},
                        {QStringLiteral("currency"),
                         step.priceEach ? jsonText(step.priceEach->currency.code()) : QJsonValue()},
                        {QStringLiteral("rate"), jsonText(step.rate.text())},
                        {QStringLiteral("value"), jsonText(valueText(step.value))},
                        {QStringLiteral("late"), jsonText(valueText(step.late))},
                        {QStringLiteral("landedEach"), jsonText(step.landedEach(part).text())},
                        {QStringLiteral("lot"), textOrNull(step.lot)}});
    return {{QStringLiteral("part"), jsonText(part.number)},
            {QStringLiteral("currency"), jsonText(workshop.settings.currency.code())},
            {QStringLiteral("receipts"), all}};
}

std::string buildCostSheet(const BuildCost &cost, const BuildPlan &plan, const Workshop &workshop)
{
    std::string said = tableOf("station", cost.byStation, cost.total) + "\n" +
                       tableOf("kind", cost.byKind, cost.total) + "Cost of " + plan.id + " (" +
                       cost.total.name + ") in " + std::string(workshop.settings.currency.code()) +
                       "\nplanned: " + PlannedBy + "\n";
    for (const std::string &part : cost.unpriced)
        said += "without a price: " + part + "\n";
    return said;
}

QJsonObject buildCostDocument(const BuildCost &cost, const BuildPlan &plan,
                              const Workshop &workshop)
{
    QJsonArray lines;
    for (const CostLine &line : cost.lines) {
        const Part &part = *line.part;
        lines.append(
            QJsonObject{{QStringLiteral("part"), jsonText(part.number)},
                        {QStringLiteral("kind"), jsonText(text(part.kind))},
                        {QStringLiteral("station"), textOrNull(line.station)},
                        {QStringLiteral("need"), jsonText(line.need.stripped().text())},
                        {QStringLiteral("issued"), jsonText(amountText(line.issued, part))},
                        {QStringLiteral("unit"), jsonText(text(part.unit))},
                        {QStringLiteral("planned"),
                         line.planned ? jsonText(line.planned->text()) : QJsonValue()},
                        {QStringLiteral("actual"), jsonText(line.actual.text())}});
    }
    QJsonArray unpriced;
    for (const std::string &part : cost.unpriced)
        unpriced.append(jsonText(part));
    return {{QStringLiteral("build"), jsonText(plan.id)},
            {QStringLiteral("system"), jsonText(cost.total.name)},
            {QStringLiteral("currency"), jsonText(workshop.settings.currency.code())},
            {QStringLiteral("lines"), lines},
            {QStringLiteral("byStation"), sumsOf(cost.byStation)},
            {QStringLiteral("byKind"), sumsOf(cost.byKind)},
            {QStringLiteral("planned"), jsonText(cost.total.planned.text())},
            {QStringLiteral("plannedBy"), jsonText(PlannedBy)},
            {QStringLiteral("actual"), jsonText(cost.total.actual.text())},
            {QStringLiteral("difference"), jsonText(cost.total.difference().text())},
            {QStringLiteral("unpriced"), unpriced}};
}

} // namespace flarestock
