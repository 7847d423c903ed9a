// SPDX-License-Identifier: MIT
//
// Part: one thing that the shop stocks, by its own part number, with its ports and what its maker
// publishes about it. Offers say who sells it and for what.

#pragma once

#include "model/exact/money.h"
#include "model/exact/quantity.h"
#include "model/parts/facts.h"
#include "model/parts/kind.h"
#include "model/ports/port.h"

namespace flarestock {

enum class PortRole : std::uint8_t { Either, In, Out, Gauge, Return, Vent };
[[nodiscard]] std::string_view text(PortRole role) noexcept;
[[nodiscard]] Result<PortRole> parsePortRole(std::string_view text);

struct PartPort {
    std::string name; ///< "in", "out", "return", "a", "hose" …; unique in its part.
    Port port;
    PortRole role = PortRole::Either;
};

/// So many of another part: what lies in the box, or what it takes to fit the part.
struct PartCount {
    std::string part;
    Decimal count = 1;
};

struct Part {
    std::string number; ///< The shop's part number; unique, case kept, compared folded.
    std::string description;
    Kind kind = Kind::Adapter;
    Unit unit = Unit::Each; ///< Each, or Inch / Millimetre for what is cut.
    std::vector<PartPort> ports;
    Facts facts;
    Ratings ratings;
    std::string material; ///< Body: "aluminium", "steel", "stainless", "brass", "nylon" …
    std::string seal;     ///< Seal: "NBR", "FKM", "EPDM", "PTFE" …; empty where none or unsaid.
    std::vector<Fluid> suits; ///< Fluids that the maker allows; empty means that he says nothing.
    std::vector<std::string>
        words;                  ///< Further words that a template may ask for: "bypass", "in-tank".
    std::vector<PartCount> box; ///< What lies in its box besides it.
    std::vector<PartCount>
        fitting; ///< What fitting it uses up: bracket, clamps. Boxes count against it.
    std::vector<std::string> substitutes;
    bool consumed = true; ///< False for tools.

    [[nodiscard]] const PartPort *port(std::string_view name) const noexcept;
    [[nodiscard]] bool says(std::string_view word) const noexcept; ///< In words, case folded.
    template <class T>
    [[nodiscard]] const T *as() const noexcept
    {
        return std::get_if<T>(&facts);
    }
};

/// How a supplier reckons sales tax on paper. Which of the two ways, and how a half is rounded, the
/// law leaves to him; it is kept with each order.
struct TaxRule {
    enum class By : std::uint8_t { Item, Document };
    Decimal percent; ///< Of goods and freight less discount; zero where none is charged.
    By by = By::Document;
    Rounding rounding = Rounding::HalfUp; ///< Half up or half even.
    bool recovered = true; ///< The shop gets it back, so that it is no part of what a piece cost.
    friend bool operator==(const TaxRule &, const TaxRule &) = default;
};

struct Supplier {
    struct FreightStep {
        Decimal from; ///< For goods of this value and above …
        Decimal cost; ///< … freight costs this; both in the supplier's currency.
        friend bool operator==(const FreightStep &, const FreightStep &) = default;
    };
    std::string id;
    std::string name;
    int leadDays = 0;
    std::optional<Currency> currency; ///< Of what follows; nothing: the shop's.
    std::vector<FreightStep> freight; ///< Rising `from`, the first 0; none: no freight is known.
    Decimal minimumOrder;             ///< Goods of less are not sent.
    TaxRule tax;
    std::vector<std::string> address; ///< Lines for the paper.
};

/// A supplier's price for a part. Prices are per unit of the part, in packs of `pack`.
struct Offer {
    struct Break {
        Decimal from;      ///< At this quantity and above …
        Decimal priceEach; ///< … each unit costs this.
    };
    std::string part;
    std::string supplier;
    std::string supplierNumber;
    Decimal pack = 1;     ///< Sold in multiples of this many units of the part.
    Decimal minimum = 1;  ///< Least quantity of an order line.
    Decimal multiple = 1; ///< Of packs: an order line is so many packs, or two or three times that.
    Currency currency;
    std::vector<Break> breaks; ///< Rising `from`, the first at or below the least that can be
                               ///< bought (pack, minimum); never empty.
    int leadDays = 0;

    /// The price each at a quantity: the last break at or below it, the first below all.
    [[nodiscard]] const Decimal &priceEach(const Decimal &quantity) const;
};

} // namespace flarestock
