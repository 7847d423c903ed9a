// SPDX-License-Identifier: MIT

#include "model/joints/sharing/shared_takings.h"

#include "model/joints/supplies.h"

#include <algorithm>
#include <set>

namespace flarestock {

namespace {

/// Whole ones that are left; of what nobody counts as many as anybody needs.
int wholeLeft(const Decimal &left, int most)
{
    if (left.sign() <= 0)
        return 0;
    const auto whole = left.rescaled(0, Rounding::Floor).toInt64();
    return whole ? static_cast<int>(std::min<std::int64_t>(*whole, most)) : most;
}

WayRank ownOf(const SharedJoint &joint, const Way &way)
{
    const int from = dash(joint.from);
    const int to = dash(joint.to);
    const int narrowest = from == 0 || to == 0 ? std::max(from, to) : std::min(from, to);
    WayRank own;
    own.unanswered = static_cast<int>(way.unanswered().size());
    own.pieces = static_cast<int>(way.pieces.size());
    own.cautions = way.cautions();
    for (const Piece &piece : way.pieces)
        for (const PartPort &port : piece.part->ports)
            own.narrow += dash(port.port) > 0 && dash(port.port) < narrowest ? 1 : 0;
    return own;
}

void add(WayRank &sum, const WayRank &more)
{
    sum.unanswered += more.unanswered;
    sum.toBuy += more.toBuy;
    sum.pieces += more.pieces;
    sum.cautions += more.cautions;
    sum.unpriced += more.unpriced;
    sum.costMicro += more.costMicro;
    sum.narrow += more.narrow;
}

} // namespace

std::vector<WayRank> SharedTakings::byCount(const ShareRequest &request, const Part &part, int most)
{
    const auto on = request.shelf.find(part.number);
    const FreeStock *stock = on == request.shelf.end() ? nullptr : &on->second;
    const int free = wholeLeft(request.left(part), most);
    std::vector<WayRank> row(1);
    for (int count = 1; count <= most; ++count) {
        const int toBuy = std::max(0, count - free);
        WayRank rank;
        rank.toBuy = toBuy;
        if (toBuy > 0 && !request.catalogue.bestOffer(part, Decimal(toBuy)))
            rank.unpriced = toBuy;
        rank.costMicro =
            toMicro(Supplies::exactCost(request.catalogue, part, stock, {count - toBuy, toBuy}));
        row.push_back(rank);
    }
    return row;
}

SharedTakings::SharedTakings(const ShareRequest &request) : m_joints(request.joints)
{
    std::vector<int> most; // Of each part, over all joints.
    for (const SharedJoint &joint : m_joints) {
        m_builds = std::max(m_builds, joint.build + 1);
        addJoint(joint, most);
    }
    for (std::size_t place = 0; place < m_parts.size(); ++place) {
        PartRow &row = m_parts[place];
        const int ofAll = row.isOnce ? static_cast<int>(m_builds) : most[place];
        row.byCount = byCount(request, *row.part, ofAll);
    }
}

std::size_t SharedTakings::placeOf(const Part &part, std::vector<int> &most)
{
    const auto [found, isNew] = m_places.try_emplace(&part, m_parts.size());
    if (isNew) {
        m_parts.push_back({&part, {}, isUsedByMeasure(part.kind)});
        most.push_back(0);
    }
    return found->second;
}

void SharedTakings::addJoint(const SharedJoint &joint, std::vector<int> &most)
{
    auto &counts = m_counts.emplace_back();
    auto &own = m_own.emplace_back();
    Counts mostHere;
    for (const Way &way : joint.ways) {
        Counts taken;
        for (const Piece &piece : way.pieces)
            ++taken[placeOf(*piece.part, most)];
        for (const WayAid &aid : way.aids)
            if (aid.part)
                taken[placeOf(*aid.part, most)] +=
                    aid.need.aid == Aid::Sealant ? 1 : aid.need.count;
        for (auto &[place, count] : taken) {
            if (m_parts[place].isOnce)
                count = 1;
            mostHere[place] = std::max(mostHere[place], count);
        }
        counts.push_back(std::move(taken));
        own.push_back(ownOf(joint, way));
    }
    for (const auto &[place, count] : mostHere)
        most[place] += count;
}

std::vector<int> SharedTakings::taken(const Chosen &chosen, std::size_t build) const
{
    std::vector<int> taken(m_parts.size(), 0);
    std::set<std::pair<std::size_t, std::size_t>> once; // Part and build.
    for (std::size_t joint = 0; joint < chosen.size(); ++joint) {
        if (!chosen[joint] || m_joints[joint].build > build)
            continue;
        for (const auto &[place, count] : counts(joint, *chosen[joint]))
            if (!m_parts[place].isOnce || once.insert({place, m_joints[joint].build}).second)
                taken[place] += count;
    }
    return taken;
}

WayRank SharedTakings::together(const Chosen &chosen, std::size_t build) const
{
    WayRank sum;
    for (std::size_t joint = 0; joint < chosen.size(); ++joint)
        if (chosen[joint] && m_joints[joint].build <= build)
            add(sum, own(joint, *chosen[joint]));
    const auto counts = taken(chosen, build);
    for (std::size_t place = 0; place < m_parts.size(); ++place)
        add(sum, m_parts[place].byCount[static_cast<std::size_t>(counts[place])]);
    return sum;
}

} // namespace flarestock
