// SPDX-License-Identifier: MIT
//
// Bill sheet: a build worked out, as a person reads it in a terminal: the bill with its reasons,
// the joints, what is short and who sells it, the findings, and the words of caution.

#pragma once

#include "app/workshop/worked_build.h"

namespace flarestock {

/// Lines ended by '\n'. The catalogue is the build's.
[[nodiscard]] std::string billSheet(const WorkedBuild &build, const Catalogue &catalogue);

} // namespace flarestock
