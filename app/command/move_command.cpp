// SPDX-License-Identifier: MIT
//
// `flarestock move`: so much of a part from one place to another.

#include "app/command/command.h"

#include "app/workshop/demo_shop.h"
#include "app/workshop/workshop.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace flarestock {

namespace {

struct MoveAsked {
    std::string part;
    std::string quantity;
    std::string from;
    std::string to;
    std::string shop;
    std::string id;
    std::string lot;
    std::string condition = "new";
    std::string who;
    std::string why;
    bool json = false;
};

/// "2", "66 in", "5 ft 6 in" as smallest units of the part; a bare number counts in its unit.
Result<std::int64_t> quantityOf(const std::string &typed, const Part &part)
{
    auto quantity = Quantity::parse(typed);
    if (!quantity)
        return tl::unexpected(quantity.error());
    if (const auto bare = Decimal::parse(typed))
        quantity = Quantity{*bare, part.unit};
    const auto inUnit = quantity->exactlyIn(part.unit);
    if (!inUnit)
        return tl::unexpected(inUnit.error());
    return inUnit->smallest();
}

/// The one lot that lies there, where none was named and there is only one.
std::string lotOf(const MoveAsked &asked, const Workshop &workshop, const Part &part)
{
    std::vector<std::string> lots;
    for (const auto &[key, balance] : workshop.ledger.balances()) {
        if (asked.lot.empty() && key.part == part.number && key.place == asked.from &&
            balance.quantity > 0)
            lots.push_back(key.lot);
    }
    return lots.size() == 1 ? lots.front() : asked.lot;
}

Result<Movement> movementOf(const MoveAsked &asked, const Workshop &workshop)
{
    const Part *part = workshop.catalogue.find(asked.part);
    if (part == nullptr)
        return problem(asked.part, "is no part of the catalogue", "Check the part number.");
    for (const auto &place : {asked.from, asked.to}) {
        if (workshop.ledger.place(place) == nullptr)
            return problem(place, "is no place of this shop", "Check the name of the place.");
    }
    const auto quantity = quantityOf(asked.quantity, *part);
    if (!quantity)
        return tl::unexpected(quantity.error());
    const auto condition = parsePieceCondition(asked.condition);
    if (!condition)
        return tl::unexpected(condition.error());
    Movement movement;
    movement.id = freshId();
    if (!asked.id.empty()) {
        const auto id = MovementId::parse(asked.id);
        if (!id)
            return tl::unexpected(id.error());
        movement.id = *id;
    }
    movement.part = part->number;
    movement.quantity = *quantity;
    movement.from = asked.from;
    movement.to = asked.to;
    movement.lot = lotOf(asked, workshop, *part);
    movement.condition = *condition;
    movement.who = asked.who;
    movement.why = asked.why;
    movement.at = nowMilliseconds();
    return movement;
}

void answerMove(const MoveAsked &asked, CommandOutcome &outcome)
{
    auto file = ShopFile::open(asked.shop, OpenMode::ReadWrite);
    if (!file)
        return outcome.refuse(file.error());
    const auto workshop = Workshop::read(*file);
    if (!workshop)
        return outcome.refuse(workshop.error());
    const auto movement = movementOf(asked, **workshop);
    if (!movement)
        return outcome.refuse(movement.error());
    const auto done = file->append({*movement});
    if (!done)
        return outcome.refuse(done.error());
    const auto &appended = done->front();
    if (asked.json)
        return outcome.print(
            QJsonObject{{QStringLiteral("movement"), jsonText(appended.movement.text())},
                        {QStringLiteral("already"), appended.already}});
    outcome.print((appended.already ? "was moved already: " : "moved: ") + movement->part +
                  " from " + movement->from + " to " + movement->to + ", movement " +
                  appended.movement.text());
}

} // namespace

void addMoveCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<MoveAsked>();
    CLI::App *command = app.add_subcommand("move", "Moves so much of a part to another place.");
    command->add_option("PART", asked->part, "its part number")->required();
    command->add_option("QUANTITY", asked->quantity, "\"2\", or of hose \"5 ft 6 in\"")->required();
    command->add_option("--from", asked->from, "place id: C4, trailer-2")->required();
    command->add_option("--to", asked->to, "place id")->required();
    command->add_option("--shop", asked->shop, "the shop file")->required();
    command->add_option("--id", asked->id,
                        "the movement's own UUID: repeating it moves nothing twice");
    command->add_option("--lot", asked->lot,
                        "lot, serial or piece; not needed where only one lies there");
    command
        ->add_option("--condition", asked->condition,
                     "new, used and good, to be checked, not to be used")
        ->capture_default_str();
    command->add_option("--who", asked->who, "who moves it");
    command->add_option("--why", asked->why, "why");
    command->add_flag("--json", asked->json, JsonHelp);
    command->callback([asked, &outcome] { answerMove(*asked, outcome); });
}

} // namespace flarestock
