// SPDX-License-Identifier: MIT

#include "model/fluids/demand/fuel_pressure.h"

#include "model/fluids/bounds.h"
#include "model/fluids/measure.h"
#include "model/fluids/table_cells.h"

#include <array>
#include <cassert>
#include <cmath>
#include <string>
#include <utility>
#include <vector>

namespace flarestock {

namespace embedded {
extern const std::string_view fuelPressuresCsv; // model/fluids/data/fuel_pressures.csv
}

namespace {

constexpr double AtmospherePa = 101325;

std::vector<PressureBand> readBands()
{
    static constexpr std::array<std::string_view, 3> Users{"carburettor", "throttle body injection",
                                                           "port injection"};
    const auto rows = rowsOfTable(embedded::fuelPressuresCsv);
    assert(rows.size() == Users.size() + 1);
    std::vector<PressureBand> bands;
    for (std::size_t at = 0; at < Users.size(); ++at) {
        const TableRow &row = rows[at + 1];
        assert(row[0] == Users[at]);
        const auto pascal = [](std::string_view psi) {
            return Measure::parse(std::string(psi) + " psi", Dimension::Pressure).value().si;
        };
        bands.push_back({pascal(row[1]), pascal(row[2]), row[3], row[4]});
    }
    return bands;
}

} // namespace

const PressureBand &usualPressure(FuelUser user)
{
    static const auto Bands = readBands();
    return Bands.at(static_cast<std::size_t>(user));
}

Result<RailPressure> railPressure(const RailRegulator &regulator, double manifoldPa)
{
    if (auto wrong = firstImpossible({{"base pressure", regulator.basePa},
                                      {"manifold pressure", manifoldPa, Allowed::AnyNumber}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    if (manifoldPa < -AtmospherePa)
        return problem("manifold pressure", "is below a perfect vacuum",
                       "Give it over the atmosphere: 150 kPa of boost, or -60 kPa.");
    RailPressure pressure;
    pressure.railPa = regulator.basePa + (regulator.manifoldReferenced ? manifoldPa : 0);
    pressure.acrossPa = pressure.railPa - manifoldPa;
    if (pressure.railPa <= 0)
        return problem("rail pressure", "falls to that of the air in the vacuum of the manifold",
                       "Pipe the regulator to the air, or raise its base pressure.");
    if (pressure.acrossPa <= 0)
        return problem("rail pressure", "is no more than the boost",
                       "Pipe the regulator to the manifold, or raise its base pressure.");
    return pressure;
}

Result<double> injectorFlowM3S(double ratedM3S, double ratedPa, double acrossPa)
{
    if (auto wrong = firstImpossible(
            {{"rated flow", ratedM3S}, {"rated pressure", ratedPa}, {"pressure", acrossPa}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    return ratedM3S * std::sqrt(acrossPa / ratedPa);
}

} // namespace flarestock
