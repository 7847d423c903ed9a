// SPDX-License-Identifier: MIT
//
// `flarestock receive`: what came in, from whom, for how much; or of an order, by line or by scan.

#include "app/command/buying/receiving_sheet.h"
#include "app/command/shop_options.h"
#include "app/stockroom/byhand/coming_in.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace flarestock {

namespace {

struct ReceiveAsked : ShopAsked, ReceivingWords, SlipAsked {
    std::string part;
    std::string quantity;
    std::string from;
    std::string cost;
    std::string useBy;
    std::string owner;
};

/// The only one of what may stand several times; empty where it stands nowhere. Problem: several.
Result<std::string> onlyOne(const std::vector<std::string> &said, const char *option)
{
    if (said.size() > 1)
        return problem(option, "stands twice, and one part comes", "Say it once.");
    return said.empty() ? std::string() : said.front();
}

/// What is said without an order has to be all there.
Result<void> isComplete(const ReceiveAsked &asked)
{
    const std::pair<bool, const char *> needed[] = {{asked.part.empty(), "PART"},
                                                    {asked.quantity.empty(), "QUANTITY"},
                                                    {asked.from.empty(), "--from"},
                                                    {asked.to.empty(), "--to"},
                                                    {asked.cost.empty(), "--cost"}};
    for (const auto &[lacks, word] : needed) {
        if (lacks)
            return problem(word, "is required", "Say it, or what order it came of: --order.");
    }
    return {};
}

Result<Action> cameIn(const ReceiveAsked &asked, const OpenShop &shop)
{
    const auto to = onlyOne(asked.to, "--to");
    const auto lot = onlyOne(asked.lots, "--lot");
    if (!to || !lot)
        return tl::unexpected(to ? lot.error() : to.error());
    return flarestock::cameIn({asked.part, asked.quantity, asked.from, *to, asked.cost, *lot,
                               asked.document, asked.useBy, asked.owner},
                              *shop.workshop, shop.by);
}

void answerReceive(const ReceiveAsked &asked, OpenShop &shop, CommandOutcome &outcome)
{
    if (!asked.order.empty())
        return receiveOrder(asked, asked.part + asked.quantity + asked.from + asked.cost, asked,
                            shop);
    if (const auto complete = isComplete(asked); !complete)
        return outcome.refuse(complete.error());
    const auto action = cameIn(asked, shop);
    if (!action)
        return outcome.refuse(action.error());
    if (const auto can = canWriteSlip(asked, shop); !can)
        return outcome.refuse(can.error());
    const Movement movement = action->movements.front();
    appendAction(shop, *action, "received: " + movement.part + " at " + movement.to);
    const Part *part = shop.workshop->part(movement.part);
    writeSlip(asked,
              {movement.from,
               {},
               asked.document,
               {},
               {{part,
                 movement.quantity,
                 movement.to,
                 movement.lot,
                 movement.condition,
                 movement.value,
                 {}}},
               {}},
              shop);
}

} // namespace

void addReceiveCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<ReceiveAsked>();
    CLI::App *command = app.add_subcommand("receive", "Books in what came from a supplier.");
    command->add_option("PART", asked->part, "its part number");
    command->add_option("QUANTITY", asked->quantity, "\"2\", or of hose \"20 ft\"");
    command->add_option("--from", asked->from, "the supplier's place: supplier-OXS");
    command
        ->add_option("--to", asked->to,
                     "place id: C4, trailer-2; of an order also PART=C4; may stand again")
        ->allow_extra_args(false);
    command->add_option("--cost", asked->cost, "what all of it cost, in the shop's currency");
    command
        ->add_option("--lot", asked->lots,
                     "lot, serial or name of the piece; of an order PART=LOT or PART=LOT=QUANTITY, "
                     "may stand again")
        ->allow_extra_args(false);
    command->add_option("--document", asked->document, "delivery note or order");
    command->add_option("--use-by", asked->useBy, "the last day that it may be used: 2027-03-31");
    command->add_option("--for-car", asked->owner, "a customer's: the car that alone it is for");
    addReceivingOptions(*command, *asked);
    addSlipOptions(*command, *asked);
    addShopOptions(*command, *asked);
    command->callback([asked, &outcome] {
        withShop(*asked, OpenMode::ReadWrite, outcome,
                 [&](OpenShop &shop) { answerReceive(*asked, shop, outcome); });
    });
}

} // namespace flarestock
