// SPDX-License-Identifier: MIT

#include "app/buyer/papers/order_paper.h"

#include "model/buying/totals.h"

namespace flarestock {

namespace {

/// At least the currency's digits, more where the price has them.
std::string priceText(const Decimal &price, const Currency &currency)
{
    const Decimal stripped = price.stripped();
    return stripped.scale() >= currency.minorDigits()
               ? stripped.text()
               : price.rescaled(currency.minorDigits(), Rounding::HalfEven).text();
}

/// "12 in", or "12" of pieces.
std::string quantityText(const OrderLine &line)
{
    const std::string amount = line.quantity.stripped().text();
    return line.unit == Unit::Each ? amount : amount + ' ' + std::string(text(line.unit));
}

void putSums(PaperWords &paper, const Order &order, const Amounts &all)
{
    paper.sums.emplace_back("Goods", all.goods.text());
    if (!all.discount.isZero())
        paper.sums.emplace_back("Discount", (-all.discount).text());
    if (!all.freight.isZero())
        paper.sums.emplace_back("Freight", all.freight.text());
    if (!order.tax.percent.isZero())
        paper.sums.emplace_back("Tax " + order.tax.percent.stripped().text() + " %",
                                all.tax.text());
    paper.sums.emplace_back("Total " + std::string(order.currency.code()), all.total().text());
}

} // namespace

PaperWords orderPaper(const Order &order, const Catalogue &catalogue, PaperWords paper)
{
    const OrderTotals totals = totalsOf(order);
    paper.title = order.state == OrderState::Draft       ? "Draft of order"
                  : order.state == OrderState::Cancelled ? "Cancelled order"
                                                         : "Order";
    paper.number = order.number;
    paper.made = order.day;
    paper.to = addressOf(order.supplier, catalogue);
    paper.facts.emplace_back("Date", order.day);
    if (!order.due.empty())
        paper.facts.emplace_back("Wanted by", order.due);
    paper.facts.emplace_back("Currency", order.currency.code());
    paper.columns = {{"#", 5, true},         {"Your number", 20}, {"What", 39},
                     {"Quantity", 12, true}, {"Each", 12, true},  {"Amount", 14, true}};
    for (std::size_t at = 0; at < order.lines.size(); ++at) {
        const OrderLine &line = order.lines[at];
        paper.rows.push_back({std::to_string(at + 1), line.supplierNumber,
                              line.description + "\nours: " + line.part +
                                  (line.due.empty() ? "" : ", wanted by " + line.due),
                              quantityText(line), priceText(line.priceEach, order.currency),
                              totals.lines[at].goods.text()});
    }
    putSums(paper, order, totals.all);
    paper.note = order.note;
    return paper;
}

} // namespace flarestock
