// SPDX-License-Identifier: MIT
//
// Flow document: what flows in a build, as the JSON that `flarestock flow --json` prints. Its shape
// is a contract: SI units as the names say, what is not known is null. With each delivery stand the
// two pictures of it: the pressure along the line, and the pumps' curve with that of the system.

#pragma once

#include "model/checks/flow/system_flow.h"

#include <QJsonObject>

namespace flarestock {

[[nodiscard]] QJsonObject flowDocument(const Expansion &build, const SystemFlow &flow);

} // namespace flarestock
