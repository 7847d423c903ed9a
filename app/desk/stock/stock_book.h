// SPDX-License-Identifier: MIT
//
// Stock book: every part of a shop as one line of its stock, with what it is narrowed by, made once
// from a snapshot, away from the window. What stands in it are numbers and places in its own lists;
// words for the screen are made for the rows that are looked at.
//
//   const auto book = StockBook::of(workshop, "2026-11-28");
//   book->entries.at(sifted(*book, narrowing).front()).part->number;

#pragma once

#include "app/workshop/workshop.h"

#include <array>
#include <unordered_map>

namespace flarestock {

/// What stands in a list of the book, by its place in the list.
using Listed = std::vector<std::uint16_t>;

struct StockEntry {
    const Part *part = nullptr; ///< Nothing for a tin of odds, which is no part.
    std::string number;         ///< Part number, tag of a made-up hose, name of a tin.
    // Smallest units.
    std::int64_t here = 0;     ///< On shelves and in bins.
    std::int64_t trailer = 0;  ///< In its drawers.
    std::int64_t free = 0;     ///< To whoever comes.
    std::int64_t promised = 0; ///< To builds.
    std::int64_t kept = 0;     ///< The minimums of its places.
    std::int64_t onOrder = 0;
    std::string due;      ///< The first day on which some of it comes; empty where nobody has said.
    bool isAway = false;  ///< Some of it is lent or out for repair …
    bool inCar = false;   ///< … or in a car.
    bool isBelow = false; ///< Some place has less than its minimum, or it is low.
    bool isPastDay = false;           ///< Of some lot the day is over.
    std::array<bool, 4> conditions{}; ///< By PieceCondition: some of it in stock is so.
    std::optional<StockLevel> level;  ///< Of what nobody counts: the best of its places.
    Listed places;                    ///< Where it lies, is seen or kept, the nearest first.
    std::uint16_t kind = 0;
    Listed dashes;
    Listed threads;
    Listed microns;
    std::string sought; ///< All that it is found by, folded, one blank before each word.

    /// Whether the shop has, keeps or expects any of it.
    [[nodiscard]] bool isOurs() const noexcept;
    [[nodiscard]] bool isCounted() const noexcept { return part && !level; }
};

struct StockBook {
    std::shared_ptr<const Workshop> workshop;
    std::string day; ///< As of which: "2026-11-28".
    /// The catalogue's parts in their order, then made-up hoses, then tins.
    std::vector<StockEntry> entries;
    std::size_t below = 0;           ///< So many of them have isBelow.
    std::vector<std::string> places; ///< Ids of stock places, nearest first.
    std::vector<std::string> kinds;
    std::vector<std::string> dashes; ///< "-6"
    std::vector<std::string> threads;
    std::vector<std::string> microns; ///< "10"
    std::unordered_map<std::string, std::uint32_t>
        numbers; ///< The place of each among the entries.

    [[nodiscard]] static std::shared_ptr<const StockBook>
    of(const std::shared_ptr<const Workshop> &workshop, const std::string &day);
    /// Nothing where there is none.
    [[nodiscard]] const StockEntry *find(const std::string &number) const;
};

} // namespace flarestock
