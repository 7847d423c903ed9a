// SPDX-License-Identifier: MIT
//
// Renewing: a joint that was closed is opened again, later. Its rings and crush washers have done
// their work once: the old ones are used up, fresh ones go in.

#pragma once

#include "app/stockroom/picking.h"

namespace flarestock {

/// A ring, or a washer that is crushed: it seals once.
[[nodiscard]] bool sealsOnce(const Part &part);

/// What a joint takes anew.
struct Renewed {
    const Part *part = nullptr;
    std::int64_t need = 0;  ///< Smallest units.
    std::int64_t taken = 0; ///< Of fresh ones.
    std::int64_t spent = 0; ///< Old ones from the car to used up.

    [[nodiscard]] std::int64_t shortBy() const noexcept { return need - taken; }
};
struct RenewedAction {
    Action action; ///< Without a movement where nothing can be taken.
    std::string joint;
    std::string at;
    std::vector<Renewed> pieces;
};

/// A joint of a build, by its id or as it is said, is opened: its rings and crush washers are spent
/// and fresh ones go in, those that the build has by its record. Problem: no such build or joint;
/// nothing was issued to the build; the joint has none.
[[nodiscard]] Result<RenewedAction> openedJoint(const std::string &build, const std::string &joint,
                                                const Workshop &workshop, const By &by);

} // namespace flarestock
