// SPDX-License-Identifier: MIT
//
// Lot facts: what is known of a lot, a serial number or a made-up hose beyond where it lies: whose
// it is, until when it may be used, what it is made of. The newest record of a lot says it all.

#pragma once

#include "model/journal/ledger.h"

namespace flarestock {

struct LotFacts {
    MovementId id;
    LotKey lot;
    std::string owner;     ///< Empty: the shop's; else the car (place id) that alone it is for.
    std::string useBy;     ///< "2027-03-31", the last day; empty where it does not age.
    std::string certified; ///< The last day of its certificate; empty where it has none.
    std::string note;
    std::string who;
    std::int64_t at = 0;

    [[nodiscard]] Record asRecord() const;
    /// Problem: not one.
    [[nodiscard]] static Result<LotFacts> read(const Record &record);

    /// Whether it may go into a car of `owner` (empty: the shop's) on that day, "2026-12-12"; an
    /// empty day asks for no date.
    [[nodiscard]] bool serves(std::string_view forOwner, std::string_view day) const;
};
using LotBook = std::map<LotKey, LotFacts>;

/// The lots that such a build may not use.
[[nodiscard]] std::set<LotKey> barredLots(const LotBook &lots, std::string_view owner,
                                          std::string_view day);

/// A build, the car that it is for, and the day when it is due.
struct Due {
    std::string build;
    std::string car;
    std::string day; ///< "2026-12-12"; may be empty.
};
/// The lots that each of them may not use; one without a name is of no car and due on no day.
[[nodiscard]] Bars barsOf(const LotBook &lots, const std::vector<Due> &builds);

/// The lot that a piece comes from: what stands before the first stroke of "4417/2".
[[nodiscard]] std::string_view rootOf(std::string_view lot) noexcept;
/// The next name for a piece of it that no balance and no lot has: "4417/1", "4417/2" …
[[nodiscard]] std::string nextPieceOf(std::string_view part, std::string_view lot,
                                      const std::set<LotKey> &taken);

/// Whether the text is a day of the calendar, "2026-02-28".
[[nodiscard]] bool isDay(std::string_view text) noexcept;

} // namespace flarestock
