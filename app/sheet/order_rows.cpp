// SPDX-License-Identifier: MIT

#include "app/sheet/order_rows.h"

#include "app/buyer/papers/order_paper.h"
#include "model/buying/totals.h"
#include "model/exchange/papers/order_csv.h"

namespace flarestock {

Workbook orderRows(const Order &order)
{
    using Kind = WorkbookColumn::Kind;
    const OrderTotals totals = totalsOf(order);
    Workbook sheet{order.number, order.day, order.currency.minorDigits(), {}, {}, {}};
    sheet.columns = {{"supplier part", Kind::Text, 20}, {"part", Kind::Text, 16},
                     {"description", Kind::Text, 40},   {"quantity", Kind::Quantity, 10},
                     {"unit", Kind::Text, 6},           {"each", Kind::Price, 10},
                     {"cost", Kind::Amount, 10},        {"discount", Kind::Amount, 10},
                     {"freight", Kind::Amount, 10},     {"tax", Kind::Amount, 10},
                     {"total", Kind::Amount, 10},       {"currency", Kind::Text, 9}};
    const std::string currency(order.currency.code());
    for (std::size_t at = 0; at < order.lines.size(); ++at) {
        const OrderLine &line = order.lines[at];
        const Amounts &amounts = totals.lines[at];
        sheet.rows.push_back({line.supplierNumber, line.part, line.description,
                              line.quantity.stripped().text(), std::string(text(line.unit)),
                              line.priceEach.text(), amounts.goods.text(), amounts.discount.text(),
                              amounts.freight.text(), amounts.tax.text(), amounts.total().text(),
                              currency});
    }
    const Amounts &all = totals.all;
    sheet.sums = {"order " + order.number,
                  "",
                  "",
                  "",
                  "",
                  "",
                  all.goods.text(),
                  all.discount.text(),
                  all.freight.text(),
                  all.tax.text(),
                  all.total().text(),
                  currency};
    return sheet;
}

PaperMaking orderPapers(const Order &order, const Catalogue &catalogue)
{
    return {[&](PaperWords paper) { return orderPaper(order, catalogue, std::move(paper)); },
            [&] { return orderRows(order); }, [&] { return orderCsv(order); }};
}

} // namespace flarestock
