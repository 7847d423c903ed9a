// SPDX-License-Identifier: MIT
//
// Reckoning: what a path takes, piece by piece and need by need, counted against what is free. The
// search keeps a Tally at each step of its path and copies it to the next one, so that nothing is
// counted twice over.

#pragma once

#include "model/joints/graph.h"

#include <array>

namespace flarestock {

/// What a path takes so far. It is copied at each step, and so holds no memory of its own.
struct Tally {
    struct Use {
        StockedIndex index;
        int count;
    };
    std::array<Use, 48> uses; ///< The first `size` of them; the others hold nothing.
    std::size_t size = 0;
    WayRank rank;
    std::int64_t uncertainMicro = 0; ///< Part of costMicro that more of the same could lower.
    bool sealed = false;             ///< Sealant is counted once a way.

    Tally() = default;
    Tally(const Tally &other) noexcept { *this = other; }
    Tally &operator=(const Tally &other) noexcept;

    /// No path that goes on from here ranks before it.
    [[nodiscard]] WayRank bound() const noexcept;
};

/// An aid that a link needs, and the part that answers it; nothing where the catalogue has none.
struct Answer {
    const Need *need = nullptr;
    std::optional<StockedIndex> part;
};

class Reckoning {
public:
    /// Both outlive it.
    Reckoning(const JointGraph &graph, Supplies &supplies, std::optional<Fluid> fluid);

    void takePiece(Tally &tally, StockedIndex index) { take(tally, index, 1); }
    /// The caution of a link, and its needs. Sleeves are left out (a tube nut's own list has them),
    /// sealant after the first. `answers`, where given, gets the rest.
    void takeLink(Tally &tally, std::uint32_t link, std::vector<Answer> *answers = nullptr);

    /// The part that answers a need (a place in the LinkBook's needs): of those that the fluid
    /// allows the one that takes least, by what is free at the beginning. Nothing: there is none.
    [[nodiscard]] std::optional<StockedIndex> answer(std::uint32_t need);

    [[nodiscard]] std::uint16_t fluidBit() const noexcept { return m_fluidBit; }

private:
    struct Choice {
        bool made = false;
        std::optional<StockedIndex> part;
    };
    void take(Tally &tally, StockedIndex index, int count);

    const JointGraph &m_graph;
    Supplies &m_supplies;
    std::uint16_t m_fluidBit;
    std::vector<Choice> m_choices; ///< By place in the LinkBook's needs.
};

} // namespace flarestock
