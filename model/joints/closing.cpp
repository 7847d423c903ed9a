// SPDX-License-Identifier: MIT

#include "model/joints/closing.h"

#include "model/joints/judging.h"
#include "model/joints/way_search.h"

#include <algorithm>
#include <map>

namespace flarestock {

struct JointCloser::Graph {
    explicit Graph(const Catalogue &catalogue) : joints(catalogue)
    {
        for (const Stocked &stocked : joints.stocked().parts)
            pricesFallTo = std::min(pricesFallTo, stocked.price.fallsTo());
    }
    JointGraph joints;
    int pricesFallTo = 1000;
};

namespace {

/// A search's find as a way, from the component outwards.
Way wayOf(const JointGraph &graph, WaySearch &search, const FoundWay &found, Supplies &supplies)
{
    Way way;
    const auto &path = found.path;
    std::vector<Port> ends; // Ports in the order of the way, two for each piece.
    for (auto arc = path.arcs.rbegin(); arc != path.arcs.rend(); ++arc) {
        const Part &part = *graph.stocked().parts[(*arc)->piece].part;
        way.pieces.push_back(
            {&part, part.ports[(*arc)->outPort].name, part.ports[(*arc)->inPort].name});
        ends.push_back(graph.type((*arc)->out));
        ends.push_back(graph.type((*arc)->in));
    }
    for (std::size_t i = 0; i < path.links.size(); ++i) {
        const auto link = path.links[path.links.size() - 1 - i];
        way.links.push_back({i == 0 ? Port{} : ends[2 * i - 1],
                             i < path.arcs.size() ? ends[2 * i] : Port{},
                             graph.links()[link].mating});
    }
    std::map<StockedIndex, int> counts;
    for (const Arc *arc : path.arcs)
        ++counts[arc->piece];
    for (const auto &[need, index] : search.aidsOf(path)) {
        way.aids.push_back({*need, index ? graph.stocked().parts[*index].part : nullptr});
        if (index)
            counts[*index] += need->count;
    }
    for (const auto &[index, count] : counts)
        way.cost += supplies.amount(index, count);
    way.toBuy = found.rank.toBuy;
    way.priced = found.rank.unpriced == 0;
    return way;
}

} // namespace

struct JointShelf::Known {
    explicit Known(Supplies made) : supplies(std::move(made)) {}
    Supplies supplies;
    Outlooks outlooks;
};

JointShelf::JointShelf(std::unique_ptr<Known> known) : m_known(std::move(known)) {}
JointShelf::~JointShelf() = default;
JointShelf::JointShelf(JointShelf &&) noexcept = default;
JointShelf &JointShelf::operator=(JointShelf &&) noexcept = default;

void JointShelf::setLeft(const Part &part, const Decimal &left)
{
    m_known->supplies.setLeft(part, left);
}

JointCloser::JointCloser(const Catalogue &catalogue) : m_graph(std::make_unique<Graph>(catalogue))
{
}
JointCloser::~JointCloser() = default;
JointCloser::JointCloser(JointCloser &&) noexcept = default;
JointCloser &JointCloser::operator=(JointCloser &&) noexcept = default;

int JointCloser::pricesFallTo() const noexcept
{
    return m_graph->pricesFallTo;
}

JointShelf JointCloser::jointShelf(const Shelf &shelf) const
{
    return JointShelf(
        std::make_unique<JointShelf::Known>(Supplies(m_graph->joints.stocked(), shelf)));
}

std::vector<Way> JointCloser::ways(const JointRequest &request, const Shelf &shelf,
                                   const FreeLeft &left) const
{
    JointShelf known(
        std::make_unique<JointShelf::Known>(Supplies(m_graph->joints.stocked(), shelf, left)));
    return ways(request, known);
}

std::vector<Way> JointCloser::ways(const JointRequest &request, JointShelf &shelf) const
{
    const auto &graph = m_graph->joints;
    const auto from = graph.find(request.from);
    const auto to = graph.find(request.to);
    if (!from || !to || request.best == 0)
        return {};
    Supplies &supplies = shelf.m_known->supplies;
    WaySearch search(graph, request, {supplies, shelf.m_known->outlooks});
    std::vector<Way> ways;
    for (const auto &found : search.best(*from, *to)) {
        ways.push_back(wayOf(graph, search, found, supplies));
        ways.back().links.front().a = request.from;
        ways.back().links.back().b = request.to;
    }
    return ways;
}

Result<Way> JointCloser::judged(const JointRequest &request,
                                const std::vector<std::string> &numbers, const Shelf &shelf,
                                const FreeLeft &left) const
{
    std::vector<const Part *> parts;
    for (const auto &number : numbers) {
        if (number == "direct" && numbers.size() == 1)
            continue;
        const Part *part = m_graph->joints.catalogue().find(number);
        if (part == nullptr)
            return problem(number, "is not in the catalogue", "Pick a part that is.");
        if (part->ports.size() != 2)
            return problem(number, "has not two ports to join by", "Pick an adapter or hose end.");
        parts.push_back(part);
    }
    if (parts.size() > JudgedMost)
        return problem(numbers.front(), "and what follows are more pieces than a joint can have",
                       "Pick at most " + std::to_string(JudgedMost) + ".");
    Way way = bestTurned(parts, request);
    addAids(m_graph->joints, request, left, way);
    priceUp(m_graph->joints, shelf, left, way);
    return way;
}

} // namespace flarestock
