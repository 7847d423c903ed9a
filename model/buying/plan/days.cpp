// SPDX-License-Identifier: MIT

#include "model/buying/plan/days.h"

#include "model/netting/over_time/calendar_day.h"

#include <cassert>

namespace flarestock {

std::string dayAfter(std::string_view day, int days)
{
    const auto from = dayNumber(day);
    assert(from);
    return calendarDay(*from + days);
}

int daysFrom(std::string_view from, std::string_view to)
{
    const auto begin = dayNumber(from);
    const auto end = dayNumber(to);
    assert(begin && end);
    return static_cast<int>(*end - *begin);
}

} // namespace flarestock
