// SPDX-License-Identifier: MIT

#include "app/sheet/plan_rows.h"

namespace flarestock {

namespace {

/// What so much of an order's currency counts in the shop's.
std::string worthOf(const Decimal &amount, const ProposedOrder &order, const Workshop &workshop)
{
    const auto digits = workshop.settings.currency.minorDigits();
    return (amount * order.rate).rescaled(digits, Rounding::HalfEven).text();
}

std::string descriptionOf(std::string_view number, const Workshop &workshop)
{
    const Part *const part = workshop.part(number);
    return part ? part->description : std::string();
}

Unit unitOf(std::string_view number, const Workshop &workshop)
{
    const Part *const part = workshop.part(number);
    return part ? part->unit : Unit::Each;
}

void putCharge(Workbook &sheet, const ProposedOrder &order, const Workshop &workshop,
               const std::pair<std::string, Decimal> &charge)
{
    const auto &[what, amount] = charge;
    if (amount.isZero())
        return;
    const bool isGotBack = what == "tax" && order.supplier->tax.recovered;
    sheet.rows.push_back({order.supplier->id, "", "", isGotBack ? "tax, which is got back" : what,
                          "", "", "", amount.text(), std::string(order.currency.code()),
                          worthOf(isGotBack ? Decimal() : amount, order, workshop), order.hereBy,
                          ""});
}

void putOrder(Workbook &sheet, const ProposedOrder &order, const Workshop &workshop)
{
    const std::string code(order.currency.code());
    for (const PlannedLine &line : order.lines)
        sheet.rows.push_back({order.supplier->id, line.offer->part, line.offer->supplierNumber,
                              descriptionOf(line.offer->part, workshop),
                              line.quantity.stripped().text(),
                              std::string(text(unitOf(line.offer->part, workshop))),
                              line.priceEach.text(), line.cost.text(), code,
                              worthOf(line.cost, order, workshop), line.hereBy, whyMore(line)});
    putCharge(sheet, order, workshop, {"freight", order.freight});
    putCharge(sheet, order, workshop, {"tax", order.tax});
}

void putPaperOrder(PaperWords &paper, const ProposedOrder &order, const Workshop &workshop)
{
    const std::string code(order.currency.code());
    for (const PlannedLine &line : order.lines) {
        const Quantity much{line.quantity, unitOf(line.offer->part, workshop)};
        const std::string why = whyMore(line);
        paper.rows.push_back({order.supplier->id,
                              line.offer->part + "\n" + line.offer->supplierNumber,
                              descriptionOf(line.offer->part, workshop) + "\n" + why, much.spoken(),
                              line.priceEach.text(), line.cost.text() + "\n" + code, line.hereBy});
    }
    std::string sum = order.supplier->id + ": goods " + order.goods.text() + ", freight " +
                      order.freight.text() + ", tax " + order.tax.text() +
                      (order.supplier->tax.recovered && order.tax.sign() > 0 ? " (got back)" : "");
    paper.note += sum + ", total " + order.total.text() + " " + code +
                  (order.orderBy.empty() ? "" : "; to be ordered by " + order.orderBy) + "\n";
}

std::string nobodys(const PurchasePlan &plan, const Workshop &workshop)
{
    std::string said;
    for (const Unplaced &one : plan.unplaced)
        said += "Not planned: " +
                Quantity{one.shortage.quantity, unitOf(one.shortage.part, workshop)}.spoken() +
                " of " + one.shortage.part + ", " + one.why + "\n";
    return said;
}

} // namespace

std::string whyMore(const PlannedLine &line)
{
    if (line.least >= line.quantity)
        return {};
    const std::string more = line.quantity.stripped().text();
    const std::string least = line.least.stripped().text();
    if (line.cost < line.leastCost)
        return "need " + least + ": " + more + " cost " + (line.leastCost - line.cost).text() +
               " less than " + least;
    if (line.cost == line.leastCost)
        return more + " cost the same as " + least;
    return more + " rather than " + least + " cost " + (line.cost - line.leastCost).text() +
           " more and bring the order to a better freight, or to what its supplier sends at least";
}

Workbook planRows(const PurchasePlan &plan, const Workshop &workshop, const std::string &today)
{
    using Kind = WorkbookColumn::Kind;
    const std::string code(workshop.settings.currency.code());
    Workbook sheet{"plan", today, workshop.settings.currency.minorDigits(), {}, {}, {}};
    sheet.columns = {{"supplier", Kind::Text, 10},      {"part", Kind::Text, 16},
                     {"supplier part", Kind::Text, 16}, {"description", Kind::Text, 40},
                     {"quantity", Kind::Quantity, 10},  {"unit", Kind::Text, 6},
                     {"each", Kind::Price, 10},         {"cost", Kind::Price, 10},
                     {"currency", Kind::Text, 9},       {"worth " + code, Kind::Amount, 11},
                     {"here by", Kind::Text, 11},       {"why", Kind::Text, 40}};
    for (const ProposedOrder &order : plan.orders)
        putOrder(sheet, order, workshop);
    if (!sheet.rows.empty())
        sheet.sums = {"plan", "", "", "", "", "", "", "", "", plan.figures.worth.text(), "", ""};
    return sheet;
}

PaperWords planPaper(const PurchasePlan &plan, const Workshop &workshop, const std::string &today,
                     PaperWords paper)
{
    paper.title = "Purchase plan";
    paper.made = today;
    paper.facts = {{"Orders go out", today},
                   {"What comes first", std::string(text(plan.first))},
                   {"Proven", plan.figures.isProven ? "yes" : "no"}};
    paper.columns = {{"From", 8},        {"Part", 15},       {"What", 36},   {"Quantity", 12, true},
                     {"Each", 11, true}, {"Cost", 12, true}, {"Here by", 13}};
    for (const ProposedOrder &order : plan.orders)
        putPaperOrder(paper, order, workshop);
    paper.note += nobodys(plan, workshop);
    if (!paper.note.empty())
        paper.note.pop_back();
    if (paper.rows.empty())
        paper.rows.push_back({"", "", "nothing to order", "", "", "", ""});
    paper.sums = {
        {"Orders", std::to_string(plan.orders.size())},
        {"In all " + std::string(workshop.settings.currency.code()), plan.figures.worth.text()}};
    return paper;
}

} // namespace flarestock
