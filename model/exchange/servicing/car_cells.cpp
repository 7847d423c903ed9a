// SPDX-License-Identifier: MIT

#include "model/exchange/servicing/car_cells.h"

#include "model/exact/case_fold.h"
#include "model/journal/notes/lot_facts.h"

#include <algorithm>

namespace flarestock {

std::string carIn(const SheetRow &row, ColumnId column, std::span<const Place> places)
{
    const std::string typed = row.required(column);
    const auto found = std::find_if(places.begin(), places.end(), [&typed](const Place &place) {
        return sameFolded(place.id, typed) && place.kind == PlaceKind::Car;
    });
    if (found != places.end())
        return found->id;
    if (!typed.empty())
        row.wrong(column, {"there is no car \"" + typed + '"',
                           "Correct it, or enter it in shop.toml as a place of kind car."});
    return typed;
}

std::string dayIn(const SheetRow &row, ColumnId column)
{
    std::string day(row.text(column));
    if (!day.empty() && !isDay(day))
        row.wrong(column, {'"' + day + "\" is no day", "Write for example 2027-03-20."});
    return day;
}

} // namespace flarestock
