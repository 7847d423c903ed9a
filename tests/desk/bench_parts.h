// SPDX-License-Identifier: MIT
//
// The parts of the bench shop, what lies on its shelf, and its one template.

#pragma once

#include "model/parts/catalogue.h"
#include "model/parts/free_stock.h"
#include "model/systems/template.h"

namespace flarestock {

[[nodiscard]] Catalogue benchCatalogue();
[[nodiscard]] Shelf benchShelf();
[[nodiscard]] std::shared_ptr<const Template> benchTemplate();

} // namespace flarestock
