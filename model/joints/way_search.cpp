// SPDX-License-Identifier: MIT

#include "model/joints/way_search.h"

#include "model/joints/meeting.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace flarestock {

namespace {

bool comesBefore(const FoundWay &a, const FoundWay &b, Preference preference)
{
    const auto order = compare(a.rank, b.rank, preference);
    return order != 0 ? order < 0 : a.key < b.key;
}

/// A cut end takes a line and a weld end is welded, so that neither joins two pieces of a way:
/// between two tube nuts there would be no tube.
bool standsOnlyAtAnEnd(const Port &port)
{
    return isCutEnd(port) || port.family == Family::Weld;
}

} // namespace

WaySearch::WaySearch(const JointGraph &graph, const JointRequest &request, Supplies &supplies)
    : m_graph(graph), m_request(request), m_supplies(supplies),
      m_fluidBit(static_cast<std::uint16_t>(
          request.fluid ? 1u << static_cast<unsigned>(*request.fluid) : 0u))
{
    const int from = dash(request.from);
    const int to = dash(request.to);
    m_narrowest = from == 0 || to == 0 ? std::max(from, to) : std::min(from, to);
}

std::vector<FoundWay> WaySearch::best(TypeIndex from, TypeIndex to)
{
    const auto most = static_cast<std::uint8_t>(std::min<std::size_t>(m_request.piecesMax, 8));
    m_far = m_graph.distances(from, most);
    // First the short ways: they make the bound that cuts the long ones off.
    for (std::size_t pieces = 0; pieces <= most; ++pieces) {
        m_stood = {to};
        extend(to, from, pieces);
    }
    return std::move(m_found);
}

bool WaySearch::isAllowed(const Arc &arc) const
{
    if ((arc.ruinedBy & m_fluidBit) != 0)
        return false;
    return arc.angleDegrees < 0 || arc.angleDegrees == m_request.angleDegrees.value_or(0);
}

int WaySearch::narrowIn(const Arc &arc) const
{
    const auto throttles = [this](TypeIndex type) {
        const int size = m_graph.dashOf(type);
        return size > 0 && size < m_narrowest ? 1 : 0;
    };
    return throttles(arc.in) + throttles(arc.out);
}

void WaySearch::extend(TypeIndex at, TypeIndex target, std::size_t piecesLeft)
{
    for (const Hop &hop : m_graph.hops(at)) {
        m_path.links.push_back(hop.link);
        if (piecesLeft == 0) {
            if (hop.to == target)
                keep();
            m_path.links.pop_back();
            continue;
        }
        for (const Arc &arc : m_graph.arcs(hop.to)) {
            const bool stoodThere =
                std::find(m_stood.begin(), m_stood.end(), arc.out) != m_stood.end();
            if (stoodThere || m_far[arc.out] > piecesLeft - 1 || !isAllowed(arc))
                continue;
            if (piecesLeft > 1 && standsOnlyAtAnEnd(m_graph.type(arc.out)))
                continue;
            m_path.arcs.push_back(&arc);
            m_stood.push_back(arc.out);
            if (canBeBest(m_path.arcs.size() + piecesLeft - 1))
                extend(arc.out, target, piecesLeft - 1);
            m_stood.pop_back();
            m_path.arcs.pop_back();
        }
        m_path.links.pop_back();
    }
}

bool WaySearch::canBeBest(std::size_t piecesAtLeast) const
{
    if (m_found.size() < m_request.best)
        return true;
    auto least = rankOf(m_path);
    least.pieces = static_cast<int>(piecesAtLeast);
    return compare(least, m_found.back().rank, m_request.preference) <= 0;
}

void WaySearch::keep()
{
    FoundWay way{m_path, rankOf(m_path), {}};
    for (auto arc = way.path.arcs.rbegin(); arc != way.path.arcs.rend(); ++arc)
        way.key += (way.key.empty() ? "" : " + ") + m_graph.stocked()[(*arc)->piece].part->number;
    if (way.key.empty())
        way.key = "direct";
    const auto same = std::find_if(m_found.begin(), m_found.end(),
                                   [&](const FoundWay &other) { return other.key == way.key; });
    if (same != m_found.end()) { // The same parts, one of them turned round.
        if (!comesBefore(way, *same, m_request.preference))
            return;
        m_found.erase(same);
    }
    const auto place = std::find_if(m_found.begin(), m_found.end(), [&](const FoundWay &other) {
        return comesBefore(way, other, m_request.preference);
    });
    m_found.insert(place, std::move(way));
    if (m_found.size() > m_request.best)
        m_found.pop_back();
}

std::optional<StockedIndex> WaySearch::answer(const NeedKind &need) const
{
    std::optional<StockedIndex> best;
    Supplies::Cost least;
    for (const StockedIndex index : need.answers) {
        if ((m_graph.ruinedBy(index) & m_fluidBit) != 0)
            continue;
        const auto cost = m_supplies.cost(index, need.need.count);
        const auto order = [](const Supplies::Cost &one) {
            return std::tuple(one.toBuy, one.unpriced, one.micro);
        };
        if (!best || order(cost) < order(least)) {
            best = index;
            least = cost;
        }
    }
    return best;
}

std::vector<std::pair<const Need *, std::optional<StockedIndex>>>
WaySearch::aidsOf(const Path &path) const
{
    std::vector<std::pair<const Need *, std::optional<StockedIndex>>> aids;
    bool sealed = false;
    for (auto link = path.links.rbegin(); link != path.links.rend(); ++link) {
        for (const std::uint32_t place : m_graph.links()[*link].needs) {
            const NeedKind &need = m_graph.links().needs()[place];
            if (need.need.aid == Aid::Sleeve || (need.need.aid == Aid::Sealant && sealed))
                continue;
            sealed = sealed || need.need.aid == Aid::Sealant;
            aids.emplace_back(&need.need, answer(need));
        }
    }
    return aids;
}

WayRank WaySearch::rankOf(const Path &path) const
{
    WayRank rank;
    rank.pieces = static_cast<int>(path.arcs.size());
    std::map<StockedIndex, int> counts;
    for (const Arc *arc : path.arcs) {
        ++counts[arc->piece];
        rank.narrow += narrowIn(*arc);
    }
    for (const auto &[need, part] : aidsOf(path)) {
        if (part)
            counts[*part] += need->count;
        else
            ++rank.unanswered;
    }
    for (const auto &[index, count] : counts) {
        const auto cost = m_supplies.cost(index, count);
        rank.toBuy += cost.toBuy;
        rank.unpriced += cost.unpriced;
        rank.costMicro += cost.micro;
    }
    return rank;
}

} // namespace flarestock
