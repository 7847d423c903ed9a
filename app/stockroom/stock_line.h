// SPDX-License-Identifier: MIT
//
// Stock line: what lies somewhere of one part, lot and condition; how much of it is free, and why
// the rest is not.

#pragma once

#include "app/workshop/workshop.h"

namespace flarestock {

struct StockLine {
    const Part *part = nullptr;
    BalanceKey key;
    std::int64_t onHand = 0;                        ///< Smallest units.
    std::int64_t free = 0;                          ///< To whoever comes.
    std::map<std::string, std::int64_t> promisedTo; ///< By build.
    std::string forCar; ///< Place id of the car that alone it is for; empty: the shop's.
    std::string useBy;  ///< The last day of it or of its certificate, where that has passed.

    [[nodiscard]] std::int64_t promised() const noexcept;
    /// Why not all of it is free: "2 promised to coupe-fuel", "car-2's", "past its day 2026-10-31",
    /// "to be checked"; empty where it is.
    [[nodiscard]] std::string notFreeBecause() const;
};

/// All that lies in stock places on that day ("2026-12-12"; empty asks for no date), by part, then
/// place. `find`: every word of it stands somewhere in the part's number, description, kind, ports,
/// or the line's place or lot, in either case; empty: all.
[[nodiscard]] std::vector<StockLine> stockLines(const Workshop &workshop, std::string_view find,
                                                std::string_view day);

/// Whether every word of what is wanted stands in what is said, in either case.
[[nodiscard]] bool holdsWords(const std::string &said, std::string_view wanted);

} // namespace flarestock
