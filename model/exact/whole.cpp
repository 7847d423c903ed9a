// SPDX-License-Identifier: MIT
//
// The small path of Whole: 64-bit integers whose every overflow is caught by the compiler's checked
// builtins and handed to BigPath.

#include "model/exact/whole.h"

#include "model/exact/whole_big.h"

#include <array>
#include <cassert>
#include <charconv>
#include <limits>
#include <numeric>

namespace flarestock {

namespace {

#ifdef FLARESTOCK_BIG_ONLY
constexpr bool SmallPath = false;
#else
constexpr bool SmallPath = true;
#endif

/// The most decimal digits of which every number fits an int64.
constexpr std::size_t SmallDigits = 18;

constexpr auto SmallPowersOfTen = [] {
    std::array<std::int64_t, SmallDigits + 1> powers{};
    std::int64_t power = 1;
    for (auto &each : powers) {
        each = power;
        if (&each != &powers.back())
            power *= 10;
    }
    return powers;
}();

constexpr std::int64_t Int64Min = std::numeric_limits<std::int64_t>::min();

} // namespace

Whole::Whole(std::uint64_t number)
{
    if (number <= static_cast<std::uint64_t>(std::numeric_limits<std::int64_t>::max()))
        m_small = static_cast<std::int64_t>(number);
    else
        *this = BigPath::ofUnsigned(number);
}

Whole Whole::ofDigits(std::string_view digits)
{
    assert(!digits.empty() && digits.find_first_not_of("0123456789") == std::string_view::npos);
    if (!SmallPath || digits.size() > SmallDigits)
        return BigPath::ofDigits(digits);
    std::int64_t number = 0;
    std::from_chars(digits.data(), digits.data() + digits.size(), number);
    return Whole(number);
}

Whole Whole::powerOfTen(std::int32_t exponent)
{
    assert(exponent >= 0);
    const auto index = static_cast<std::size_t>(exponent);
    return SmallPath && index < SmallPowersOfTen.size() ? Whole(SmallPowersOfTen[index])
                                                        : BigPath::powerOfTen(exponent);
}

int Whole::sign() const noexcept
{
    return BigPath::sign(*this);
}

bool Whole::isEven() const
{
    return m_big ? BigPath::isEven(*this) : m_small % 2 == 0;
}

std::optional<std::int64_t> Whole::toInt64() const
{
    return m_big ? BigPath::toInt64(*this) : m_small;
}

std::string Whole::text() const
{
    return SmallPath && !m_big ? std::to_string(m_small) : BigPath::text(*this);
}

std::size_t Whole::hash() const
{
    // By value and not by storage, so that both paths agree.
    if (const auto small = toInt64())
        return std::hash<std::int64_t>{}(*small);
    return std::hash<std::string>{}(text());
}

Whole Whole::abs() const
{
    return sign() < 0 ? -*this : *this;
}

Whole operator+(const Whole &left, const Whole &right)
{
    std::int64_t sum = 0;
    if (SmallPath && !left.m_big && !right.m_big &&
        !__builtin_add_overflow(left.m_small, right.m_small, &sum))
        return Whole(sum);
    return BigPath::sum(left, right);
}

Whole operator-(const Whole &left, const Whole &right)
{
    std::int64_t difference = 0;
    if (SmallPath && !left.m_big && !right.m_big &&
        !__builtin_sub_overflow(left.m_small, right.m_small, &difference))
        return Whole(difference);
    return BigPath::difference(left, right);
}

Whole operator*(const Whole &left, const Whole &right)
{
    std::int64_t product = 0;
    if (SmallPath && !left.m_big && !right.m_big &&
        !__builtin_mul_overflow(left.m_small, right.m_small, &product))
        return Whole(product);
    return BigPath::product(left, right);
}

Whole Whole::operator-() const
{
    return Whole() - *this;
}

std::strong_ordering operator<=>(const Whole &left, const Whole &right)
{
    if (SmallPath && !left.m_big && !right.m_big)
        return left.m_small <=> right.m_small;
    return BigPath::compare(left, right) <=> 0;
}

Whole::Division divideTowardsZero(const Whole &dividend, const Whole &divisor)
{
    assert(divisor.sign() != 0);
    // The one 64-bit quotient that overflows is the smallest number by -1.
    if (SmallPath && !dividend.m_big && !divisor.m_big && dividend.m_small != Int64Min)
        return {Whole(dividend.m_small / divisor.m_small),
                Whole(dividend.m_small % divisor.m_small)};
    return BigPath::division(dividend, divisor);
}

Whole greatestCommonDivisor(const Whole &left, const Whole &right)
{
    if (SmallPath && !left.m_big && !right.m_big && left.m_small != Int64Min &&
        right.m_small != Int64Min)
        return Whole(std::gcd(left.m_small, right.m_small));
    return BigPath::greatestCommonDivisor(left, right);
}

} // namespace flarestock
