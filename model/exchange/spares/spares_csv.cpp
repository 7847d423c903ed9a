// SPDX-License-Identifier: MIT

#include "model/exchange/spares/spares_csv.h"

#include "model/exact/case_fold.h"
#include "model/exchange/sheet.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

enum SparesColumn : ColumnId { SparePart, SpentBy, Fitted, SpareRate, Lasts, PerCrash, Sets };
constexpr std::array<std::string_view, 7> SparesHeadings = {"part",  "spent by",  "fitted", "rate",
                                                            "lasts", "per crash", "sets"};
constexpr std::array<std::string_view, 3> Ways = {"chance", "wear", "crash"};
constexpr int CountMost = 10'000;

enum UsedColumn : ColumnId { UsedAtEvent, UsedPart, UsedPieces };
constexpr std::array<std::string_view, 3> UsedHeadings = {"event", "part", "pieces"};

/// "2 x car-1", "car-1".
void readFitted(const SheetRow &row, PartSpending &spending)
{
    for (const SheetRow::Item &item : row.items(Fitted)) {
        std::string_view car = item.text;
        std::int64_t count = 1;
        if (const auto times = car.find(" x "); times != std::string_view::npos) {
            const auto number = Decimal::parse(trimmed(car.substr(0, times)));
            const auto whole = number ? number->toInt64() : std::nullopt;
            if (!whole || *whole < 1 || *whole > CountMost)
                row.wrong(Fitted,
                          {std::string(item.text) + " is no number of a car",
                           "Write for example 2 x car-1."},
                          item.within);
            else
                count = *whole;
            car = trimmed(car.substr(times + 3));
        }
        spending.fitted[std::string(car)] += count;
    }
}

/// "12 runs", "0.05 per hour"; which of them it is in goes into the row's measure.
std::optional<Decimal> readRunning(const SheetRow &row, ColumnId column, PartSpending &spending)
{
    const std::string_view text = row.text(column);
    if (text.empty())
        return std::nullopt;
    const auto blank = std::min(text.find(' '), text.size());
    std::string_view word = trimmed(text.substr(blank));
    if (word.starts_with("per "))
        word = trimmed(word.substr(4));
    const auto number = Decimal::parse(text.substr(0, blank));
    const auto in = parseRunningIn(word);
    if (!number || !in || number->sign() < 0) {
        row.wrong(column, {'"' + std::string(text) + "\" is no number of events, runs or hours",
                           column == Lasts ? "Write for example 12 runs."
                                           : "Write for example 0.05 per event."});
        return std::nullopt;
    }
    spending.in = *in;
    return *number;
}

PartSpending readSpending(const SheetRow &row)
{
    PartSpending spending;
    spending.part = row.required(SparePart);
    if (const auto way = row.word(SpentBy, Ways))
        spending.by = static_cast<Spending>(*way);
    readFitted(row, spending);
    spending.rate = readRunning(row, SpareRate, spending);
    spending.lasts = readRunning(row, Lasts, spending);
    spending.perCrash = row.whole(PerCrash, 1, CountMost).value_or(1);
    spending.sets = row.whole(Sets, 0, CountMost).value_or(1);
    const bool wears = spending.by == Spending::Wear;
    if (wears && (!spending.lasts || spending.lasts->isZero()))
        row.wrong(Lasts, {spending.part + " wears out and nothing says after how much",
                          "Write for example 12 runs."});
    if (!wears && spending.lasts)
        row.wrong(Lasts, {spending.part + " does not wear out by what stands under \"spent by\"",
                          "Write wear there, or leave this empty."});
    return spending;
}

} // namespace

Result<std::vector<PartSpending>> readSpendings(std::string_view text, std::string name)
{
    const auto table = readCsv(text, std::move(name));
    if (!table)
        return tl::unexpected(table.error());
    Problems problems(1);
    const Sheet sheet(*table, SparesHeadings, problems);
    std::vector<PartSpending> all;
    if (sheet.require({SparePart}, problems))
        for (std::size_t i = 0; i < sheet.rowCount() && !problems.isFull(); ++i) {
            const SheetRow row(sheet, i, problems);
            all.push_back(readSpending(row));
            const auto same = [&all](const PartSpending &other) {
                return sameFolded(other.part, all.back().part);
            };
            if (!all.back().part.empty() && std::any_of(all.begin(), all.end() - 1, same))
                row.wrong(SparePart, {all.back().part + " stands twice", "Write it in one row."});
        }
    if (!problems.isEmpty())
        return tl::unexpected(std::move(problems.all().front()));
    return all;
}

Result<std::vector<PastUse>> readPastUses(std::string_view text, std::string name)
{
    const auto table = readCsv(text, std::move(name));
    if (!table)
        return tl::unexpected(table.error());
    Problems problems(1);
    const Sheet sheet(*table, UsedHeadings, problems);
    std::vector<PastUse> all;
    if (sheet.require({UsedAtEvent, UsedPart, UsedPieces}, problems))
        for (std::size_t i = 0; i < sheet.rowCount() && !problems.isFull(); ++i) {
            const SheetRow row(sheet, i, problems);
            PastUse use{row.required(UsedAtEvent), row.required(UsedPart), 0};
            (void)row.required(UsedPieces);
            use.pieces = row.number(UsedPieces).value_or(0);
            if (use.pieces.sign() < 0)
                row.wrong(UsedPieces,
                          {"less than nothing cannot be used", "Write how many were used there."});
            all.push_back(std::move(use));
        }
    if (!problems.isEmpty())
        return tl::unexpected(std::move(problems.all().front()));
    return all;
}

} // namespace flarestock
