// SPDX-License-Identifier: MIT
//
// Plain meeting: ends without a thread of their own: hose, barb, tube, weld, quick connector.

#pragma once

#include "model/ports/mating.h"

namespace flarestock {

/// Whether at least one of the two has no thread (a banjo has its bolt's).
[[nodiscard]] bool isPlain(const Port &port) noexcept;

/// What happens; at least one is plain (asserted). Needs as in seatsMeet().
[[nodiscard]] Mating plainMeet(const Port &a, const Port &b);

} // namespace flarestock
