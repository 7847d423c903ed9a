// SPDX-License-Identifier: MIT
//
// Money: an exact amount of one currency. Two currencies never add (asserted): convert first.
//
// A currency knows its minor digits by ISO 4217 (the standard, not the locale: a locale library
// shows the forint without decimals, ISO 4217 gives it two).

#pragma once

#include "model/exact/decimal.h"
#include "model/exact/rational.h"

#include <array>
#include <vector>

namespace flarestock {

/// A currency of ISO 4217 by its three letters.
class Currency {
public:
    /// Problem: not three capital letters, or not in the ISO 4217 list.
    [[nodiscard]] static Result<Currency> parse(std::string_view code);
    [[nodiscard]] std::string_view code() const noexcept { return {m_code.data(), 3}; }
    [[nodiscard]] std::int32_t minorDigits() const noexcept { return m_minorDigits; }
    friend bool operator==(const Currency &, const Currency &) = default;

private:
    Currency() = default;
    std::array<char, 4> m_code{};
    std::int32_t m_minorDigits = 2;
};

struct Money {
    Decimal amount;
    Currency currency;

    /// Rounded to the minor digits of the currency: the amount of a line on paper.
    [[nodiscard]] Money toMinorDigits(Rounding mode) const;
    [[nodiscard]] std::string text() const; ///< "12.50 USD"

    friend Money operator+(const Money &, const Money &); ///< Same currency (asserted).
    friend Money operator-(const Money &, const Money &); ///< Same currency (asserted).
    friend bool operator==(const Money &, const Money &) = default;
};

/// `total` in shares proportional to `weights`, in whole minor units, whose sum is `total`: largest
/// remainder, ties to the earlier share; a negative total is shared by its absolute value.
/// `total` is whole in minor units, weights are not negative and not all zero (asserted).
[[nodiscard]] std::vector<Money> shares(const Money &total, const std::vector<Decimal> &weights);

} // namespace flarestock
