// SPDX-License-Identifier: MIT

#include "model/fluids/liquids/vapour_pressure.h"

#include "model/fluids/bounds.h"

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
    if (auto wrong = beyond({"temperature", "°C", ColdestC, HottestC}, temperatureC, name))
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

Result<VapourPressure> vapourPressure(Fluid fuel, double temperatureC, std::optional<double> reidPa)
{
    if (fuel == Fluid::Gasoline || fuel == Fluid::E85)
        return gasolineLike(fuel, temperatureC, reidPa);
    if (fuel == Fluid::Methanol) {
        const ValidRange span{"temperature", "°C", Methanol.front().temperatureC,
                              Methanol.back().temperatureC};
        if (auto wrong = beyond(span, temperatureC, text(fuel)))
            return tl::unexpected<Problem>(*std::move(wrong));
        return VapourPressure{byClausiusClapeyron(Methanol, temperatureC), false, "published",
                              "1.87 psi at 20 C, 12.3 psi at 60 C, boiling at 64.7 C"};
    }
    if (fuel == Fluid::Diesel) {
        const ValidRange span{"temperature", "°C", ColdestC, ReidTemperatureC};
        if (auto wrong = beyond(span, temperatureC, text(fuel)))
            return tl::unexpected<Problem>(*std::move(wrong));
        return VapourPressure{0.2 * PsiPa, true, "published",
                              "US DOE Alternative Fuels Data Center property tables: Reid vapour "
                              "pressure below 0.2 psi"};
    }
    return problem(std::string(text(fuel)), "has no known vapour pressure",
                   "Judge the inlet of its pump by the pump maker's figure.");
}

} // namespace flarestock
