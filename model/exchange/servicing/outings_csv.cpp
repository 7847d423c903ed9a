// SPDX-License-Identifier: MIT

#include "model/exchange/servicing/outings_csv.h"

#include "model/exchange/servicing/car_cells.h"

#include <array>

namespace flarestock {

namespace {

enum OutingColumn : ColumnId { OutingCar, OutingEvent, OutingDay, OutingRuns, OutingHours };
constexpr std::array<std::string_view, 5> OutingHeadings = {"car", "event", "day", "runs", "hours"};

constexpr int MostRuns = 1'000'000;

Outing readOuting(const SheetRow &row, std::span<const Place> places)
{
    Outing outing;
    outing.car = carIn(row, OutingCar, places);
    outing.event = row.required(OutingEvent);
    (void)row.required(OutingDay);
    outing.day = dayIn(row, OutingDay);
    outing.runs = row.whole(OutingRuns, 0, MostRuns).value_or(0);
    outing.hours = row.number(OutingHours).value_or(Decimal(0));
    if (outing.hours.sign() < 0)
        row.wrong(OutingHours, {"a car cannot run less than no hours", "Correct it."});
    if (outing.runs == 0 && outing.hours.isZero())
        row.wrong(OutingRuns, {"the outing says neither runs nor hours",
                               "Write how far the car ran, or leave the row out."});
    return outing;
}

} // namespace

Result<std::vector<Outing>> readOutings(std::string_view text, std::string name,
                                        std::span<const Place> places)
{
    const auto table = readCsv(text, std::move(name));
    if (!table)
        return tl::unexpected(table.error());
    Problems problems(1);
    const Sheet sheet(*table, OutingHeadings, problems);
    std::vector<Outing> all;
    if (sheet.require({OutingCar, OutingEvent, OutingDay}, problems))
        for (std::size_t i = 0; i < sheet.rowCount() && !problems.isFull(); ++i)
            all.push_back(readOuting(SheetRow(sheet, i, problems), places));
    if (!problems.isEmpty())
        return tl::unexpected(std::move(problems.all().front()));
    return all;
}

} // namespace flarestock
