// SPDX-License-Identifier: MIT

#include "model/fluids/attack/seal_heat.h"

#include "model/fluids/measure.h"
#include "model/fluids/table_cells.h"

#include <map>

namespace flarestock {

namespace embedded {
extern const std::string_view sealHeatCsv; // model/fluids/data/seal_heat.csv
}

namespace {

double numberOf(std::string_view cell)
{
    return Measure::parse(cell, Dimension::Count).value().si;
}

std::map<std::string_view, SealHeat> readSeals()
{
    const auto rows = rowsOfTable(embedded::sealHeatCsv);
    std::map<std::string_view, SealHeat> seals;
    for (auto row = rows.begin() + 1; row != rows.end(); ++row)
        seals.emplace(row->at(0),
                      SealHeat{numberOf(row->at(1)), numberOf(row->at(2)), row->at(3), row->at(4)});
    return seals;
}

} // namespace

std::optional<SealHeat> sealHeat(std::string_view material)
{
    static const auto Seals = readSeals();
    const auto found = Seals.find(material.substr(0, material.find(' ')));
    return found == Seals.end() ? std::nullopt : std::optional(found->second);
}

} // namespace flarestock
