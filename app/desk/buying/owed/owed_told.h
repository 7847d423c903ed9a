// SPDX-License-Identifier: MIT
//
// Owed told: what suppliers owe, a row for each claim, and one claim with its steps.

#pragma once

#include "app/desk/rows/rows.h"
#include "app/desk/words/units.h"
#include "app/workshop/workshop.h"

namespace flarestock {

/// number owed what supplier fault stands section mark says; the key is the number. Open ones
/// first.
[[nodiscard]] QStringList claimListCells();
[[nodiscard]] std::vector<Row> claimListRows(const Workshop &shop, const std::string &today,
                                             Units units);
/// title detail flagged
[[nodiscard]] QStringList claimFactCells();
[[nodiscard]] std::vector<Row> claimFactRows(const ClaimStanding &claim, const Workshop &shop,
                                             const std::string &today);
/// "missing in the box", "came damaged" …
[[nodiscard]] QString saidFault(ClaimFault fault);
/// The claim of a number; nullptr where there is none, or two.
[[nodiscard]] const ClaimStanding *claimOf(const QString &number, const Workshop &shop);

} // namespace flarestock
