// SPDX-License-Identifier: MIT
//
// Coming in: what a supplier has brought without an order: what, how much, for how much, and what
// is known of its lot. The commands and the desk call the same.

#pragma once

#include "app/stockroom/deed.h"

namespace flarestock {

/// As it is typed; what stands below the blank line may be empty.
struct ComingInWords {
    std::string part;
    std::string quantity;
    std::string from; ///< The supplier's place.
    std::string to;
    std::string cost; ///< Of all of it, in the shop's currency.

    std::string lot;      ///< Of what comes in pieces it has to be said.
    std::string document; ///< Delivery note.
    std::string useBy;    ///< "2027-03-31"
    std::string owner;    ///< The car that alone it is for.
};

/// The movement, and what was said of the lot. Problem: no such part or place, no supplier, nothing
/// that comes in, a cost that is none, pieces without a name, a serial that is here already, a day
/// or owner without a lot.
[[nodiscard]] Result<Action> cameIn(const ComingInWords &asked, const Workshop &workshop,
                                    const By &by);

} // namespace flarestock
