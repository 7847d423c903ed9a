// SPDX-License-Identifier: MIT
//
// The piece in the hand by caliper: what is typed as "od 22.1 mm", "od 22.1 mm 14 tpi" (a male over
// its crests) or "bore 20.3 mm 1.5 mm" (a female between them) is looked up in the thread tables,
// and the places of the build and the pieces on the shelf that have such a port are listed below
// what to measure next.

#pragma once

#include "app/desk/build/worked_out.h"
#include "app/desk/rows/rows.h"
#include "model/ports/identify.h"

#include <optional>

namespace flarestock {

/// "od", "male", "bore", "id" or "female", then a length; a second length or "14 tpi" is the pitch,
/// "37 deg" the seat; "flat" and "tapered" as they are. Nothing where it is not so said.
[[nodiscard]] std::optional<Caliper> caliperTyped(const QString &typed);

/// Rows like those of foundRows(): first "measure" with an empty target, which says what it can be
/// and what to measure next; then the joints that a piece with such a port makes or could make, and
/// "shelf" pieces that have one. At most `most`.
[[nodiscard]] std::vector<Row> caliperRows(const WorkedOut &worked, const Caliper &caliper,
                                           int most);

} // namespace flarestock
