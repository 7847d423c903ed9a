// SPDX-License-Identifier: MIT

#include "app/command/buying/order_document.h"

#include "app/command/text_table.h"
#include "app/workshop/suppliers.h"

#include <QJsonArray>

#include <algorithm>

namespace flarestock {

namespace {

QJsonValue amount(const Decimal &number)
{
    return jsonText(number.text());
}

QJsonObject taxDocument(const TaxRule &tax)
{
    return {{QStringLiteral("percent"), jsonAmount(tax.percent)},
            {QStringLiteral("by"),
             tax.by == TaxRule::By::Item ? QStringLiteral("item") : QStringLiteral("document")},
            {QStringLiteral("rounding"), tax.rounding == Rounding::HalfEven
                                             ? QStringLiteral("half even")
                                             : QStringLiteral("half up")},
            {QStringLiteral("recovered"), tax.recovered}};
}

Decimal receivedOf(const BookedOrder &order, const OrderLine &line)
{
    return Quantity::ofSmallest(order.received(line.part), line.unit).amount;
}

QJsonObject lineDocument(const BookedOrder &order, const OrderLine &line, const Amounts &amounts)
{
    return {{QStringLiteral("part"), jsonText(line.part)},
            {QStringLiteral("supplierPart"), jsonText(line.supplierNumber)},
            {QStringLiteral("description"), jsonText(line.description)},
            {QStringLiteral("quantity"), jsonAmount(line.quantity)},
            {QStringLiteral("unit"), jsonText(text(line.unit))},
            {QStringLiteral("pack"), jsonAmount(line.pack)},
            {QStringLiteral("unitPrice"), amount(line.priceEach)},
            {QStringLiteral("cost"), amount(amounts.goods)},
            {QStringLiteral("discount"), amount(amounts.discount)},
            {QStringLiteral("freight"), amount(amounts.freight)},
            {QStringLiteral("tax"), amount(amounts.tax)},
            {QStringLiteral("total"), amount(amounts.total())},
            {QStringLiteral("received"), jsonAmount(receivedOf(order, line))},
            {QStringLiteral("awaited"), jsonAmount(order.awaited(line))},
            {QStringLiteral("due"), jsonText(order.now().dueOf(line))}};
}

/// The sums below the lines, each only where it is something.
void addSums(std::string &sheet, const Order &order, const Amounts &all)
{
    TextTable table({{"", TextTable::Side::Left}, {"", TextTable::Side::Right}});
    table.add({"goods", all.goods.text()});
    if (!all.discount.isZero())
        table.add({"discount", (-all.discount).text()});
    table.add({"freight", all.freight.text()});
    table.add({"tax " + order.tax.percent.stripped().text() + " %", all.tax.text()});
    table.add({"total " + std::string(order.currency.code()), all.total().text()});
    sheet += table.text();
}

} // namespace

QJsonObject orderEntry(const BookedOrder &order, const Catalogue &catalogue)
{
    const Order &now = order.now();
    const Amounts all = totalsOf(now).all;
    return {{QStringLiteral("number"), jsonText(now.number)},
            {QStringLiteral("supplier"), jsonText(now.supplier)},
            {QStringLiteral("supplierName"), jsonText(supplierName(now.supplier, catalogue))},
            {QStringLiteral("state"), jsonText(text(order.standing()))},
            {QStringLiteral("day"), jsonText(now.day)},
            {QStringLiteral("due"), jsonText(now.due)},
            {QStringLiteral("currency"), jsonText(now.currency.code())},
            {QStringLiteral("goods"), amount(all.goods)},
            {QStringLiteral("discount"), amount(all.discount)},
            {QStringLiteral("freight"), amount(all.freight)},
            {QStringLiteral("tax"), amount(all.tax)},
            {QStringLiteral("total"), amount(all.total())}};
}

QJsonObject orderDocument(const BookedOrder &order, const Catalogue &catalogue)
{
    const Order &now = order.now();
    const OrderTotals totals = totalsOf(now);
    QJsonArray lines;
    for (std::size_t at = 0; at < now.lines.size(); ++at)
        lines.append(lineDocument(order, now.lines[at], totals.lines[at]));
    QJsonObject document = orderEntry(order, catalogue);
    document.insert(QStringLiteral("lines"), lines);
    document.insert(QStringLiteral("rate"), jsonAmount(now.rate));
    document.insert(QStringLiteral("taxRule"), taxDocument(now.tax));
    document.insert(QStringLiteral("note"), jsonText(now.note));
    document.insert(QStringLiteral("step"), jsonText(now.id.text()));
    document.insert(QStringLiteral("who"), jsonText(now.who));
    return document;
}

std::string orderSheet(const BookedOrder &order, const Catalogue &catalogue)
{
    const Order &now = order.now();
    const OrderTotals totals = totalsOf(now);
    std::string sheet = "order " + now.number + " to " + supplierName(now.supplier, catalogue) +
                        ", " + std::string(text(order.standing())) + ", " + now.day +
                        (now.due.empty() ? "" : ", due " + now.due) + "\n";
    TextTable table({{"part", TextTable::Side::Left},
                     {"his number", TextTable::Side::Left, TextTable::Shown::WhereFilled},
                     {"quantity", TextTable::Side::Right},
                     {"each", TextTable::Side::Right},
                     {"cost", TextTable::Side::Right},
                     {"to come", TextTable::Side::Right, TextTable::Shown::WhereFilled},
                     {"due", TextTable::Side::Left, TextTable::Shown::WhereFilled},
                     {"what", TextTable::Side::Left}});
    for (std::size_t at = 0; at < now.lines.size(); ++at) {
        const OrderLine &line = now.lines[at];
        const Decimal awaited = order.awaited(line);
        table.add({line.part, line.supplierNumber, Quantity{line.quantity, line.unit}.spoken(),
                   line.priceEach.text(), totals.lines[at].goods.text(),
                   awaited.isZero() ? "" : Quantity{awaited, line.unit}.spoken(), line.due,
                   line.description});
    }
    sheet += table.text();
    addSums(sheet, now, totals.all);
    if (!now.note.empty())
        sheet += "note: " + now.note + "\n";
    sheet.pop_back();
    return sheet;
}

std::string orderList(const std::vector<const BookedOrder *> &orders, const Catalogue &catalogue)
{
    if (orders.empty())
        return "no orders";
    TextTable table({{"order", TextTable::Side::Left},
                     {"supplier", TextTable::Side::Left},
                     {"stands", TextTable::Side::Left},
                     {"day", TextTable::Side::Left},
                     {"due", TextTable::Side::Left, TextTable::Shown::WhereFilled},
                     {"total", TextTable::Side::Right},
                     {"", TextTable::Side::Left}});
    for (const BookedOrder *order : orders) {
        const Order &now = order->now();
        table.add({now.number, supplierName(now.supplier, catalogue),
                   std::string(text(order->standing())), now.day, now.due,
                   totalsOf(now).all.total().text(), std::string(now.currency.code())});
    }
    std::string list = table.text();
    list.pop_back();
    return list;
}

} // namespace flarestock
