// SPDX-License-Identifier: MIT

#include "model/fluids/liquids/vapour_pressure.h"

#include "model/fluids/bounds.h"
#include "model/fluids/crossing.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <span>
#include <string>

namespace flarestock {

namespace {

constexpr double PsiPa = 6894.757293168361;
constexpr double ZeroCelsiusK = 273.15;
constexpr double ReidTemperatureC = (100 - 32) / 1.8; ///< 100 °F
constexpr double ColdestC = (0 - 32) / 1.8;           ///< 0 °F
constexpr double HottestC = 60;                       ///< 140 °F

struct Point {
    double temperatureC;
    double pascal;
};

/// Published: 1.87 psi at 20 °C and 12.3 psi at 60 °C; normal boiling point 64.7 °C.
constexpr std::array Methanol{Point{20, 1.87 * PsiPa}, Point{60, 12.3 * PsiPa},
                              Point{64.7, 101325}};
/// Handbook correlations: 0.86 psi at 20 °C, 6.82 psi at 60 °C.
constexpr std::array Ethanol{Point{20, 0.86 * PsiPa}, Point{60, 6.82 * PsiPa}};

/// ln p linear over 1/T, on the two points beside the temperature.
double byClausiusClapeyron(std::span<const Point> points, double temperatureC)
{
    std::size_t hot = 1;
    while (hot + 1 < points.size() && points[hot].temperatureC < temperatureC)
        ++hot;
    const auto x = [](double celsius) { return 1 / (celsius + ZeroCelsiusK); };
    const Point &left = points[hot - 1];
    const Point &right = points[hot];
    if (temperatureC == right.temperatureC)
        return right.pascal; // Exactly, so that methanol boils at one atmosphere where it does.
    const double part =
        (x(temperatureC) - x(left.temperatureC)) / (x(right.temperatureC) - x(left.temperatureC));
    return std::exp(std::lerp(std::log(left.pascal), std::log(right.pascal), part));
}

double ofReid(double reidPa, double temperatureC)
{
    const auto [a, bRankine] = reidConstants(reidPa);
    return std::exp(a - bRankine / ((temperatureC + ZeroCelsiusK) * 1.8)) * PsiPa;
}

Result<VapourPressure> gasolineLike(Fluid fuel, double temperatureC, std::optional<double> reidPa)
{
    const auto name = text(fuel);
    if (!reidPa)
        return problem(std::string(name), "has no vapour pressure without its Reid vapour pressure",
                       "Give the Reid vapour pressure or the volatility class.");
    if (auto wrong = beyond({"Reid vapour pressure", "psi", 1, 20}, *reidPa / PsiPa, name))
        return tl::unexpected<Problem>(*std::move(wrong));
    if (fuel == Fluid::Gasoline)
        return VapourPressure{ofReid(*reidPa, temperatureC), false, "published",
                              "US EPA AP-42, chapter 7.1, refined stocks"};
    double pascal = ofReid(*reidPa, std::min(temperatureC, ReidTemperatureC));
    if (temperatureC > ReidTemperatureC)
        pascal *= byClausiusClapeyron(Ethanol, temperatureC) /
                  byClausiusClapeyron(Ethanol, ReidTemperatureC);
    return VapourPressure{pascal, true, "estimate",
                          "no published law: gasoline's by US EPA AP-42 up to 37.8 C, above it as "
                          "steep as ethanol"};
}

} // namespace

ReidConstants reidConstants(double reidPa)
{
    assert(reidPa > 0);
    const double slope = std::sqrt(3.0); // of the 10 % distillation, for gasoline 3
    const double logReid = std::log(reidPa / PsiPa);
    return {15.64 - 1.854 * slope - (0.8742 - 0.3280 * slope) * logReid,
            8742 - 1042 * slope - (1049 - 179.4 * slope) * logReid};
}

std::optional<TemperatureRange> vapourPressureRange(Fluid fuel) noexcept
{
    switch (fuel) {
    case Fluid::Gasoline:
    case Fluid::E85:
        return TemperatureRange{ColdestC, HottestC};
    case Fluid::Methanol:
        return TemperatureRange{Methanol.front().temperatureC, Methanol.back().temperatureC};
    case Fluid::Diesel:
        return TemperatureRange{ColdestC, ReidTemperatureC};
    default:
        return std::nullopt;
    }
}

Result<VapourPressure> vapourPressure(Fluid fuel, double temperatureC, std::optional<double> reidPa)
{
    const auto known = vapourPressureRange(fuel);
    if (!known)
        return problem(std::string(text(fuel)), "has no known vapour pressure",
                       "Judge the inlet of its pump by the pump maker's figure.");
    if (auto wrong =
            beyond({"temperature", "°C", known->lowC, known->highC}, temperatureC, text(fuel)))
        return tl::unexpected<Problem>(*std::move(wrong));
    if (fuel == Fluid::Methanol)
        return VapourPressure{byClausiusClapeyron(Methanol, temperatureC), false, "published",
                              "1.87 psi at 20 C, 12.3 psi at 60 C, boiling at 64.7 C"};
    if (fuel == Fluid::Diesel)
        return VapourPressure{0.2 * PsiPa, true, "published",
                              "US DOE Alternative Fuels Data Center property tables: Reid vapour "
                              "pressure below 0.2 psi"};
    return gasolineLike(fuel, temperatureC, reidPa);
}

Result<double> boilingTemperatureC(Fluid fuel, double absolutePa, std::optional<double> reidPa)
{
    if (auto wrong = firstImpossible({{"pressure", absolutePa}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    const auto known = vapourPressureRange(fuel);
    if (!known || fuel == Fluid::Diesel)
        return problem(std::string(text(fuel)), "has no known boiling temperature",
                       "Judge it by the maker's figure.");
    const Curve excess = [=](double temperatureC) -> Result<double> {
        return vapourPressure(fuel, temperatureC, reidPa).map([absolutePa](const auto &vapour) {
            return vapour.pascal - absolutePa;
        });
    };
    const auto found = crossing(excess, {known->lowC, known->highC});
    if (!found)
        return tl::unexpected<Problem>(found.error());
    if (!found->at)
        return problem(std::string(text(fuel)),
                       found->atLow > 0 ? "boils below the temperatures that are known of it"
                                        : "boils above the temperatures that are known of it",
                       "Ask for its vapour pressure at a temperature between " +
                           shortNumber(known->lowC) + " and " + shortNumber(known->highC) + " °C.");
    return *found->at;
}

} // namespace flarestock
