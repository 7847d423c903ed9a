// SPDX-License-Identifier: MIT

#include "app/command/purchase/plan_document.h"
#include "app/command/text_table.h"

#include <algorithm>

namespace flarestock {

namespace {

/// In the part's unit: "2", "9 ft".
std::string spoken(const Decimal &quantity, std::string_view number, const Workshop &workshop)
{
    const Part *const part = workshop.part(number);
    return Quantity{quantity, part ? part->unit : Unit::Each}.spoken();
}

std::string orderSheet(const ProposedOrder &order, const Workshop &workshop)
{
    const std::string code(order.currency.code());
    std::string sheet = order.supplier->id + ", " + order.supplier->name + ": " +
                        order.total.text() + " " + code + ", here by " + order.hereBy;
    if (!order.orderBy.empty())
        sheet += ", to be ordered by " + order.orderBy;
    sheet += "\n";
    using Side = TextTable::Side;
    TextTable table({{"part", Side::Left},
                     {"supplier part", Side::Left, TextTable::Shown::WhereFilled},
                     {"quantity", Side::Right},
                     {"each", Side::Right},
                     {"cost", Side::Right},
                     {"", Side::Left, TextTable::Shown::WhereFilled}});
    for (const PlannedLine &line : order.lines)
        table.add({line.offer->part, line.offer->supplierNumber,
                   spoken(line.quantity, line.offer->part, workshop), line.priceEach.text(),
                   line.cost.text(), whyMore(line)});
    return sheet + table.text() + "  goods " + order.goods.text() + ", freight " +
           order.freight.text() + ", tax " + order.tax.text() +
           (order.supplier->tax.recovered && order.tax.sign() > 0 ? " (got back)" : "") + "\n";
}

std::string figuresText(const PurchasePlan &plan, const std::string &code)
{
    const PlanFigures &figures = plan.figures;
    std::string said = std::string(text(plan.first)) + ": " + figures.worth.text() + " " + code +
                       " in " + counted(figures.parcels, "order");
    if (!figures.hereBy.empty())
        said += ", all here by " + figures.hereBy;
    if (!figures.isProven)
        said += figures.least
                    ? "; not proven to be the best: nothing is below " + figures.least->text() +
                          ", so at most " + (figures.worth - *figures.least).text() + " better"
                    : "; not proven to be the best";
    return said + "\n";
}

std::string partsText(const PurchasePlan &plan, const Workshop &workshop)
{
    std::string said;
    for (const PlannedPart &part : plan.parts) {
        if (part.leftOver.sign() > 0)
            said += "left over: " + spoken(part.leftOver, part.part, workshop) + " of " +
                    part.part + " (need " + spoken(part.shortBy, part.part, workshop) + ")\n";
        for (const auto &late : part.late)
            said += "late: " + spoken(late.quantity, part.part, workshop) + " of " + part.part +
                    " for " + late.day + ", here by " + late.hereBy + "\n";
    }
    for (const Unplaced &one : plan.unplaced)
        said += "unplaced: " + spoken(one.shortage.quantity, one.shortage.part, workshop) + " of " +
                one.shortage.part + ", " + one.why + "\n";
    return said;
}

} // namespace

std::string planSheet(const Planned &planned, const Workshop &workshop)
{
    const std::string code(workshop.settings.currency.code());
    const PurchasePlan &plan = planned.plan;
    if (plan.orders.empty() && plan.unplaced.empty())
        return "nothing is short\n";
    std::string sheet = figuresText(plan, code);
    for (const ProposedOrder &order : plan.orders)
        sheet += orderSheet(order, workshop);
    sheet += partsText(plan, workshop);
    if (planned.later)
        sheet += "from " + planned.later->day + " on it would cost " + planned.later->saves.text() +
                 " less\n";
    for (const PurchasePlan &other : planned.others)
        sheet += figuresText(other, code);
    if (std::any_of(plan.orders.begin(), plan.orders.end(), [&](const ProposedOrder &order) {
            return order.currency != workshop.settings.currency;
        }))
        sheet += "what is in another currency was turned into " + code +
                 " line by line, each rounded once, half even\n";
    return sheet;
}

} // namespace flarestock
