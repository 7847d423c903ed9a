// SPDX-License-Identifier: MIT
//
// Flow sheet: what flows in a build, as a person reads it in a terminal: every line with what it
// takes and of what, the pumps where they work, what the regulators can hold, what is assumed.

#pragma once

#include "model/checks/flow/system_flow.h"

namespace flarestock {

/// Lines ended by '\n'.
[[nodiscard]] std::string flowSheet(const Expansion &build, const SystemFlow &flow);

} // namespace flarestock
