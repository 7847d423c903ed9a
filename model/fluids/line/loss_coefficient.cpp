// SPDX-License-Identifier: MIT

#include "model/fluids/line/loss_coefficient.h"

#include "model/fluids/bounds.h"
#include "model/fluids/table_cells.h"

#include <array>
#include <cassert>
#include <cmath>
#include <map>
#include <string>
#include <utility>

namespace flarestock {

namespace embedded {
extern const std::string_view lossCoefficientsCsv; // model/fluids/data/loss_coefficients.csv
}

namespace {

using ByAngle = std::map<double, LossCoefficient>;

std::map<std::string, ByAngle, std::less<>> readCoefficients()
{
    const auto rows = rowsOfTable(embedded::lossCoefficientsCsv);
    std::map<std::string, ByAngle, std::less<>> table;
    for (auto row = rows.begin() + 1; row != rows.end(); ++row) {
        assert(row->size() == 5 && !row->at(4).empty());
        table[std::string(row->at(0))].emplace(
            numberIn(row->at(1)), LossCoefficient{numberIn(row->at(2)), row->at(3), row->at(4)});
    }
    return table;
}

const ByAngle &coefficientsOf(std::string_view piece)
{
    static const auto Table = readCoefficients();
    const auto found = Table.find(piece);
    assert(found != Table.end());
    return found->second;
}

} // namespace

Result<LossCoefficient> endCoefficient(EndForm form, double degrees)
{
    const ByAngle &table = coefficientsOf(form == EndForm::Swept ? "swept end" : "drilled end");
    if (auto wrong = beyond({"bend", "degrees", 0, 180}, degrees, "hose end"))
        return tl::unexpected<Problem>(*std::move(wrong));
    const auto after = table.lower_bound(degrees);
    assert(after != table.end());
    if (after->first == degrees)
        return after->second;
    const auto before = std::prev(after);
    LossCoefficient between = after->second;
    between.k = std::lerp(before->second.k, after->second.k,
                          (degrees - before->first) / (after->first - before->first));
    return between;
}

const LossCoefficient &openingCoefficient(Opening opening)
{
    static constexpr std::array<std::string_view, 4> Names{"sharp entrance", "rounded entrance",
                                                           "re-entrant entrance", "exit"};
    return coefficientsOf(Names.at(static_cast<std::size_t>(opening))).at(0);
}

double boreChangeCoefficient(double fromM, double toM)
{
    assert(fromM > 0 && toM > 0);
    const double ratio = fromM < toM ? fromM / toM : toM / fromM;
    const double lost = 1 - ratio * ratio;
    return fromM < toM ? lost * lost : 0.5 * lost;
}

} // namespace flarestock
