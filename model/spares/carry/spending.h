// SPDX-License-Identifier: MIT
//
// Spending: how the shop uses up a part, as its spares.csv says; and what was used at events before
// there was a journal, as its used.csv says.
//
// It is the shop's word, not the maker's, and so no column of the catalogue: the same element is
// washed by one shop and thrown away by another.

#pragma once

#include "model/exact/decimal.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace flarestock {

/// By chance, one at a time; by an interval; several at once by a crash.
enum class Spending : std::uint8_t { Chance, Wear, Crash };
[[nodiscard]] std::string_view text(Spending spending) noexcept; ///< "chance", "wear", "crash"

/// What running is counted in.
enum class RunningIn : std::uint8_t { Events, Runs, Hours };
[[nodiscard]] std::string_view text(RunningIn measure) noexcept; ///< "event", "run", "hour"
/// One of them or several: "hour", "hours".
[[nodiscard]] std::optional<RunningIn> parseRunningIn(std::string_view text) noexcept;

struct PartSpending {
    std::string part;
    Spending by = Spending::Chance;
    std::map<std::string, std::int64_t> fitted; ///< By car: so many of it; empty: nobody says.
    std::optional<Decimal> rate;  ///< By chance: uses of one piece per `in`; a crash: of a car.
    std::optional<Decimal> lasts; ///< Of what wears out: more than zero, in `in`.
    RunningIn in = RunningIn::Events;
    std::int64_t perCrash = 1; ///< Pieces that a crash takes at once.
    std::int64_t sets = 1;     ///< Where nobody knows how often: sets for so many crashes.
};

/// An event that is written of is taken to be written of whole.
struct PastUse {
    std::string event;
    std::string part;
    Decimal pieces; ///< Zero or more.
};

} // namespace flarestock
