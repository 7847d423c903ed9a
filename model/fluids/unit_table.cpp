// SPDX-License-Identifier: MIT
//
// Exact by definition, unless it says otherwise: inch 25.4 mm, pound 0.45359237 kg, US gallon
// 231 in³, standard gravity 9.80665 m/s² (NIST Special Publication 811, from memory; compared by
// the tests with GNU units). psi = lbf/in², hp = 550 ft·lbf/s, PS = 75 kgf·m/s. inHg is the
// conventional inch of mercury at 0 °C, 3386.38864 Pa, to the digits that GNU units gives; water
// columns are of 1000 kg/m³ under standard gravity. Imperial gallon 4.54609 L, slug 1 lbf·s²/ft,
// a barrel of oil 42 US gallons, standard atmosphere 101325 Pa.

#include "model/fluids/unit_table.h"

#include <array>
#include <numbers>

namespace flarestock {

namespace {

using enum Dimension;

constexpr double Inch = 0.0254;
constexpr double Pound = 0.45359237;
constexpr double StandardGravity = 9.80665;
constexpr double UsGallon = 231 * Inch * Inch * Inch;
constexpr double PoundForce = Pound * StandardGravity;
constexpr double Foot = 12 * Inch;
constexpr double CubicFoot = Foot * Foot * Foot;
constexpr double Slug = PoundForce / Foot;

constexpr std::array Units{
    MeasureUnit{"m", Length},
    MeasureUnit{"cm", Length, 1, 100},
    MeasureUnit{"mm", Length, 1, 1000},
    MeasureUnit{"um", Length, 1, 1e6},
    MeasureUnit{"in", Length, 254, 10000},
    MeasureUnit{"inch", Length, 254, 10000},
    MeasureUnit{"inches", Length, 254, 10000},
    MeasureUnit{"\"", Length, 254, 10000},
    MeasureUnit{"ft", Length, 3048, 10000},
    MeasureUnit{"foot", Length, 3048, 10000},
    MeasureUnit{"feet", Length, 3048, 10000},
    MeasureUnit{"'", Length, 3048, 10000},
    MeasureUnit{"yd", Length, 9144, 10000},
    MeasureUnit{"mil", Length, 254, 1e7},
    MeasureUnit{"km", Length, 1000},
    MeasureUnit{"mi", Length, 1609344, 1000},

    MeasureUnit{"m2", Area},
    MeasureUnit{"cm2", Area, 1, 1e4},
    MeasureUnit{"mm2", Area, 1, 1e6},
    MeasureUnit{"in2", Area, 64516, 1e8},
    MeasureUnit{"ft2", Area, Foot *Foot},

    MeasureUnit{"m3", Volume},
    MeasureUnit{"L", Volume, 1, 1000},
    MeasureUnit{"mL", Volume, 1, 1e6},
    MeasureUnit{"cc", Volume, 1, 1e6},
    MeasureUnit{"gal", Volume, UsGallon},
    MeasureUnit{"qt", Volume, UsGallon, 4},
    MeasureUnit{"in3", Volume, Inch *Inch *Inch},
    MeasureUnit{"ft3", Volume, CubicFoot},
    MeasureUnit{"impgal", Volume, 4.54609, 1000},
    MeasureUnit{"bbl", Volume, 42 * UsGallon},

    MeasureUnit{"m3/s", VolumeFlow},
    MeasureUnit{"m3/h", VolumeFlow, 1, 3600},
    MeasureUnit{"L/h", VolumeFlow, 1, 3.6e6},
    MeasureUnit{"lph", VolumeFlow, 1, 3.6e6},
    MeasureUnit{"L/min", VolumeFlow, 1, 6e4},
    MeasureUnit{"lpm", VolumeFlow, 1, 6e4},
    MeasureUnit{"L/s", VolumeFlow, 1, 1000},
    MeasureUnit{"cc/min", VolumeFlow, 1, 6e7},
    MeasureUnit{"gph", VolumeFlow, UsGallon, 3600},
    MeasureUnit{"gal/h", VolumeFlow, UsGallon, 3600},
    MeasureUnit{"gpm", VolumeFlow, UsGallon, 60},
    MeasureUnit{"gal/min", VolumeFlow, UsGallon, 60},
    MeasureUnit{"gal/s", VolumeFlow, UsGallon},
    MeasureUnit{"impgal/min", VolumeFlow, 4.54609, 60000},
    MeasureUnit{"impgal/h", VolumeFlow, 4.54609, 3.6e6},
    MeasureUnit{"ft3/s", VolumeFlow, CubicFoot},
    MeasureUnit{"cfs", VolumeFlow, CubicFoot},
    MeasureUnit{"ft3/min", VolumeFlow, CubicFoot, 60},
    MeasureUnit{"cfm", VolumeFlow, CubicFoot, 60},
    MeasureUnit{"ft3/h", VolumeFlow, CubicFoot, 3600},
    MeasureUnit{"in3/s", VolumeFlow, Inch *Inch *Inch},
    MeasureUnit{"in3/min", VolumeFlow, Inch *Inch *Inch, 60},
    MeasureUnit{"m3/min", VolumeFlow, 1, 60},
    MeasureUnit{"mL/min", VolumeFlow, 1, 6e7},
    MeasureUnit{"mL/s", VolumeFlow, 1, 1e6},
    MeasureUnit{"bbl/h", VolumeFlow, 42 * UsGallon, 3600},
    MeasureUnit{"bbl/d", VolumeFlow, 42 * UsGallon, 86400},
    MeasureUnit{"bbl/day", VolumeFlow, 42 * UsGallon, 86400},

    MeasureUnit{"kg/s", MassFlow},
    MeasureUnit{"kg/h", MassFlow, 1, 3600},
    MeasureUnit{"g/s", MassFlow, 1, 1000},
    MeasureUnit{"lb/h", MassFlow, Pound, 3600},
    MeasureUnit{"lb/min", MassFlow, Pound, 60},
    MeasureUnit{"kg/min", MassFlow, 1, 60},
    MeasureUnit{"g/min", MassFlow, 1, 6e4},
    MeasureUnit{"t/h", MassFlow, 1000, 3600},
    MeasureUnit{"lb/s", MassFlow, Pound},
    MeasureUnit{"slug/s", MassFlow, Slug},

    MeasureUnit{"Pa", Pressure},
    MeasureUnit{"kPa", Pressure, 1000},
    MeasureUnit{"MPa", Pressure, 1e6},
    MeasureUnit{"bar", Pressure, 1e5},
    MeasureUnit{"mbar", Pressure, 100},
    MeasureUnit{"psi", Pressure, PoundForce, Inch *Inch},
    MeasureUnit{"inHg", Pressure, 3386.38864034},
    MeasureUnit{"ksi", Pressure, 1000 * PoundForce, Inch *Inch},
    MeasureUnit{"psf", Pressure, PoundForce, Foot *Foot},
    MeasureUnit{"lbf/in2", Pressure, PoundForce, Inch *Inch},
    MeasureUnit{"lbf/ft2", Pressure, PoundForce, Foot *Foot},
    MeasureUnit{"atm", Pressure, 101325},
    MeasureUnit{"mmHg", Pressure, 133.322387415},
    MeasureUnit{"Torr", Pressure, 101325, 760},
    MeasureUnit{"N/m2", Pressure},
    MeasureUnit{"kgf/cm2", Pressure, StandardGravity, 1e-4},
    MeasureUnit{"mH2O", Pressure, 1000 * StandardGravity},
    MeasureUnit{"inH2O", Pressure, 1000 * StandardGravity *Inch},
    MeasureUnit{"ftH2O", Pressure, 1000 * StandardGravity *Foot},

    MeasureUnit{"W", Power},
    MeasureUnit{"kW", Power, 1000},
    MeasureUnit{"hp", Power, 550 * 12 * Inch *PoundForce},
    MeasureUnit{"PS", Power, 75 * StandardGravity},
    MeasureUnit{"ft.lbf/s", Power, Foot *PoundForce},

    MeasureUnit{"kg/m3", Density},
    MeasureUnit{"g/cm3", Density, 1000},
    MeasureUnit{"kg/L", Density, 1000},
    MeasureUnit{"g/mL", Density, 1000},
    MeasureUnit{"lb/gal", Density, Pound, UsGallon},
    MeasureUnit{"g/L", Density},
    MeasureUnit{"g/cc", Density, 1000},
    MeasureUnit{"lb/ft3", Density, Pound, CubicFoot},
    MeasureUnit{"lb/in3", Density, Pound, Inch *Inch *Inch},
    MeasureUnit{"slug/ft3", Density, Slug, CubicFoot},

    MeasureUnit{"Pa.s", DynamicViscosity},
    MeasureUnit{"mPa.s", DynamicViscosity, 1, 1000},
    MeasureUnit{"cP", DynamicViscosity, 1, 1000},
    MeasureUnit{"P", DynamicViscosity, 1, 10},
    MeasureUnit{"N.s/m2", DynamicViscosity},
    MeasureUnit{"kg/m.s", DynamicViscosity},
    MeasureUnit{"kg/(m.s)", DynamicViscosity},
    MeasureUnit{"lb/ft.s", DynamicViscosity, Pound, Foot},
    MeasureUnit{"lb/(ft.s)", DynamicViscosity, Pound, Foot},
    MeasureUnit{"lb/ft.h", DynamicViscosity, Pound, 3600 * Foot},
    MeasureUnit{"lb/(ft.h)", DynamicViscosity, Pound, 3600 * Foot},
    MeasureUnit{"lbf.s/ft2", DynamicViscosity, PoundForce, Foot *Foot},
    MeasureUnit{"lb.s/ft2", DynamicViscosity, PoundForce, Foot *Foot}, // So textbooks write it.
    MeasureUnit{"lbf.s/in2", DynamicViscosity, PoundForce, Inch *Inch},
    MeasureUnit{"slug/ft.s", DynamicViscosity, Slug, Foot},
    MeasureUnit{"slug/(ft.s)", DynamicViscosity, Slug, Foot},

    MeasureUnit{"m2/s", KinematicViscosity},
    MeasureUnit{"mm2/s", KinematicViscosity, 1, 1e6},
    MeasureUnit{"cSt", KinematicViscosity, 1, 1e6},
    MeasureUnit{"St", KinematicViscosity, 1, 1e4},
    MeasureUnit{"cm2/s", KinematicViscosity, 1, 1e4},
    MeasureUnit{"ft2/s", KinematicViscosity, Foot *Foot},
    MeasureUnit{"in2/s", KinematicViscosity, Inch *Inch},

    MeasureUnit{"K", Temperature},
    MeasureUnit{"C", Temperature, 1, 1, 273.15},
    MeasureUnit{"degC", Temperature, 1, 1, 273.15},
    MeasureUnit{"F", Temperature, 5, 9, 459.67 * 5 / 9},
    MeasureUnit{"degF", Temperature, 5, 9, 459.67 * 5 / 9},
    MeasureUnit{"degR", Temperature, 5, 9},

    MeasureUnit{"rad", Angle},
    MeasureUnit{"deg", Angle, std::numbers::pi, 180},

    MeasureUnit{"tpi", Pitch, Inch, 1, 0, true},

    MeasureUnit{"V", Voltage},
    MeasureUnit{"mV", Voltage, 1, 1000},
    MeasureUnit{"A", Current},
    MeasureUnit{"mA", Current, 1, 1000},

    MeasureUnit{"m/s", Velocity},
    MeasureUnit{"ft/s", Velocity, 3048, 10000},
    MeasureUnit{"ft/min", Velocity, 3048, 600000},
    MeasureUnit{"cm/s", Velocity, 1, 100},
    MeasureUnit{"km/h", Velocity, 1, 3.6},
    MeasureUnit{"mph", Velocity, 1609344, 3.6e6},
    MeasureUnit{"m/s2", Acceleration},
    MeasureUnit{"ft/s2", Acceleration, Foot},
    MeasureUnit{"g", Acceleration, StandardGravity},

    MeasureUnit{"min", Time, 60},
    MeasureUnit{"s", Time},
    MeasureUnit{"h", Time, 3600},
};

/// Spellings brought to the ones of the table: superscripts, middle dot, micro, degree sign.
std::string plainSpelling(std::string_view word)
{
    struct Spelling {
        std::string_view written;
        std::string_view plain;
    };
    static constexpr std::array Spellings{
        Spelling{"\u00B2", "2"}, Spelling{"\u00B3", "3"},   Spelling{"\u00B5", "u"},
        Spelling{"\u03BC", "u"}, Spelling{"\u00B0", "deg"}, Spelling{"\u00B7", "."},
        Spelling{"\u22C5", "."}, Spelling{"*", "."},        Spelling{"^", ""},
    };
    std::string result(word);
    for (const auto &[written, plain] : Spellings) {
        for (auto at = result.find(written); at != std::string::npos; at = result.find(written, at))
            result.replace(at, written.size(), plain);
    }
    return result;
}

char lowered(char letter)
{
    return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
}

bool sameButCase(std::string_view left, std::string_view right)
{
    if (left.size() != right.size() || (lowered(left[0]) == 'm' && left[0] != right[0]))
        return false;
    for (std::size_t at = 0; at < left.size(); ++at) {
        if (lowered(left[at]) != lowered(right[at]))
            return false;
    }
    return true;
}

} // namespace

std::optional<MeasureUnit> unitOf(std::string_view word)
{
    const std::string plain = plainSpelling(word);
    if (plain.empty())
        return std::nullopt;
    for (const MeasureUnit &unit : Units) {
        if (unit.word == plain)
            return unit;
    }
    for (const MeasureUnit &unit : Units) {
        if (sameButCase(unit.word, plain))
            return unit;
    }
    return std::nullopt;
}

std::string_view examplesOf(Dimension dimension) noexcept
{
    switch (dimension) {
    case Count:
        return "3";
    case Length:
        return "8.71 mm, 0.5 in or 5 ft 6 in";
    case Area:
        return "50 mm2 or 0.08 in2";
    case Volume:
        return "45 L or 12 gal";
    case VolumeFlow:
        return "255 L/h or 67 gph";
    case MassFlow:
        return "136 kg/h or 300 lb/h";
    case Pressure:
        return "3 bar or 43.5 psi";
    case Power:
        return "335 kW or 450 hp";
    case Density:
        return "745 kg/m3 or 6.2 lb/gal";
    case DynamicViscosity:
        return "0.41 mPa.s or 0.41 cP";
    case KinematicViscosity:
        return "0.55 mm2/s or 0.55 cSt";
    case Temperature:
        return "20 C or 68 F";
    case Angle:
        return "90 deg";
    case Pitch:
        return "14 tpi or 1.5 mm";
    case Voltage:
        return "13.5 V";
    case Current:
        return "7 A";
    case Velocity:
        return "3 m/s or 10 ft/s";
    case Acceleration:
        return "1.5 g or 15 m/s2";
    case Time:
        return "10 min or 30 s";
    }
    return {};
}

} // namespace flarestock
