// SPDX-License-Identifier: MIT
//
// FreeStock: what a build may use of one part, as plain numbers. Joints, systems and checks see the
// stock only as this; where it comes from (the journal) they never know.

#pragma once

#include "model/exact/quantity.h"
#include "model/exact/rational.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace flarestock {

/// Of what nobody counts (sealant, zip ties, a tin of odds): how much a hand sees there.
enum class StockLevel : std::uint8_t { Out, Low, Plenty };
[[nodiscard]] std::string_view text(StockLevel level) noexcept;          ///< "out" "low" "plenty"
[[nodiscard]] Result<StockLevel> parseStockLevel(std::string_view text); ///< Problem: none of them.

struct FreeStock {
    struct AtPlace {
        std::string place;
        Quantity free;
    };
    Quantity onHand;                  ///< All of it, in the part's unit.
    Quantity free;                    ///< On hand and not promised to another build.
    Decimal value;                    ///< What `onHand` cost, in the shop's currency.
    std::vector<Quantity> pieces;     ///< For what is cut: the free pieces, longest first.
    std::vector<AtPlace> places;      ///< Where the free ones lie, nearest first.
    std::vector<std::string> missing; ///< Box contents found missing from free ones: part numbers.
    /// Of what is cut: how much of `free` was cut to length for this build before. It is not in
    /// `pieces`.
    std::optional<Quantity> cutBefore = std::nullopt;

    std::optional<StockLevel> level = std::nullopt; ///< Of what is not counted; nothing: it is.
    std::string seen = {}; ///< Where and when the level was, as people say it.

    /// What is free; of what is not counted and not out, as much as anybody can need (a million).
    [[nodiscard]] Decimal usable() const;
    /// Value over quantity on hand, exact; zero where nothing is on hand.
    [[nodiscard]] Rational carriedUnitCost() const;
};

/// By part number as the catalogue spells it.
using Shelf = std::map<std::string, FreeStock, std::less<>>;

} // namespace flarestock
