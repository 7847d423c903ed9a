// SPDX-License-Identifier: MIT
//
// Findings as rows, in the order of danger in which the checks give them.

#pragma once

#include "app/desk/build/worked_out.h"
#include "app/desk/rows/rows.h"

namespace flarestock {

/// mark severity about why source remedy mend where says
/// `mend` is what its button says, empty where the program cannot do it.
[[nodiscard]] QStringList findingCells();
[[nodiscard]] std::vector<Row> findingRows(const WorkedOut &worked);

[[nodiscard]] int count(const std::vector<Finding> &findings, Severity severity);

} // namespace flarestock
