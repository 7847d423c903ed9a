// SPDX-License-Identifier: MIT
//
// `flarestock move`: so much of a part from one place to another.

#include "app/command/command.h"

#include "app/workshop/demo_shop.h"
#include "app/workshop/workshop.h"
#include "model/exact/case_fold.h"
#include "model/exact/nearest_word.h"

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
    std::string condition;
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

/// Which of the pieces of a part at a place are meant.
struct Pieces {
    std::string lot;
    PieceCondition condition = PieceCondition::New;
};

/// Those of the lot and condition that were named; where that leaves several, the new ones without
/// a lot; and where even they are not there, nobody can know which.
Result<Pieces> piecesOf(const MoveAsked &asked, const Workshop &workshop, const Part &part)
{
    Pieces named{asked.lot, PieceCondition::New};
    if (!asked.condition.empty()) {
        const auto condition = parsePieceCondition(asked.condition);
        if (!condition)
            return tl::unexpected(condition.error());
        named.condition = *condition;
    }
    std::vector<Pieces> there;
    std::string lots;
    for (const auto &[key, balance] : workshop.ledger.balances()) {
        if (key.part != part.number || key.place != asked.from || balance.quantity <= 0 ||
            (!asked.lot.empty() && key.lot != asked.lot) ||
            (!asked.condition.empty() && key.condition != named.condition))
            continue;
        if (key.lot.empty() && key.condition == PieceCondition::New)
            return Pieces{};
        there.push_back({key.lot, key.condition});
        lots += (lots.empty() ? "" : "; ") + (key.lot.empty() ? "" : key.lot + ", ") +
                std::string(text(key.condition));
    }
    if (there.size() > 1)
        return problem(part.number, "lies at " + asked.from + " as " + lots,
                       "Say which: --lot, or --condition.");
    return there.empty() ? named : there.front();
}

Result<MovementId> idOf(const MoveAsked &asked)
{
    return asked.id.empty() ? Result<MovementId>(freshId()) : MovementId::parse(asked.id);
}

/// What is probably meant; `otherwise` where nothing is near.
std::string remedyFor(const std::string &typed, const std::vector<std::string_view> &words,
                      std::string otherwise)
{
    const std::string_view near = nearestWord(typed, words);
    return near.empty() ? std::move(otherwise) : "Perhaps " + std::string(near) + " is meant.";
}

Result<const Part *> partOf(const std::string &typed, const Catalogue &catalogue)
{
    if (const Part *part = catalogue.find(typed))
        return part;
    std::vector<std::string_view> numbers;
    for (const Part &part : catalogue.parts())
        numbers.push_back(part.number);
    return problem(typed, "is no part of the catalogue",
                   remedyFor(typed, numbers, "Check the part number."));
}

Result<const Place *> placeOf(const std::string &typed, const Workshop &workshop)
{
    std::string known;
    std::vector<std::string_view> ids;
    for (const Place &place : workshop.ledger.places()) {
        if (folded(place.id) == folded(typed))
            return &place;
        known += (known.empty() ? "" : ", ") + place.id;
        ids.push_back(place.id);
    }
    return problem(typed, "is no place of this shop",
                   remedyFor(typed, ids, "Places are: " + known + "."));
}

/// `before` is the movement that has this id in the journal already, where there is one: the same
/// words then mean the same pieces, although they do not lie there any more.
Result<Movement> movementOf(const MoveAsked &asked, const Workshop &workshop,
                            const std::optional<Movement> &before)
{
    const auto part = partOf(asked.part, workshop.catalogue);
    if (!part)
        return tl::unexpected(part.error());
    const auto from = placeOf(asked.from, workshop);
    if (!from)
        return tl::unexpected(from.error());
    const auto to = placeOf(asked.to, workshop);
    if (!to)
        return tl::unexpected(to.error());
    const auto quantity = quantityOf(asked.quantity, **part);
    if (!quantity)
        return tl::unexpected(quantity.error());
    MoveAsked at = asked;
    at.from = (*from)->id;
    if (before && at.lot.empty())
        at.lot = before->lot;
    if (before && at.condition.empty())
        at.condition = text(before->condition);
    const auto pieces = piecesOf(at, workshop, **part);
    if (!pieces)
        return tl::unexpected(pieces.error());
    Movement movement;
    movement.part = (*part)->number;
    movement.quantity = *quantity;
    movement.from = at.from;
    movement.to = (*to)->id;
    movement.lot = pieces->lot;
    movement.condition = pieces->condition;
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
    const auto id = idOf(asked);
    if (!id)
        return outcome.refuse(id.error());
    const auto before = file->movement(*id);
    if (!before)
        return outcome.refuse(before.error());
    auto movement = movementOf(asked, **workshop, *before);
    if (!movement)
        return outcome.refuse(movement.error());
    movement->id = *id;
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
    command->add_option("--condition", asked->condition,
                        "new, used and good, to be checked, not to be used; likewise");
    command->add_option("--who", asked->who, "who moves it");
    command->add_option("--why", asked->why, "why");
    command->add_flag("--json", asked->json, JsonHelp);
    command->callback([asked, &outcome] { answerMove(*asked, outcome); });
}

} // namespace flarestock
