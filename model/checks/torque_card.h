// SPDX-License-Identifier: MIT
//
// Torque card: every joint of a build that is tightened by a nut or a stud, with each published
// torque and its source, and what the joint stands; and the joints for which none is published.

#pragma once

#include "model/checks/joint_rating.h"
#include "model/ports/torque.h"
#include "model/systems/expansion.h"

namespace flarestock {

struct TorqueLine {
    std::string joint;                  ///< Id of the placed joint.
    std::string at;                     ///< "pump inlet"
    TorqueAsked asked;                  ///< With the nut or stud as its port.
    Port into;                          ///< What it goes into.
    std::vector<Torque> torques;        ///< Empty: none is published.
    std::optional<double> disagreement; ///< As disagreement().
    JointRating rating;                 ///< Of the whole placed joint.
};

/// Whether a material is steel by its word: "steel", "stainless".
[[nodiscard]] bool isFerrous(std::string_view material) noexcept;

/// In flow order, of each joint from its station outwards. Joints that are made up on the bench
/// (hose in its end, tube in its nut), barbs and quick connectors have no line. Of a part whose
/// material nobody names the joint counts as not all of steel, which is the lower torque.
[[nodiscard]] std::vector<TorqueLine> torqueCard(const Expansion &expansion);

} // namespace flarestock
