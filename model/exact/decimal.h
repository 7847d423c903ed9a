// SPDX-License-Identifier: MIT
//
// Decimal: an exact decimal number, coefficient × 10^-scale, of unlimited size.
//
// Addition and multiplication never lose a digit, and the scale is kept: 1.10 stays 1.10, although
// it equals 1.1. Only three operations can lose digits, and each says so in its name or argument:
// divide(), rescaled() and Rational::toDecimal(). There is no operator/ and no way in from double.
//
//   const auto price = Decimal::parse("12.50").value();
//   const auto cost = (price * Decimal(3)).rescaled(2, Rounding::HalfEven);   // 37.50
//
// The coefficient is a Whole: a checked 64-bit integer that spills to an unlimited one.

#pragma once

#include "model/exact/problem.h"
#include "model/exact/rounding.h"
#include "model/exact/whole.h"

#include <compare>
#include <concepts>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>

namespace flarestock {

class Decimal {
public:
    /// Most digits (after leading zeros) and largest scale that parse() takes, so that a hostile
    /// file cannot ask for the memory of the machine. Arithmetic itself has no limit.
    static constexpr std::size_t DigitsMax = 1200;
    static constexpr std::int32_t ScaleMax = 1200;

    Decimal() noexcept = default; ///< Zero, scale 0.
    template <std::integral T>
    requires(!std::same_as<T, bool> && sizeof(T) <= 8) Decimal(T whole)
        : m_coefficient(
              static_cast<std::conditional_t<std::is_signed_v<T>, std::int64_t, std::uint64_t>>(
                  whole))
    {
    }
    Decimal(double) = delete;
    Decimal(float) = delete;
    Decimal(long double) = delete;
    Decimal(bool) = delete;

    /// coefficient × 10^-scale. A scale is 0 or more, here and wherever one is given (asserted).
    [[nodiscard]] static Decimal scaled(std::int64_t coefficient, std::int32_t scale);

    /// Reads `[+-]digits[.digits]` and nothing else: no blanks, exponent, grouping, "nan".
    /// ".5" and "5." are refused. "-0.0" reads as 0.0.
    /// Problem: anything else, or beyond DigitsMax / ScaleMax.
    [[nodiscard]] static Result<Decimal> parse(std::string_view text);

    /// Plain digits, always with as many decimals as the scale: "1.10", "-0.05", "100".
    [[nodiscard]] std::string text() const;

    [[nodiscard]] std::int32_t scale() const noexcept { return m_scale; }
    /// -1, 0 or 1. There is no negative zero.
    [[nodiscard]] int sign() const noexcept { return m_coefficient.sign(); }
    [[nodiscard]] bool isZero() const noexcept { return sign() == 0; }
    [[nodiscard]] bool isWhole() const; ///< No digit other than 0 after the point.
    [[nodiscard]] bool sameScale(const Decimal &other) const noexcept
    {
        return m_scale == other.m_scale;
    }

    /// The number as an int64, if it is whole and fits; otherwise nothing.
    [[nodiscard]] std::optional<std::int64_t> toInt64() const;
    /// The nearest double, for physics and pictures only; never for money or stock.
    [[nodiscard]] double approximate() const;

    /// The number with exactly `scale` decimals, rounded by `mode` where digits go.
    [[nodiscard]] Decimal rescaled(std::int32_t scale, Rounding mode) const;
    /// The same without loss. Problem: digits other than 0 would go.
    [[nodiscard]] Result<Decimal> rescaledExact(std::int32_t scale) const;
    /// Trailing zeros after the point dropped: 1.10 gives 1.1, 100 stays 100.
    [[nodiscard]] Decimal stripped() const;
    [[nodiscard]] Decimal abs() const;

    /// The quotient with exactly `scale` decimals. The divisor is not zero (asserted).
    friend Decimal divide(const Decimal &dividend, const Decimal &divisor, std::int32_t scale,
                          Rounding mode);
    /// Truncating remainder: dividend − divisor × whole part of the quotient. Divisor not zero.
    friend Decimal remainder(const Decimal &dividend, const Decimal &divisor);

    friend Decimal operator+(const Decimal &, const Decimal &); ///< Larger scale.
    friend Decimal operator-(const Decimal &, const Decimal &); ///< Larger scale.
    friend Decimal operator*(const Decimal &, const Decimal &); ///< Sum of scales.
    [[nodiscard]] Decimal operator-() const;
    Decimal &operator+=(const Decimal &other) { return *this = *this + other; }
    Decimal &operator-=(const Decimal &other) { return *this = *this - other; }

    /// Compare as numbers: 1.10 == 1.1.
    friend bool operator==(const Decimal &, const Decimal &);
    friend std::strong_ordering operator<=>(const Decimal &, const Decimal &);
    /// Equal numbers have equal hashes, whatever their scale.
    [[nodiscard]] std::size_t hash() const;

private:
    friend class Rational;
    Decimal(Whole coefficient, std::int32_t scale);

    Whole m_coefficient;
    std::int32_t m_scale = 0; ///< 0 or more.
};

/// The friends above, where there is no Decimal among the arguments' classes to find them by.
[[nodiscard]] Decimal divide(const Decimal &dividend, const Decimal &divisor, std::int32_t scale,
                             Rounding mode);
[[nodiscard]] Decimal remainder(const Decimal &dividend, const Decimal &divisor);

/// `"12.50"_dec`, for tests and constants. Asserts that the text is a decimal.
[[nodiscard]] Decimal operator""_dec(const char *text, std::size_t length);

} // namespace flarestock

template <>
struct std::hash<flarestock::Decimal> {
    std::size_t operator()(const flarestock::Decimal &number) const { return number.hash(); }
};
