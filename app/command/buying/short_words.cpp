// SPDX-License-Identifier: MIT

#include "app/command/buying/short_words.h"

#include "app/command/text_table.h"
#include "app/sheet/needs_rows.h"

namespace flarestock {

namespace {

std::string amountText(std::int64_t value, Criterion criterion)
{
    return criterion == Criterion::CostMicro
               ? Decimal::scaled(value, 6).rescaled(2, Rounding::HalfEven).text()
               : std::to_string(value);
}

/// How far it is proven, and where builders would see something else on a bill.
std::string togetherText(const NeedsTogether &together)
{
    if (together.builds.empty())
        return {};
    std::string all = "The joints of " + counted(together.builds.size(), "build") + " together";
    if (const auto &bound = together.bound)
        all += ": not proven to be the best: of " + bound->build + ", " +
               std::string(text(bound->of)) + " at least " + amountText(bound->atLeast, bound->of) +
               ", is " + amountText(bound->is, bound->of) + ".\n";
    else
        all += ", the earliest first: no choice of ways is better.\n";
    if (!together.otherWays.empty())
        all += "Counted on in another way than the bill of that build by itself has it:\n";
    for (const OtherWay &other : together.otherWays)
        all += "  " + other.build + ": --pick '" + other.joint + "=" + other.way +
               "', its bill has " + other.bill + "\n";
    return all;
}

} // namespace

std::string changeText(const ChangedNeed &moved)
{
    switch (changeOf(moved)) {
    case NeedChange::NotWanted:
        return "not wanted any more";
    case NeedChange::Wanted:
        return "wanted now";
    case NeedChange::OtherDay:
        return "another day to order";
    case NeedChange::OtherOrder:
        return "met by another order";
    case NeedChange::BecomesShort:
        return "becomes short";
    case NeedChange::Covered:
        return "is covered now";
    case NeedChange::LacksMore:
        return "lacks more";
    case NeedChange::LacksLess:
        return "lacks less";
    case NeedChange::ChangesHands:
        return "changes hands";
    }
    return {};
}

std::size_t shortLines(const ShopNeeds &needs)
{
    return lacking(needs).size();
}

std::string needsTables(const ShopNeeds &needs)
{
    using Side = TextTable::Side;
    using Shown = TextTable::Shown;
    TextTable table({{"part", Side::Left},
                     {"short", Side::Right},
                     {"of", Side::Right},
                     {"for", Side::Left},
                     {"needed by", Side::Left},
                     {"order by", Side::Left},
                     {"comes too late", Side::Left, Shown::WhereFilled},
                     {"free instead", Side::Left, Shown::WhereFilled},
                     {"what it is", Side::Left}});
    const auto lines = lacking(needs);
    for (const NeedLine *line : lines) {
        const auto spoken = [line](const Decimal &amount) {
            return Quantity{amount, line->part->unit}.spoken();
        };
        table.add({line->part->number, spoken(line->shortBy), spoken(line->need), wantedBy(*line),
                   line->day.empty() ? "-" : line->day, orderByText(*line), comingText(line->late),
                   commas(line->instead), line->part->description});
    }
    std::string all = lines.empty() ? std::string() : table.text();
    for (const LevelSeen &seen : needs.levels)
        all += "  " + seen.part + " at " + seen.place + " is " + std::string(text(seen.level)) +
               ": nobody counts it\n";
    for (const std::string &note : needs.notes)
        all += note + "\n";
    return all + togetherText(needs.together);
}

std::string movedTable(const ShopNeeds &before, const ShopNeeds &after)
{
    using Side = TextTable::Side;
    TextTable table({{"part", Side::Left},
                     {"for", Side::Left},
                     {"what changes", Side::Left},
                     {"short before", Side::Right},
                     {"short then", Side::Right},
                     {"from stock before", Side::Right},
                     {"from stock then", Side::Right},
                     {"order by", Side::Left}});
    const auto changes = changesBetween(before, after);
    for (const ChangedNeed &moved : changes) {
        const NeedLine &line = moved.after ? *moved.after : *moved.before;
        const auto spoken = [&line](const Decimal &amount) {
            return Quantity{amount, line.part->unit}.spoken();
        };
        table.add({line.part->number, line.whom, changeText(moved), spoken(shortIn(moved.before)),
                   spoken(shortIn(moved.after)), spoken(fromStockIn(moved.before)),
                   spoken(fromStockIn(moved.after)),
                   moved.after ? orderByText(*moved.after) : std::string()});
    }
    return changes.empty() ? "Nothing changes.\n" : table.text();
}

} // namespace flarestock
