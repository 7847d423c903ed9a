// SPDX-License-Identifier: MIT

#include "model/servicing/calendar.h"

#include "model/journal/notes/lot_facts.h"

#include <cassert>
#include <charconv>
#include <chrono>

namespace flarestock {

namespace {

using Day = std::chrono::year_month_day;

unsigned numberIn(std::string_view text)
{
    unsigned number = 0;
    std::from_chars(text.data(), text.data() + text.size(), number);
    return number;
}

Day dayOf(std::string_view text)
{
    assert(isDay(text));
    return {std::chrono::year(static_cast<int>(numberIn(text.substr(0, 4)))),
            std::chrono::month(numberIn(text.substr(5, 2))),
            std::chrono::day(numberIn(text.substr(8, 2)))};
}

std::string padded(unsigned number, std::size_t width)
{
    std::string text = std::to_string(number);
    return text.size() < width ? std::string(width - text.size(), '0') + text : text;
}

} // namespace

std::string dayAfterMonths(std::string_view day, int months)
{
    Day then = dayOf(day) + std::chrono::months(months);
    if (!then.ok())
        then = then.year() / then.month() / std::chrono::last;
    return padded(static_cast<unsigned>(static_cast<int>(then.year())), 4) + '-' +
           padded(static_cast<unsigned>(then.month()), 2) + '-' +
           padded(static_cast<unsigned>(then.day()), 2);
}

std::int64_t daysApart(std::string_view from, std::string_view to)
{
    return (std::chrono::sys_days(dayOf(to)) - std::chrono::sys_days(dayOf(from))).count();
}

} // namespace flarestock
