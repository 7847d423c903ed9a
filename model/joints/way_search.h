// SPDX-License-Identifier: MIT
//
// Way search: the best ways between two port types of a graph. It goes from the far end (a cut
// hose, another port) back to the component, piece by piece, first with few pieces, then with more,
// and gives up a branch as soon as what it holds already cannot be among the best: each figure of a
// partial way is a lower bound of the whole way's.

#pragma once

#include "model/joints/graph.h"

namespace flarestock {

/// One way as the search sees it: arcs and links from the far end on; one more link than arcs.
struct Path {
    std::vector<const Arc *> arcs;
    std::vector<std::uint32_t> links;
};

struct FoundWay {
    Path path;
    WayRank rank;
    std::string key; ///< As Way::key() will say it.
};

class WaySearch {
public:
    /// All outlive it.
    WaySearch(const JointGraph &graph, const JointRequest &request, Supplies &supplies);

    /// Best first, at most request.best.
    [[nodiscard]] std::vector<FoundWay> best(TypeIndex from, TypeIndex to);

    /// What the pieces and aids of a path cost and lack.
    [[nodiscard]] WayRank rankOf(const Path &path) const;
    /// For each need of the path, in order, sealant once: the stocked part, or nothing.
    [[nodiscard]] std::vector<std::pair<const Need *, std::optional<StockedIndex>>>
    aidsOf(const Path &path) const;

private:
    void extend(TypeIndex at, TypeIndex target, std::size_t piecesLeft);
    void keep();
    [[nodiscard]] bool canBeBest(std::size_t piecesAtLeast) const;
    [[nodiscard]] bool isAllowed(const Arc &arc) const;
    [[nodiscard]] int narrowIn(const Arc &arc) const; ///< Its ports that throttle the joint.
    [[nodiscard]] std::optional<StockedIndex> answer(const NeedKind &need) const;

    const JointGraph &m_graph;
    const JointRequest &m_request;
    Supplies &m_supplies;
    std::uint16_t m_fluidBit;
    int m_narrowest = 0; ///< The smaller dash of the joint's two ends; 0 where neither has one.
    Path m_path;         ///< The way being built.
    std::vector<TypeIndex> m_stood;
    std::vector<std::uint8_t> m_far;
    std::vector<FoundWay> m_found;
};

} // namespace flarestock
