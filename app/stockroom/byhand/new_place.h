// SPDX-License-Identifier: MIT
//
// New place: a bin, a drawer, a car, somebody who borrows, as a hand names it. The commands and the
// desk call the same.

#pragma once

#include "model/journal/movement.h"

namespace flarestock {

struct PlaceWords {
    std::string id;    ///< "C9"
    std::string kind;  ///< "bin"
    std::string title; ///< Empty: as its id.
};
/// Problem: a name that is none, no such kind.
[[nodiscard]] Result<Place> placeOf(const PlaceWords &asked);

} // namespace flarestock
