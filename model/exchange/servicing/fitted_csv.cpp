// SPDX-License-Identifier: MIT

#include "model/exchange/servicing/fitted_csv.h"

#include "model/exact/case_fold.h"
#include "model/exchange/servicing/car_cells.h"
#include "model/fluids/fluid.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

enum FittedColumn : ColumnId {
    FittedCar,
    FittedPosition,
    FittedPart,
    FittedLot,
    FittedSince,
    FittedLength,
    FittedWashed,
    FittedRuns,
    FittedHours,
    FittedMade,
    FittedUseBy
};
constexpr std::array<std::string_view, 11> FittedHeadings = {"car",   "position", "part",   "lot",
                                                             "since", "length",   "washed", "runs",
                                                             "hours", "made",     "use by"};

constexpr int MostEver = 1'000'000;

/// So much of a part that is cut; one of another.
std::int64_t quantityIn(const SheetRow &row, const Part &part)
{
    if (!isLength(part.unit)) {
        if (row.has(FittedLength))
            row.wrong(FittedLength, {part.number + " is counted, not cut", "Leave it empty."});
        return 1;
    }
    if (!row.has(FittedLength))
        row.wrong(FittedLength, {part.number + " is a length, and nobody says how long",
                                 "Write it in the unit of the part: 24."});
    const auto length = row.numberAbove(FittedLength, 0);
    if (!length)
        return 1;
    const auto smallest = Quantity{*length, part.unit}.smallest();
    if (!smallest)
        row.refused(FittedLength, smallest.error(), row.cell(FittedLength).within);
    return smallest.value_or(1);
}

void readPiece(const SheetRow &row, const Catalogue &catalogue, Serviced &fitted)
{
    const std::string typed = row.required(FittedPart);
    fitted.piece = {typed, std::string(row.text(FittedLot))};
    if (const Part *part = catalogue.find(typed)) {
        fitted.piece.part = part->number;
        fitted.quantity = quantityIn(row, *part);
    } else if (!typed.empty() && !parseFluid(typed)) {
        row.wrong(FittedPart, {'"' + typed + "\" is no part of the catalogue, and no fluid",
                               "Enter that part, or correct its number."});
    }
}

Serviced readRow(const SheetRow &row, const Catalogue &catalogue, std::span<const Place> places)
{
    Serviced fitted;
    fitted.work = Work::Fitted;
    fitted.car = carIn(row, FittedCar, places);
    fitted.position = row.required(FittedPosition);
    readPiece(row, catalogue, fitted);
    (void)row.required(FittedSince);
    fitted.day = dayIn(row, FittedSince);
    fitted.washed = row.whole(FittedWashed, 0, MostEver).value_or(0);
    fitted.hadRuns = row.whole(FittedRuns, 0, MostEver).value_or(0);
    fitted.hadHours = row.number(FittedHours).value_or(Decimal(0));
    if (fitted.hadHours.sign() < 0)
        row.wrong(FittedHours, {"nothing runs less than no hours", "Leave it empty, or write 0."});
    fitted.made = dayIn(row, FittedMade);
    fitted.useBy = dayIn(row, FittedUseBy);
    return fitted;
}

} // namespace

Result<std::vector<Serviced>> readFitted(std::string_view text, std::string name,
                                         const Catalogue &catalogue, std::span<const Place> places)
{
    const auto table = readCsv(text, std::move(name));
    if (!table)
        return tl::unexpected(table.error());
    Problems problems(1);
    const Sheet sheet(*table, FittedHeadings, problems);
    std::vector<Serviced> all;
    if (sheet.require({FittedCar, FittedPosition, FittedPart, FittedSince}, problems))
        for (std::size_t i = 0; i < sheet.rowCount() && !problems.isFull(); ++i) {
            const SheetRow row(sheet, i, problems);
            all.push_back(readRow(row, catalogue, places));
            const auto same = [&all](const Serviced &other) {
                return other.car == all.back().car &&
                       sameFolded(other.position, all.back().position);
            };
            if (std::any_of(all.begin(), all.end() - 1, same))
                row.wrong(FittedPosition,
                          {all.back().position + " stands twice for " + all.back().car,
                           "What is there is one piece: name the other position otherwise."});
        }
    if (!problems.isEmpty())
        return tl::unexpected(std::move(problems.all().front()));
    return all;
}

} // namespace flarestock
