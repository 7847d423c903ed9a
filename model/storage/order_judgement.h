// SPDX-License-Identifier: MIT
//
// Order judgement: whether a record of what is bought may stand behind those of its order, by the
// shop as it is inside the writer's transaction. Two seats that draw one number at once read the
// same, so that only one of them writes it.

#pragma once

#include "model/journal/record.h"
#include "model/storage/shop_connection.h"

namespace flarestock {

/// Throws StorageFailure: an order that opens a number which stands already or takes a step that it
/// cannot take, a receipt of an order that stands nowhere or was never placed.
void throwIfNotBought(const ShopConnection &connection, const Record &record);

} // namespace flarestock
