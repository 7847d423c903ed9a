// SPDX-License-Identifier: MIT

#include "model/fluids/compatibility.h"

#include "model/fluids/table_cells.h"

#include <algorithm>
#include <cassert>
#include <cctype>
#include <map>

namespace flarestock {

namespace embedded {
extern const std::string_view compatibilityCsv; // model/fluids/data/compatibility.csv
}

namespace {

struct Row {
    TableRow cells; ///< One for each material.
    std::string_view source;
};

struct Table {
    TableRow materials;
    std::map<Fluid, Row> rows;
};

std::string upperCase(std::string_view text)
{
    std::string upper(text);
    std::transform(upper.begin(), upper.end(), upper.begin(),
                   [](unsigned char c) { return static_cast<char>(std::toupper(c)); });
    return upper;
}

Table readTable(std::string_view text)
{
    const auto rows = rowsOfTable(text);
    Table table;
    table.materials.assign(rows.front().begin() + 1, rows.front().end() - 1);
    for (auto row = rows.begin() + 1; row != rows.end(); ++row) {
        const auto fluid = parseFluid(row->front());
        assert(fluid.has_value());
        table.rows.emplace(*fluid, Row{{row->begin() + 1, row->end() - 1}, row->back()});
    }
    assert(table.rows.size() == FluidCount);
    return table;
}

const Table &table()
{
    static const Table table = readTable(embedded::compatibilityCsv);
    return table;
}

Bears bearsOf(std::string_view word)
{
    if (word == "good")
        return Bears::Good;
    if (word == "fair")
        return Bears::Fair;
    assert(word == "never");
    return Bears::Never;
}

} // namespace

std::span<const std::string_view> sealMaterials()
{
    return table().materials;
}

Compatibility compatibility(Fluid fluid, std::string_view material)
{
    const auto &materials = table().materials;
    const auto code = upperCase(material.substr(0, material.find(' ')));
    const auto column = std::find(materials.begin(), materials.end(), code);
    if (column == materials.end())
        return {};
    const auto &row = table().rows.at(fluid);
    const auto at = static_cast<std::size_t>(column - materials.begin());
    return {bearsOf(row.cells[at]), row.source};
}

} // namespace flarestock
