// SPDX-License-Identifier: MIT

#include "model/joints/way_search.h"

#include "model/joints/meeting.h"

#include <algorithm>
#include <utility>

namespace flarestock {

namespace {

bool comesBefore(const FoundWay &a, const FoundWay &b, Preference preference)
{
    const auto order = compare(a.rank, b.rank, preference);
    return order != 0 ? order < 0 : a.key < b.key;
}

} // namespace

WaySearch::WaySearch(const JointGraph &graph, const JointRequest &request, Known known)
    : m_graph(graph), m_request(request), m_supplies(known.supplies), m_outlooks(known.outlooks),
      m_reckoning(graph, known.supplies, request.fluid)
{
    const int from = dash(request.from);
    const int to = dash(request.to);
    m_narrowest = from == 0 || to == 0 ? std::max(from, to) : std::min(from, to);
}

std::vector<FoundWay> WaySearch::best(TypeIndex from, TypeIndex to)
{
    m_to = to;
    m_lastLink.assign(m_graph.size(), 0);
    for (const Hop &hop : m_graph.hops(from))
        m_lastLink[hop.to] = hop.link + 1;
    const std::size_t most = std::min(m_request.piecesMax, WayPiecesMost);
    if (m_request.preference != Preference::Shelf)
        return search(from, to, {m_request.preference, m_request.best, most});
    const auto fewest = search(from, to, {Preference::Joints, 1, most});
    if (fewest.empty())
        return {};
    const std::size_t allowed = fewest.front().path.arcs.size() + ShelfPiecesMore;
    return search(from, to, {Preference::Shelf, m_request.best, std::min(most, allowed)});
}

std::vector<FoundWay> WaySearch::search(TypeIndex from, TypeIndex to, const Aim &aim)
{
    m_aim = aim;
    m_worst = Outlook::Nowhere;
    m_pieces = 0;
    if (const auto link = directLink(from, to))
        finish(*link, {});
    Outlook &outlook = m_outlooks.of(m_graph, m_supplies,
                                     {from, aim.preference, m_request.angleDegrees.value_or(0),
                                      m_narrowest, m_reckoning.fluidBit()});
    const RankScale scale(aim.preference);
    // First the short ways: they make the bound that cuts the long ones off.
    for (m_pieces = 1; m_pieces <= aim.piecesMax; ++m_pieces) {
        Tally start;
        start.rank.pieces = static_cast<int>(m_pieces);
        if (scale.soFar(start.rank) > m_worst)
            break;
        walk(outlook, 0, to, start);
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

void WaySearch::walk(Outlook &outlook, std::size_t depth, TypeIndex at, const Tally &tally)
{
    lookAhead(outlook, depth, at, tally);
    std::vector<Promise> &promises = m_promises[depth];
    const auto promisesLess = [](const Promise &a, const Promise &b) { return a.least > b.least; };
    std::make_heap(promises.begin(), promises.end(), promisesLess);
    while (!promises.empty() && promises.front().least <= m_worst) {
        std::pop_heap(promises.begin(), promises.end(), promisesLess);
        const Step step = m_steps[depth] = promises.back().step;
        promises.pop_back();
        if (depth + 1 < m_pieces)
            walk(outlook, depth + 1, step.arc->out, stepped(step, tally));
        else
            finish(m_lastLink[step.arc->out] - 1, stepped(step, tally));
    }
}

/// Fills the promises of this depth.
void WaySearch::lookAhead(Outlook &outlook, std::size_t depth, TypeIndex at, const Tally &tally)
{
    std::vector<Promise> &promises = m_promises[depth];
    promises.clear();
    const auto &leaving = outlook.leaving(m_pieces - depth - 1);
    const auto pieces = outlook.pieces();
    const std::uint64_t soFar = RankScale(m_aim.preference).soFar(tally.bound());
    for (const Hop &hop : m_graph.hops(at)) {
        const std::uint64_t entering = soFar + outlook.link(hop.burden) + outlook.narrow(hop.to);
        if (entering > m_worst)
            continue;
        const auto arcs = m_graph.arcs(hop.to);
        const auto bundles = m_graph.bundles().of(hop.to);
        const auto through = outlook.through(hop.to);
        for (std::size_t i = 0; i < bundles.size(); ++i) {
            const Bundle &bundle = bundles[i];
            const std::uint64_t rest = leaving[bundle.out];
            if (rest == Outlook::Nowhere || through[i] == Outlook::Nowhere ||
                entering + through[i] + rest > m_worst || stoodAt(bundle.out, depth))
                continue;
            for (std::uint32_t place = bundle.begin; place < bundle.end; ++place) {
                const Arc &arc = arcs[place];
                const std::uint64_t least = entering + pieces[arc.piece] + rest;
                if (least <= m_worst && outlook.allows(arc))
                    promises.push_back({least, {&arc, hop.link}});
            }
        }
    }
}

Tally WaySearch::stepped(const Step &step, const Tally &tally)
{
    Tally next = tally;
    next.rank.narrow += narrowIn(*step.arc);
    m_reckoning.takePiece(next, step.arc->piece);
    m_reckoning.takeLink(next, step.link);
    return next;
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
        way.key +=
            (way.key.empty() ? "" : " + ") + m_graph.stocked().parts[(*arc)->piece].part->number;
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
    if (m_found.size() == m_aim.best)
        m_worst = RankScale(m_aim.preference).whole(m_found.back().rank);
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
