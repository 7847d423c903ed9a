// SPDX-License-Identifier: MIT

#include "model/exact/decimal.h"

#include <algorithm>
#include <cassert>
#include <utility>

namespace flarestock {

namespace {

/// Whether the quotient that was cut towards zero must step one away from zero.
/// half: the cut part against one half; odd: the last digit kept.
bool stepsAwayFromZero(Rounding mode, std::strong_ordering half, bool odd, bool negative)
{
    switch (mode) {
    case Rounding::HalfEven:
        return std::is_gt(half) || (std::is_eq(half) && odd);
    case Rounding::HalfUp:
        return std::is_gteq(half);
    case Rounding::HalfDown:
        return std::is_gt(half);
    case Rounding::Down:
        return false;
    case Rounding::Up:
        return true;
    case Rounding::Floor:
        return negative;
    case Rounding::Ceiling:
        return !negative;
    }
    assert(false);
    return false;
}

/// dividend / divisor to a whole number.
Whole roundedQuotient(const Whole &dividend, const Whole &divisor, Rounding mode)
{
    auto [quotient, remainder] = divideTowardsZero(dividend, divisor);
    if (remainder.sign() == 0)
        return std::move(quotient);
    const Whole cut = remainder.abs();
    const auto half = cut <=> divisor.abs() - cut;
    const bool negative = dividend.sign() != divisor.sign();
    if (!stepsAwayFromZero(mode, half, !quotient.isEven(), negative))
        return std::move(quotient);
    return quotient + Whole(std::int64_t{negative ? -1 : 1});
}

Whole timesPowerOfTen(const Whole &number, std::int32_t exponent)
{
    return exponent == 0 ? number : number * Whole::powerOfTen(exponent);
}

std::int32_t addedScales(std::int32_t left, std::int32_t right)
{
    std::int32_t sum = 0;
    [[maybe_unused]] const bool overflowed = __builtin_add_overflow(left, right, &sum);
    assert(!overflowed);
    return sum;
}

} // namespace

Decimal::Decimal(Whole coefficient, std::int32_t scale)
    : m_coefficient(std::move(coefficient)), m_scale(scale)
{
    assert(scale >= 0);
}

Decimal Decimal::scaled(std::int64_t coefficient, std::int32_t scale)
{
    return {Whole(coefficient), scale};
}

bool Decimal::isWhole() const
{
    return stripped().m_scale == 0;
}

std::optional<std::int64_t> Decimal::toInt64() const
{
    const Decimal plain = stripped();
    return plain.m_scale == 0 ? plain.m_coefficient.toInt64() : std::nullopt;
}

Decimal Decimal::rescaled(std::int32_t scale, Rounding mode) const
{
    assert(scale >= 0);
    if (scale >= m_scale)
        return {timesPowerOfTen(m_coefficient, scale - m_scale), scale};
    return {roundedQuotient(m_coefficient, Whole::powerOfTen(m_scale - scale), mode), scale};
}

Result<Decimal> Decimal::rescaledExact(std::int32_t scale) const
{
    Decimal result = rescaled(scale, Rounding::Down);
    if (result != *this)
        return problem(text(), "has more than " + std::to_string(scale) + " decimals");
    return result;
}

Decimal Decimal::stripped() const
{
    const Whole ten(std::int64_t{10});
    Decimal result = *this;
    while (result.m_scale > 0) {
        auto [quotient, remainder] = divideTowardsZero(result.m_coefficient, ten);
        if (remainder.sign() != 0)
            break;
        result.m_coefficient = std::move(quotient);
        --result.m_scale;
    }
    return result;
}

Decimal Decimal::abs() const
{
    return {m_coefficient.abs(), m_scale};
}

Decimal divide(const Decimal &dividend, const Decimal &divisor, std::int32_t scale, Rounding mode)
{
    assert(!divisor.isZero());
    assert(scale >= 0);
    // dividend / divisor × 10^scale, with the powers of ten on the side where they are whole.
    const std::int32_t up = addedScales(scale, divisor.m_scale);
    const std::int32_t down = dividend.m_scale;
    return {roundedQuotient(timesPowerOfTen(dividend.m_coefficient, std::max(up - down, 0)),
                            timesPowerOfTen(divisor.m_coefficient, std::max(down - up, 0)), mode),
            scale};
}

Decimal remainder(const Decimal &dividend, const Decimal &divisor)
{
    assert(!divisor.isZero());
    const std::int32_t scale = std::max(dividend.m_scale, divisor.m_scale);
    return {divideTowardsZero(timesPowerOfTen(dividend.m_coefficient, scale - dividend.m_scale),
                              timesPowerOfTen(divisor.m_coefficient, scale - divisor.m_scale))
                .remainder,
            scale};
}

Decimal operator+(const Decimal &left, const Decimal &right)
{
    const std::int32_t scale = std::max(left.m_scale, right.m_scale);
    return {timesPowerOfTen(left.m_coefficient, scale - left.m_scale) +
                timesPowerOfTen(right.m_coefficient, scale - right.m_scale),
            scale};
}

Decimal operator-(const Decimal &left, const Decimal &right)
{
    const std::int32_t scale = std::max(left.m_scale, right.m_scale);
    return {timesPowerOfTen(left.m_coefficient, scale - left.m_scale) -
                timesPowerOfTen(right.m_coefficient, scale - right.m_scale),
            scale};
}

Decimal operator*(const Decimal &left, const Decimal &right)
{
    return {left.m_coefficient * right.m_coefficient, addedScales(left.m_scale, right.m_scale)};
}

Decimal Decimal::operator-() const
{
    return {-m_coefficient, m_scale};
}

bool operator==(const Decimal &left, const Decimal &right)
{
    return (left <=> right) == std::strong_ordering::equal;
}

std::strong_ordering operator<=>(const Decimal &left, const Decimal &right)
{
    const std::int32_t scale = std::max(left.m_scale, right.m_scale);
    return timesPowerOfTen(left.m_coefficient, scale - left.m_scale) <=>
           timesPowerOfTen(right.m_coefficient, scale - right.m_scale);
}

std::size_t Decimal::hash() const
{
    const Decimal plain = stripped();
    return plain.m_coefficient.hash() * 31 + static_cast<std::size_t>(plain.m_scale);
}

} // namespace flarestock
