// SPDX-License-Identifier: MIT
//
// Opened box: what was in a box was put to stock by itself; the part that stood in it goes on
// without it, under a lot that says so.

#pragma once

#include "model/journal/record.h"

namespace flarestock {

struct OpenedBox {
    MovementId id;
    std::string part;
    std::string boxLot; ///< What it was called while it stood in its box; may be empty.
    std::string lot;    ///< What it is called from then on; empty where the box was all of it.
    std::vector<std::string> taken;   ///< Part numbers that it lacks from then on, one a piece.
    std::vector<std::string> missing; ///< Those that an earlier look had found missing.
    std::string who;
    std::string action; ///< The id of the movement that opened it.
    std::int64_t at = 0;

    [[nodiscard]] Record asRecord() const;
    [[nodiscard]] static Result<OpenedBox> read(const Record &record); ///< Problem: not one.
};

} // namespace flarestock
