// SPDX-License-Identifier: MIT
//
// The only file that includes Boost.Multiprecision. Its operators make no expression templates
// (et_off), because an `auto` holding one would point at dead temporaries. cpp_int reads "010" as
// octal, so leading zeros go before it sees any digits.

#include "model/exact/whole_big.h"

#include <boost/multiprecision/cpp_int.hpp>

#include <limits>
#include <string>
#include <utility>

namespace flarestock {

using Integer = boost::multiprecision::number<boost::multiprecision::cpp_int_backend<>,
                                              boost::multiprecision::et_off>;

struct Whole::Big {
    Integer number;
};

void Whole::Destroy::operator()(Big *big) const noexcept
{
    delete big;
}

Whole::Whole(const Whole &other)
    : m_small(other.m_small), m_big(other.m_big ? new Big(*other.m_big) : nullptr)
{
}

Whole &Whole::operator=(const Whole &other)
{
    if (this != &other) {
        m_small = other.m_small;
        m_big.reset(other.m_big ? new Big(*other.m_big) : nullptr);
    }
    return *this;
}

/// Between the two storages.
struct BigPath::Storage {
    [[nodiscard]] static Integer integer(const Whole &whole)
    {
        return whole.m_big ? whole.m_big->number : Integer(whole.m_small);
    }

    [[nodiscard]] static std::optional<std::int64_t> small(const Integer &number)
    {
        if (number < std::numeric_limits<std::int64_t>::min() ||
            number > std::numeric_limits<std::int64_t>::max())
            return std::nullopt;
        return static_cast<std::int64_t>(number);
    }

    [[nodiscard]] static Whole whole(Integer number)
    {
        Whole result;
#ifndef FLARESTOCK_BIG_ONLY
        if (const auto fitting = small(number)) {
            result.m_small = *fitting;
            return result;
        }
#endif
        result.m_big.reset(new Whole::Big{std::move(number)});
        return result;
    }
};

Whole BigPath::ofUnsigned(std::uint64_t number)
{
    return Storage::whole(Integer(number));
}

Whole BigPath::ofDigits(std::string_view digits)
{
    const auto start = digits.find_first_not_of('0');
    if (start == std::string_view::npos)
        return Whole();
    return Storage::whole(Integer(std::string(digits.substr(start))));
}

Whole BigPath::powerOfTen(std::int32_t exponent)
{
    return Storage::whole(boost::multiprecision::pow(Integer(10), static_cast<unsigned>(exponent)));
}

Whole BigPath::sum(const Whole &left, const Whole &right)
{
    return Storage::whole(Storage::integer(left) + Storage::integer(right));
}

Whole BigPath::difference(const Whole &left, const Whole &right)
{
    return Storage::whole(Storage::integer(left) - Storage::integer(right));
}

Whole BigPath::product(const Whole &left, const Whole &right)
{
    return Storage::whole(Storage::integer(left) * Storage::integer(right));
}

Whole::Division BigPath::division(const Whole &dividend, const Whole &divisor)
{
    Integer quotient;
    Integer remainder;
    boost::multiprecision::divide_qr(Storage::integer(dividend), Storage::integer(divisor),
                                     quotient, remainder);
    return {Storage::whole(std::move(quotient)), Storage::whole(std::move(remainder))};
}

Whole BigPath::greatestCommonDivisor(const Whole &left, const Whole &right)
{
    return Storage::whole(
        boost::multiprecision::gcd(Storage::integer(left), Storage::integer(right)));
}

int BigPath::compare(const Whole &left, const Whole &right)
{
    return Storage::integer(left).compare(Storage::integer(right));
}

int BigPath::sign(const Whole &whole) noexcept
{
    if (whole.m_big)
        return whole.m_big->number.sign();
    return whole.m_small > 0 ? 1 : whole.m_small < 0 ? -1 : 0;
}

bool BigPath::isEven(const Whole &whole)
{
    return !boost::multiprecision::bit_test(boost::multiprecision::abs(Storage::integer(whole)), 0);
}

std::optional<std::int64_t> BigPath::toInt64(const Whole &whole)
{
    return Storage::small(Storage::integer(whole));
}

std::string BigPath::text(const Whole &whole)
{
    // Boost prints what fits 64 bits as std::locale says, digits grouped; so that is not left to
    // it.
    const Integer number = Storage::integer(whole);
    const Integer size = boost::multiprecision::abs(number);
    if (size > std::numeric_limits<std::uint64_t>::max())
        return number.str();
    return (number < 0 ? "-" : "") + std::to_string(static_cast<std::uint64_t>(size));
}

} // namespace flarestock
