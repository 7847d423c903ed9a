// SPDX-License-Identifier: MIT
//
// Hose materials: what a made-up hose is made of, as a hand names it: the hose, an end at each side
// that fits it, and what the ends need.

#pragma once

#include "app/stockroom/bench/making_up.h"

namespace flarestock {

struct HoseMaterials {
    const Part *hose = nullptr;
    const Part *start = nullptr;
    const Part *far = nullptr;
    std::map<const Part *, std::int64_t> pieces; ///< The ends too; smallest units.
};

/// Problem: no such part, no hose or hose end, an end that does not fit the hose, a length beside.
[[nodiscard]] Result<HoseMaterials> hoseMaterials(const MakingWords &asked,
                                                  const Workshop &workshop);

/// Problem: no such part, no hose end, one that does not fit the hose.
[[nodiscard]] Result<const Part *> hoseEndAsked(const std::string &typed, const Part &hose,
                                                const Workshop &workshop);

} // namespace flarestock
