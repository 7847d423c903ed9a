// SPDX-License-Identifier: MIT
//
// Compatibility: how a seal or liner of a class of rubber stands a fluid. Class defaults from
// published tables (model/fluids/data/compatibility.csv, a source on each row); compounds vary, and
// a part maker's own word overrides them.

#pragma once

#include "model/fluids/fluid.h"

#include <string>
#include <string_view>

namespace flarestock {

enum class Bears : std::uint8_t {
    Unknown, ///< The table has no such material.
    Good,
    Fair, ///< Conditional: ask the maker.
    Never,
};

struct Compatibility {
    Bears bears = Bears::Unknown;
    std::string_view source; ///< Empty only for Unknown.
};

/// The material by its code, case forgiven: NBR, FKM, EPDM, PTFE, VMQ, FVMQ, CR. Of a compound name
/// ("FKM type A") the first word counts.
[[nodiscard]] Compatibility compatibility(Fluid fluid, std::string_view material);

} // namespace flarestock
