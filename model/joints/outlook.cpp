// SPDX-License-Identifier: MIT

#include "model/joints/outlook.h"

#include <algorithm>

namespace flarestock {

Outlook::Outlook(const JointGraph &graph, Supplies &supplies, const Aim &aim)
    : m_graph(graph), m_aim(aim), m_scale(aim.preference), m_pieces(supplies.least(aim.preference)),
      m_narrow(graph.size(), 0), m_through(graph.bundles().all.size(), Nowhere),
      m_isThroughKnown(graph.size(), false)
{
    WayRank throttled;
    throttled.narrow = 1;
    for (TypeIndex type = 0; type < graph.size(); ++type) {
        const int size = graph.dashOf(type);
        if (size > 0 && size < aim.narrowest)
            m_narrow[type] = m_scale.single(throttled);
    }
    weighBurdens();
    m_leaving.push_back(lastLinks());
    addNarrow(m_leaving.back());
}

void Outlook::weighBurdens()
{
    const LinkBook &links = m_graph.links();
    for (const LinkBurden &burden : links.burdens()) {
        WayRank rank;
        rank.cautions = burden.caution ? 1 : 0;
        std::uint64_t least = 0;
        for (const std::uint32_t place : burden.needs) {
            const NeedKind &kind = links.needs()[place];
            if (kind.need.aid == Aid::Sleeve || kind.need.aid == Aid::Sealant)
                continue;
            const std::uint64_t answer = leastAnswer(kind);
            if (answer == Nowhere)
                ++rank.unanswered;
            else
                least += answer * static_cast<std::uint64_t>(kind.need.count);
        }
        m_burdens.push_back(m_scale.single(rank) + least);
    }
}

/// Of the parts that answer a need; Nowhere where none does that the fluid allows.
std::uint64_t Outlook::leastAnswer(const NeedKind &kind) const
{
    std::uint64_t least = Nowhere;
    for (const StockedIndex index : kind.answers) {
        if ((m_graph.ruinedBy(index) & m_aim.fluidBit) == 0)
            least = std::min(least, m_pieces[index]);
    }
    return least;
}

const std::vector<std::uint64_t> &Outlook::leaving(std::size_t pieces)
{
    while (m_leaving.size() <= pieces) {
        m_leaving.push_back(
            leftFor(m_leaving.size() == 1 ? enteredLast() : entered(m_leaving.back())));
        addNarrow(m_leaving.back());
    }
    return m_leaving[pieces];
}

Outlook::Row Outlook::lastLinks() const
{
    Row row(m_graph.size(), Nowhere);
    for (const Hop &hop : m_graph.hops(m_aim.from))
        row[hop.to] = link(hop.burden);
    return row;
}

/// By the port type by which the last piece is entered. Few pieces reach the component: those are
/// looked at from it, each turned round.
Outlook::Row Outlook::enteredLast() const
{
    Row row(m_graph.size(), Nowhere);
    for (const Hop &hop : m_graph.hops(m_aim.from)) {
        for (const Arc &arc : m_graph.arcs(hop.to)) {
            if (allows(arc))
                row[arc.out] = std::min(row[arc.out], m_pieces[arc.piece] + m_leaving[0][hop.to]);
        }
    }
    return row;
}

/// The same of a piece before the last.
Outlook::Row Outlook::entered(const Row &leaving)
{
    Row row(m_graph.size(), Nowhere);
    for (TypeIndex in = 0; in < m_graph.size(); ++in) {
        const auto bundles = m_graph.bundles().of(in);
        const auto pieces = through(in);
        for (std::size_t at = 0; at < bundles.size(); ++at) {
            const std::uint64_t rest = leaving[bundles[at].out];
            if (rest != Nowhere && pieces[at] != Nowhere)
                row[in] = std::min(row[in], pieces[at] + rest);
        }
    }
    return row;
}

std::span<const std::uint64_t> Outlook::through(TypeIndex in)
{
    const auto bundles = m_graph.bundles().of(in);
    const std::span<std::uint64_t> row(m_through.data() + m_graph.bundles().begins[in],
                                       bundles.size());
    if (m_isThroughKnown[in])
        return row;
    m_isThroughKnown[in] = true;
    const auto arcs = m_graph.arcs(in);
    for (std::size_t at = 0; at < bundles.size(); ++at) {
        for (std::uint32_t arc = bundles[at].begin; arc < bundles[at].end; ++arc) {
            if (allows(arcs[arc]))
                row[at] = std::min(row[at], m_pieces[arcs[arc].piece]);
        }
    }
    return row;
}

/// By the port type by which the piece before is left: the link, and what is entered by it.
Outlook::Row Outlook::leftFor(const Row &entered) const
{
    Row row(m_graph.size(), Nowhere);
    for (TypeIndex in = 0; in < m_graph.size(); ++in) {
        if (entered[in] == Nowhere || m_graph.isEnd(in))
            continue;
        const std::uint64_t least = entered[in] + m_narrow[in];
        for (const Hop &hop : m_graph.hops(in)) // A hop leads both ways.
            row[hop.to] = std::min(row[hop.to], least + link(hop.burden));
    }
    return row;
}

void Outlook::addNarrow(Row &row) const
{
    for (TypeIndex type = 0; type < row.size(); ++type)
        row[type] += row[type] == Nowhere ? 0 : m_narrow[type];
}

Outlook &Outlooks::of(const JointGraph &graph, Supplies &supplies, const Outlook::Aim &aim)
{
    std::unique_ptr<Outlook> &known = m_known[aim];
    if (!known)
        known = std::make_unique<Outlook>(graph, supplies, aim);
    return *known;
}

} // namespace flarestock
