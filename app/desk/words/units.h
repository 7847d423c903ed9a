// SPDX-License-Identifier: MIT
//
// Units: in which units the desk says lengths and what a part is known for. Answers stay as they
// were given.

#pragma once

#include "model/exact/quantity.h"

#include <QLocale>
#include <QString>

#include <cstdint>

namespace flarestock {

enum class Units : std::uint8_t {
    Metric, ///< mm, bar, L/h, L
    Inch,   ///< in, psi, gph, gal, these two of the United States
};

/// What people of that country read: inches in the United States, metric everywhere else.
[[nodiscard]] Units unitsOf(const QLocale &locale);

/// Pieces as they are counted; a length as a tape of these units shows it: "5 ft 6 in",
/// "1,676.4 mm". To the nearest 1/16 in or 0.1 mm, with "≈" where that is not exact.
[[nodiscard]] QString saidAmount(const Quantity &quantity, Units units);
/// Exactly as much, as somebody would type it in these units: "3810 mm". A length that a tape of
/// inches does not show is in the unit that it is kept in.
[[nodiscard]] QString typedAmount(const Quantity &quantity, Units units);
/// The unit by which a part's price is said: "/ ft", "/ m"; empty for pieces.
[[nodiscard]] QString saidPriceUnit(Unit unit, Units units);
/// A price for one `unit` as one for saidPriceUnit().
[[nodiscard]] Rational pricePer(const Rational &price, Unit unit, Units units);

/// "3 bar", "43.5 psi"; two of them as "2–5 bar". At most one decimal.
[[nodiscard]] QString saidPressure(double kPa, Units units);
[[nodiscard]] QString saidPressures(double lowKPa, double highKPa, Units units);
/// As fine as a loss wants it: "24 mbar" below a tenth of a bar, else "1.24 bar"; "0.35 psi" below
/// ten, else "43.5 psi".
[[nodiscard]] QString saidFinePressure(double kPa, Units units);
/// "460 L/h", "122 gph": in gph whole ones, as pumps are sold.
[[nodiscard]] QString saidFlow(double litresAnHour, Units units);
/// "60 L", "15.9 gal"
[[nodiscard]] QString saidVolume(double litres, Units units);
/// "10.4 mm bore", "0.41 in bore"
[[nodiscard]] QString saidBore(double mm, Units units);

} // namespace flarestock
