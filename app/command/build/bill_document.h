// SPDX-License-Identifier: MIT
//
// Bill document: a build worked out, as the JSON that `flarestock bill --json` prints. Its shape is
// a contract: money and quantities are strings, what has no price is null.

#pragma once

#include "app/workshop/worked_build.h"

#include <QJsonObject>

namespace flarestock {

[[nodiscard]] QJsonObject billDocument(const WorkedBuild &build);

} // namespace flarestock
