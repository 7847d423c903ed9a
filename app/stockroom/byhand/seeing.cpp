// SPDX-License-Identifier: MIT

#include "app/stockroom/byhand/seeing.h"

namespace flarestock {

namespace {

/// A part, or a tin of odds that is none and says what it holds.
Result<std::string> nameAsked(const LevelWords &asked, const Workshop &workshop)
{
    const auto part = partAsked(asked.part, workshop);
    if (!part)
        return asked.holds.empty() ? Result<std::string>(tl::unexpected(part.error()))
                                   : Result<std::string>(asked.part);
    if (isLength((*part)->unit))
        return problem((*part)->number, "comes in lengths, and they are known",
                       "Count it: flarestock count.");
    const auto stock = workshop.shelf.find((*part)->number);
    if (stock != workshop.shelf.end() && isCounted(**part, stock->second))
        return problem(
            (*part)->number, "is counted: " + stock->second.onHand.spoken() + " on hand",
            "Count it: flarestock count. What is counted to 0 can be seen by its level.");
    return (*part)->number;
}

} // namespace

Result<Count> countOf(const CountWords &asked, const Workshop &workshop, const By &by)
{
    const auto part = partAsked(asked.part, workshop);
    if (!part)
        return tl::unexpected(part.error());
    const auto place = stockPlaceAsked(asked.place, workshop.ledger);
    if (!place)
        return tl::unexpected(place.error());
    const auto found = quantityAsked(asked.found, **part);
    if (!found)
        return tl::unexpected(found.error());
    if (*found < 0)
        return problem(asked.found, "is below zero", "Write what lies there.");
    const auto key =
        piecesAsked({(*place)->id, asked.lot, asked.condition}, workshop.ledger, **part);
    if (!key)
        return tl::unexpected(key.error());
    Count count;
    count.id = *by.action;
    count.key = *key;
    count.found = *found;
    count.who = by.who;
    count.why = by.why;
    count.at = by.at;
    return count;
}

Result<LevelSeen> levelOf(const LevelWords &asked, const Workshop &workshop, const By &by)
{
    const auto name = nameAsked(asked, workshop);
    if (!name)
        return tl::unexpected(name.error());
    const auto place = stockPlaceAsked(asked.place, workshop.ledger);
    if (!place)
        return tl::unexpected(place.error());
    const auto level = parseStockLevel(asked.level);
    if (!level)
        return tl::unexpected(level.error());
    return LevelSeen{*by.action, *name, (*place)->id, *level, asked.holds, by.who, by.at};
}

Result<Keeping> keepingOf(const KeepWords &asked, const Workshop &workshop, const By &by)
{
    const auto part = partAsked(asked.part, workshop);
    if (!part)
        return tl::unexpected(part.error());
    const auto place = stockPlaceAsked(asked.place, workshop.ledger);
    if (!place)
        return tl::unexpected(place.error());
    const auto least = quantityAsked(asked.least, **part, "--min");
    if (!least)
        return tl::unexpected(least.error());
    const auto most = asked.most.empty() ? least : quantityAsked(asked.most, **part, "--max");
    if (!most)
        return tl::unexpected(most.error());
    if (*least < 0 || *most < *least)
        return problem(asked.least + " to " + asked.most, "is no minimum and maximum",
                       "Write a minimum of zero or more, and a maximum not below it.");
    return Keeping{*by.action, (*part)->number, (*place)->id, *least, *most, by.who, by.at};
}

Result<std::optional<Record>> wordBefore(const Record &past, const ShopFile &file)
{
    const auto records = file.records();
    if (!records)
        return tl::unexpected(records.error());
    std::optional<Record> before;
    bool passed = false;
    for (const Record &one : *records) {
        if (one.kind != past.kind || one.subject != past.subject ||
            one.field("place") != past.field("place"))
            continue;
        if (passed)
            return problem(past.subject + " at " + past.field("place"), "was said anew since",
                           "Say how it is now.");
        passed = one.id == past.id;
        before = passed ? before : std::optional(one);
    }
    if (before || past.kind != RecordKind::Keeping)
        return before;
    auto keeping = Keeping::read(past);
    if (!keeping)
        return tl::unexpected(keeping.error());
    keeping->least = keeping->most = 0;
    return std::optional(keeping->asRecord());
}

} // namespace flarestock
