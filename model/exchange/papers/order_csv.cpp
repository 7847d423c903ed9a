// SPDX-License-Identifier: MIT

#include "model/exchange/papers/order_csv.h"

namespace flarestock {

namespace {

std::string row(const std::vector<std::string> &cells)
{
    std::string text;
    for (const std::string &cell : cells)
        text += (text.empty() ? "" : ",") + csvCell(cell);
    return text + "\r\n";
}

} // namespace

std::string csvCell(std::string_view text)
{
    std::string cell;
    if (!text.empty() && std::string_view("=+-@\t\r").find(text.front()) != std::string_view::npos)
        cell += '\'';
    cell += text;
    if (cell.find_first_of(",\"\r\n") == std::string::npos)
        return cell;
    std::string quoted = "\"";
    for (const char letter : cell)
        quoted += letter == '"' ? std::string(2, letter) : std::string(1, letter);
    return quoted + '"';
}

std::string orderCsv(const Order &order)
{
    const OrderTotals totals = totalsOf(order);
    std::string text =
        row({"order", "supplier", "day", "due", "supplier part", "part", "description", "quantity",
             "unit", "unit price", "cost", "discount", "freight", "tax", "total", "currency"});
    for (std::size_t at = 0; at < order.lines.size(); ++at) {
        const OrderLine &line = order.lines[at];
        const Amounts &amounts = totals.lines[at];
        text +=
            row({order.number, order.supplier, order.day, order.dueOf(line), line.supplierNumber,
                 line.part, line.description, line.quantity.stripped().text(),
                 std::string(flarestock::text(line.unit)), line.priceEach.text(),
                 amounts.goods.text(), amounts.discount.text(), amounts.freight.text(),
                 amounts.tax.text(), amounts.total().text(), std::string(order.currency.code())});
    }
    return text;
}

} // namespace flarestock
