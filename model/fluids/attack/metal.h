// SPDX-License-Identifier: MIT
//
// Metal: which metals a fluid attacks (model/fluids/data/metals.csv, a source on each row). What is
// not in the table is not known to be attacked; that says no more than that.

#pragma once

#include "model/fluids/fluid.h"

#include <cstdint>
#include <string_view>

namespace flarestock {

enum class Wears : std::uint8_t {
    Unsaid, ///< The table says nothing of the pair.
    Slowly, ///< Something to know, and to look at in service.
    Badly,  ///< Another metal, or a coating, is wanted.
};

struct MetalWear {
    Wears wears = Wears::Unsaid;
    std::string_view why;    ///< A clause, in small letters; empty only for Unsaid.
    std::string_view source; ///< Empty only for Unsaid.
};

/// The metal by its word as the catalogue has it: "aluminium", "steel", "brass"; case forgiven.
/// "stainless" and "copper-nickel" are metals of their own.
[[nodiscard]] MetalWear metalIn(Fluid fluid, std::string_view metal);

} // namespace flarestock
