// SPDX-License-Identifier: MIT
//
// Joint choices: among which ways each joint of an expansion chooses, with what its stations leave
// of the shelf.

#pragma once

#include "model/joints/sharing/sharing.h"
#include "model/systems/expand.h"
#include "model/systems/expanding/allotment.h"

#include <array>

namespace flarestock {

inline constexpr std::size_t WaysMost = 256;
/// Of each joint, so many ways are looked at; where that leaves it open which is best, more.
inline constexpr std::array<std::size_t, 3> WaysAsked{8, 64, WaysMost};

class JointChoices {
public:
    /// Both outlive it. Ways are sought with the request's shelf, which may be another than that
    /// by which the expansion was made.
    JointChoices(const ExpandRequest &request, const Expansion &made);

    /// Those that are closed.
    [[nodiscard]] const std::vector<const PlacedJoint *> &joints() const noexcept
    {
        return m_joints;
    }
    /// Of each: the way that it has, then the others that it could have, `most` of them about; a
    /// pick has no other. A plug is chosen among the plugs that fit; where none does, each plug
    /// comes with the best adapter for it.
    [[nodiscard]] std::vector<SharedJoint> choices(std::size_t most);
    /// What the stations leave.
    [[nodiscard]] Decimal left(const Part &part) { return m_allotment.left(part); }
    [[nodiscard]] const Shelf &shelf() const noexcept { return m_shelf; }

private:
    [[nodiscard]] SharedJoint choiceOf(const PlacedJoint &joint, std::size_t most);
    [[nodiscard]] std::vector<Way> waysOf(const PlacedJoint &joint, std::size_t most);

    const ExpandRequest &m_request;
    const Shelf m_none;
    const Shelf &m_shelf;
    Allotment m_allotment;
    JointShelf m_jointShelf; ///< As the allotment has it.
    std::vector<const PlacedJoint *> m_joints;
};

} // namespace flarestock
