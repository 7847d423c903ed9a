// SPDX-License-Identifier: MIT

#include "model/fluids/compatibility.h"

#include <algorithm>
#include <cassert>
#include <cctype>
#include <map>
#include <vector>

namespace flarestock {

namespace embedded {
extern const std::string_view compatibilityCsv; // model/fluids/data/compatibility.csv
}

namespace {

struct Row {
    std::vector<std::string_view> cells;
    std::string_view source;
};

struct Table {
    std::vector<std::string> materials;
    std::map<Fluid, Row> rows;
};

std::string upperCase(std::string_view text)
{
    std::string upper(text);
    std::transform(upper.begin(), upper.end(), upper.begin(),
                   [](unsigned char c) { return static_cast<char>(std::toupper(c)); });
    return upper;
}

/// The data is ours: cells without commas, then a source in quotation marks without any inside.
std::vector<std::string_view> cellsOf(std::string_view line)
{
    std::vector<std::string_view> cells;
    while (!line.empty()) {
        const bool quoted = line.front() == '"';
        const auto end = quoted ? line.find('"', 1) : line.find(',');
        cells.push_back(line.substr(quoted ? 1 : 0, quoted ? end - 1 : end));
        if (end == std::string_view::npos || quoted)
            break;
        line.remove_prefix(end + 1);
    }
    return cells;
}

Table readTable(std::string_view text)
{
    Table table;
    while (!text.empty()) {
        const auto end = std::min(text.find('\n'), text.size());
        const auto cells = cellsOf(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
        if (cells.size() < 3)
            continue;
        if (table.materials.empty()) {
            table.materials.assign(cells.begin() + 1, cells.end() - 1);
            continue;
        }
        const auto fluid = parseFluid(cells.front());
        assert(fluid && cells.size() == table.materials.size() + 2);
        table.rows.emplace(*fluid, Row{{cells.begin() + 1, cells.end() - 1}, cells.back()});
    }
    assert(table.rows.size() == FluidCount);
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

Compatibility compatibility(Fluid fluid, std::string_view material)
{
    static const Table table = readTable(embedded::compatibilityCsv);
    const auto code = upperCase(material.substr(0, material.find(' ')));
    const auto column = std::find(table.materials.begin(), table.materials.end(), code);
    if (column == table.materials.end())
        return {};
    const auto &row = table.rows.at(fluid);
    const auto at = static_cast<std::size_t>(column - table.materials.begin());
    return {bearsOf(row.cells[at]), row.source};
}

} // namespace flarestock
