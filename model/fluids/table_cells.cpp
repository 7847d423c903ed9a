// SPDX-License-Identifier: MIT

#include "model/fluids/table_cells.h"

#include "model/fluids/measure.h"

#include <algorithm>
#include <cassert>

namespace flarestock {

namespace {

/// The first cell of `line`, which loses it and the comma after it.
std::string_view takeCell(std::string_view &line)
{
    const bool quoted = line.starts_with('"');
    const auto end = quoted ? line.find('"', 1) : std::min(line.find(','), line.size());
    assert(end != std::string_view::npos);
    const auto cell = quoted ? line.substr(1, end - 1) : line.substr(0, end);
    line.remove_prefix(quoted ? end + 1 : end);
    return cell;
}

TableRow cellsOfLine(std::string_view line)
{
    TableRow cells{takeCell(line)};
    while (line.starts_with(',')) {
        line.remove_prefix(1);
        cells.push_back(takeCell(line));
    }
    assert(line.empty());
    return cells;
}

} // namespace

std::vector<TableRow> rowsOfTable(std::string_view csv)
{
    std::vector<TableRow> rows;
    while (!csv.empty()) {
        const auto end = std::min(csv.find('\n'), csv.size());
        if (end > 0)
            rows.push_back(cellsOfLine(csv.substr(0, end)));
        csv.remove_prefix(std::min(end + 1, csv.size()));
        assert(rows.empty() || rows.back().size() == rows.front().size());
    }
    assert(!rows.empty());
    return rows;
}

double numberIn(std::string_view cell)
{
    return Measure::parse(cell, Dimension::Count).value().si;
}

} // namespace flarestock
