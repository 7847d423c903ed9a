// SPDX-License-Identifier: MIT

#include "app/desk/map/map_lanes.h"

#include <algorithm>

namespace flarestock {

int Lanes::take(const Span &span)
{
    const auto isFree = [&span](const std::vector<Span> &lane) {
        return std::none_of(lane.begin(), lane.end(), [&span](const Span &other) {
            return span.first <= other.last && other.first <= span.last;
        });
    };
    auto lane = std::find_if(m_lanes.begin(), m_lanes.end(), isFree);
    if (lane == m_lanes.end())
        lane = m_lanes.insert(lane, std::vector<Span>());
    lane->push_back(span);
    return static_cast<int>(lane - m_lanes.begin());
}

} // namespace flarestock
