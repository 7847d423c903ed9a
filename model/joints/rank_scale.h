// SPDX-License-Identifier: MIT
//
// Rank scale: a way's rank as one number, for a preference, so that a search compares and adds what
// ways take in single steps. It only ever bounds: what has the same number may still differ, and is
// compared exactly (compare() in way.h).
//
// Each criterion has its own bits, the first one the topmost, as many as a way of WayPiecesMost
// pieces can fill. Costs have the rest, and are cut off where they would not fit. Where money is
// not the last criterion, what comes after it is left out.

#pragma once

#include "model/joints/way.h"

namespace flarestock {

/// Longest way, whatever is asked for.
inline constexpr std::size_t WayPiecesMost = 8;

class RankScale {
public:
    explicit RankScale(Preference preference) noexcept : m_preference(preference) {}

    /// Rising: a rank that does not stand behind another has no larger number.
    [[nodiscard]] std::uint64_t whole(const WayRank &rank) const noexcept { return weigh(rank, 0); }
    /// For adding up: of what a way takes so far, and of each single thing that it takes after it
    /// (at most 64). Their sum is at most whole() of the sum.
    [[nodiscard]] std::uint64_t soFar(const WayRank &rank) const noexcept { return weigh(rank, 1); }
    [[nodiscard]] std::uint64_t single(const WayRank &rank) const noexcept
    {
        return weigh(rank, 7);
    }

private:
    [[nodiscard]] std::uint64_t weigh(const WayRank &rank, unsigned spare) const noexcept;

    Preference m_preference;
};

} // namespace flarestock
