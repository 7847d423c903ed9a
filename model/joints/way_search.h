// SPDX-License-Identifier: MIT
//
// Way search: the best ways between two port types of a graph, exactly. It goes from the far end (a
// cut hose, another port) back to the component, piece by piece: first all ways with no piece, then
// with one, and so on. At each port it goes on with what promises most, by its Outlook, and gives
// up what takes more at least than the worst of the ways that it keeps. No way stands at one port
// type twice. "From the shelf" it first looks for the way of fewest pieces, which says how long the
// others may be.

#pragma once

#include "model/joints/closing.h"
#include "model/joints/outlook.h"
#include "model/joints/reckoning.h"

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
    /// What is known of a shelf. It changes nothing of it that can be seen.
    struct Known {
        Supplies &supplies;
        Outlooks &outlooks;
    };
    /// All outlive it.
    WaySearch(const JointGraph &graph, const JointRequest &request, Known known);

    /// Best first, at most request.best.
    [[nodiscard]] std::vector<FoundWay> best(TypeIndex from, TypeIndex to);

    /// For each need of the path, from the component on, sealant once.
    [[nodiscard]] std::vector<Answer> aidsOf(const Path &path);

private:
    struct Step {
        const Arc *arc = nullptr;
        std::uint32_t link = 0; ///< On the far side of the piece.
    };
    /// A step that could be made, with what a way that makes it takes at least.
    struct Promise {
        std::uint64_t least = 0;
        Step step;
    };
    /// What one search looks for: whose order, how many ways, of how many pieces at most.
    struct Aim {
        Preference preference = Preference::Shelf;
        std::size_t best = 0;
        std::size_t piecesMax = 0;
    };
    [[nodiscard]] std::vector<FoundWay> search(TypeIndex from, TypeIndex to, const Aim &aim);
    [[nodiscard]] std::optional<std::uint32_t> directLink(TypeIndex from, TypeIndex to) const;
    void walk(Outlook &outlook, std::size_t depth, TypeIndex at, const Tally &tally);
    void lookAhead(Outlook &outlook, std::size_t depth, TypeIndex at, const Tally &tally);
    [[nodiscard]] Tally stepped(const Step &step, const Tally &tally);
    void finish(std::uint32_t link, Tally tally);
    void keep(FoundWay way);
    [[nodiscard]] bool stoodAt(TypeIndex type, std::size_t depth) const;
    [[nodiscard]] int narrowIn(const Arc &arc) const; ///< Its ports that throttle the joint.

    const JointGraph &m_graph;
    const JointRequest &m_request;
    Supplies &m_supplies;
    Outlooks &m_outlooks;
    Reckoning m_reckoning;
    int m_narrowest = 0; ///< The smaller dash of the joint's two ends; 0 where neither has one.
    TypeIndex m_to = 0;
    Aim m_aim;
    std::vector<std::uint32_t> m_lastLink; ///< By type: its link to the component plus one.
    std::size_t m_pieces = 0;              ///< Of the ways now walked.
    std::array<Step, WayPiecesMost> m_steps;
    std::array<std::vector<Promise>, WayPiecesMost> m_promises; ///< By depth; heaps.
    std::vector<FoundWay> m_found;                              ///< Best first.
    std::uint64_t m_worst = 0; ///< On the preference's scale: what takes more is given up.
};

} // namespace flarestock
