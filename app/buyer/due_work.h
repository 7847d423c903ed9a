// SPDX-License-Identifier: MIT
//
// Due work: the parts that work on the cars takes, among what the builds take.

#pragma once

#include "app/buyer/needs.h"

namespace flarestock {

/// A line for each part that some due work takes; nothing of it is met yet.
[[nodiscard]] std::vector<NeedLine> wantedForWork(const std::vector<DueLine> &due);

/// Meets the lines of work, which stand among the others by their days, out of what the builds
/// left; then out of what a build that wants it later has taken, which is short of it then.
void takeForWork(std::vector<NeedLine> &lines, Shelf &left);

} // namespace flarestock
