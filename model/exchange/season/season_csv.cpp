// SPDX-License-Identifier: MIT

#include "model/exchange/season/season_csv.h"

#include "model/exact/case_fold.h"
#include "model/exchange/servicing/car_cells.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

enum SeasonColumn : ColumnId { EventId, Title, FirstDay, LastDay, Cars, Runs, Hours };
constexpr std::array<std::string_view, 7> Headings = {"event", "title", "first day", "last day",
                                                      "cars",  "runs",  "hours"};

std::vector<std::string> carsIn(const SheetRow &row)
{
    std::vector<std::string> cars;
    for (const SheetRow::Item &item : row.items(Cars)) {
        const auto same = [&item](const std::string &car) { return sameFolded(car, item.text); };
        if (std::any_of(cars.begin(), cars.end(), same))
            row.wrong(Cars, {std::string(item.text) + " stands twice", "Name each car once."},
                      item.within);
        cars.emplace_back(item.text);
    }
    return cars;
}

std::optional<Decimal> expected(const SheetRow &row, ColumnId column)
{
    const auto amount = row.number(column);
    if (!amount || amount->sign() >= 0)
        return amount;
    row.wrong(column, {"a car cannot run less than nothing",
                       "Write how far each car runs there, or leave it empty."});
    return std::nullopt;
}

Event readEvent(const SheetRow &row)
{
    Event event;
    event.id = row.required(EventId);
    event.title = row.text(Title);
    (void)row.required(FirstDay);
    event.firstDay = dayIn(row, FirstDay);
    event.lastDay = dayIn(row, LastDay);
    if (event.lastDay.empty())
        event.lastDay = event.firstDay;
    if (event.lastDay < event.firstDay)
        row.wrong(LastDay,
                  {"the event ends on " + event.lastDay + ", before it begins on " + event.firstDay,
                   "Correct one of the two days."});
    (void)row.required(Cars);
    event.cars = carsIn(row);
    event.runs = expected(row, Runs);
    event.hours = expected(row, Hours);
    return event;
}

} // namespace

Result<Season> readSeason(std::string_view text, std::string name)
{
    const auto table = readCsv(text, std::move(name));
    if (!table)
        return tl::unexpected(table.error());
    Problems problems(1);
    const Sheet sheet(*table, Headings, problems);
    std::vector<Event> events;
    if (sheet.require({EventId, FirstDay, Cars}, problems))
        for (std::size_t i = 0; i < sheet.rowCount() && !problems.isFull(); ++i) {
            const SheetRow row(sheet, i, problems);
            Event event = readEvent(row);
            const auto same = [&event](const Event &other) {
                return sameFolded(other.id, event.id);
            };
            if (!event.id.empty() && std::any_of(events.begin(), events.end(), same))
                row.wrong(EventId,
                          {event.id + " stands twice", "Give each event an id of its own."});
            events.push_back(std::move(event));
        }
    if (!problems.isEmpty())
        return tl::unexpected(std::move(problems.all().front()));
    return Season(std::move(events));
}

} // namespace flarestock
