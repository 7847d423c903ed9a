// SPDX-License-Identifier: MIT
//
// Compatibility: how a seal or liner of a class of rubber stands a fluid. Class defaults from
// published tables (model/fluids/data/compatibility.csv, a source on each row). Compounds vary: a
// part maker's own word overrides what is only fair, never what ruins the class.

#pragma once

#include "model/fluids/fluid.h"

#include <span>
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

/// The materials that the table has, by their codes: NBR, HNBR, FKM, EPDM, PTFE, VMQ, FVMQ, CR.
[[nodiscard]] std::span<const std::string_view> sealMaterials();

/// The material by its code, case forgiven. Of a compound name ("FKM type A") the first word
/// counts.
[[nodiscard]] Compatibility compatibility(Fluid fluid, std::string_view material);

} // namespace flarestock
