// SPDX-License-Identifier: MIT

#include "model/fluids/demand/specific_consumption.h"

#include "model/fluids/bounds.h"
#include "model/fluids/measure.h"
#include "model/fluids/table_cells.h"

#include <cassert>
#include <map>
#include <string>
#include <utility>

namespace flarestock {

namespace embedded {
extern const std::string_view consumptionCsv;   // model/fluids/data/consumption.csv
extern const std::string_view heatingValuesCsv; // model/fluids/data/heating_values.csv
} // namespace embedded

namespace {

constexpr double PoundKg = 0.45359237;
constexpr double HourS = 3600;
constexpr double BtuPerPoundJKg = 2326; ///< International table Btu, exact.

/// One of the unit in kg/J.
double sizeOf(ConsumptionUnit unit) noexcept
{
    switch (unit) {
    case ConsumptionUnit::PoundPerMechanicalHorsepowerHour:
        return PoundKg / (wattsOf(1, PowerUnit::MechanicalHorsepower) * HourS);
    case ConsumptionUnit::PoundPerMetricHorsepowerHour:
        return PoundKg / (wattsOf(1, PowerUnit::MetricHorsepower) * HourS);
    case ConsumptionUnit::GramPerKilowattHour:
        return 1e-3 / (1e3 * HourS);
    }
    assert(false);
    return 0;
}

using BandOf = std::map<std::pair<Fluid, Induction>, ConsumptionBand>;

BandOf readBands()
{
    const auto rows = rowsOfTable(embedded::consumptionCsv);
    BandOf bands;
    for (auto row = rows.begin() + 1; row != rows.end(); ++row) {
        assert(row->size() == 7 && (row->at(1) == "natural" || row->at(1) == "boosted"));
        const auto of = [&row](std::size_t cell) {
            return kilogramPerJoule(numberIn(row->at(cell)),
                                    ConsumptionUnit::PoundPerMechanicalHorsepowerHour);
        };
        const auto induction = row->at(1) == "boosted" ? Induction::Boosted : Induction::Natural;
        bands.emplace(std::pair(parseFluid(row->at(0)).value(), induction),
                      ConsumptionBand{of(2), of(3), of(4), row->at(5), row->at(6)});
    }
    return bands;
}

std::map<Fluid, HeatingValue> readHeatingValues()
{
    const auto rows = rowsOfTable(embedded::heatingValuesCsv);
    const double gasoline = numberIn(rows.at(1).at(1));
    std::map<Fluid, HeatingValue> values;
    for (auto row = rows.begin() + 1; row != rows.end(); ++row) {
        const double value = numberIn(row->at(1));
        values.emplace(parseFluid(row->at(0)).value(),
                       HeatingValue{value * BtuPerPoundJKg, gasoline / value, numberIn(row->at(2)),
                                    numberIn(row->at(3)), row->at(4), row->at(5)});
    }
    return values;
}

} // namespace

double wattsOf(double power, PowerUnit unit) noexcept
{
    switch (unit) {
    case PowerUnit::MechanicalHorsepower:
        return power * 745.69987158227022;
    case PowerUnit::MetricHorsepower:
        return power * 735.49875;
    case PowerUnit::Kilowatt:
        return power * 1000;
    }
    assert(false);
    return 0;
}

double kilogramPerJoule(double consumption, ConsumptionUnit unit) noexcept
{
    return consumption * sizeOf(unit);
}

double consumptionIn(double kilogramPerJoule, ConsumptionUnit unit) noexcept
{
    return kilogramPerJoule / sizeOf(unit);
}

Result<double> consumptionOfEfficiency(double efficiency, double heatingValueJKg)
{
    if (auto wrong =
            firstImpossible({{"efficiency", efficiency}, {"heating value", heatingValueJKg}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    if (efficiency > 1)
        return problem("efficiency", "is above 1", "Give 0.3 for 30 %.");
    return 1 / (efficiency * heatingValueJKg);
}

Result<double> consumptionMeasured(double massKgS, double powerW)
{
    if (auto wrong = firstImpossible({{"mass of fuel", massKgS}, {"power", powerW}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    return massKgS / powerW;
}

Result<ConsumptionBand> consumptionBand(Fluid fuel, Induction induction)
{
    static const auto Bands = readBands();
    const auto found = Bands.find({fuel, induction});
    if (found == Bands.end())
        return problem(std::string(text(fuel)), "is not a fuel", "Choose a fuel.");
    return found->second;
}

Result<HeatingValue> heatingValue(Fluid fuel)
{
    static const auto Values = readHeatingValues();
    const auto found = Values.find(fuel);
    if (found == Values.end())
        return problem(std::string(text(fuel)), "has no heating value here",
                       "Give the consumption itself.");
    return found->second;
}

} // namespace flarestock
