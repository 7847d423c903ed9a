// SPDX-License-Identifier: MIT
//
// Circulation: oil and coolant that a pump of the build sends round. What its template asks of it,
// or the most that its curve has, goes through every line of its way, cold (20 °C), when it takes
// most. An engine's own pump states no flow, and then nothing is worked out.

#pragma once

#include "model/checks/flow/system_flow.h"

namespace flarestock {

/// The expansion's fluid is oil or coolant. Fills in runs and liquid, or says why not.
void circulate(const Expansion &expansion, SystemFlow &flow);

} // namespace flarestock
