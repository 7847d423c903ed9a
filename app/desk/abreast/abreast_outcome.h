// SPDX-License-Identifier: MIT
//
// Abreast outcome: what comes of days that are tried, in a sentence: which build loses pieces of
// the stock, which gets them, and what more has to be ordered, by when.

#pragma once

#include "app/desk/abreast/abreast_rows.h"

namespace flarestock {

[[nodiscard]] QString saidOutcome(const Abreast &abreast);

} // namespace flarestock
