// SPDX-License-Identifier: MIT
//
// Settled pumps: a line is sized by all that its pump gives, and a pump is chosen with an eye to
// the sizes of its lines. So pumps are chosen first, with the sizes for what is asked of them, and
// stay.

#pragma once

#include "model/systems/expand.h"
#include "model/systems/expanding/flattening.h"

namespace flarestock {

struct SettledPumps {
    std::map<std::string, const Part *, std::less<>> standing; ///< By station; a pick counts.
    std::map<std::string, const Part *, std::less<>> programs; ///< What the program would take.
};

/// Of all stations that a worked-out answer of the system asks for; empty where none does.
/// Problem: a demand or a line that cannot be read.
[[nodiscard]] Result<SettledPumps> settledPumps(const ExpandRequest &request,
                                                const FlatSystem &system);

} // namespace flarestock
