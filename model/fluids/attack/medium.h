// SPDX-License-Identifier: MIT
//
// Medium: what a filter element is made of, how it stands a fluid, and whether it is washed or
// replaced (model/fluids/data/media.csv, a source on each row). Classes, as with seals: the maker's
// own word overrides what is only fair.

#pragma once

#include "model/fluids/compatibility.h"

namespace flarestock {

/// The medium by its word as the catalogue has it: "stainless mesh", "paper", "microglass",
/// "bronze", "sock"; case forgiven. Unknown for another, and for fluids that the table leaves out.
[[nodiscard]] Compatibility mediumIn(Fluid fluid, std::string_view medium);

struct MediumCare {
    bool washed = false;     ///< May be washed and used again.
    std::string_view said;   ///< "never washed; replaced when …"; empty where it is not known.
    std::string_view source; ///< Empty where it is not known.
};
[[nodiscard]] MediumCare careOf(std::string_view medium);

} // namespace flarestock
