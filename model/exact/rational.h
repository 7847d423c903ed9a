// SPDX-License-Identifier: MIT
//
// Rational: an exact quotient of two decimals, for unit factors and averages on their way to a
// decimal. It is never stored or shown; toDecimal() is the only way out.
//
//   Rational(Decimal(649), Decimal(2400))                    // 64.90 for 240 in, per inch
//       .times(Decimal::parse("37.5").value())
//       .toDecimal(2, Rounding::HalfEven);                   // 10.14

#pragma once

#include "model/exact/decimal.h"

namespace flarestock {

class Rational {
public:
    Rational() : m_denominator(1) {} ///< Zero.
    explicit Rational(const Decimal &number) : Rational(number, Decimal(1)) {}
    /// The denominator is not zero (asserted). Reduced to lowest whole terms.
    Rational(const Decimal &numerator, const Decimal &denominator);

    [[nodiscard]] Rational times(const Decimal &factor) const;
    [[nodiscard]] Rational times(const Rational &factor) const;
    [[nodiscard]] Rational over(const Rational &divisor) const; ///< Divisor not zero (asserted).
    [[nodiscard]] Rational plus(const Rational &other) const;

    [[nodiscard]] Decimal toDecimal(std::int32_t scale, Rounding mode) const;
    /// The exact decimal where the quotient ends within `scaleMax` digits; otherwise nothing.
    [[nodiscard]] std::optional<Decimal> exactDecimal(std::int32_t scaleMax) const;
    [[nodiscard]] int sign() const noexcept { return m_numerator.sign(); }

    /// Whole numbers without a common factor; the denominator is positive.
    [[nodiscard]] const Decimal &numerator() const noexcept { return m_numerator; }
    [[nodiscard]] const Decimal &denominator() const noexcept { return m_denominator; }

    friend bool operator==(const Rational &, const Rational &);
    friend std::strong_ordering operator<=>(const Rational &, const Rational &);

private:
    Decimal m_numerator;
    Decimal m_denominator;
};

} // namespace flarestock
