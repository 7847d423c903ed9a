// SPDX-License-Identifier: MIT
//
// A purchase plan as the JSON document of `flarestock plan` and as a sheet for people.

#pragma once

#include "app/buyer/planned.h"
#include "app/command/command.h"

namespace flarestock {

[[nodiscard]] QJsonObject planDocument(const Planned &planned, const Workshop &workshop);
[[nodiscard]] std::string planSheet(const Planned &planned, const Workshop &workshop);

/// Why more is bought than covers the need: "need 8: 10 cost 2.40 less than 8"; empty where it is
/// not.
[[nodiscard]] std::string whyMore(const PlannedLine &line);

} // namespace flarestock
