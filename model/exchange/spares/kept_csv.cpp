// SPDX-License-Identifier: MIT

#include "model/exchange/spares/kept_csv.h"

#include "model/exact/case_fold.h"
#include "model/exchange/sheet.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

enum KeptColumn : ColumnId { KeptPart, KeptPlace, KeptLeast, KeptMost };
constexpr std::array<std::string_view, 4> Headings = {"part", "place", "min", "max"};

/// In smallest units; zero with a problem where it is none.
std::int64_t amountIn(const SheetRow &row, ColumnId column, const Part &part)
{
    const auto amount = row.numberAbove(column, 0);
    if (!amount)
        return 0;
    const auto smallest = Quantity{*amount, part.unit}.smallest();
    if (!smallest)
        row.refused(column, smallest.error(), row.cell(column).within);
    return smallest.value_or(0);
}

std::string placeIn(const SheetRow &row, std::span<const Place> places)
{
    const std::string typed = row.required(KeptPlace);
    const auto found = std::find_if(places.begin(), places.end(), [&typed](const Place &place) {
        return sameFolded(place.id, typed) && isStock(place.kind);
    });
    if (found != places.end())
        return found->id;
    if (!typed.empty())
        row.wrong(KeptPlace, {"there is no shelf, bin or drawer \"" + typed + '"',
                              "Correct it, or enter it in shop.toml."});
    return typed;
}

Keeping readRow(const SheetRow &row, const Catalogue &catalogue, std::span<const Place> places)
{
    Keeping kept;
    const std::string number = row.required(KeptPart);
    const Part *part = catalogue.find(number);
    if (!part && !number.empty())
        row.wrong(KeptPart, {'"' + number + "\" is no part of the catalogue",
                             "Enter that part, or correct its number."});
    kept.place = placeIn(row, places);
    (void)row.required(KeptLeast);
    if (!part)
        return kept;
    kept.part = part->number;
    kept.least = amountIn(row, KeptLeast, *part);
    kept.most = row.has(KeptMost) ? amountIn(row, KeptMost, *part) : kept.least;
    if (kept.most < kept.least && row.has(KeptMost))
        row.wrong(KeptMost, {"the maximum is below the minimum", "Correct one of the two."});
    return kept;
}

} // namespace

Result<std::vector<Keeping>> readKept(std::string_view text, std::string name,
                                      const Catalogue &catalogue, std::span<const Place> places)
{
    const auto table = readCsv(text, std::move(name));
    if (!table)
        return tl::unexpected(table.error());
    Problems problems(1);
    const Sheet sheet(*table, Headings, problems);
    std::vector<Keeping> all;
    if (sheet.require({KeptPart, KeptPlace, KeptLeast}, problems))
        for (std::size_t i = 0; i < sheet.rowCount() && !problems.isFull(); ++i) {
            const SheetRow row(sheet, i, problems);
            all.push_back(readRow(row, catalogue, places));
            const auto same = [&all](const Keeping &other) {
                return other.part == all.back().part && other.place == all.back().place;
            };
            if (std::any_of(all.begin(), all.end() - 1, same))
                row.wrong(KeptPart, {all.back().part + " stands twice for " + all.back().place,
                                     "Write it in one row."});
        }
    if (!problems.isEmpty())
        return tl::unexpected(std::move(problems.all().front()));
    return all;
}

} // namespace flarestock
