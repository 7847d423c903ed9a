// SPDX-License-Identifier: MIT
//
// Suppliers: who is meant by an id, what people call him, and the place that his parts come from.

#pragma once

#include "model/journal/movement.h"
#include "model/parts/catalogue.h"

namespace flarestock {

/// Of that id; nullptr where the shop has him no more.
[[nodiscard]] const Supplier *supplierById(std::string_view id, const Catalogue &catalogue);
/// His name; his id where he has none, or where the shop has him no more.
[[nodiscard]] std::string supplierName(std::string_view id, const Catalogue &catalogue);

/// The place that a supplier's parts come from, where the shop has none yet: "supplier-OXS".
[[nodiscard]] Place newPlaceOf(const Supplier &supplier);
/// Whether his parts come from that place: "supplier-OXS" or "OXS" for OXS, whatever the case.
[[nodiscard]] bool isPlaceOf(std::string_view supplier, const Place &place);

} // namespace flarestock
