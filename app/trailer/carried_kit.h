// SPDX-License-Identifier: MIT
//
// Carried kit: what several parts come to that are carried together. Of what is used by chance so
// many of each are carried that nothing lacks with one certainty for all, at least money; what is
// counted otherwise comes besides.

#pragma once

#include "app/stockroom/deed.h"
#include "app/trailer/carrying.h"
#include "model/spares/carry/kit.h"

namespace flarestock {

struct CarriedKit {
    std::vector<KitPart> parts;   ///< By chance, in the order in which they were given.
    std::vector<CarryLine> lines; ///< Of the same.
    std::vector<PartCarry> besides;
    std::int64_t besidesCost = 0; ///< 10^-6 of the shop's currency.
    KitPlan plan;

    /// How many of a part; nothing where it is not in the kit.
    [[nodiscard]] std::optional<std::int64_t> carried(std::string_view part) const;
};

/// 0 < certainty < 1 (asserted). Problem: a part without a price in the shop's currency.
[[nodiscard]] Result<CarriedKit> carriedKit(const std::vector<PartCarry> &carries,
                                            const Workshop &workshop, double certainty);

/// So many of a part, in a drawer.
struct CarriedPart {
    std::string part;
    std::string drawer; ///< Its id.
    std::int64_t carry = 0;
};
/// That the drawers are to hold exactly so many of each, as one action.
[[nodiscard]] Action keptInDrawers(const std::vector<CarriedPart> &parts, const By &by);

} // namespace flarestock
