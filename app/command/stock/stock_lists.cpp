// SPDX-License-Identifier: MIT

#include "app/command/stock/stock_lists.h"

#include "app/command/text_table.h"
#include "app/stockroom/asked.h"
#include "app/workshop/made_up.h"

namespace flarestock {

namespace {

using Side = TextTable::Side;

std::string fromText(const FillLine &line)
{
    std::string said;
    for (const auto &source : line.from)
        said += (said.empty() ? "" : ", ") + spoken(source.quantity, *line.part) + " from " +
                source.place;
    if (line.toBuy > 0)
        said += (said.empty() ? "" : ", ") + spoken(line.toBuy, *line.part) + " to buy";
    return said;
}

} // namespace

QJsonArray levelsDocument(const std::vector<LevelSeen> &levels)
{
    QJsonArray all;
    for (const LevelSeen &seen : levels)
        all.append(QJsonObject{{QStringLiteral("part"), jsonText(seen.part)},
                               {QStringLiteral("place"), jsonText(seen.place)},
                               {QStringLiteral("level"), jsonText(text(seen.level))},
                               {QStringLiteral("holds"), textOrNull(seen.holds)},
                               {QStringLiteral("on"), jsonText(dayOf(seen.at))}});
    return all;
}

std::string levelsTable(const std::vector<LevelSeen> &levels)
{
    TextTable table({{"not counted", Side::Left},
                     {"place", Side::Left},
                     {"level", Side::Left},
                     {"seen on", Side::Left},
                     {"holds", Side::Left}});
    for (const LevelSeen &seen : levels)
        table.add(
            {seen.part, seen.place, std::string(text(seen.level)), dayOf(seen.at), seen.holds});
    return table.text();
}

QJsonObject belowDocument(const std::vector<FillLine> &lines, const std::vector<LevelSeen> &levels)
{
    QJsonArray below;
    for (const FillLine &line : lines) {
        const auto amount = [&line](std::int64_t quantity) {
            return jsonText(amountText(quantity, *line.part));
        };
        QJsonArray from;
        for (const auto &source : line.from)
            from.append(QJsonObject{{QStringLiteral("place"), jsonText(source.place)},
                                    {QStringLiteral("take"), amount(source.quantity)}});
        below.append(QJsonObject{{QStringLiteral("part"), jsonText(line.part->number)},
                                 {QStringLiteral("place"), jsonText(line.keeping.place)},
                                 {QStringLiteral("has"), amount(line.has)},
                                 {QStringLiteral("min"), amount(line.keeping.least)},
                                 {QStringLiteral("max"), amount(line.keeping.most)},
                                 {QStringLiteral("fillUp"), amount(line.keeping.most - line.has)},
                                 {QStringLiteral("from"), from},
                                 {QStringLiteral("buy"), amount(line.toBuy)},
                                 {QStringLiteral("unit"), jsonText(text(line.part->unit))}});
    }
    return {{QStringLiteral("below"), below}, {QStringLiteral("levels"), levelsDocument(levels)}};
}

std::string belowTable(const std::vector<FillLine> &lines)
{
    TextTable table({{"part", Side::Left},
                     {"place", Side::Left},
                     {"free there", Side::Right},
                     {"minimum", Side::Right},
                     {"maximum", Side::Right},
                     {"fill up", Side::Left},
                     {"what it is", Side::Left}});
    for (const FillLine &line : lines)
        table.add({line.part->number, line.keeping.place, spoken(line.has, *line.part),
                   spoken(line.keeping.least, *line.part), spoken(line.keeping.most, *line.part),
                   fromText(line), line.part->description});
    return table.text();
}

QJsonObject awayDocument(const std::vector<Away> &away, std::string_view day)
{
    QJsonArray all;
    for (const Away &one : away)
        all.append(QJsonObject{
            {QStringLiteral("as"), jsonText(text(one.as))},
            {QStringLiteral("part"), jsonText(one.part->number)},
            {QStringLiteral("quantity"), jsonText(amountText(one.quantity, *one.part))},
            {QStringLiteral("unit"), jsonText(text(one.part->unit))},
            {QStringLiteral("lot"), textOrNull(one.lot)},
            {QStringLiteral("from"), jsonText(one.from)},
            {QStringLiteral("at"), jsonText(one.at)},
            {QStringLiteral("since"), one.since == 0 ? QJsonValue() : jsonText(dayOf(one.since))},
            {QStringLiteral("until"), textOrNull(one.until)},
            {QStringLiteral("overdue"), one.isOverdue(day)},
            {QStringLiteral("movement"),
             one.movement ? jsonText(one.movement->text()) : QJsonValue()}});
    return {{QStringLiteral("away"), all}};
}

std::string awayTable(const std::vector<Away> &away, std::string_view day)
{
    TextTable table({{"away", Side::Left},
                     {"part", Side::Left},
                     {"quantity", Side::Right},
                     {"from", Side::Left},
                     {"at", Side::Left},
                     {"since", Side::Left},
                     {"until", Side::Left},
                     {"lot", Side::Left}});
    for (const Away &one : away)
        table.add({std::string(text(one.as)), one.part->number, spoken(one.quantity, *one.part),
                   one.from, one.at, one.since == 0 ? "" : dayOf(one.since),
                   one.until + (one.isOverdue(day) ? ", overdue" : ""), one.lot});
    return table.text();
}

} // namespace flarestock
