// SPDX-License-Identifier: MIT
//
// Dash bore: what bore a hose of a dash size may have where nobody has measured it. A guess by one
// of two conventions that differ by more than a factor of two in pressure; a line that rests on it
// says so (StraightLine::boreAssumed).
//
//   assumedBore(6, DashNumbering::AsTube)->boreM; // 7.94 mm; 9.53 where it counts the bore

#pragma once

#include "model/exact/problem.h"

#include <cstdint>
#include <string_view>

namespace flarestock {

enum class DashNumbering : std::uint8_t {
    AsTube, ///< 100R5 and 100R14: the bore of the tube of that outside diameter.
    ByBore, ///< Other hose: sixteenths of an inch of bore.
};

struct AssumedBore {
    double boreM = 0;
    std::string_view source; ///< Never empty.
};

/// dash is 3 to 24, as people say it without its stroke (model/fluids/data/dash_bores.csv). AsTube
/// is the smaller, and so the one to judge a line by where the numbering is not known. Problem: a
/// size that the table does not have.
[[nodiscard]] Result<AssumedBore> assumedBore(int dash, DashNumbering numbering);

} // namespace flarestock
