// SPDX-License-Identifier: MIT

#include "model/joints/way_search.h"

#include "model/joints/meeting.h"

#include <algorithm>
#include <bit>
#include <utility>

namespace flarestock {

namespace {

bool comesBefore(const FoundWay &a, const FoundWay &b, Preference preference)
{
    const auto order = compare(a.rank, b.rank, preference);
    return order != 0 ? order < 0 : a.key < b.key;
}

bool share(const TypeSet &a, const TypeSet &b)
{
    for (std::size_t word = 0; word < a.size(); ++word) {
        if ((a[word] & b[word]) != 0)
            return true;
    }
    return false;
}

} // namespace

WaySearch::WaySearch(const JointGraph &graph, const JointRequest &request, Supplies &supplies)
    : m_graph(graph), m_request(request), m_reckoning(graph, supplies, request.fluid),
      m_fluid(request.fluid ? static_cast<std::size_t>(*request.fluid) : FluidCount),
      m_angle(request.angleDegrees.value_or(0))
{
    const int from = dash(request.from);
    const int to = dash(request.to);
    m_narrowest = from == 0 || to == 0 ? std::max(from, to) : std::min(from, to);
}

std::vector<FoundWay> WaySearch::best(TypeIndex from, TypeIndex to)
{
    m_to = to;
    const std::size_t most = std::min(m_request.piecesMax, WayPiecesMost);
    reachForwards(from, most);
    if (m_request.preference != Preference::Shelf)
        return search(from, {m_request.preference, m_request.best, most});
    const auto fewest = search(from, {Preference::Joints, 1, most});
    if (fewest.empty())
        return {};
    const std::size_t allowed = fewest.front().path.arcs.size() + ShelfPiecesMore;
    return search(from, {Preference::Shelf, m_request.best, std::min(most, allowed)});
}

std::vector<FoundWay> WaySearch::search(TypeIndex from, const Aim &aim)
{
    m_aim = aim;
    m_pieces = 0;
    if (const auto link = directLink(from, m_to))
        finish(*link, {});
    // First the short ways: they make the bound that cuts the long ones off.
    for (m_pieces = 1; m_pieces <= aim.piecesMax; ++m_pieces) {
        Tally start;
        start.rank.pieces = static_cast<int>(m_pieces);
        if (isBehind(start))
            break;
        walk(0, m_to, start);
    }
    return std::exchange(m_found, {});
}

std::optional<std::uint32_t> WaySearch::directLink(TypeIndex from, TypeIndex to) const
{
    if (isCutEnd(m_graph.type(from)) && isCutEnd(m_graph.type(to)))
        return {}; // The link by which a piece holds it.
    if (m_lastLink[to] != 0)
        return m_lastLink[to] - 1;
    for (const Hop &hop : m_graph.hops(to)) { // Only a cut end's own row has it and what it meets.
        if (hop.to == from)
            return hop.link;
    }
    return {};
}

TypeSet WaySearch::nextTo(const TypeSet &ends) const
{
    TypeSet next(m_graph.words(), 0);
    for (TypeIndex end = 0; end < m_graph.size(); ++end) {
        if (!hasType(ends, end))
            continue;
        for (const Hop &hop : m_graph.hops(end))
            putType(next, hop.to);
    }
    return next;
}

void WaySearch::reachForwards(TypeIndex from, std::size_t most)
{
    m_lastLink.assign(m_graph.size(), 0);
    TypeSet ends(m_graph.words(), 0);
    for (const Hop &hop : m_graph.hops(from)) {
        m_lastLink[hop.to] = hop.link + 1;
        putType(ends, hop.to);
    }
    m_reach = {ends};
    for (std::size_t pieces = 1; pieces < most; ++pieces) {
        TypeSet entered(m_graph.words(), 0);
        if (pieces == 1) { // Looked at one by one, for the angle of a hose end.
            for (const Hop &hop : m_graph.hops(from)) {
                for (const Arc &arc : m_graph.arcs(hop.to)) { // Turned round.
                    if (isAllowed(arc))
                        putType(entered, arc.out);
                }
            }
        } else {
            for (TypeIndex in = 0; in < m_graph.size(); ++in) {
                if (share(m_graph.outs(m_fluid, in), m_reach.back()))
                    putType(entered, in);
            }
        }
        m_reach.push_back(nextTo(entered));
        for (std::size_t word = 0; word < m_graph.words(); ++word)
            m_reach.back()[word] &= ~m_graph.ends()[word];
    }
}

bool WaySearch::isAllowed(const Arc &arc) const
{
    return (arc.ruinedBy & m_reckoning.fluidBit()) == 0 &&
           (arc.angleDegrees < 0 || arc.angleDegrees == m_angle);
}

int WaySearch::narrowIn(const Arc &arc) const
{
    const auto throttles = [this](TypeIndex type) {
        const int size = m_graph.dashOf(type);
        return size > 0 && size < m_narrowest ? 1 : 0;
    };
    return throttles(arc.in) + throttles(arc.out);
}

bool WaySearch::stoodAt(TypeIndex type, std::size_t depth) const
{
    if (type == m_to)
        return true;
    for (std::size_t before = 0; before < depth; ++before) {
        if (m_steps[before].arc->out == type)
            return true;
    }
    return false;
}

bool WaySearch::isBehind(const Tally &tally) const
{
    return m_found.size() >= m_aim.best &&
           compare(tally.bound(), m_found.back().rank, m_aim.preference) > 0;
}

void WaySearch::walk(std::size_t depth, TypeIndex at, const Tally &tally)
{
    const TypeSet &reach = m_reach[m_pieces - depth - 1];
    for (const Hop &hop : m_graph.hops(at)) {
        const TypeSet &outs = m_graph.outs(m_fluid, hop.to);
        for (std::size_t word = 0; word < outs.size(); ++word) {
            for (std::uint64_t left = outs[word] & reach[word]; left != 0; left &= left - 1) {
                const auto out = static_cast<TypeIndex>(
                    word * 64 + static_cast<unsigned>(std::countr_zero(left)));
                if (!stoodAt(out, depth))
                    walkArcs(depth, hop, out, tally);
            }
        }
    }
}

void WaySearch::walkArcs(std::size_t depth, const Hop &hop, TypeIndex out, const Tally &tally)
{
    const auto row = m_graph.arcs(hop.to);
    auto arc = std::lower_bound(row.begin(), row.end(), out,
                                [](const Arc &one, TypeIndex wanted) { return one.out < wanted; });
    for (; arc != row.end() && arc->out == out; ++arc) {
        if (isAllowed(*arc))
            step(depth, hop, *arc, tally);
    }
}

void WaySearch::step(std::size_t depth, const Hop &hop, const Arc &arc, const Tally &tally)
{
    Tally next = tally;
    next.rank.narrow += narrowIn(arc);
    m_reckoning.takePiece(next, arc.piece);
    if (isBehind(next))
        return;
    m_reckoning.takeLink(next, hop.link);
    if (isBehind(next))
        return;
    m_steps[depth] = {&arc, hop.link};
    if (depth + 1 < m_pieces)
        walk(depth + 1, arc.out, next);
    else
        finish(m_lastLink[arc.out] - 1, next);
}

void WaySearch::finish(std::uint32_t link, Tally tally)
{
    m_reckoning.takeLink(tally, link);
    if (m_found.size() >= m_aim.best &&
        compare(tally.rank, m_found.back().rank, m_aim.preference) > 0)
        return;
    FoundWay way;
    way.rank = tally.rank;
    for (std::size_t place = 0; place < m_pieces; ++place) {
        way.path.arcs.push_back(m_steps[place].arc);
        way.path.links.push_back(m_steps[place].link);
    }
    way.path.links.push_back(link);
    for (auto arc = way.path.arcs.rbegin(); arc != way.path.arcs.rend(); ++arc)
        way.key += (way.key.empty() ? "" : " + ") + m_graph.stocked()[(*arc)->piece].part->number;
    if (way.key.empty())
        way.key = "direct";
    keep(std::move(way));
}

void WaySearch::keep(FoundWay way)
{
    const auto same = std::find_if(m_found.begin(), m_found.end(),
                                   [&](const FoundWay &other) { return other.key == way.key; });
    if (same != m_found.end()) { // The same parts, one of them turned round.
        if (!comesBefore(way, *same, m_aim.preference))
            return;
        m_found.erase(same);
    }
    const auto place = std::find_if(m_found.begin(), m_found.end(), [&](const FoundWay &other) {
        return comesBefore(way, other, m_aim.preference);
    });
    m_found.insert(place, std::move(way));
    if (m_found.size() > m_aim.best)
        m_found.pop_back();
}

std::vector<Answer> WaySearch::aidsOf(const Path &path)
{
    std::vector<Answer> answers;
    Tally tally;
    for (auto link = path.links.rbegin(); link != path.links.rend(); ++link)
        m_reckoning.takeLink(tally, *link, &answers);
    return answers;
}

} // namespace flarestock
