// SPDX-License-Identifier: MIT
//
// Units: in which units the desk says what a part is known for. Amounts of the bill stay in the
// unit in which the part is bought and cut, and answers as they were given.

#pragma once

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

/// "3 bar", "43.5 psi"; two of them as "2–5 bar". At most one decimal.
[[nodiscard]] QString saidPressure(double kPa, Units units);
[[nodiscard]] QString saidPressures(double lowKPa, double highKPa, Units units);
/// "460 L/h", "122 gph": in gph whole ones, as pumps are sold.
[[nodiscard]] QString saidFlow(double litresAnHour, Units units);
/// "60 L", "15.9 gal"
[[nodiscard]] QString saidVolume(double litres, Units units);
/// "10.4 mm bore", "0.41 in bore"
[[nodiscard]] QString saidBore(double mm, Units units);

} // namespace flarestock
