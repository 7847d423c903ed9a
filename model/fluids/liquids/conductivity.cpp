// SPDX-License-Identifier: MIT

#include "model/fluids/liquids/conductivity.h"

#include "model/fluids/measure.h"
#include "model/fluids/table_cells.h"

#include <cassert>
#include <map>

namespace flarestock {

namespace embedded {
extern const std::string_view conductivityCsv; // model/fluids/data/conductivity.csv
}

namespace {

constexpr double PicosiemensPerSiemens = 1e12;

std::map<Fluid, Conductivity> readConductivities()
{
    const auto rows = rowsOfTable(embedded::conductivityCsv);
    std::map<Fluid, Conductivity> table;
    for (auto row = rows.begin() + 1; row != rows.end(); ++row) {
        assert(row->size() == 4 && !row->at(2).empty() && !row->at(3).empty());
        const auto picosiemens = Measure::parse(row->at(1), Dimension::Count);
        const double siemensPerM = picosiemens.value().si / PicosiemensPerSiemens;
        table.emplace(
            parseFluid(row->at(0)).value(),
            Conductivity{siemensPerM, chargeKeeping(siemensPerM), row->at(2), row->at(3)});
    }
    return table;
}

} // namespace

std::optional<Conductivity> conductivityOf(Fluid fluid)
{
    static const auto Table = readConductivities();
    const auto found = Table.find(fluid);
    return found == Table.end() ? std::nullopt : std::optional(found->second);
}

ChargeKeeping chargeKeeping(double siemensPerM) noexcept
{
    if (siemensPerM < 50 / PicosiemensPerSiemens)
        return ChargeKeeping::Accumulates;
    return siemensPerM <= 1e4 / PicosiemensPerSiemens ? ChargeKeeping::Between
                                                      : ChargeKeeping::Drains;
}

} // namespace flarestock
