// SPDX-License-Identifier: MIT
//
// Parts met: everything that the fluid of a build runs through, each part once however many joints
// it stands in, with the place where the flow meets it first.

#pragma once

#include "model/systems/expansion.h"

namespace flarestock {

struct Met {
    const Part *part = nullptr; ///< Never nullptr.
    std::string where;          ///< Id of the station, run or joint.
};

enum class Reach : std::uint8_t { All, UnderPressure };

/// Stations, then lines, then the pieces of joints. Under pressure: those of the runs on the
/// pressure level, and what is plugged there. Tanks and tools are left out.
[[nodiscard]] std::vector<Met> partsMet(const Expansion &expansion, Reach reach);

} // namespace flarestock
