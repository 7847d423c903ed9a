// SPDX-License-Identifier: MIT

#include "model/fluids/liquid.h"

#include "model/fluids/bounds.h"
#include "model/fluids/measure.h"
#include "model/fluids/table_cells.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <map>
#include <string>
#include <vector>

namespace flarestock {

namespace embedded {
extern const std::string_view liquidsCsv; // model/fluids/data/liquids.csv
}

namespace {

constexpr double ZeroCelsiusK = 273.15;

struct Point {
    double temperatureC = 0;
    Liquid liquid;
};

struct Properties {
    bool walther = false; ///< How the viscosity goes from point to point; otherwise by Andrade.
    std::vector<Point> points; ///< By rising temperature, two at least.
};

/// The cell in the unit that heads its column.
double siOf(std::string_view cell, std::string_view unit)
{
    const auto measure = Measure::parse(std::string(cell) + " " + std::string(unit));
    assert(measure.has_value() && measure->si > 0);
    return measure->si;
}

std::map<Fluid, Properties> readLiquids()
{
    const auto rows = rowsOfTable(embedded::liquidsCsv);
    const TableRow &header = rows.front();
    assert(header.size() == 7 && header[1] == "C");
    std::map<Fluid, Properties> liquids;
    for (auto row = rows.begin() + 1; row != rows.end(); ++row) {
        const auto fluid = parseFluid(row->at(0));
        assert(fluid.has_value() && !row->at(5).empty() && !row->at(6).empty());
        assert(row->at(4) == "D341" || row->at(4) == "Andrade");
        Properties &properties = liquids[*fluid];
        properties.walther = row->at(4) == "D341";
        const double temperatureC = numberIn(row->at(1));
        assert(properties.points.empty() || properties.points.back().temperatureC < temperatureC);
        properties.points.push_back(
            {temperatureC,
             {siOf(row->at(2), header[2]), siOf(row->at(3), header[3]), row->at(5), row->at(6)}});
    }
    assert(liquids.size() == FluidCount);
    return liquids;
}

const Properties &propertiesOf(Fluid fluid)
{
    static const auto Liquids = readLiquids();
    return Liquids.at(fluid);
}

bool isWeaker(std::string_view left, std::string_view right)
{
    static constexpr std::array<std::string_view, 4> FallingWorth{"published", "published band",
                                                                  "estimate", "from memory"};
    const auto *const leftAt = std::find(FallingWorth.begin(), FallingWorth.end(), left);
    const auto *const rightAt = std::find(FallingWorth.begin(), FallingWorth.end(), right);
    assert(leftAt != FallingWorth.end() && rightAt != FallingWorth.end());
    return leftAt > rightAt;
}

double waltherOf(double kinematicM2S)
{
    return std::log10(std::log10(kinematicM2S * 1e6 + 0.7));
}

double share(double at, double left, double right)
{
    return (at - left) / (right - left);
}

double viscosityByWalther(const Point &cold, const Point &hot, double temperatureC, double density)
{
    const auto x = [](double celsius) { return std::log10(celsius + ZeroCelsiusK); };
    const double part = share(x(temperatureC), x(cold.temperatureC), x(hot.temperatureC));
    const double value = std::lerp(waltherOf(cold.liquid.kinematicM2S()),
                                   waltherOf(hot.liquid.kinematicM2S()), part);
    return (std::pow(10, std::pow(10, value)) - 0.7) * 1e-6 * density;
}

double viscosityByAndrade(const Point &cold, const Point &hot, double temperatureC)
{
    const auto x = [](double celsius) { return 1 / (celsius + ZeroCelsiusK); };
    const double part = share(x(temperatureC), x(cold.temperatureC), x(hot.temperatureC));
    return std::exp(
        std::lerp(std::log(cold.liquid.viscosityPaS), std::log(hot.liquid.viscosityPaS), part));
}

} // namespace

const Liquid &liquidAt20C(Fluid fluid)
{
    const auto &points = propertiesOf(fluid).points;
    const auto at20 = std::find_if(points.begin(), points.end(),
                                   [](const Point &point) { return point.temperatureC == 20; });
    assert(at20 != points.end());
    return at20->liquid;
}

TemperatureRange liquidRange(Fluid fluid)
{
    const auto &points = propertiesOf(fluid).points;
    return {points.front().temperatureC, points.back().temperatureC};
}

Result<Liquid> liquidAt(Fluid fluid, double temperatureC)
{
    const auto &[walther, points] = propertiesOf(fluid);
    const auto [lowC, highC] = liquidRange(fluid);
    if (auto wrong = beyond({"temperature", "°C", lowC, highC}, temperatureC, text(fluid)))
        return tl::unexpected<Problem>(*std::move(wrong));
    const auto after =
        std::find_if(points.begin() + 1, points.end() - 1, [temperatureC](const Point &point) {
            return point.temperatureC >= temperatureC;
        });
    const Point &hot = *after;
    const Point &cold = *(after - 1);
    if (temperatureC == hot.temperatureC)
        return hot.liquid;
    if (temperatureC == cold.temperatureC)
        return cold.liquid;
    Liquid liquid = isWeaker(hot.liquid.status, cold.liquid.status) ? hot.liquid : cold.liquid;
    liquid.densityKgM3 = std::lerp(cold.liquid.densityKgM3, hot.liquid.densityKgM3,
                                   share(temperatureC, cold.temperatureC, hot.temperatureC));
    liquid.viscosityPaS = walther ? viscosityByWalther(cold, hot, temperatureC, liquid.densityKgM3)
                                  : viscosityByAndrade(cold, hot, temperatureC);
    return liquid;
}

} // namespace flarestock
