// SPDX-License-Identifier: MIT

#include "model/fluids/line/dash_bore.h"

#include "model/fluids/measure.h"
#include "model/fluids/table_cells.h"

#include <string>

namespace flarestock {

namespace embedded {
extern const std::string_view dashBoresCsv; // model/fluids/data/dash_bores.csv
}

Result<AssumedBore> assumedBore(int dash, DashNumbering numbering)
{
    static const auto Rows = rowsOfTable(embedded::dashBoresCsv);
    const std::string said = "-" + std::to_string(dash);
    const std::size_t column = numbering == DashNumbering::AsTube ? 2 : 1;
    for (auto row = Rows.begin() + 1; row != Rows.end(); ++row) {
        if (row->at(0) == said && !row->at(column).empty())
            return AssumedBore{
                Measure::parse(std::string(row->at(column)) + " in", Dimension::Length).value().si,
                row->at(3)};
    }
    return problem("dash size " + said, "has no usual bore", "Measure the bore and enter it.");
}

} // namespace flarestock
