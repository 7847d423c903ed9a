// SPDX-License-Identifier: MIT
//
// Taking back: what undoes an action that stands in the journal. Movements go the other way; a
// promise is let go, one that was let go is promised again; a build that was said to be done is
// open again, and so is one whose pieces go the other way after its leak test; an order is as it
// was before its newest step, a claim likewise (one that was only raised is given up), and what a
// place is to hold, or was seen to hold, as was said before. What was seen (a count, a leak test)
// stays written down: a newer one stands in its place. A supplier gets back exactly what he
// brought: where the pieces that go take along more or less (others left before, or something was
// charged on them late), the rest goes to the place of differences, so that a receipt that was
// taken back bears nothing.

#pragma once

#include "app/stockroom/deed.h"

namespace flarestock {

/// What takes back a movement and all that was done together with it, its records too, as far as it
/// was not taken back before; or a promise, an order's newest step, or that a build is done, by its
/// record's id. Problem:
/// no such movement or record, one of a kind that stays written down, nothing left to take back,
/// the file cannot be read.
[[nodiscard]] Result<Action> movementTakenBack(const MovementId &id, const ShopFile &file,
                                               const Workshop &workshop, const By &by);

/// What takes back an action as it was appended, records and movements. Problem: as above; it is
/// all of a kind that stays written down.
[[nodiscard]] Result<Action> actionTakenBack(const Action &done, const ShopFile &file,
                                             const Workshop &workshop, const By &by);

} // namespace flarestock
