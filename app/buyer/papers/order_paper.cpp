// SPDX-License-Identifier: MIT

#include "app/buyer/papers/order_paper.h"

#include "model/buying/totals.h"

namespace flarestock {

namespace {

/// At least the currency's digits, more where the price has them; of what is cut, for which length.
std::string priceText(const OrderLine &line, const Currency &currency, const Speech &speech)
{
    const Decimal stripped = line.priceEach.stripped();
    const std::string price =
        speech.number(stripped.scale() >= currency.minorDigits()
                          ? stripped
                          : line.priceEach.rescaled(currency.minorDigits(), Rounding::HalfEven));
    return isLength(line.unit) ? price + " / " + std::string(text(line.unit)) : price;
}

/// "12", or of what is cut "240 in" and below it the same as people say it.
std::string quantityText(const OrderLine &line, const Speech &speech)
{
    const std::string amount = speech.number(line.quantity.stripped());
    if (line.unit == Unit::Each)
        return amount;
    const std::string ordered = amount + ' ' + std::string(text(line.unit));
    const std::string spoken = speech.amount({line.quantity, line.unit});
    return spoken == ordered ? ordered : ordered + '\n' + spoken;
}

std::string titleOf(OrderState state, const Speech &speech)
{
    return state == OrderState::Draft       ? speech.say("Draft of order")
           : state == OrderState::Cancelled ? speech.say("Cancelled order")
                                            : speech.say("Order");
}

std::string whatOf(const OrderLine &line, const Speech &speech)
{
    std::string said = line.description + "\n" + speech.say("ours: %1", {line.part});
    if (!line.due.empty())
        said += ", " + speech.say("wanted by %1", {speech.day(line.due)});
    return said;
}

void putSums(PaperWords &paper, const Order &order, const Amounts &all)
{
    const Speech &speech = *paper.speech;
    paper.sums.emplace_back(speech.say("Goods"), speech.number(all.goods));
    if (!all.discount.isZero())
        paper.sums.emplace_back(speech.say("Discount"), speech.number(-all.discount));
    if (!all.freight.isZero())
        paper.sums.emplace_back(speech.say("Freight"), speech.number(all.freight));
    if (!order.tax.percent.isZero())
        paper.sums.emplace_back(
            speech.say("Tax %1 %", {speech.number(order.tax.percent.stripped())}),
            speech.number(all.tax));
    paper.sums.emplace_back(speech.say("Total %1", {std::string(order.currency.code())}),
                            speech.number(all.total()));
}

} // namespace

PaperWords orderPaper(const Order &order, const Catalogue &catalogue, PaperWords paper)
{
    const OrderTotals totals = totalsOf(order);
    const Speech &speech = *paper.speech;
    paper.title = titleOf(order.state, speech);
    paper.number = order.number;
    paper.made = order.day;
    paper.to = addressOf(order.supplier, catalogue);
    paper.facts.emplace_back(speech.say("Date"), speech.day(order.day));
    if (!order.due.empty())
        paper.facts.emplace_back(speech.say("Wanted by"), speech.day(order.due));
    paper.facts.emplace_back(speech.say("Currency"), order.currency.code());
    paper.columns = {{"#", 5, true},
                     {speech.say("Your number"), 20},
                     {speech.say("What"), 38},
                     {speech.say("Quantity"), 12, true},
                     {speech.say("Each"), 13, true},
                     {speech.say("Amount"), 14, true}};
    for (std::size_t at = 0; at < order.lines.size(); ++at) {
        const OrderLine &line = order.lines[at];
        paper.rows.push_back({std::to_string(at + 1), line.supplierNumber, whatOf(line, speech),
                              quantityText(line, speech), priceText(line, order.currency, speech),
                              speech.number(totals.lines[at].goods)});
    }
    putSums(paper, order, totals.all);
    paper.note = order.note;
    return paper;
}

} // namespace flarestock
