// SPDX-License-Identifier: MIT
//
// `flarestock count`: what was counted at a place. The counter says first; what the journal
// expected and the difference come after.

#include "app/command/shop_options.h"
#include "app/stockroom/byhand/seeing.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace flarestock {

namespace {

struct CountAsked : ShopAsked, CountWords {};

void answerCount(const CountAsked &asked, OpenShop &shop, CommandOutcome &outcome)
{
    const auto count = countOf(asked, *shop.workshop, shop.by);
    if (!count)
        return outcome.refuse(count.error());
    const auto done = shop.file.append(*count, idWithin(count->id, 1));
    if (!done)
        return outcome.refuse(done.error());
    const Part &part = *shop.workshop->part(count->key.part);
    const std::int64_t difference = count->found - done->expected;
    if (asked.json)
        return outcome.print(
            QJsonObject{{QStringLiteral("count"), jsonText(count->id.text())},
                        {QStringLiteral("already"), done->count.already},
                        {QStringLiteral("found"), jsonText(amountText(count->found, part))},
                        {QStringLiteral("expected"), jsonText(amountText(done->expected, part))},
                        {QStringLiteral("difference"), jsonText(amountText(difference, part))},
                        {QStringLiteral("unit"), jsonText(text(part.unit))},
                        {QStringLiteral("movement"),
                         done->difference ? jsonText(done->difference->text()) : QJsonValue()}});
    const std::string verdict = difference == 0
                                    ? "as expected"
                                    : (difference < 0 ? spoken(-difference, part) + " less"
                                                      : spoken(difference, part) + " more") +
                                          " than expected";
    outcome.print((done->count.already ? "was counted already: " : "counted: ") + part.number +
                  " at " + count->key.place + ": " + spoken(count->found, part) + ", " + verdict);
}

} // namespace

void addCountCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<CountAsked>();
    CLI::App *command =
        app.add_subcommand("count", "Writes down what was counted, then says what was expected.");
    command->add_option("PART", asked->part, "its part number")->required();
    command->add_option("FOUND", asked->found, "how many lie there: \"3\", \"11 ft 2 in\"")
        ->required();
    command->add_option("--place", asked->place, "place id: C4, trailer-2")->required();
    command->add_option("--lot", asked->lot, "lot or piece, where several lie there");
    command->add_option("--condition", asked->condition,
                        "new, used and good, to be checked, not to be used");
    addShopOptions(*command, *asked);
    command->callback([asked, &outcome] {
        withShop(*asked, OpenMode::ReadWrite, outcome,
                 [&](OpenShop &shop) { answerCount(*asked, shop, outcome); });
    });
}

} // namespace flarestock
