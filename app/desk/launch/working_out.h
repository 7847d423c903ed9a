// SPDX-License-Identifier: MIT
//
// Working out: how the plans of a shop are worked out in one snapshot of it.

#pragma once

#include "app/desk/build/worked_out.h"

namespace flarestock {

/// May be called from any thread.
[[nodiscard]] WorkOut workOutIn(const std::shared_ptr<const Workshop> &workshop);

} // namespace flarestock
