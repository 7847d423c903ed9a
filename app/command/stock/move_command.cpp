// SPDX-License-Identifier: MIT
//
// `flarestock move`: so much of a part from one place to another.

#include "app/command/shop_options.h"
#include "app/workshop/made_up.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace flarestock {

namespace {

struct MoveAsked : ShopAsked {
    std::string part;
    std::string quantity;
    std::string from;
    std::string to;
    std::string lot;
    std::string condition;
    std::string now;
    std::string until;
    bool despitePromise = false;
};

/// What it is from then on, and until when it is lent.
Result<void> addWhatChanges(const MoveAsked &asked, const StockAsked &stock, Movement &movement)
{
    const Place &from = *stock.from;
    const Place &to = *stock.to;
    if (!asked.now.empty()) {
        const auto now = parsePieceCondition(asked.now);
        if (!now)
            return tl::unexpected(now.error());
        if (*now != movement.condition)
            movement.newCondition = *now;
        movement.deed = movement.from == movement.to ? Deed::Judge : movement.deed;
    }
    const bool isAway = to.kind == PlaceKind::Borrower || to.kind == PlaceKind::Repair ||
                        from.kind == PlaceKind::Borrower ||
                        (from.kind == PlaceKind::Car && to.kind == PlaceKind::Car);
    if (!asked.until.empty() && !isAway)
        return problem(to.id, "is nobody whom something is lent to, and no repairer",
                       "Leave out --until, or name a place of the kind borrower or repair.");
    movement.until = asked.until;
    if (to.kind == PlaceKind::Borrower)
        movement.deed = Deed::Lend;
    return {};
}

/// `before` is the movement that has this id in the journal already, where there is one: the same
/// words then mean the same pieces, although they do not lie there any more.
Result<Movement> movementAsked(const MoveAsked &asked, const OpenShop &shop,
                               const std::optional<Movement> &before)
{
    const Workshop &workshop = *shop.workshop;
    if (!asked.until.empty() && !isDay(asked.until))
        return problem("--until " + asked.until, "is no day", "Write it as 2026-12-01.");
    if (!asked.until.empty() && !before && asked.until < dayOf(shop.by.at))
        return problem("--until " + asked.until, "is past, so that it would be overdue at once",
                       "Write the day by which it is to be back.");
    const auto stock = stockAsked({asked.part, asked.quantity, asked.from, asked.to}, workshop);
    if (!stock)
        return tl::unexpected(stock.error());
    PiecesAsked at{stock->from->id, asked.lot, asked.condition};
    if (before && at.lot.empty())
        at.lot = before->lot;
    if (before && at.condition.empty())
        at.condition = text(before->condition);
    const auto pieces = piecesAsked(at, workshop.ledger, *stock->part);
    if (!pieces)
        return tl::unexpected(pieces.error());
    Movement movement = movementOf(*pieces, stock->quantity, stock->to->id, Deed::Move);
    if (const auto changes = addWhatChanges(asked, *stock, movement); !changes)
        return tl::unexpected(changes.error());
    return movement;
}

void answerMove(const MoveAsked &asked, OpenShop &shop, CommandOutcome &outcome)
{
    const auto before = shop.file.movement(*shop.by.action);
    if (!before)
        return outcome.refuse(before.error());
    const auto movement = movementAsked(asked, shop, *before);
    if (!movement)
        return outcome.refuse(movement.error());
    Action action = numbered({*movement}, shop.by);
    action.promised = asked.despitePromise ? Promised::MayGo : Promised::Stays;
    const auto done = shop.file.append(action);
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
    command->add_option("--lot", asked->lot,
                        "lot, serial or piece; not needed where only one lies there");
    command->add_option("--condition", asked->condition,
                        "new, used and good, to be checked, not to be used");
    command->add_option("--now", asked->now,
                        "what it is from now on; from a place to itself only that changes");
    command->add_option("--until", asked->until,
                        "of what is lent, borrowed or out for repair: the day that it comes back");
    command->add_flag("--despite-promise", asked->despitePromise,
                      "although a build is promised it");
    addShopOptions(*command, *asked);
    command->callback([asked, &outcome] {
        withShop(*asked, OpenMode::ReadWrite, outcome,
                 [&](OpenShop &shop) { answerMove(*asked, shop, outcome); });
    });
}

} // namespace flarestock
