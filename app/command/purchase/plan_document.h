// SPDX-License-Identifier: MIT
//
// A purchase plan as the JSON document of `flarestock plan` and as a sheet for people.

#pragma once

#include "app/buyer/planned.h"
#include "app/command/command.h"
#include "app/sheet/plan_rows.h"

namespace flarestock {

[[nodiscard]] QJsonObject planDocument(const Planned &planned, const Workshop &workshop);
[[nodiscard]] std::string planSheet(const Planned &planned, const Workshop &workshop);

} // namespace flarestock
