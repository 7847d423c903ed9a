// SPDX-License-Identifier: MIT

#include "model/exchange/needs_csv.h"

#include "model/exchange/sheet.h"
#include "model/journal/notes/lot_facts.h"

#include <array>

namespace flarestock {

namespace {

enum NeedColumn : ColumnId { NeededPart, NeededQuantity, NeededDay, NeededFor };
constexpr std::array<std::string_view, 4> Headings = {"part", "quantity", "day", "for"};

Shortage readNeed(const SheetRow &row, const Catalogue &catalogue)
{
    const std::string number = row.required(NeededPart);
    const Part *part = catalogue.find(number);
    if (!part && !number.empty())
        row.wrong(NeededPart, {'"' + number + "\" is no part of the catalogue",
                               "Enter that part, or correct its number."});
    (void)row.required(NeededQuantity);
    const auto quantity = row.numberAbove(NeededQuantity, 0);
    const std::string day(row.text(NeededDay));
    if (!day.empty() && !isDay(day))
        row.wrong(NeededDay, {'"' + day + "\" is no day", "Write for example 2026-12-12."});
    Shortage need{part ? part->number : number, quantity.value_or(0), day, {}, {}};
    if (row.has(NeededFor))
        need.wanted.push_back({std::string(row.text(NeededFor)), need.quantity});
    return need;
}

} // namespace

Result<std::vector<Shortage>> readNeeds(std::string_view text, std::string name,
                                        const Catalogue &catalogue)
{
    const auto table = readCsv(text, std::move(name));
    if (!table)
        return tl::unexpected(table.error());
    Problems problems(1);
    const Sheet sheet(*table, Headings, problems);
    std::vector<Shortage> needs;
    if (sheet.require({NeededPart, NeededQuantity}, problems))
        for (std::size_t i = 0; i < sheet.rowCount() && !problems.isFull(); ++i)
            needs.push_back(readNeed(SheetRow(sheet, i, problems), catalogue));
    if (!problems.isEmpty())
        return tl::unexpected(std::move(problems.all().front()));
    return needs;
}

} // namespace flarestock
