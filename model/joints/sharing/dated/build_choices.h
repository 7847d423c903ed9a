// SPDX-License-Identifier: MIT
//
// Build choices: the best choices of one build's joints, for each of several lefts that the builds
// before it may leave, and what they leave in their turn.

#pragma once

#include "model/joints/sharing/dated/dated_takings.h"

namespace flarestock {

/// By what is left of each scarce part: which way each joint of each build before took.
using LeftBehind = std::map<std::vector<int>, std::vector<std::vector<std::size_t>>>;

/// Before any build took anything: by place in DatedTakings::scarce().
[[nodiscard]] std::vector<int> leftAtFirst(const DatedTakings &takings);

class BuildChoices {
public:
    /// The request and the takings outlive it.
    BuildChoices(const ByDateRequest &request, const DatedTakings &takings, std::size_t build);

    struct Best {
        LeftBehind lefts;   ///< Of all that are as good for it; at most statesMost.
        bool isCut = false; ///< There was more to keep than that.
    };
    [[nodiscard]] Best best(const LeftBehind &before) const;

    using Ways = std::vector<std::size_t>; ///< By joint.
    [[nodiscard]] DatedTakings::Values valuesOf(const Ways &ways,
                                                const std::vector<int> &left) const;
    /// No more of a part than the builds behind it could take.
    [[nodiscard]] std::vector<int> leftBehind(const Ways &ways, std::vector<int> left) const;

private:
    using Values = DatedTakings::Values;
    /// What some joints have taken: the same counts with the same left lead to the same.
    struct Counts {
        std::vector<int> left; ///< For the build.
        std::vector<int> taken;
        friend auto operator<=>(const Counts &, const Counts &) = default;
    };
    struct Chosen {
        Values rest{};                             ///< Of what is not scarce.
        const std::vector<Ways> *before = nullptr; ///< Of the builds before it.
        Ways ways;
    };
    using States = std::map<Counts, Chosen>;

    [[nodiscard]] std::size_t joints() const;
    [[nodiscard]] std::size_t waysOf(std::size_t joint) const;
    void add(Counts &counts, Values &rest, const DatedTakings::Takes &takes) const;
    /// With what the scarce parts come to, exactly or at least.
    [[nodiscard]] Values valuesOf(const Counts &counts, Values rest, bool isAtLeast) const;
    /// What the joints from this one on come to at least.
    [[nodiscard]] std::vector<Values> leastFrom() const;
    /// What can be had at any rate: by the first ways, and by what is cheapest joint by joint.
    [[nodiscard]] Values reached(const LeftBehind &before) const;
    [[nodiscard]] Values reachedGreedily(const std::vector<int> &left) const;
    /// The ways that can be among what comes no higher than that.
    [[nodiscard]] std::vector<std::size_t> worthTrying(std::size_t joint,
                                                       const Values &limit) const;
    [[nodiscard]] States afterJoint(const States &states, std::size_t joint,
                                    const Values &limit) const;
    /// Keeps the lowest; whether there were more.
    [[nodiscard]] bool cut(States &states, std::size_t joint) const;
    [[nodiscard]] LeftBehind behind(const States &states) const;
    [[nodiscard]] static bool isFirst(const Chosen &one, const Chosen &other);

    const ByDateRequest &m_request;
    const DatedTakings &m_takings;
    std::size_t m_build;
    std::vector<Values> m_leastFrom;   ///< By joint; zeros behind the last.
    std::vector<std::size_t> m_places; ///< Of the scarce parts that it could take.
};

} // namespace flarestock
