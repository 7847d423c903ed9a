// SPDX-License-Identifier: MIT

#include "model/fluids/liquid.h"

#include "model/fluids/measure.h"
#include "model/fluids/table_cells.h"

#include <cassert>
#include <map>
#include <string>

namespace flarestock {

namespace embedded {
extern const std::string_view liquidsCsv; // model/fluids/data/liquids.csv
}

namespace {

/// The cell in the unit that heads its column.
double siOf(std::string_view cell, std::string_view unit)
{
    const auto measure = Measure::parse(std::string(cell) + " " + std::string(unit));
    assert(measure.has_value() && measure->si > 0);
    return measure->si;
}

std::map<Fluid, Liquid> readLiquids()
{
    const auto rows = rowsOfTable(embedded::liquidsCsv);
    const TableRow &header = rows.front();
    assert(header.size() == 5);
    std::map<Fluid, Liquid> liquids;
    for (auto row = rows.begin() + 1; row != rows.end(); ++row) {
        const auto fluid = parseFluid(row->at(0));
        assert(fluid.has_value() && !row->at(3).empty() && !row->at(4).empty());
        liquids.emplace(*fluid, Liquid{siOf(row->at(1), header[1]), siOf(row->at(2), header[2]),
                                       row->at(3), row->at(4)});
    }
    assert(liquids.size() == FluidCount);
    return liquids;
}

} // namespace

const Liquid &liquidAt20C(Fluid fluid)
{
    static const auto Liquids = readLiquids();
    return Liquids.at(fluid);
}

} // namespace flarestock
