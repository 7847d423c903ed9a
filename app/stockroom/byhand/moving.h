// SPDX-License-Identifier: MIT
//
// Moving: so much of a part from one place to another, with what it is from then on, and until when
// it is lent; and what is thrown away. The commands and the desk call the same.

#pragma once

#include "app/stockroom/deed.h"

namespace flarestock {

/// As it is typed; lot, condition, now and until are empty where nobody has said.
struct MoveWords {
    std::string part;
    std::string quantity;
    std::string from; ///< Place id.
    std::string to;
    std::string lot;
    std::string condition; ///< As it lies there, where that leaves several.
    std::string now;       ///< What it is from then on; from a place to itself only that changes.
    std::string until;     ///< Of what is lent, borrowed or out for repair: "2026-12-01".
};
/// `before` is the movement that has this id in the journal already, where there is one: the same
/// words then mean the same pieces, although they do not lie there any more. `at`: now, in
/// milliseconds since 1970, UTC. Problem: no such part, place, quantity or piece; a day that is
/// none, or past, or of what is not lent.
[[nodiscard]] Result<Movement> moved(const MoveWords &asked, const Workshop &workshop,
                                     std::int64_t at,
                                     const std::optional<Movement> &before = std::nullopt);

/// What goes to scrap; `to`, now and until are not asked. Problem: as above; the shop has no scrap.
[[nodiscard]] Result<Movement> scrapped(const MoveWords &asked, const Workshop &workshop);

} // namespace flarestock
