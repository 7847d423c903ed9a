// SPDX-License-Identifier: MIT
//
// Due: what of a car has to be done, by the shop's intervals: now, before which event, and which
// events a piece stops that has to be replaced before they end.
//
// How far a car will run at an event that is to come the season says; where it does not, it is
// taken as what the car ran at an event so far.

#pragma once

#include "model/servicing/interval.h"

namespace flarestock {

/// An event of the season that a car is at.
struct ComingEvent {
    std::string id;
    std::string title;
    std::string firstDay;
    std::string lastDay;
    std::optional<Decimal> runs = {}; ///< That the car is expected to run there.
    std::optional<Decimal> hours = {};
};

enum class DueStanding : std::uint8_t {
    Fine,
    Soon,   ///< Within what is told ahead.
    Before, ///< To be done before an event, or the event is stopped.
    Now,    ///< An interval is reached.
    Over,   ///< An interval is passed, a day is over, it is damaged.
};
[[nodiscard]] std::string_view text(DueStanding standing) noexcept;

/// One kind of work at one position.
struct DueWork {
    const FittedPiece *piece = nullptr;
    const Interval *interval = nullptr; ///< nullptr: by its own day, or damaged.
    Work todo = Work::Replaced;         ///< What is to be done: of a spent piece it is replaced.
    DueStanding standing = DueStanding::Fine;
    std::optional<std::int64_t> runsLeft; ///< Below zero where it is passed.
    std::optional<Decimal> hoursLeft;
    std::optional<std::int64_t> eventsLeft;
    std::string lastDay; ///< Until which it may be used, or by which the work is to be done; empty
                         ///< where no day counts.
    std::string before;  ///< The first event that it has to be done before.
    std::vector<std::string> stops; ///< The events that it must not be used at, in their order:
                                    ///< what is past its day, or damaged; what was only not washed
                                    ///< or looked at in time stops none.
    std::vector<std::string> why;   ///< "12 runs since washed, every 10"
};

struct DueAsked {
    const CarLife *life = nullptr;
    std::vector<ComingEvent> events; ///< Those that end today or later, by their first day.
    std::string today;
    std::string by = {}; ///< A day on which everything has to be in date; empty: none.
};

/// What counts for a piece, what is worst first. `intervals` are intervalsFor() it.
[[nodiscard]] std::vector<DueWork> dueOf(const FittedPiece &piece, const PieceKind &kindOf,
                                         const std::vector<const Interval *> &intervals,
                                         const DueAsked &asked);
/// The last day on which a piece may be used by what is known of it and an interval (nullptr: of it
/// alone); empty where no day counts.
[[nodiscard]] std::string lastDayOf(const FittedPiece &piece, const Interval *interval);

} // namespace flarestock
