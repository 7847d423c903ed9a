// SPDX-License-Identifier: MIT

#include "model/exchange/typed/doubts.h"

#include "model/exact/case_fold.h"

#include <algorithm>

namespace flarestock {

namespace {

bool rises(std::string_view prices)
{
    std::optional<Decimal> before;
    while (!prices.empty()) {
        const auto end = std::min(prices.find(';'), prices.size());
        const std::string_view step = prices.substr(0, end);
        const auto colon = step.find(':');
        const auto price = Decimal::parse(
            trimmed(colon == std::string_view::npos ? step : step.substr(colon + 1)));
        if (price && before && *price > *before)
            return true;
        if (price)
            before = *price;
        prices.remove_prefix(std::min(end + 1, prices.size()));
    }
    return false;
}

} // namespace

std::string currencyAskedBy(const std::string &supplier, const Catalogue &catalogue)
{
    for (const Supplier &one : catalogue.suppliers())
        if (sameFolded(one.id, supplier) && one.currency)
            return std::string(one.currency->code());
    std::string asks;
    for (const Part &part : catalogue.parts()) {
        for (const Offer &offer : catalogue.offers(part)) {
            if (!sameFolded(offer.supplier, supplier))
                continue;
            if (!asks.empty() && asks != offer.currency.code())
                return {};
            asks = offer.currency.code();
        }
    }
    return asks;
}

std::vector<CellFault> doubtsOf(const RowCells &offer, const std::string &asks)
{
    std::vector<CellFault> doubts;
    if (rises(cellOf(offer, "prices")))
        doubts.push_back({"prices", "rise with the quantity", {}, 0});
    if (!asks.empty() && !sameFolded(asks, cellOf(offer, "currency")))
        doubts.push_back({"currency", "is not the one that the supplier asks in", {}, 0});
    return doubts;
}

} // namespace flarestock
