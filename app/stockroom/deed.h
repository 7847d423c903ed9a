// SPDX-License-Identifier: MIT
//
// Deed: who does something, why and when, and the ids that go with it. All that a hand does to the
// stock is made here into an Action of the journal, for the commands and for the desk alike.

#pragma once

#include "app/stockroom/asked.h"

namespace flarestock {

struct By {
    std::string who;
    std::string why;
    std::int64_t at = 0;              ///< Milliseconds since 1970, UTC.
    std::optional<MovementId> action; ///< The id of the first movement; nothing: a fresh one.
};

/// So much of what lies somewhere to another place; id and action are set by numbered().
[[nodiscard]] Movement movementOf(const BalanceKey &from, std::int64_t quantity,
                                  const std::string &to, Deed deed);

/// The movements as one action: each gets an id, the first the action's, and who, why and when.
/// Repeated with the same action id they get the same ids: the following ones are made from it.
[[nodiscard]] Action numbered(std::vector<Movement> movements, const By &by);

/// The id of the n-th entry of an action: the action's own for n = 0, else from it by counting up
/// its last eight bytes, so that a repeated action repeats its ids.
[[nodiscard]] MovementId idWithin(const MovementId &action, std::uint64_t n);

/// What takes a whole action back: its movements that are not taken back yet, the last first.
/// `past` are the movements of the action in order, `reversed` those of them that were taken back.
/// Problem: nothing is left to take back.
[[nodiscard]] Result<Action> takenBack(const std::vector<Movement> &past,
                                       const std::set<MovementId> &reversed, const By &by);

} // namespace flarestock
