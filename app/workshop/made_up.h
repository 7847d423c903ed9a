// SPDX-License-Identifier: MIT
//
// Made up: hoses that the shop has made up, as parts that can be named, moved, counted and issued.
// They stand beside the catalogue, not in it: nothing else is ever built of them.

#pragma once

#include "model/journal/notes/shop_notes.h"

namespace flarestock {

/// By folded tag. One of a hose that the catalogue does not have any more is left out.
[[nodiscard]] std::map<std::string, Part, std::less<>> madeUpParts(const ShopNotes &notes,
                                                                   const Catalogue &catalogue);
/// "PT-6 with HE-6-S and HE-6-90, 24 in between seats, clocked 90 deg, proof-tested 2000 psi".
[[nodiscard]] std::string describe(const MadeHose &hose, Unit unit);

/// The day (UTC) of milliseconds since 1970: "2026-12-12".
[[nodiscard]] std::string dayOf(std::int64_t at);

} // namespace flarestock
