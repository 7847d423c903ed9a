// SPDX-License-Identifier: MIT
//
// Own trip: whether a shop is itself a copy that travels, as the beginning of its own chain says.

#pragma once

#include "model/journal/notes/trip.h"
#include "model/storage/shop_connection.h"

namespace flarestock {

/// The record with which the newest of its own chains that are a copy's begins; nothing where none
/// does. Throws StorageFailure.
[[nodiscard]] std::optional<Trip> ownTripOf(const ShopConnection &connection);
/// The trip's id alone; empty where there is none, or where the file cannot be read, which others
/// say.
[[nodiscard]] std::string tripIn(const ShopConnection &connection);

/// All trips that the shop knows of. Throws StorageFailure.
[[nodiscard]] Trips tripsIn(const ShopConnection &connection);

} // namespace flarestock
