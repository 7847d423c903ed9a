// SPDX-License-Identifier: MIT
//
// Suppliers: who is meant by an id, and what people call him.

#pragma once

#include "model/parts/catalogue.h"

namespace flarestock {

/// Of that id; nullptr where the shop has him no more.
[[nodiscard]] const Supplier *supplierById(std::string_view id, const Catalogue &catalogue);
/// His name; his id where he has none, or where the shop has him no more.
[[nodiscard]] std::string supplierName(std::string_view id, const Catalogue &catalogue);

} // namespace flarestock
