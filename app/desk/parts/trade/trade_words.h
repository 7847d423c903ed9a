// SPDX-License-Identifier: MIT
//
// Trade words: the fields of a supplier and of an offer, what they are called, an example for each.

#pragma once

#include "app/desk/rows/rows.h"
#include "model/exchange/typed/typed_row.h"

#include <span>

namespace flarestock {

struct TradeOf {
    SheetKind kind = SheetKind::Suppliers;
    std::span<const Supplier> suppliers; ///< Among whom an offer's is chosen.
};

/// In the order in which they are filled in.
[[nodiscard]] std::vector<std::string> tradeHeadings(SheetKind kind);
[[nodiscard]] QString tradeTitle(SheetKind kind, const std::string &heading);
/// As fieldCells() of a form; figures as the person's country writes them.
[[nodiscard]] Row tradeField(const std::string &heading, const std::string &text,
                             const TradeOf &of);
/// The cell's text of what was filled in, figures as the files have them.
[[nodiscard]] std::string tradeText(const std::string &heading, const QVariant &filled,
                                    const TradeOf &of);

} // namespace flarestock
