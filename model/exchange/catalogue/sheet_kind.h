// SPDX-License-Identifier: MIT
//
// What a document of the shop holds, by its name.

#pragma once

#include <algorithm>
#include <array>
#include <cstdint>
#include <string_view>

namespace flarestock {

enum class SheetKind : std::uint8_t { Parts, Suppliers, Offers, Other };

[[nodiscard]] constexpr SheetKind sheetKind(std::string_view name)
{
    const std::string_view base = name.substr(name.rfind('/') + 1);
    constexpr std::array<std::string_view, 9> others = {
        "stock.csv", "kept.csv",   "rates.csv",   "season.csv",   "spares.csv",
        "used.csv",  "fitted.csv", "outings.csv", "intervals.csv"};
    if (!base.ends_with(".csv") || std::find(others.begin(), others.end(), base) != others.end())
        return SheetKind::Other;
    return base == "suppliers.csv" ? SheetKind::Suppliers
           : base == "offers.csv"  ? SheetKind::Offers
                                   : SheetKind::Parts;
}

} // namespace flarestock
