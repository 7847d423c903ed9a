// SPDX-License-Identifier: MIT

#include "model/systems/expanding/plugging.h"

#include "model/joints/supplies.h"
#include "model/parts/fluid_allowed.h"

#include <algorithm>

namespace flarestock {

namespace {

/// A plug stops the flow, so that nothing is too narrow for it.
WayRank rankOf(const Way &way)
{
    WayRank rank;
    rank.unanswered = static_cast<int>(way.unanswered().size());
    rank.toBuy = way.toBuy;
    rank.pieces = static_cast<int>(way.pieces.size());
    rank.cautions = way.cautions();
    rank.unpriced = way.priced ? 0 : 1;
    rank.costMicro = toMicro(way.cost);
    return rank;
}

bool comesBefore(const Way &a, const Way &b, Preference preference)
{
    const auto order = compare(rankOf(a), rankOf(b), preference);
    return order != 0 ? order < 0 : a.key() < b.key();
}

} // namespace

Plugging::Plugging(const JointCloser &closer, const Shelf &shelf, JointShelf &jointShelf,
                   Allotment &allotment)
    : m_closer(closer), m_shelf(shelf), m_jointShelf(jointShelf), m_allotment(allotment),
      m_left([&allotment](const Part &part) { return allotment.left(part); })
{
}

std::vector<Way> Plugging::ways(const JointRequest &request)
{
    std::vector<Way> found;
    find(request, 0, found);
    if (found.empty())
        find(request, 1, found);
    std::sort(found.begin(), found.end(),
              [&](const Way &a, const Way &b) { return comesBefore(a, b, request.preference); });
    if (found.size() > request.best)
        found.resize(request.best);
    return found;
}

void Plugging::find(const JointRequest &request, std::size_t adaptersMax, std::vector<Way> &found)
{
    for (const Kind kind : {Kind::Plug, Kind::Cap})
        for (const Part *plug : m_allotment.catalogue().ofKind(kind)) {
            if (plug->ports.empty() || !allowsFluid(*plug, request.fluid))
                continue;
            const Port &end = plug->ports.front().port;
            if (adaptersMax == 0 && !fits(mating(request.from, end).verdict))
                continue;
            JointRequest toPlug = request;
            toPlug.to = end;
            toPlug.best = 1;
            toPlug.piecesMax = adaptersMax;
            for (Way &way : m_closer.ways(toPlug, m_jointShelf))
                found.push_back(withPlug(std::move(way), *plug));
        }
}

Way Plugging::withPlug(Way way, const Part &plug) const
{
    const bool here = m_allotment.left(plug) >= Decimal(1);
    const auto cost = m_allotment.cost(plug, 1, here);
    way.pieces.push_back({&plug, plug.ports.front().name, ""});
    way.toBuy += here ? 0 : 1;
    way.priced = way.priced && cost;
    if (cost)
        way.cost += *cost;
    return way;
}

Result<Way> Plugging::judged(const JointRequest &request, std::vector<std::string> numbers) const
{
    const Part *plug = numbers.empty() ? nullptr : m_allotment.catalogue().find(numbers.back());
    if (!plug || plug->ports.empty())
        return problem(numbers.empty() ? "plug" : numbers.back(), "cannot close a port",
                       "Pick a plug or cap of the catalogue.");
    numbers.pop_back();
    JointRequest toPlug = request;
    toPlug.to = plug->ports.front().port;
    auto way = m_closer.judged(toPlug, numbers, m_shelf, m_left);
    if (!way)
        return way;
    return withPlug(std::move(*way), *plug);
}

} // namespace flarestock
