// SPDX-License-Identifier: MIT

#include "model/joints/judging.h"

#include "model/joints/meeting.h"

#include <algorithm>
#include <cassert>
#include <map>

namespace flarestock {

namespace {

/// Whether a piece's maker lists the cut end.
bool holds(const Part *piece, const Port &cut)
{
    if (piece == nullptr)
        return false;
    for (std::size_t place = 0; place < piece->ports.size(); ++place) {
        const auto ports = portsOf(*piece, place);
        if (std::find(ports.begin(), ports.end(), cut) != ports.end())
            return true;
    }
    return false;
}

struct Side {
    Port port;
    const Part *piece; ///< nullptr: not a piece of the way.
};

Link linkOf(const Side &a, const Side &b)
{
    const bool cuts = isCutEnd(a.port) && isCutEnd(b.port);
    const bool held = cuts && ((b.piece == nullptr && holds(a.piece, b.port)) ||
                               (a.piece == nullptr && holds(b.piece, a.port)));
    return {a.port, b.port,
            held ? holding(b.piece == nullptr ? b.port : a.port) : meeting(a.port, b.port)};
}

/// The row with piece i entered by its second port where bit i of `turned` is set.
Way rowTurned(const std::vector<const Part *> &parts, const JointRequest &request, unsigned turned)
{
    Way way;
    Side here{request.from, nullptr};
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const std::size_t in = (turned >> i) & 1u;
        way.links.push_back(linkOf(here, {parts[i]->ports[in].port, parts[i]}));
        way.pieces.push_back({parts[i], parts[i]->ports[in].name, parts[i]->ports[1 - in].name});
        here = {parts[i]->ports[1 - in].port, parts[i]};
    }
    way.links.push_back(linkOf(here, {request.to, nullptr}));
    return way;
}

/// How good a row is: its worst link, then how many are as bad.
std::pair<Verdict, long> goodness(const Way &way)
{
    const auto worst = way.verdict();
    const auto bad = std::count_if(way.links.begin(), way.links.end(), [worst](const Link &link) {
        return link.mating.verdict == worst;
    });
    return {worst, -bad};
}

} // namespace

Way bestTurned(const std::vector<const Part *> &parts, const JointRequest &request)
{
    assert(parts.size() <= JudgedMost);
    Way best = rowTurned(parts, request, 0);
    for (unsigned turned = 1; turned < 1u << parts.size(); ++turned) {
        Way row = rowTurned(parts, request, turned);
        if (goodness(row) > goodness(best))
            best = std::move(row);
    }
    return best;
}

void addAids(const JointGraph &graph, const JointRequest &request, const FreeLeft &left, Way &way)
{
    const unsigned bit = request.fluid ? 1u << static_cast<unsigned>(*request.fluid) : 0u;
    bool sealed = false;
    for (const auto &link : way.links) {
        for (const auto &need : link.mating.needs) {
            if (!fits(link.mating.verdict) || need.aid == Aid::Sleeve ||
                (need.aid == Aid::Sealant && sealed))
                continue;
            sealed = sealed || need.aid == Aid::Sealant;
            const Part *aid = nullptr;
            for (const auto index : graph.links().kind(need, link.a, link.b).answers) {
                const Part *candidate = graph.stocked().parts[index].part;
                const bool ruined = (graph.ruinedBy(index) & bit) != 0;
                if (!ruined && (aid == nullptr || left(*candidate) > left(*aid)))
                    aid = candidate;
            }
            way.aids.push_back({need, aid});
        }
    }
}

void priceUp(const JointGraph &graph, const Shelf &shelf, const FreeLeft &left, Way &way)
{
    std::map<const Part *, int> counts;
    for (const auto &piece : way.pieces)
        ++counts[piece.part];
    for (const auto &aid : way.aids) {
        if (aid.part != nullptr)
            counts[aid.part] += aid.need.count;
    }
    for (const auto &[part, count] : counts) {
        const auto free = left(*part).rescaled(0, Rounding::Floor).toInt64().value_or(count);
        const int here = static_cast<int>(std::clamp<std::int64_t>(free, 0, count));
        const auto stock = shelf.find(part->number);
        way.toBuy += count - here;
        way.priced = way.priced && (count == here || !graph.catalogue().offers(*part).empty());
        way.cost += Supplies::exactCost(graph.catalogue(), *part,
                                        stock == shelf.end() ? nullptr : &stock->second,
                                        {here, count - here});
    }
}

} // namespace flarestock
