// SPDX-License-Identifier: MIT

#include "model/joints/sharing/shared_takings.h"

#include "model/joints/supplies.h"

#include <algorithm>

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

std::vector<WayRank> byCount(const ShareRequest &request, const Part &part, int most)
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

SharedTakings::SharedTakings(const ShareRequest &request)
{
    std::map<const Part *, std::size_t> places;
    std::vector<int> most; // Of each part, over all joints.
    const auto placeOf = [&](const Part &part) {
        const auto [found, isNew] = places.try_emplace(&part, m_parts.size());
        if (isNew) {
            m_parts.push_back({&part, {}, isUsedByMeasure(part.kind)});
            most.push_back(0);
        }
        return found->second;
    };
    for (const SharedJoint &joint : request.joints) {
        auto &counts = m_counts.emplace_back();
        auto &own = m_own.emplace_back();
        std::map<std::size_t, int> mostHere;
        for (const Way &way : joint.ways) {
            Counts taken;
            for (const Piece &piece : way.pieces)
                ++taken[placeOf(*piece.part)];
            for (const WayAid &aid : way.aids)
                if (aid.part)
                    taken[placeOf(*aid.part)] += aid.need.aid == Aid::Sealant ? 1 : aid.need.count;
            for (auto &[place, count] : taken) {
                if (m_parts[place].isOnce)
                    count = 1;
                mostHere[place] = std::max(mostHere[place], count);
            }
            counts.push_back(std::move(taken));
            own.push_back(ownOf(joint, way));
        }
        for (const auto &[place, count] : mostHere)
            most[place] = m_parts[place].isOnce ? 1 : most[place] + count;
    }
    for (std::size_t place = 0; place < m_parts.size(); ++place)
        m_parts[place].byCount = byCount(request, *m_parts[place].part, most[place]);
}

WayRank SharedTakings::together(const std::vector<std::optional<std::size_t>> &chosen) const
{
    WayRank sum;
    std::vector<int> taken(m_parts.size(), 0);
    for (std::size_t joint = 0; joint < chosen.size(); ++joint) {
        if (!chosen[joint])
            continue;
        add(sum, own(joint, *chosen[joint]));
        for (const auto &[place, count] : counts(joint, *chosen[joint]))
            taken[place] = m_parts[place].isOnce ? 1 : taken[place] + count;
    }
    for (std::size_t place = 0; place < m_parts.size(); ++place)
        add(sum, m_parts[place].byCount[static_cast<std::size_t>(taken[place])]);
    return sum;
}

} // namespace flarestock
