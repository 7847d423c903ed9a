// SPDX-License-Identifier: MIT
//
// Hose bores: what bore each dash size has before a hose is chosen. Of the catalogue's hose of that
// series the narrowest; where there is none, or nobody has entered its bore, a tube's of the size.

#pragma once

#include "model/parts/catalogue.h"
#include "model/systems/sizing/line_sizes.h"

#include <string_view>

namespace flarestock {

struct HoseWanted {
    std::string_view construction; ///< Hose series; empty: any.
    std::optional<Fluid> fluid;    ///< What its makers must allow.
};

/// In the order of `dashes`. Without a catalogue every size counts as offered. A size that is no
/// usual one and of which there is no hose is left out.
[[nodiscard]] std::vector<DashBore> hoseBores(const std::vector<int> &dashes,
                                              const HoseWanted &wanted, const Catalogue *catalogue);

} // namespace flarestock
