// SPDX-License-Identifier: MIT

#include "model/buying/totals.h"

#include <algorithm>
#include <cassert>

namespace flarestock {

namespace {

/// `total`, in shares for the lines by `weights`, or equal ones where none weighs anything.
std::vector<Money> sharesOf(const Decimal &total, const Currency &currency,
                            std::vector<Decimal> weights)
{
    if (std::all_of(weights.begin(), weights.end(), [](const Decimal &w) { return w.isZero(); }))
        std::fill(weights.begin(), weights.end(), Decimal(1));
    return shares({total.rescaled(currency.minorDigits(), Rounding::HalfEven), currency}, weights);
}

Decimal taxOf(const Decimal &base, const Order &order)
{
    return (base * order.tax.percent * Decimal::scaled(1, 2))
        .rescaled(order.currency.minorDigits(), order.tax.rounding);
}

Decimal taxedOf(const Amounts &line)
{
    return line.goods - line.discount + line.freight;
}

void tax(std::vector<Amounts> &lines, const Order &order)
{
    if (order.tax.by == TaxRule::By::Item) {
        for (Amounts &line : lines)
            line.tax = taxOf(taxedOf(line), order);
        return;
    }
    std::vector<Decimal> weights;
    Decimal base;
    for (const Amounts &line : lines) {
        weights.push_back(taxedOf(line));
        base += weights.back();
    }
    const auto taxes = sharesOf(taxOf(base, order), order.currency, weights);
    for (std::size_t at = 0; at < lines.size(); ++at)
        lines[at].tax = taxes[at].amount;
}

} // namespace

Decimal Amounts::landed(const TaxRule &rule) const
{
    return rule.recovered ? total() - tax : total();
}

OrderTotals totalsOf(const Order &order)
{
    assert(!order.lines.empty());
    const auto digits = order.currency.minorDigits();
    std::vector<Decimal> goods;
    goods.reserve(order.lines.size());
    for (const OrderLine &line : order.lines)
        goods.push_back(line.cost(digits));
    const auto discounts = sharesOf(order.discount, order.currency, goods);
    const auto freights = sharesOf(order.freight, order.currency, goods);

    OrderTotals totals;
    for (std::size_t at = 0; at < goods.size(); ++at)
        totals.lines.push_back(
            {goods[at], discounts[at].amount, freights[at].amount, Decimal::scaled(0, digits)});
    tax(totals.lines, order);
    const Decimal none = Decimal::scaled(0, digits);
    totals.all = {none, none, none, none};
    for (const Amounts &line : totals.lines) {
        totals.all.goods += line.goods;
        totals.all.discount += line.discount;
        totals.all.freight += line.freight;
        totals.all.tax += line.tax;
    }
    return totals;
}

} // namespace flarestock
