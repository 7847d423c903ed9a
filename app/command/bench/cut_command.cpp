// SPDX-License-Identifier: MIT
//
// `flarestock cut`: lengths off a piece of hose or tubing, with kerf and what is left.

#include "app/command/shop_options.h"
#include "app/stockroom/bench/cutting_off.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <memory>

namespace flarestock {

namespace {

struct CutAsked : ShopAsked, CuttingWords {};

void answerCut(const CutAsked &asked, OpenShop &shop, CommandOutcome &outcome)
{
    if (wasDone(shop, Deed::Cut, asked.part))
        return;
    const auto action = cutOff(asked, *shop.workshop, shop.by);
    if (!action)
        return outcome.refuse(action.error());
    const Part &part = *shop.workshop->part(action->movements.front().part);
    std::string said = "cut: " + part.number;
    QJsonArray all;
    for (const Movement &movement : action->movements) {
        said += (movement.deed == Deed::Cut ? ", " : "; to scrap ") +
                spoken(movement.quantity, part) + " off " + movement.lot +
                (movement.newLot ? " as " + *movement.newLot : "");
        all.append(movementDocument(movement, *shop.workshop));
    }
    appendAction(shop, *action, said, {{QStringLiteral("movements"), all}});
}

} // namespace

void addCutCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<CutAsked>();
    CLI::App *command =
        app.add_subcommand("cut", "Cuts lengths off the shortest pieces that give them.");
    command->add_option("PART", asked->part, "the hose or tubing")->required();
    command->add_option("LENGTH", asked->lengths, "\"2 ft 4 in\"; several are cut in one go")
        ->required();
    command->add_option("--to", asked->to, "where the lengths go: a car, a bin")->required();
    command->add_option("--lot", asked->lot, "the piece to cut from; else the program says which");
    command->add_option("--kerf", asked->kerf, "what each cut costs; 1/16 in where not said");
    command->add_option("--least", asked->leastUseful,
                        "a shorter rest is scrapped with the cut; 4 in where not said");
    command->add_option("--plan", asked->plan,
                        "remnants: off remnants first; waste: with the least waste (see cut-plan); "
                        "where not said, each length off the shortest piece that gives it");
    addShopOptions(*command, *asked);
    command->callback([asked, &outcome] {
        withShop(*asked, OpenMode::ReadWrite, outcome,
                 [&](OpenShop &shop) { answerCut(*asked, shop, outcome); });
    });
}

} // namespace flarestock
