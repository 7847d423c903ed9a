// SPDX-License-Identifier: MIT
//
// Whether the planned builds of a shop still work out once its templates are others. What a builder
// has answered and picked stays with his build, whatever its template becomes; so a template that
// no longer asks, or no longer has that place, would leave the build without a bill.

#pragma once

#include "app/workshop/documents.h"

namespace flarestock {

/// `before` and `after`: all documents of the shop. Problem: the first build that works out by
/// those before and not by those after, with why; after does not read.
[[nodiscard]] Result<void> plansStand(const TextFiles &before, const TextFiles &after);

} // namespace flarestock
