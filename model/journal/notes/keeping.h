// SPDX-License-Identifier: MIT
//
// Keeping: how much of a part a place is to hold: below the minimum it is filled up to the maximum.
// The newest word counts; a minimum and maximum of zero end it.

#pragma once

#include "model/journal/record.h"

namespace flarestock {

struct Keeping {
    MovementId id;
    std::string part;
    std::string place;
    std::int64_t least = 0; ///< Smallest units; 0 <= least <= most.
    std::int64_t most = 0;
    std::string who;
    std::int64_t at = 0;

    [[nodiscard]] Record asRecord() const;
    [[nodiscard]] static Result<Keeping> read(const Record &record); ///< Problem: not one.
};

} // namespace flarestock
