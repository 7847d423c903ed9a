// SPDX-License-Identifier: MIT

#include "model/parts/free_stock.h"

namespace flarestock {

std::string_view text(StockLevel level) noexcept
{
    switch (level) {
    case StockLevel::Out:
        return "out";
    case StockLevel::Low:
        return "low";
    case StockLevel::Plenty:
        return "plenty";
    }
    return "";
}

Result<StockLevel> parseStockLevel(std::string_view typed)
{
    for (const StockLevel level : {StockLevel::Out, StockLevel::Low, StockLevel::Plenty}) {
        if (typed == text(level))
            return level;
    }
    return problem(std::string(typed), "is not a level", "Write one of: plenty, low, out.");
}

Decimal FreeStock::usable() const
{
    return level && *level != StockLevel::Out ? Decimal(1'000'000) : free.amount;
}

Rational FreeStock::carriedUnitCost() const
{
    return onHand.amount.isZero() ? Rational() : Rational(value, onHand.amount);
}

} // namespace flarestock
