// SPDX-License-Identifier: MIT
//
// `flarestock make-up`: a hose with its two ends as one tagged piece of stock.

#include "app/command/shop_options.h"
#include "app/stockroom/bench/making_up.h"
#include "app/workshop/made_up.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <memory>

namespace flarestock {

namespace {

struct MakeUpAsked : ShopAsked, MakingWords {};

/// The same id again: it is the first movement that has it, of hose to the bench.
bool wasMade(const MakeUpAsked &asked, const OpenShop &shop)
{
    return wasDone(shop, Deed::MakeUp, asked.hose);
}

void answerMakeUp(const MakeUpAsked &asked, OpenShop &shop, CommandOutcome &outcome)
{
    if (wasMade(asked, shop))
        return;
    const auto made = madeUp(asked, *shop.workshop, shop.by);
    if (!made)
        return outcome.refuse(made.error());
    const Part &hose = *shop.workshop->catalogue.find(made->hose.hose);
    QJsonArray all;
    for (const Movement &movement : made->action.movements)
        all.append(movementDocument(movement, *shop.workshop));
    const std::string value = Decimal::scaled(made->value, 6).text();
    std::string said =
        "made up: " + made->hose.tag + ", " + describe(made->hose, hose.unit) + "; worth " + value;
    if (made->condition != PieceCondition::New)
        said += "; not free: " + std::string(text(made->condition));
    appendAction(shop, made->action, said,
                 {{QStringLiteral("tag"), jsonText(made->hose.tag)},
                  {QStringLiteral("what"), jsonText(describe(made->hose, hose.unit))},
                  {QStringLiteral("betweenSeats"), jsonText(amountText(made->hose.seats, hose))},
                  {QStringLiteral("unit"), jsonText(text(hose.unit))},
                  {QStringLiteral("value"), jsonText(value)},
                  {QStringLiteral("condition"), jsonText(text(made->condition))},
                  {QStringLiteral("movements"), all}});
}

void addTestOptions(CLI::App &command, MakeUpAsked &asked)
{
    command.add_option("--proof-pressure", asked.pressure, "of the proof test: \"2000 psi\"");
    command.add_option("--proof-medium", asked.medium, "water, nitrogen below water …");
    command.add_option("--proof", asked.result,
                       "passed or failed; without a test it is to be checked before it is free");
    command.add_option("--tested-by", asked.testedBy, "who tested it; --who where not said");
    command.add_option("--made-on", asked.madeOn, "the day; today where not said");
    command.add_option("--use-by", asked.useBy, "the last day that it may be used: 2031-11-30");
}

} // namespace

void addMakeUpCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<MakeUpAsked>();
    CLI::App *command = app.add_subcommand(
        "make-up", "Makes a hose and two ends into one tagged piece with their value.");
    command->add_option("HOSE", asked->hose, "the hose")->required();
    command->add_option("LENGTH", asked->cut, "as it is cut: \"22 1/2 in\"")->required();
    command->add_option("--start", asked->startEnd, "the hose end at its start")->required();
    command->add_option("--end", asked->farEnd, "the one at its far end")->required();
    command->add_option("--tag", asked->tag, "its name from then on: L-17")->required();
    command->add_option("--to", asked->to, "place id: SH-4, trailer-4")->required();
    command
        ->add_option("--with", asked->with,
                     "RG-908=2: what else it takes; what the ends need is taken anyway")
        ->allow_extra_args(false);
    command->add_option("--lot", asked->lot, "the piece of hose; else the shortest that gives it");
    command->add_option("--kerf", asked->kerf, "what the cut costs; 1/16 in where not said");
    command->add_option("--between-seats", asked->seats,
                        "from seat to seat; where not said, by the ends' allowances");
    command->add_option("--clocking", asked->clocking, "degrees from the one end to the other");
    addTestOptions(*command, *asked);
    addShopOptions(*command, *asked);
    command->callback([asked, &outcome] {
        withShop(*asked, OpenMode::ReadWrite, outcome,
                 [&](OpenShop &shop) { answerMakeUp(*asked, shop, outcome); });
    });
}

} // namespace flarestock
