// SPDX-License-Identifier: MIT
//
// Clock: what the program asks of the computer so that the model need not: the time, and an id that
// nothing has borne before.

#pragma once

#include "model/journal/movement.h"

#include <cstdint>

namespace flarestock {

/// Milliseconds since 1970, UTC, by this computer's clock.
[[nodiscard]] std::int64_t nowMilliseconds();
/// By the clock and the system's randomness.
[[nodiscard]] MovementId freshId();

} // namespace flarestock
