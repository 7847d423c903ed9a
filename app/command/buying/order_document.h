// SPDX-License-Identifier: MIT
//
// An order as a JSON document, and as lines for a terminal.

#pragma once

#include "app/command/command.h"
#include "app/workshop/workshop.h"
#include "model/buying/totals.h"

namespace flarestock {

/// Number, supplier, how it stands, its lines with what of them came, its sums.
[[nodiscard]] QJsonObject orderDocument(const BookedOrder &order, const Catalogue &catalogue);
/// The same for a list: without its lines.
[[nodiscard]] QJsonObject orderEntry(const BookedOrder &order, const Catalogue &catalogue);
/// As people read it.
[[nodiscard]] std::string orderSheet(const BookedOrder &order, const Catalogue &catalogue);
[[nodiscard]] std::string orderList(const std::vector<const BookedOrder *> &orders,
                                    const Catalogue &catalogue);

} // namespace flarestock
