// SPDX-License-Identifier: MIT
//
// Bringing sheet: what a copy brings, or would bring, as text and as a document.

#pragma once

#include "app/command/command.h"
#include "app/travel/copy_words.h"

namespace flarestock {

[[nodiscard]] QJsonObject bringingDocument(const BroughtBack &back);
void printBringing(const BroughtBack &back, CommandOutcome &outcome);
/// Copies with who has them, since when, with which places.
[[nodiscard]] QJsonObject tripsDocument(const Trips &trips, const std::optional<Trip> &own);
void printTrips(const Trips &trips, const std::optional<Trip> &own, CommandOutcome &outcome);

} // namespace flarestock
