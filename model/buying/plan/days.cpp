// SPDX-License-Identifier: MIT

#include "model/buying/plan/days.h"

#include <algorithm>
#include <cassert>
#include <chrono>
#include <optional>

namespace flarestock {

namespace {

/// The number in so many digits; nothing where something else stands there.
std::optional<unsigned> digits(std::string_view text) noexcept
{
    unsigned number = 0;
    for (const char letter : text) {
        if (letter < '0' || letter > '9')
            return std::nullopt;
        number = number * 10 + static_cast<unsigned>(letter - '0');
    }
    return number;
}

std::optional<std::chrono::sys_days> read(std::string_view text) noexcept
{
    if (text.size() != 10 || text[4] != '-' || text[7] != '-')
        return std::nullopt;
    const auto year = digits(text.substr(0, 4));
    const auto month = digits(text.substr(5, 2));
    const auto day = digits(text.substr(8, 2));
    if (!year || !month || !day)
        return std::nullopt;
    const std::chrono::year_month_day date(std::chrono::year(static_cast<int>(*year)),
                                           std::chrono::month(*month), std::chrono::day(*day));
    return date.ok() ? std::optional(std::chrono::sys_days(date)) : std::nullopt;
}

std::string padded(unsigned number, std::size_t width)
{
    std::string text = std::to_string(number);
    return std::string(width - std::min(width, text.size()), '0') + text;
}

} // namespace

std::string dayAfter(std::string_view day, int days)
{
    const auto from = read(day);
    assert(from);
    const std::chrono::year_month_day date(*from + std::chrono::days(days));
    return padded(static_cast<unsigned>(static_cast<int>(date.year())), 4) + "-" +
           padded(static_cast<unsigned>(date.month()), 2) + "-" +
           padded(static_cast<unsigned>(date.day()), 2);
}

int daysFrom(std::string_view from, std::string_view to)
{
    const auto begin = read(from);
    const auto end = read(to);
    assert(begin && end);
    return static_cast<int>((*end - *begin).count());
}

} // namespace flarestock
