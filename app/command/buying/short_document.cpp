// SPDX-License-Identifier: MIT

#include "app/command/buying/short_words.h"

#include <QJsonArray>

namespace flarestock {

namespace {

QJsonArray comingArray(const std::vector<NeedLine::Coming> &coming)
{
    QJsonArray all;
    for (const NeedLine::Coming &one : coming)
        all.append(QJsonObject{{QStringLiteral("order"), jsonText(one.order)},
                               {QStringLiteral("day"), jsonText(one.day)},
                               {QStringLiteral("quantity"), jsonAmount(one.quantity)}});
    return all;
}

QJsonArray texts(const std::vector<std::string> &words)
{
    QJsonArray all;
    for (const std::string &word : words)
        all.append(jsonText(word));
    return all;
}

QJsonObject lineDocument(const NeedLine &line)
{
    return {{QStringLiteral("part"), jsonText(line.part->number)},
            {QStringLiteral("description"), jsonText(line.part->description)},
            {QStringLiteral("unit"), jsonText(text(line.part->unit))},
            {QStringLiteral("for"), jsonText(line.whom)},
            {QStringLiteral("place"), line.isPlace},
            {QStringLiteral("work"), textOrNull(line.work)},
            {QStringLiteral("day"), textOrNull(line.day)},
            {QStringLiteral("need"), jsonAmount(line.need)},
            {QStringLiteral("own"), jsonAmount(line.own)},
            {QStringLiteral("free"), jsonAmount(line.free)},
            {QStringLiteral("coming"), comingArray(line.coming)},
            {QStringLiteral("comingLate"), comingArray(line.late)},
            {QStringLiteral("short"), jsonAmount(line.shortBy)},
            {QStringLiteral("orderBy"), textOrNull(line.orderBy)},
            {QStringLiteral("pastDue"), line.isPastDue},
            {QStringLiteral("quicker"), textOrNull(line.quicker)},
            {QStringLiteral("quickerBy"), textOrNull(line.quickerBy)},
            {QStringLiteral("instead"), texts(line.instead)}};
}

QString amountOf(std::int64_t value, Criterion criterion)
{
    return jsonText(criterion == Criterion::CostMicro ? Decimal::scaled(value, 6).stripped().text()
                                                      : std::to_string(value));
}

QJsonObject togetherDocument(const NeedsTogether &together)
{
    QJsonArray builds;
    for (const auto &[build, rank] : together.builds)
        builds.append(
            QJsonObject{{QStringLiteral("build"), jsonText(build)},
                        {QStringLiteral("toBuy"), rank.toBuy},
                        {QStringLiteral("pieces"), rank.pieces},
                        {QStringLiteral("cost"), amountOf(rank.costMicro, Criterion::CostMicro)}});
    QJsonValue least;
    if (const auto &bound = together.bound)
        least = QJsonObject{{QStringLiteral("build"), jsonText(bound->build)},
                            {QStringLiteral("of"), jsonText(text(bound->of))},
                            {QStringLiteral("atLeast"), amountOf(bound->atLeast, bound->of)},
                            {QStringLiteral("is"), amountOf(bound->is, bound->of)}};
    QJsonArray others;
    for (const OtherWay &other : together.otherWays)
        others.append(QJsonObject{{QStringLiteral("build"), jsonText(other.build)},
                                  {QStringLiteral("joint"), jsonText(other.joint)},
                                  {QStringLiteral("way"), jsonText(other.way)},
                                  {QStringLiteral("bill"), jsonText(other.bill)}});
    return {{QStringLiteral("builds"), builds},
            {QStringLiteral("searched"), together.isSearched},
            {QStringLiteral("proven"), !together.bound},
            {QStringLiteral("bound"), least},
            {QStringLiteral("otherWays"), others}};
}

} // namespace

QJsonObject needsDocument(const ShopNeeds &needs)
{
    QJsonArray lines;
    for (const NeedLine &line : needs.lines)
        lines.append(lineDocument(line));
    QJsonArray shortages;
    for (const Shortage &shortage : shortagesIn(needs)) {
        QJsonArray wanted;
        for (const Shortage::For &one : shortage.wanted)
            wanted.append(QJsonObject{{QStringLiteral("for"), jsonText(one.whom)},
                                      {QStringLiteral("quantity"), jsonAmount(one.quantity)}});
        shortages.append(QJsonObject{{QStringLiteral("part"), jsonText(shortage.part)},
                                     {QStringLiteral("quantity"), jsonAmount(shortage.quantity)},
                                     {QStringLiteral("day"), textOrNull(shortage.day)},
                                     {QStringLiteral("wanted"), wanted},
                                     {QStringLiteral("instead"), texts(shortage.instead)}});
    }
    QJsonArray levels;
    for (const LevelSeen &seen : needs.levels)
        levels.append(QJsonObject{{QStringLiteral("part"), jsonText(seen.part)},
                                  {QStringLiteral("place"), jsonText(seen.place)},
                                  {QStringLiteral("level"), jsonText(text(seen.level))}});
    return {{QStringLiteral("lines"), lines},
            {QStringLiteral("shortages"), shortages},
            {QStringLiteral("levels"), levels},
            {QStringLiteral("notes"), texts(needs.notes)},
            {QStringLiteral("together"), togetherDocument(needs.together)}};
}

QJsonObject movedDocument(const ShopNeeds &before, const ShopNeeds &after)
{
    QJsonArray changes;
    for (const ChangedNeed &moved : changesBetween(before, after)) {
        const NeedLine &line = moved.after ? *moved.after : *moved.before;
        changes.append(
            QJsonObject{{QStringLiteral("part"), jsonText(line.part->number)},
                        {QStringLiteral("for"), jsonText(line.whom)},
                        {QStringLiteral("change"), jsonText(changeText(moved))},
                        {QStringLiteral("before"),
                         moved.before ? QJsonValue(lineDocument(*moved.before)) : QJsonValue()},
                        {QStringLiteral("after"),
                         moved.after ? QJsonValue(lineDocument(*moved.after)) : QJsonValue()}});
    }
    QJsonObject document = needsDocument(after);
    document.insert(QStringLiteral("changes"), changes);
    return document;
}

} // namespace flarestock
