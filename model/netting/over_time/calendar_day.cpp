// SPDX-License-Identifier: MIT

#include "model/netting/over_time/calendar_day.h"

#include "model/journal/notes/lot_facts.h"

#include <chrono>

namespace flarestock {

namespace {

int number(std::string_view digits)
{
    int value = 0;
    for (const char digit : digits)
        value = value * 10 + (digit - '0');
    return value;
}

std::string digits(int value, std::size_t count)
{
    std::string said = std::to_string(value);
    return said.size() < count ? std::string(count - said.size(), '0') + said : said;
}

} // namespace

std::optional<DayNumber> dayNumber(std::string_view day) noexcept
{
    if (!isDay(day) || number(day.substr(0, 4)) < 1)
        return std::nullopt;
    const std::chrono::year_month_day date{
        std::chrono::year(number(day.substr(0, 4))),
        std::chrono::month(static_cast<unsigned>(number(day.substr(5, 2)))),
        std::chrono::day(static_cast<unsigned>(number(day.substr(8, 2))))};
    return std::chrono::sys_days(date).time_since_epoch().count();
}

std::string calendarDay(DayNumber number)
{
    const std::chrono::year_month_day date{
        std::chrono::sys_days(std::chrono::days(static_cast<int>(number)))};
    return digits(static_cast<int>(date.year()), 4) + '-' +
           digits(static_cast<int>(static_cast<unsigned>(date.month())), 2) + '-' +
           digits(static_cast<int>(static_cast<unsigned>(date.day())), 2);
}

} // namespace flarestock
