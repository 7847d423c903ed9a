// SPDX-License-Identifier: MIT
//
// Interval: when the shop washes, looks at or replaces what is in its cars: every so many runs,
// hours, events or months, whichever comes first; how often an element may be washed; how old a
// hose or a fluid may be.
//
// A row may say a kind, an element's medium, a part, a position, a car. Of those that fit a piece
// for one kind of work the one that says most about it counts: a position before a part, a part
// before a car, a car before a medium, a medium before a kind.

#pragma once

#include "model/parts/kind.h"
#include "model/servicing/car_life.h"

namespace flarestock {

/// What an interval asks of a piece in a car.
struct PieceKind {
    std::optional<Kind> kind; ///< Nothing: of no part of the catalogue.
    std::string medium;       ///< Of an element, or of a filter whose element is a part of it.
    bool washable = false;    ///< Its maker lets it be washed, or opened and cleaned.
    bool isSealed = false;    ///< It cannot be opened at all.
};

struct Interval {
    std::optional<Kind> kind;
    std::string medium;
    std::string part;
    std::string position; ///< A position, or its end: "fluid" is also "coupe-brakes/fluid".
    std::string car;
    Work todo = Work::Replaced; ///< Washed, Inspected or Replaced.
    std::optional<int> runs;
    std::optional<Decimal> hours;
    std::optional<int> events;
    std::optional<int> months; ///< Since that was done last.
    std::optional<int> age;    ///< Months since it was made, cured or its bottle opened.
    std::optional<int> washes; ///< So often it may be washed; then it is spent.
    int warnPercent = 20;      ///< So much of an interval is left when it is told ahead.
    int warnDays = 30;
    std::string source;

    [[nodiscard]] bool fits(const FittedPiece &piece, const PieceKind &kindOf,
                            std::string_view ofCar) const;
    /// The more it says about a piece the higher.
    [[nodiscard]] int rank() const noexcept;
};
using Intervals = std::vector<Interval>;

/// What counts for a piece: for each kind of work the row that says most; of two alike the first.
[[nodiscard]] std::vector<const Interval *> intervalsFor(const Intervals &all,
                                                         const FittedPiece &piece,
                                                         const PieceKind &kindOf,
                                                         std::string_view car);

/// Whether something of this medium is never washed, whoever says it may: paper and glass fibre
/// tear and let go of what they hold. Common practice, no source.
[[nodiscard]] bool isNeverWashed(std::string_view medium) noexcept;
/// Why a piece may not be washed, as a sentence; empty where it may.
[[nodiscard]] std::string notWashedBecause(const PieceKind &kindOf);
/// Why it is spent: damaged, or washed as often as it may be; empty where it is not.
[[nodiscard]] std::string spentBecause(const FittedPiece &piece,
                                       const std::vector<const Interval *> &intervals);

} // namespace flarestock
