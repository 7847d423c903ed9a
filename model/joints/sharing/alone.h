// SPDX-License-Identifier: MIT
//
// Alone: what the ways of each joint come to if it had all the shelf to itself. Sharing makes no
// joint better off (what one more of a part adds never falls with the number that is taken), so
// that the joints together come to at least the sum of the best that each has alone. A choice that
// comes to no more is the best, and needs no search.
//
// Two things do become cheaper together: sealant, of which one bottle does for a build, and what is
// cheaper by the number or dearer on the shelf than at the supplier's. They are counted at the
// least that they can come to.

#pragma once

#include "model/joints/sharing/shared_takings.h"

namespace flarestock {

class Alone {
public:
    /// Both outlive it.
    Alone(const ShareRequest &request, const SharedTakings &takings);

    /// By criteria(order); where it is of all builds, one build behind the other.
    using Values = std::vector<std::int64_t>;
    [[nodiscard]] Values valuesOf(const WayRank &rank) const;
    /// Money that differs by less than CostSlack is the same here: costs are rounded part by part.
    [[nodiscard]] bool isBelow(const Values &values, const Values &than) const;
    /// The first at which they differ; their size where none does.
    [[nodiscard]] std::size_t differAt(const Values &a, const Values &b) const;

    /// Of all builds: no choice of the given ways comes below.
    [[nodiscard]] Values floor() const;
    /// The same where some joint is closed by a way that is not given (SharedJoint::last); nothing
    /// where all have been given.
    [[nodiscard]] std::optional<Values> floorBeyond() const;
    /// The first way, and of the others those that can be in a best choice: a way that is no better
    /// alone than another, and takes no less of what runs short, never has to be.
    [[nodiscard]] std::vector<std::size_t> worthTrying(std::size_t joint) const;

private:
    /// What one more of a part adds, by how many are taken already.
    enum class Growth : std::uint8_t { Even, Rising, Other };
    [[nodiscard]] Growth growthOf(const SharedTakings::PartRow &row) const;
    [[nodiscard]] Values alone(std::size_t joint, std::size_t way) const;
    [[nodiscard]] Values least(std::size_t joint, std::size_t way) const;
    [[nodiscard]] Values sumOf(const std::vector<Values> &byJoint) const;
    [[nodiscard]] Values bottle() const;
    [[nodiscard]] std::int64_t costsFallTo() const;
    [[nodiscard]] bool takesNoMore(const SharedTakings::Counts &one,
                                   const SharedTakings::Counts &other) const;

    const ShareRequest &m_request;
    const SharedTakings &m_takings;
    std::vector<Criterion> m_order;
    std::vector<Growth> m_growths; ///< By place in SharedTakings::parts().
    std::vector<Values> m_least;   ///< By joint: the best of its ways.
};

/// Millionths. Costs are rounded to one, and a build has less than a thousand different parts.
inline constexpr std::int64_t CostSlack = 1000;

} // namespace flarestock
