// SPDX-License-Identifier: MIT
//
// Way search: the best ways between two port types of a graph, exactly. It goes from the far end (a
// cut hose, another port) back to the component, piece by piece: first all ways with no piece, then
// with one, and so on, and gives up a branch as soon as what it takes already ranks behind the
// worst of the ways that it keeps; taking more never betters a rank. Before it walks it works out,
// by sets of port types, from where the component can be reached with how many pieces, so that it
// enters no blind alley. No way stands at one port type twice. "From the shelf" it first looks for
// the way of fewest pieces, which says how long the others may be.

#pragma once

#include "model/joints/reckoning.h"

namespace flarestock {

/// Longest way, whatever is asked for.
inline constexpr std::size_t WayPiecesMost = 8;

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

    /// For each need of the path, from the component on, sealant once.
    [[nodiscard]] std::vector<Answer> aidsOf(const Path &path);

private:
    struct Step {
        const Arc *arc = nullptr;
        std::uint32_t link = 0; ///< On the far side of the piece.
    };
    /// What one search looks for: whose order, how many ways, of how many pieces at most.
    struct Aim {
        Preference preference;
        std::size_t best;
        std::size_t piecesMax;
    };
    [[nodiscard]] std::vector<FoundWay> search(TypeIndex from, const Aim &aim);
    void reachForwards(TypeIndex from, std::size_t most);
    [[nodiscard]] std::optional<std::uint32_t> directLink(TypeIndex from, TypeIndex to) const;
    [[nodiscard]] TypeSet nextTo(const TypeSet &ends) const;
    void walk(std::size_t depth, TypeIndex at, const Tally &tally);
    void walkArcs(std::size_t depth, const Hop &hop, TypeIndex out, const Tally &tally);
    void step(std::size_t depth, const Hop &hop, const Arc &arc, const Tally &tally);
    void finish(std::uint32_t link, Tally tally);
    void keep(FoundWay way);
    [[nodiscard]] bool isBehind(const Tally &tally) const;
    [[nodiscard]] bool isAllowed(const Arc &arc) const;
    [[nodiscard]] bool stoodAt(TypeIndex type, std::size_t depth) const;
    [[nodiscard]] int narrowIn(const Arc &arc) const; ///< Its ports that throttle the joint.

    const JointGraph &m_graph;
    const JointRequest &m_request;
    Reckoning m_reckoning;
    std::size_t m_fluid; ///< FluidCount where it is not known.
    int m_angle;
    int m_narrowest = 0; ///< The smaller dash of the joint's two ends; 0 where neither has one.
    TypeIndex m_to = 0;
    Aim m_aim{};
    std::vector<std::uint32_t> m_lastLink; ///< By type: its link to the component plus one.
    std::vector<TypeSet> m_reach;          ///< By pieces still to go, exactly so many.
    std::size_t m_pieces = 0;              ///< Of the ways now walked.
    std::array<Step, WayPiecesMost> m_steps;
    std::vector<FoundWay> m_found; ///< Best first.
};

} // namespace flarestock
