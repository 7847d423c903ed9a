// SPDX-License-Identifier: MIT
//
// check(): everything that can be said about an expanded build before it is begun, gravest first.

#pragma once

#include "model/checks/finding.h"
#include "model/parts/free_stock.h"
#include "model/systems/expansion.h"

#include <vector>

namespace flarestock {

/// In order of severity, then Matter, then flow order. Deterministic; empty where nothing was
/// found.
[[nodiscard]] std::vector<Finding> check(const Expansion &expansion, const Catalogue &catalogue,
                                         const Shelf &shelf);

/// What each filter protects and what stands unprotected, in flow order, for the picture and the
/// note.
struct Protection {
    std::string station; ///< Station id of the filter; empty for what nothing protects.
    std::vector<std::string> protects; ///< Station ids.
};
[[nodiscard]] std::vector<Protection> protections(const Expansion &expansion);

} // namespace flarestock
