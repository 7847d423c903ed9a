// SPDX-License-Identifier: MIT
//
// A shop's own facts (shop.toml) and what lies in it on the first day (stock.csv). The formats are
// described in demo-data/README.md.

#pragma once

#include "model/exact/money.h"
#include "model/journal/layers.h"
#include "model/journal/movement.h"
#include "model/parts/catalogue.h"

#include <string>
#include <vector>

namespace flarestock {

/// Whether a place may be called that: something on one line, without a tab or another control
/// character.
[[nodiscard]] bool isPlaceName(std::string_view name) noexcept;

struct ShopPlan {
    std::string title;
    Currency currency;
    std::vector<Place> places;
    Costing costing = Costing::MovingAverage; ///< `costing`, where it is said.
};

/// Problem: with file, line, column, the line and a caret: TOML that does not parse, an unknown or
/// missing key, an unknown currency or kind of place, a place twice.
[[nodiscard]] Result<ShopPlan> readShop(std::string_view text, std::string file);

/// One row of stock.csv; it becomes one movement out of the place `opening`.
struct OpeningStock {
    std::string part; ///< As the catalogue spells it.
    std::string place;
    Decimal quantity; ///< In the part's unit; more than zero, whole in smallest units.
    Decimal value;    ///< What all of it cost; not below zero, at most 6 decimals.
    std::string lot;
    PieceCondition condition = PieceCondition::New;
    std::vector<std::string> missing; ///< Box contents found missing: part numbers.
};

/// Problem: with file, line, column, the line and a caret: CSV that does not parse, an unknown
/// column, part, place or condition, a quantity or value that the journal cannot hold, the same lot
/// twice, a piece of hose without a lot, something missing that does not lie in the box. Where
/// `places` is empty, any place is taken.
[[nodiscard]] Result<std::vector<OpeningStock>>
readOpeningStock(std::string_view text, std::string file, const Catalogue &catalogue,
                 std::span<const Place> places = {});

} // namespace flarestock
