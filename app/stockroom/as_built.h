// SPDX-License-Identifier: MIT
//
// As built: where a car differs from the plan by what was really taken. The as-built record is what
// was issued to the build, lot by lot; it is changed by movements, as it was made.

#pragma once

#include "app/stockroom/picking.h"

namespace flarestock {

struct InsteadWords {
    std::string build;
    std::string planned;
    std::string used;
    std::string quantity; ///< Empty: 1.
    std::string from;   ///< Where the other is taken; empty: the nearest that is free to the build.
    std::string backTo; ///< Where the planned one goes; empty: where it was issued from.
    std::string plannedLot;
    std::string usedLot;
    std::string now; ///< What the planned one is from now on; empty: as it was issued.
};

/// A joint whose ports are other ones now.
struct OtherJoint {
    std::string joint; ///< Id.
    std::string at;    ///< As said: "pump inlet".
    Verdict before = Verdict::Fits;
    Verdict after = Verdict::Fits;
    std::string why; ///< Of `after`.

    [[nodiscard]] bool isWorse() const noexcept;
};
struct InsteadAction {
    Action action;
    std::vector<OtherJoint> joints; ///< Those that the piece stands in, in flow order.
};

/// The planned piece back to its place, the other one to the car, and a record that says so.
/// `history` are the movements of the planned part. Problem: no such build, part or place; the
/// planned piece was not issued to the build; the other is not free; a length, which is cut.
[[nodiscard]] Result<InsteadAction> builtInstead(const InsteadWords &asked,
                                                 const Workshop &workshop,
                                                 const std::vector<Movement> &history,
                                                 const By &by);

struct Replaced {
    const Part *planned = nullptr; ///< Of the catalogue, as `used`.
    const Part *used = nullptr;
};
/// Every joint of an expansion that a part stands in, judged with the other part in its place: of
/// its ways round the best. One that has no two ports to join by does not fit.
[[nodiscard]] std::vector<OtherJoint>
jointsWith(const Expansion &expansion, const Workshop &workshop, const Replaced &replaced);

} // namespace flarestock
