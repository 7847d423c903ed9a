// SPDX-License-Identifier: MIT

#include "model/spares/season.h"

#include "model/exact/case_fold.h"

#include <algorithm>

namespace flarestock {

bool Event::takes(std::string_view car) const noexcept
{
    return std::any_of(cars.begin(), cars.end(),
                       [car](const std::string &one) { return sameFolded(one, car); });
}

Season::Season(std::vector<Event> events) : m_events(std::move(events))
{
    std::stable_sort(m_events.begin(), m_events.end(),
                     [](const Event &a, const Event &b) { return a.firstDay < b.firstDay; });
}

const Event *Season::event(std::string_view id) const noexcept
{
    const auto found = std::find_if(m_events.begin(), m_events.end(),
                                    [id](const Event &event) { return sameFolded(event.id, id); });
    return found == m_events.end() ? nullptr : &*found;
}

std::vector<const Event *> Season::from(std::string_view day) const
{
    std::vector<const Event *> coming;
    for (const Event &event : m_events)
        if (event.lastDay >= day)
            coming.push_back(&event);
    return coming;
}

const Event *Season::next(std::string_view car, std::string_view day) const noexcept
{
    const auto found = std::find_if(m_events.begin(), m_events.end(), [&](const Event &event) {
        return event.lastDay >= day && event.takes(car);
    });
    return found == m_events.end() ? nullptr : &*found;
}

} // namespace flarestock
