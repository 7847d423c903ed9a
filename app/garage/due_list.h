// SPDX-License-Identifier: MIT
//
// Due list: what has to be done to the cars, with the parts that it takes and what of them is free.

#pragma once

#include "app/garage/garage.h"

#include <memory>

namespace flarestock {

struct DueListAsked {
    std::string car;   ///< Empty: all.
    std::string event; ///< Only up to this event of the season; empty: all of it.
    std::string by;    ///< Only up to this day; empty: none.
    std::string today; ///< "2026-11-28"
    bool all = false;  ///< Also what is fine.
};

/// A part that some work takes.
struct DuePart {
    const Part *part = nullptr;
    std::int64_t need = 0; ///< Smallest units.
    std::int64_t free = 0; ///< To whoever comes, less what stands above in the list takes.

    [[nodiscard]] std::int64_t shortBy() const noexcept { return need > free ? need - free : 0; }
};

struct DueLine {
    std::string car;
    DueWork work;
    std::string said;           ///< The position, as people say it.
    std::vector<DuePart> parts; ///< Of what is replaced for several reasons: at the first of them.
    std::string by;             ///< The day on which it has to be done; empty where none is known.

    /// Something is over, or has to be done before an event or day that was asked about.
    [[nodiscard]] bool isDue() const noexcept { return work.standing >= DueStanding::Before; }
};

/// What is worst first; of what is alike, what has to be done first. Problem: no such car or event.
[[nodiscard]] Result<std::vector<DueLine>> dueList(const Garage &garage, const DueListAsked &asked);

/// All that is due to the cars of a shop, with the cars that it is of: the lines point into them.
struct DueInShop {
    std::shared_ptr<const Garage> garage;
    std::vector<DueLine> lines;
};
/// Problem: a build that cannot be worked out; a document or record that does not read.
[[nodiscard]] Result<DueInShop> dueInShop(const Workshop &workshop, const ShopFile &file,
                                          const std::string &today);

} // namespace flarestock
