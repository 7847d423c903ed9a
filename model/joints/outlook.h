// SPDX-License-Identifier: MIT
//
// Outlook: the least that a way still takes from where it stands to the component, by how many
// pieces are still to come. A search that knows it enters no blind alley, and gives up a branch as
// soon as what it took and what it must still take stand behind the ways that it has.
//
// It is worked out backwards from the component, level by level: one more piece, one more level. It
// lets a way stand at a port type twice, count sealant not at all and a price break at once: so it
// is a bound, never the answer. What is taken from the shelf makes ways dearer, never cheaper than
// it says, so that one serves all joints of a build at the same port (Outlooks).

#pragma once

#include "model/joints/graph.h"
#include "model/joints/rank_scale.h"

#include <compare>
#include <memory>

namespace flarestock {

class Outlook {
public:
    /// No way leads on.
    static constexpr std::uint64_t Nowhere = ~std::uint64_t{0};

    /// What it bounds: a rank's number is as the preference's RankScale says.
    struct Aim {
        TypeIndex from = 0; ///< The component's port.
        Preference preference = Preference::Shelf;
        int angleDegrees = 0;
        int narrowest = 0;          ///< Ports of a smaller dash throttle the line.
        std::uint16_t fluidBit = 0; ///< As in Arc::ruinedBy; 0 where the fluid is not known.
        friend auto operator<=>(const Aim &, const Aim &) = default;
    };
    /// Both outlive it.
    Outlook(const JointGraph &graph, Supplies &supplies, const Aim &aim);

    /// By port type by which a piece is left: the least that follows where so many more pieces
    /// come, this port's being narrow included. Worked out when it is first asked for.
    [[nodiscard]] const std::vector<std::uint64_t> &leaving(std::size_t pieces);
    /// What a link takes at least, by its burden.
    [[nodiscard]] std::uint64_t link(std::uint32_t burden) const { return m_burdens[burden]; }
    /// What a piece takes at least, by StockedIndex.
    [[nodiscard]] std::span<const std::uint64_t> pieces() const noexcept { return m_pieces; }
    [[nodiscard]] std::uint64_t narrow(TypeIndex type) const { return m_narrow[type]; }
    /// What a piece that is entered by this port type takes at least, by the graph's bundles of it;
    /// Nowhere: none of them is allowed. Worked out when it is first asked for.
    [[nodiscard]] std::span<const std::uint64_t> through(TypeIndex in);

    /// The fluid does not rule the piece out, and its angle is the one wanted.
    [[nodiscard]] bool allows(const Arc &arc) const noexcept
    {
        return (arc.ruinedBy & m_aim.fluidBit) == 0 &&
               (arc.angleDegrees < 0 || arc.angleDegrees == m_aim.angleDegrees);
    }

private:
    using Row = std::vector<std::uint64_t>; ///< By port type.
    void weighBurdens();
    [[nodiscard]] std::uint64_t leastAnswer(const NeedKind &kind) const;
    [[nodiscard]] Row lastLinks() const;
    [[nodiscard]] Row enteredLast() const;
    [[nodiscard]] Row entered(const Row &leaving);
    [[nodiscard]] Row leftFor(const Row &entered) const;
    void addNarrow(Row &row) const;

    const JointGraph &m_graph;
    Aim m_aim;
    RankScale m_scale;
    std::span<const std::uint64_t> m_pieces;
    Row m_burdens; ///< By burden.
    Row m_narrow;
    std::vector<Row> m_leaving;         ///< By pieces still to come.
    Row m_through;                      ///< By the graph's bundles.
    std::vector<bool> m_isThroughKnown; ///< By port type: it is worked out.
};

/// Those of one shelf, each worked out when it is first asked for.
class Outlooks {
public:
    [[nodiscard]] Outlook &of(const JointGraph &graph, Supplies &supplies, const Outlook::Aim &aim);

private:
    std::map<Outlook::Aim, std::unique_ptr<Outlook>> m_known;
};

} // namespace flarestock
