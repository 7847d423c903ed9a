// SPDX-License-Identifier: MIT

#include "model/fluids/demand/usual_duty.h"

#include "model/fluids/measure.h"
#include "model/fluids/table_cells.h"

#include <map>

namespace flarestock {

namespace embedded {
extern const std::string_view usualDutyCsv; // model/fluids/data/usual_duty.csv
}

namespace {

std::optional<double> numberOf(std::string_view cell)
{
    return cell.empty() ? std::nullopt
                        : std::optional(Measure::parse(cell, Dimension::Count).value().si);
}

std::map<std::string_view, UsualDuty> readDuties()
{
    const auto rows = rowsOfTable(embedded::usualDutyCsv);
    std::map<std::string_view, UsualDuty> duties;
    for (auto row = rows.begin() + 1; row != rows.end(); ++row)
        duties.emplace(row->at(0), UsualDuty{numberOf(row->at(1)), numberOf(row->at(2)), row->at(3),
                                             row->at(4)});
    return duties;
}

} // namespace

std::optional<UsualDuty> usualDuty(std::string_view system)
{
    static const auto Duties = readDuties();
    const auto found = Duties.find(system);
    return found == Duties.end() ? std::nullopt : std::optional(found->second);
}

} // namespace flarestock
