// SPDX-License-Identifier: MIT

#include "app/command/buying/short_words.h"

#include "app/command/text_table.h"
#include "app/sheet/needs_rows.h"

#include <algorithm>

namespace flarestock {

namespace {

bool isOfSameWant(const NeedLine &a, const NeedLine &b)
{
    return a.part == b.part && a.whom == b.whom && a.work == b.work;
}

const NeedLine *sameWantIn(const ShopNeeds &needs, const NeedLine &line)
{
    const auto found =
        std::find_if(needs.lines.begin(), needs.lines.end(),
                     [&line](const NeedLine &other) { return isOfSameWant(line, other); });
    return found == needs.lines.end() ? nullptr : &*found;
}

std::string comingIn(const NeedLine *line)
{
    return line ? comingText(line->coming) : std::string();
}

Decimal shortIn(const NeedLine *line)
{
    return line ? line->shortBy : Decimal();
}

Decimal fromStockIn(const NeedLine *line)
{
    return line ? line->own + line->free : Decimal();
}

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
    if (!moved.after)
        return "not wanted any more";
    if (!moved.before)
        return "wanted now";
    const Decimal before = shortIn(moved.before);
    const Decimal after = shortIn(moved.after);
    if (before == after && fromStockIn(moved.before) == fromStockIn(moved.after))
        return comingIn(moved.before) == comingIn(moved.after) ? "another day to order"
                                                               : "met by another order";
    if (after.sign() > 0 && before.sign() <= 0)
        return "becomes short";
    if (after.sign() <= 0 && before.sign() > 0)
        return "is covered now";
    return after > before ? "lacks more" : after < before ? "lacks less" : "changes hands";
}

std::vector<ChangedNeed> changesBetween(const ShopNeeds &before, const ShopNeeds &after)
{
    std::vector<ChangedNeed> changes;
    for (const NeedLine &line : before.lines) {
        const NeedLine *then = sameWantIn(after, line);
        const bool isSame = then && then->shortBy == line.shortBy && then->need == line.need &&
                            fromStockIn(then) == fromStockIn(&line) &&
                            comingIn(then) == comingIn(&line) && then->orderBy == line.orderBy;
        if (!isSame)
            changes.push_back({&line, then});
    }
    for (const NeedLine &line : after.lines)
        if (!sameWantIn(before, line))
            changes.push_back({nullptr, &line});
    return changes;
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
