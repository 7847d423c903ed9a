// SPDX-License-Identifier: MIT
//
// Card ports: the ports of a card in words, and how many other cards fit each.

#pragma once

#include "app/desk/parts/card/card_book.h"

namespace flarestock {

/// name port detail fits says; `detail` is thread and ring, the key the port's name.
[[nodiscard]] QStringList cardPortCells();
[[nodiscard]] std::vector<Row> cardPortRows(const Part &card, const PortsOfShop &shop);

} // namespace flarestock
