// SPDX-License-Identifier: MIT
//
// Seal heat: between which temperatures a class of rubber seals (model/fluids/data/seal_heat.csv).
// A part maker's own limits come first.

#pragma once

#include <optional>
#include <string_view>

namespace flarestock {

struct SealHeat {
    double lowC = 0;
    double highC = 0;
    std::string_view status; ///< "published"
    std::string_view source; ///< Never empty.
};

/// By the code of compatibility(): "NBR", "FKM" …; nothing for a class that the table leaves out.
[[nodiscard]] std::optional<SealHeat> sealHeat(std::string_view material);

} // namespace flarestock
