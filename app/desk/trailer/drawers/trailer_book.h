// SPDX-License-Identifier: MIT
//
// Trailer book: the trailer's drawers as they stand on the day of an event: what each is to hold,
// what lies in it, what to bring from which bin and what to take out. It is made away from the
// window by the same functions as the commands' lists.
//
//   TrailerBook::of(workshop, {"2026-11-28", "winter-sprint"})->load

#pragma once

#include "app/trailer/loading.h"

namespace flarestock {

/// All of one part in one drawer.
struct DrawerLine {
    std::string number;
    const Part *part = nullptr;           ///< nullptr: a tin of what is in no catalogue.
    std::optional<LoadLine> load;         ///< Where the drawer is to hold some of it.
    std::vector<UnloadLine> out;          ///< What of it is to be taken out.
    std::int64_t lies = 0;                ///< Smallest units, whatever state they are in.
    std::optional<StockLevel> level = {}; ///< Of what nobody counts.

    [[nodiscard]] std::int64_t over() const; ///< To be taken out, smallest units.
};

struct Drawer {
    std::string id;
    std::string title;
    std::vector<DrawerLine> lines; ///< By part number.

    /// Pieces that are there of those that should be, that lack, and that are to go; of what is cut
    /// from the length each line is one.
    struct Pieces {
        std::int64_t there = 0;
        std::int64_t lack = 0;
        std::int64_t over = 0;
    };
    [[nodiscard]] Pieces pieces() const;
};

struct TrailerBook {
    std::shared_ptr<const Workshop> workshop;
    std::string today;
    std::string event; ///< As in When; empty where the season has none of that id.
    LoadAsked asked;   ///< Its day is the last of the event, or today.
    std::vector<LoadLine> load;
    std::vector<UnloadLine> unload;
    std::vector<Drawer> drawers; ///< Nearest first.

    struct When {
        std::string today;
        std::string event; ///< Its id; empty, or none of the season: as of today.
    };
    [[nodiscard]] static std::shared_ptr<const TrailerBook>
    of(const std::shared_ptr<const Workshop> &workshop, const When &when);
    [[nodiscard]] const Drawer *drawer(std::string_view id) const;
};

} // namespace flarestock
