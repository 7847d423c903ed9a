// SPDX-License-Identifier: MIT
//
// Quantity: so much of a part, in the unit that the part is counted in.
//
// Conversion between lengths is by exact fractions (1 in = 127/5 mm, 1 ft = 12 in, 16 CFR 500.19),
// never by a rounded factor. Stock is kept in whole smallest units: pieces, or lengths of 125 nm,
// in which 1/64 in and 1 µm are both whole.
//
//   Quantity::parse("5 ft 6 in").value().exactlyIn(Unit::Inch).value().text();   // "66 in"

#pragma once

#include "model/exact/decimal.h"
#include "model/exact/rational.h"

namespace flarestock {

enum class Unit : std::uint8_t { Each, Inch, Foot, Metre, Millimetre, Pack, Coil };

[[nodiscard]] std::string_view
text(Unit unit) noexcept; ///< "each" "in" "ft" "m" "mm" "pack" "coil"
[[nodiscard]] Result<Unit> parseUnit(std::string_view text);
[[nodiscard]] bool isLength(Unit unit) noexcept;

struct Quantity {
    Decimal amount;
    Unit unit = Unit::Each;

    /// "3", "3 each", "66 in", "6 1/2 in", "5.5 ft", "5 ft 6 in" (summed in inches), "2 m".
    /// A bare number means each. Problem: anything else, or a fraction such as 1/3 that never ends.
    [[nodiscard]] static Result<Quantity> parse(std::string_view text);

    /// As a fraction of another unit of the same kind. Problem: lengths and pieces do not convert,
    /// nor a pack or coil, whose contents belong to a part (see opened()).
    [[nodiscard]] Result<Rational> in(Unit unit) const;
    /// The same where it is a decimal of at most 12 places. Problem: as above, or it never ends.
    [[nodiscard]] Result<Quantity> exactlyIn(Unit unit) const;
    /// The same where it comes out even; otherwise to the nearest 1/64 in, or 1/1600 ft: at most
    /// 0.2 mm away. Problem: another kind of unit.
    [[nodiscard]] Result<Quantity> nearestIn(Unit unit) const;
    /// The whole number of smallest units: pieces, or lengths of 125 nm.
    /// Problem: not whole, beyond int64, or a pack or coil.
    [[nodiscard]] Result<std::int64_t> smallest() const;
    /// The inverse: so many smallest units, said in `unit` (exact: asserted to end).
    [[nodiscard]] static Quantity ofSmallest(std::int64_t smallest, Unit unit);

    [[nodiscard]] std::string text() const;   ///< "66 in", "3 each"
    [[nodiscard]] std::string spoken() const; ///< As said at the bench: "5 ft 6 1/2 in", "3"

    friend bool operator==(const Quantity &, const Quantity &) = default;
};

/// What one pack or coil holds: a coil of 20 ft, a pack of 10.
struct Packing {
    Unit unit = Unit::Pack; ///< Pack or Coil.
    Quantity holds;         ///< In a unit that is not a pack or coil; more than zero (asserted).

    /// So many packs or coils as their contents.
    [[nodiscard]] Quantity opened(const Decimal &packs) const;
    /// How many whole ones hold at least `need` (same kind of unit as `holds`).
    [[nodiscard]] Result<std::int64_t> wholePacksUp(const Quantity &need) const;
};

/// The length (a number of `unit`) as a tape shows it: up to the next 1/16 in, for inch and foot,
/// which both come back in inches, or to the next mm. Other units as they are.
[[nodiscard]] Quantity upToTapeMark(const Rational &length, Unit unit);

} // namespace flarestock
