// SPDX-License-Identifier: MIT
//
// Shortage: what lacks of one part for one day, after all that lies free and all that is on its way
// by then; for whom, and by when it must be ordered to be there.

#pragma once

#include "model/exact/decimal.h"

#include <string>
#include <vector>

namespace flarestock {

struct Shortage {
    struct For {
        std::string whom; ///< A build's id, or the place that is to be filled up.
        Decimal quantity; ///< In the part's unit.
    };
    std::string part;
    Decimal quantity;                 ///< In the part's unit; more than zero: the sum of `wanted`.
    std::string day;                  ///< Needed by: "2026-12-12"; empty where no day was said.
    std::vector<For> wanted;          ///< Whoever it lacks to.
    std::vector<std::string> instead; ///< Substitutes of which so much is free: part numbers.
};

} // namespace flarestock
