// SPDX-License-Identifier: MIT
//
// `flarestock stock`: what lies where, what of it is free, and why the rest is not.

#include "app/command/stock/stock_lists.h"
#include "app/command/text_table.h"
#include "app/stockroom/asked.h"
#include "app/workshop/clock.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace flarestock {

namespace {

struct ListAsked {
    std::string shop;
    std::string find;
    std::string on;
    bool below = false;
    bool away = false;
    bool json = false;
};

QJsonObject stockDocument(const std::vector<StockLine> &lines, const std::vector<LevelSeen> &levels)
{
    QJsonArray stock;
    for (const auto &line : lines)
        stock.append(QJsonObject{
            {QStringLiteral("part"), jsonText(line.part->number)},
            {QStringLiteral("place"), jsonText(line.key.place)},
            {QStringLiteral("onHand"), jsonText(amountText(line.onHand, *line.part))},
            {QStringLiteral("promised"), jsonText(amountText(line.promised(), *line.part))},
            {QStringLiteral("free"), jsonText(amountText(line.free, *line.part))},
            {QStringLiteral("notFree"), textOrNull(line.notFreeBecause())},
            {QStringLiteral("forCar"), textOrNull(line.forCar)},
            {QStringLiteral("unit"), jsonText(text(line.part->unit))},
            {QStringLiteral("lot"), textOrNull(line.key.lot)},
            {QStringLiteral("condition"), jsonText(text(line.key.condition))}});
    return {{QStringLiteral("stock"), stock}, {QStringLiteral("levels"), levelsDocument(levels)}};
}

std::string stockTable(const std::vector<StockLine> &lines)
{
    using Side = TextTable::Side;
    TextTable table({{"part", Side::Left},
                     {"place", Side::Left},
                     {"on hand", Side::Right},
                     {"free", Side::Right},
                     {"condition", Side::Left},
                     {"not free", Side::Left},
                     {"what it is", Side::Left},
                     {"lot", Side::Left}});
    for (const auto &line : lines)
        table.add({line.part->number, line.key.place, spoken(line.onHand, *line.part),
                   line.free == 0 ? "-" : spoken(line.free, *line.part),
                   std::string(text(line.key.condition)), line.notFreeBecause(),
                   line.part->description, line.key.lot});
    return table.text();
}

/// Those in which every word stands.
std::vector<LevelSeen> levelsFound(const Workshop &workshop, const std::string &find)
{
    std::vector<LevelSeen> found;
    for (const auto &[at, seen] : workshop.notes.levels) {
        const Part *part = workshop.part(seen.part);
        if (holdsWords(seen.part + " " + seen.place + " " + seen.holds + " not counted " +
                           (part ? part->description : std::string()),
                       find))
            found.push_back(seen);
    }
    return found;
}

void answerBelow(const ListAsked &asked, const std::string &day, CommandOutcome &outcome)
{
    const auto workshop = Workshop::open(asked.shop);
    if (!workshop)
        return outcome.refuse(workshop.error());
    const auto lines = belowMinimum(**workshop, day);
    const auto levels = lowLevels((*workshop)->notes);
    if (asked.json)
        return outcome.print(belowDocument(lines, levels));
    if (!lines.empty())
        outcome.out += belowTable(lines);
    if (!levels.empty())
        outcome.out += levelsTable(levels);
    outcome.print(std::to_string(lines.size() + levels.size()) + " to fill up");
}

void answerAway(const ListAsked &asked, const std::string &day, CommandOutcome &outcome)
{
    const auto file = ShopFile::open(asked.shop, OpenMode::ReadOnly);
    if (!file)
        return outcome.refuse(file.error());
    const auto workshop = Workshop::read(*file);
    if (!workshop)
        return outcome.refuse(workshop.error());
    const auto movements = file->movements();
    if (!movements)
        return outcome.refuse(movements.error());
    const auto away = awayNow(*movements, **workshop);
    if (asked.json)
        return outcome.print(awayDocument(away, day));
    if (!away.empty())
        outcome.out += awayTable(away, day);
    outcome.print(std::to_string(away.size()) + " away");
}

void answerStock(const ListAsked &asked, CommandOutcome &outcome)
{
    const auto day = dayAsked(asked.on, nowMilliseconds());
    if (!day)
        return outcome.refuse(day.error());
    if (asked.below)
        return answerBelow(asked, *day, outcome);
    if (asked.away)
        return answerAway(asked, *day, outcome);
    const auto workshop = Workshop::open(asked.shop);
    if (!workshop)
        return outcome.refuse(workshop.error());
    const auto lines = stockLines(**workshop, asked.find, *day);
    const auto levels = levelsFound(**workshop, asked.find);
    if (asked.json)
        return outcome.print(stockDocument(lines, levels));
    if (!lines.empty())
        outcome.out += stockTable(lines);
    if (!levels.empty())
        outcome.out += levelsTable(levels);
    outcome.print(counted(lines.size() + levels.size(), "line"));
}

} // namespace

void addStockCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<ListAsked>();
    CLI::App *command = app.add_subcommand(
        "stock", "Lists what lies where, what of it is free, and why the rest is not.");
    command->add_option("--shop", asked->shop, ShopHelp)->required();
    command->add_option("--find", asked->find,
                        "words, all of which must stand in the line: \"orb -8\"");
    command->add_option("--on", asked->on, "as of this day: 2026-12-12; today where not said");
    auto *below = command->add_flag("--below", asked->below,
                                    "what is below its minimum (see keep) or low, and what fills "
                                    "it up");
    command->add_flag("--away", asked->away, "what is lent, borrowed or out for repair, until when")
        ->excludes(below);
    command->add_flag("--json", asked->json, JsonHelp);
    command->callback([asked, &outcome] { answerStock(*asked, outcome); });
}

} // namespace flarestock
