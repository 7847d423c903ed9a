// SPDX-License-Identifier: MIT

#include "model/exchange/servicing/intervals_csv.h"

#include "model/exact/case_fold.h"
#include "model/exchange/sheet.h"

#include <algorithm>
#include <array>
#include <cassert>

namespace flarestock {

namespace embedded {
extern const std::string_view usualIntervals; // model/servicing/data/usual_intervals.csv
}

namespace {

enum IntervalColumn : ColumnId {
    OfKind,
    OfMedium,
    OfPart,
    AtPosition,
    OfCar,
    Do,
    EveryRuns,
    EveryHours,
    EveryEvents,
    EveryMonths,
    Age,
    Washes,
    WarnPercent,
    WarnDays,
    Source
};
constexpr std::array<std::string_view, 15> Headings = {
    "kind",   "medium", "part", "position", "car",          "do",        "runs",  "hours",
    "events", "months", "age",  "washes",   "warn percent", "warn days", "source"};
constexpr std::array<std::string_view, 3> DoWords = {"wash", "inspect", "replace"};
constexpr std::array<Work, 3> Works = {Work::Washed, Work::Inspected, Work::Replaced};

constexpr int RunsMost = 1'000'000;
constexpr int MonthsMost = 1'200;

/// Which pieces the row is about.
void readWhich(const SheetRow &row, Interval &one)
{
    if (row.has(OfKind)) {
        const auto kind = parseKind(row.text(OfKind));
        if (kind)
            one.kind = *kind;
        else
            row.refused(OfKind, kind.error(), row.cell(OfKind).within);
    }
    one.medium = row.text(OfMedium);
    one.part = row.text(OfPart);
    one.position = row.text(AtPosition);
    one.car = row.text(OfCar);
    if (one.rank() == 0)
        row.wrong(OfKind, {"the row says of nothing what it is about",
                           "Name a kind, medium, part, position or car."});
}

void readEvery(const SheetRow &row, Interval &one)
{
    one.runs = row.whole(EveryRuns, 1, RunsMost);
    one.hours = row.numberAbove(EveryHours, 0);
    one.events = row.whole(EveryEvents, 1, RunsMost);
    one.months = row.whole(EveryMonths, 1, MonthsMost);
    one.age = row.whole(Age, 1, MonthsMost);
    one.washes = row.whole(Washes, 1, RunsMost);
    one.warnPercent = row.whole(WarnPercent, 0, 100).value_or(one.warnPercent);
    one.warnDays = row.whole(WarnDays, 0, RunsMost).value_or(one.warnDays);
    const bool saysWhen = row.has(EveryRuns) || row.has(EveryHours) || row.has(EveryEvents) ||
                          row.has(EveryMonths) || row.has(Age);
    if (!saysWhen)
        row.wrong(Do, {"the row does not say when", "Give it runs, hours, events, months or age."});
    if (one.washes && one.todo != Work::Washed)
        row.wrong(Washes, {"only what is washed has a number of washes", "Leave it empty."});
}

Interval readInterval(const SheetRow &row)
{
    Interval one;
    readWhich(row, one);
    (void)row.required(Do);
    if (const auto word = row.word(Do, DoWords))
        one.todo = Works.at(*word);
    readEvery(row, one);
    if (one.todo == Work::Washed && isNeverWashed(one.medium))
        row.wrong(Do, {"of this medium nothing is ever washed", "Write replace."});
    one.source = row.text(Source);
    return one;
}

bool isTheSame(const Interval &a, const Interval &b)
{
    return a.kind == b.kind && sameFolded(a.medium, b.medium) && sameFolded(a.part, b.part) &&
           sameFolded(a.position, b.position) && sameFolded(a.car, b.car) && a.todo == b.todo;
}

} // namespace

Result<Intervals> readIntervals(std::string_view text, std::string name)
{
    const auto table = readCsv(text, std::move(name));
    if (!table)
        return tl::unexpected(table.error());
    Problems problems(1);
    const Sheet sheet(*table, Headings, problems);
    Intervals intervals;
    if (sheet.require({Do}, problems))
        for (std::size_t i = 0; i < sheet.rowCount() && !problems.isFull(); ++i) {
            const SheetRow row(sheet, i, problems);
            Interval one = readInterval(row);
            if (std::any_of(intervals.begin(), intervals.end(),
                            [&one](const Interval &other) { return isTheSame(one, other); }))
                row.wrong(Do, {"the same stands in a row above", "Take one of the two rows out."});
            intervals.push_back(std::move(one));
        }
    if (!problems.isEmpty())
        return tl::unexpected(std::move(problems.all().front()));
    return intervals;
}

const Intervals &usualIntervals()
{
    static const Intervals usual = [] {
        auto read = readIntervals(embedded::usualIntervals, "usual_intervals.csv");
        assert(read);
        return std::move(*read);
    }();
    return usual;
}

} // namespace flarestock
