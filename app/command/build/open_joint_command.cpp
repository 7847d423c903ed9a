// SPDX-License-Identifier: MIT
//
// `flarestock open-joint`: what a joint takes anew that is opened for service.

#include "app/command/shop_options.h"
#include "app/command/text_table.h"
#include "app/garage/cautions.h"
#include "app/stockroom/renewing.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <memory>

namespace flarestock {

namespace {

struct OpenJointAsked : ShopAsked {
    std::string build;
    std::string joint;
    bool strict = false;
};

std::string tableOf(const RenewedAction &made)
{
    using Side = TextTable::Side;
    TextTable table({{"part", Side::Left},
                     {"takes", Side::Right},
                     {"fresh", Side::Right},
                     {"short", Side::Right},
                     {"old ones used up", Side::Right},
                     {"what it is", Side::Left}});
    for (const Renewed &piece : made.pieces)
        table.add({piece.part->number, spoken(piece.need, *piece.part),
                   spoken(piece.taken, *piece.part),
                   piece.shortBy() == 0 ? "-" : spoken(piece.shortBy(), *piece.part),
                   spoken(piece.spent, *piece.part), piece.part->description});
    return table.text();
}

QJsonObject documentOf(const RenewedAction &made)
{
    QJsonArray pieces;
    for (const Renewed &piece : made.pieces) {
        const auto amount = [&piece](std::int64_t quantity) {
            return jsonText(amountText(quantity, *piece.part));
        };
        pieces.append(QJsonObject{{QStringLiteral("part"), jsonText(piece.part->number)},
                                  {QStringLiteral("need"), amount(piece.need)},
                                  {QStringLiteral("taken"), amount(piece.taken)},
                                  {QStringLiteral("short"), amount(piece.shortBy())},
                                  {QStringLiteral("spent"), amount(piece.spent)},
                                  {QStringLiteral("unit"), jsonText(text(piece.part->unit))}});
    }
    return {{QStringLiteral("joint"), jsonText(made.joint)},
            {QStringLiteral("at"), jsonText(made.at)},
            {QStringLiteral("pieces"), pieces},
            {QStringLiteral("caution"), jsonText(OpeningCaution)}};
}

void answerOpenJoint(const OpenJointAsked &asked, OpenShop &shop, CommandOutcome &outcome)
{
    if (wasDone(shop, Deed::Renew, {}))
        return;
    const auto made = openedJoint(asked.build, asked.joint, *shop.workshop, shop.by);
    if (!made)
        return outcome.refuse(made.error());
    const std::string table = tableOf(*made) + "  " + std::string(OpeningCaution) + "\n";
    if (made->action.movements.empty())
        asked.json ? outcome.print(documentOf(*made)) : outcome.print(table + "nothing to take");
    else
        appendAction(shop, made->action, table + "opened: " + made->at, documentOf(*made));
    bool isShort = false;
    for (const Renewed &piece : made->pieces)
        isShort = isShort || piece.shortBy() > 0;
    if (asked.strict && isShort && outcome.ending == Ending::Done)
        outcome.ending = Ending::Attention;
}

} // namespace

void addOpenJointCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<OpenJointAsked>();
    CLI::App *command = app.add_subcommand(
        "open-joint", "Takes fresh rings and crush washers for a joint that is opened again.");
    command->add_option("BUILD", asked->build, "its id")->required();
    command->add_option("JOINT", asked->joint, "as the bill says it: \"pump inlet\"; or its id")
        ->required();
    command->add_flag("--strict", asked->strict, "exit status 1 where something is short");
    addShopOptions(*command, *asked);
    command->callback([asked, &outcome] {
        withShop(*asked, OpenMode::ReadWrite, outcome,
                 [&](OpenShop &shop) { answerOpenJoint(*asked, shop, outcome); });
    });
}

} // namespace flarestock
