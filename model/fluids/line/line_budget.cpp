// SPDX-License-Identifier: MIT

#include "model/fluids/line/line_budget.h"

#include "model/fluids/measure.h"
#include "model/fluids/table_cells.h"

#include <array>
#include <cassert>
#include <string>
#include <vector>

namespace flarestock {

namespace embedded {
extern const std::string_view lineBudgetsCsv; // model/fluids/data/line_budgets.csv
}

namespace {

constexpr std::size_t LinesOfSystem = 3;

/// A row before anybody has said what is set.
struct BudgetRow {
    double caution = 0; ///< In pascal, or as a part of the set pressure.
    double stop = 0;
    bool isPart = false;
    std::string_view status;
    std::string_view source;
};

BudgetRow readRow(const TableRow &row)
{
    if (row[4] == "% of set pressure")
        return {numberIn(row[2]) / 100, numberIn(row[3]) / 100, true, row[5], row[6]};
    const auto pascal = [&row](std::string_view number) {
        return Measure::parse(std::string(number) + " " + std::string(row[4]), Dimension::Pressure)
            .value()
            .si;
    };
    return {pascal(row[2]), pascal(row[3]), false, row[5], row[6]};
}

std::vector<BudgetRow> readRows()
{
    struct Key {
        std::string_view system;
        std::string_view line;
    };
    static constexpr std::array<Key, 2 * LinesOfSystem + 2> Keys{{
        {"carburettor", "before regulator"},
        {"carburettor", "behind regulator"},
        {"carburettor", "return"},
        {"injection", "before regulator"},
        {"injection", "behind regulator"},
        {"injection", "return"},
        {"any", "inlet margin"},
        {"any", "inlet margin of aircraft"},
    }};
    const auto rows = rowsOfTable(embedded::lineBudgetsCsv);
    assert(rows.size() == Keys.size() + 1);
    std::vector<BudgetRow> budgets;
    for (std::size_t at = 0; at < Keys.size(); ++at) {
        assert(rows[at + 1][0] == Keys[at].system && rows[at + 1][1] == Keys[at].line);
        budgets.push_back(readRow(rows[at + 1]));
    }
    return budgets;
}

const BudgetRow &budgetRow(std::size_t at)
{
    static const auto Rows = readRows();
    return Rows.at(at);
}

} // namespace

LineBudget lineBudget(FuelSystem system, BudgetedLine line, double setPa)
{
    assert(setPa >= 0);
    const auto &row = budgetRow(static_cast<std::size_t>(system) * LinesOfSystem +
                                static_cast<std::size_t>(line));
    const double whole = row.isPart ? setPa : 1;
    return {row.caution * whole, row.stop * whole, row.status, row.source};
}

const InletBounds &inletBounds()
{
    static const auto Bounds = [] {
        const auto &ours = budgetRow(2 * LinesOfSystem);
        const auto &aircraft = budgetRow(2 * LinesOfSystem + 1);
        return InletBounds{ours.caution, ours.stop,        ours.status,
                           ours.source,  aircraft.caution, aircraft.source};
    }();
    return Bounds;
}

} // namespace flarestock
