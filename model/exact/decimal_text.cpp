// SPDX-License-Identifier: MIT
//
// Decimals as text, always in the C locale: strict on the way in, plain on the way out.

#include "model/exact/decimal.h"

#include <algorithm>
#include <cassert>
#include <charconv>
#include <limits>
#include <utility>

namespace flarestock {

namespace {

constexpr std::string_view Digits = "0123456789";

tl::unexpected<Problem> notANumber(std::string_view text)
{
    if (text.empty())
        return problem("", "a number is wanted and nothing is there", "Write one such as 12.50.");
    return problem("", quotedStart(text) + " is not a number",
                   "Write digits with a point for decimals, such as 12.50.");
}

bool onlyDigits(std::string_view text)
{
    return !text.empty() && text.find_first_not_of(Digits) == std::string_view::npos;
}

} // namespace

Result<Decimal> Decimal::parse(std::string_view text)
{
    std::string_view rest = text;
    const bool negative = rest.starts_with('-');
    if (negative || rest.starts_with('+'))
        rest.remove_prefix(1);
    const auto point = rest.find('.');
    const std::string_view whole = rest.substr(0, point);
    const std::string_view decimals =
        point == std::string_view::npos ? std::string_view() : rest.substr(point + 1);
    if (!onlyDigits(whole) || (point != std::string_view::npos && !onlyDigits(decimals)))
        return notANumber(text);

    const auto start = std::min(whole.find_first_not_of('0'), whole.size());
    if (decimals.size() > static_cast<std::size_t>(ScaleMax) ||
        whole.size() - start + decimals.size() > DigitsMax)
        return problem(
            "", quotedStart(text) + " has more than " + std::to_string(DigitsMax) + " digits",
            "Write a shorter number.");
    std::string digits(whole.substr(start));
    digits += decimals;
    Whole coefficient = digits.empty() ? Whole() : Whole::ofDigits(digits);
    return Decimal(negative ? -coefficient : std::move(coefficient),
                   static_cast<std::int32_t>(decimals.size()));
}

std::string Decimal::text() const
{
    std::string digits = m_coefficient.abs().text();
    const auto scale = static_cast<std::size_t>(m_scale);
    if (scale > 0) {
        if (digits.size() <= scale)
            digits.insert(0, scale + 1 - digits.size(), '0');
        digits.insert(digits.size() - scale, 1, '.');
    }
    return sign() < 0 ? "-" + digits : digits;
}

double Decimal::approximate() const
{
    const std::string digits = text();
    double number = 0;
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), number);
    if (error == std::errc::result_out_of_range) {
        // Too large for a double, or nearer to zero than the smallest one.
        const bool large = *this <= Decimal(-1) || *this >= Decimal(1);
        const double magnitude = large ? std::numeric_limits<double>::infinity() : 0.0;
        return sign() < 0 ? -magnitude : magnitude;
    }
    assert(error == std::errc() && end == digits.data() + digits.size());
    return number;
}

Decimal operator""_dec(const char *text, std::size_t length)
{
    auto parsed = Decimal::parse({text, length});
    assert(parsed.has_value());
    return *std::move(parsed);
}

} // namespace flarestock
