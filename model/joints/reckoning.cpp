// SPDX-License-Identifier: MIT

#include "model/joints/reckoning.h"

#include <algorithm>
#include <cassert>
#include <utility>

namespace flarestock {

Tally &Tally::operator=(const Tally &other) noexcept
{
    std::copy_n(other.uses.begin(), other.size, uses.begin());
    size = other.size;
    rank = other.rank;
    uncertainMicro = other.uncertainMicro;
    sealed = other.sealed;
    return *this;
}

WayRank Tally::bound() const noexcept
{
    WayRank least = rank;
    least.costMicro -= uncertainMicro;
    return least;
}

Reckoning::Reckoning(const JointGraph &graph, Supplies &supplies, std::optional<Fluid> fluid)
    : m_graph(graph), m_supplies(supplies),
      m_fluidBit(static_cast<std::uint16_t>(fluid ? 1u << static_cast<unsigned>(*fluid) : 0u)),
      m_choices(graph.links().needs().size())
{
}

void Reckoning::take(Tally &tally, StockedIndex index, int count)
{
    std::size_t place = 0;
    while (place < tally.size && tally.uses[place].index != index)
        ++place;
    Supplies::Cost before;
    if (place == tally.size) {
        assert(tally.size < tally.uses.size()); // Pieces, links and their needs are few.
        tally.uses[tally.size++] = {index, 0};
    } else {
        before = m_supplies.cost(index, tally.uses[place].count);
    }
    tally.uses[place].count += count;
    const auto after = m_supplies.cost(index, tally.uses[place].count);
    tally.rank.toBuy += after.toBuy - before.toBuy;
    tally.rank.unpriced += after.unpriced - before.unpriced;
    tally.rank.costMicro += after.micro - before.micro;
    if (!m_graph.stocked().parts[index].price.rises())
        tally.uncertainMicro += after.micro - before.micro;
}

void Reckoning::takeLink(Tally &tally, std::uint32_t link, std::vector<Answer> *answers)
{
    const LinkBook &links = m_graph.links();
    const LinkBurden &burden = links.burdens()[links[link].burden];
    tally.rank.cautions += burden.caution ? 1 : 0;
    for (const std::uint32_t place : burden.needs) {
        const Need &need = links.needs()[place].need;
        if (need.aid == Aid::Sleeve)
            continue;
        if (need.aid == Aid::Sealant && std::exchange(tally.sealed, true))
            continue;
        const auto part = answer(place);
        if (part)
            take(tally, *part, need.count);
        else
            ++tally.rank.unanswered;
        if (answers != nullptr)
            answers->push_back({&need, part});
    }
}

std::optional<StockedIndex> Reckoning::answer(std::uint32_t need)
{
    Choice &choice = m_choices[need];
    if (std::exchange(choice.made, true))
        return choice.part;
    const NeedKind &kind = m_graph.links().needs()[need];
    std::array<std::int64_t, 3> least{};
    for (const StockedIndex index : kind.answers) {
        if ((m_graph.ruinedBy(index) & m_fluidBit) != 0)
            continue;
        const auto cost = m_supplies.cost(index, kind.need.count);
        const std::array<std::int64_t, 3> order{cost.toBuy, cost.unpriced, cost.micro};
        if (!choice.part || order < least) {
            choice.part = index;
            least = order;
        }
    }
    return choice.part;
}

} // namespace flarestock
