// SPDX-License-Identifier: MIT
//
// Grouped: a list whose rows stand in groups is brought to other rows so that a view hears of a row
// that has gone to another group: it goes from its old place and comes anew. Of a row that only
// changed a view keeps the group (Qt 6.4).

#pragma once

#include "app/desk/rows/rows.h"

namespace flarestock {

/// `section`: the name of the cell that says the group.
void becomeGrouped(Rows &rows, std::vector<Row> wanted, const QString &section);

} // namespace flarestock
