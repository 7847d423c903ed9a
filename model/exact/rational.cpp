// SPDX-License-Identifier: MIT

#include "model/exact/rational.h"

#include <algorithm>
#include <cassert>

namespace flarestock {

Rational::Rational(const Decimal &numerator, const Decimal &denominator)
{
    assert(!denominator.isZero());
    // Both at one scale, the scale cancels.
    const std::int32_t scale = std::max(numerator.scale(), denominator.scale());
    const Whole above = numerator.rescaled(scale, Rounding::Down).m_coefficient;
    const Whole below = denominator.rescaled(scale, Rounding::Down).m_coefficient;
    Whole common = greatestCommonDivisor(above, below);
    if (below.sign() < 0)
        common = -common;
    m_numerator = Decimal(divideTowardsZero(above, common).quotient, 0);
    m_denominator = Decimal(divideTowardsZero(below, common).quotient, 0);
}

Rational Rational::times(const Decimal &factor) const
{
    return {m_numerator * factor, m_denominator};
}

Rational Rational::times(const Rational &factor) const
{
    return {m_numerator * factor.m_numerator, m_denominator * factor.m_denominator};
}

Rational Rational::over(const Rational &divisor) const
{
    assert(divisor.sign() != 0);
    return {m_numerator * divisor.m_denominator, m_denominator * divisor.m_numerator};
}

Rational Rational::plus(const Rational &other) const
{
    return {m_numerator * other.m_denominator + other.m_numerator * m_denominator,
            m_denominator * other.m_denominator};
}

Decimal Rational::toDecimal(std::int32_t scale, Rounding mode) const
{
    return divide(m_numerator, m_denominator, scale, mode);
}

std::optional<Decimal> Rational::exactDecimal(std::int32_t scaleMax) const
{
    const Decimal cut = toDecimal(scaleMax, Rounding::Down);
    if (cut * m_denominator != m_numerator)
        return std::nullopt;
    return cut.stripped();
}

bool operator==(const Rational &left, const Rational &right)
{
    return left.m_numerator == right.m_numerator && left.m_denominator == right.m_denominator;
}

std::strong_ordering operator<=>(const Rational &left, const Rational &right)
{
    return left.m_numerator * right.m_denominator <=> right.m_numerator * left.m_denominator;
}

} // namespace flarestock
