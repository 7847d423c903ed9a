// SPDX-License-Identifier: MIT
//
// Cut length: how long a hose is cut, from how long it has to be between the seats of its ends.
// Each end takes up its allowance, from its seat to the end of the cut hose (HoseEndFacts).
//
//   cutLength(seats, end, end)   // 40 in between seats, 3/4 in at each end: 38 1/2 in

#pragma once

#include "model/parts/part.h"

namespace flarestock {

/// What both ends take up, in smallest units. Problem: an end that is no hose end or does not say
/// what it takes up; names it.
[[nodiscard]] Result<std::int64_t> takenUp(const Part &start, const Part &far);

/// In smallest units, as `betweenSeats`. Problem: as above; nothing is left to cut.
[[nodiscard]] Result<std::int64_t> cutLength(std::int64_t betweenSeats, const Part &start,
                                             const Part &far);

} // namespace flarestock
