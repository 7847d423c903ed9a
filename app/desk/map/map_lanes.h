// SPDX-License-Identifier: MIT
//
// Map lanes: the lanes beside one another in a channel between two rows, or in a gutter between two
// columns, of the line map. Runs that pass no place in common share a lane, so that neither is
// wider than it has to be.

#pragma once

#include <vector>

namespace flarestock {

/// The places that a run passes, both ends included: gutters of a channel, rows and channels of a
/// gutter.
struct Span {
    int first = 0;
    int last = 0;
};

class Lanes {
public:
    /// The first lane in which nothing lies there yet, counted from 0; it is taken.
    int take(const Span &span);
    [[nodiscard]] int count() const { return static_cast<int>(m_lanes.size()); }

private:
    std::vector<std::vector<Span>> m_lanes;
};

} // namespace flarestock
