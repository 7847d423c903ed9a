// SPDX-License-Identifier: MIT
//
// `flarestock cost`: what was charged late, what a part has cost from order to order, and what a
// build has cost against its bill.

#include "app/buyer/costing/cost_history.h"
#include "app/buyer/costing/late_charge.h"
#include "app/command/buying/cost_sheet.h"
#include "app/command/buying/receiving_sheet.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace flarestock {

namespace {

struct CostAsked : ShopAsked {
    std::string named; ///< An order, a part or a build.
    std::string amount;
    std::string kind = "freight";
    std::string document;
    std::string part;
    std::string lot;
    std::vector<std::string> weights; ///< "EP-460=1.2"
};

/// "EP-460=1.2" by the number of the part.
Result<std::map<std::string, Decimal>> weightsAsked(const std::vector<std::string> &typed,
                                                    const Workshop &workshop)
{
    std::map<std::string, Decimal> weights;
    for (const std::string &one : typed) {
        const auto equals = one.find('=');
        if (equals == std::string::npos)
            return problem(one, "does not say what weighs how much", "Write it as EP-460=1.2.");
        const auto part = partAsked(one.substr(0, equals), workshop.catalogue);
        if (!part)
            return tl::unexpected(part.error());
        const auto weight = Decimal::parse(one.substr(equals + 1));
        if (!weight)
            return tl::unexpected(wrongIn("--weight " + (*part)->number, weight.error()));
        if (weight->sign() <= 0)
            return problem("--weight " + one, "is no weight", "Write what one of it weighs.");
        weights[(*part)->number] = *weight;
    }
    return weights;
}

Result<LateWords> lateAsked(const CostAsked &asked, const Workshop &workshop)
{
    LateWords words;
    const auto kind = parseLateKind(asked.kind);
    const auto weights = weightsAsked(asked.weights, workshop);
    if (!kind || !weights)
        return tl::unexpected(!kind ? kind.error() : weights.error());
    const auto amount = lateAmountAsked(asked.amount, *kind);
    if (!amount)
        return tl::unexpected(amount.error());
    if (!asked.part.empty()) {
        const auto part = partAsked(asked.part, workshop.catalogue);
        if (!part)
            return tl::unexpected(part.error());
        words.onlyPart = (*part)->number;
    }
    words.order = asked.named;
    words.kind = *kind;
    words.amount = *amount;
    words.weights = *weights;
    words.onlyLot = asked.lot;
    words.document = asked.document;
    return words;
}

void answerLate(const CostAsked &asked, OpenShop &shop)
{
    if (wasDone(shop,
                [&asked](const Movement &one) { return one.document.starts_with(asked.named); }))
        return;
    const auto words = lateAsked(asked, *shop.workshop);
    if (!words)
        return shop.outcome.refuse(words.error());
    const auto made =
        chargedLate(*words, {shop.workshop->bought, shop.file, *shop.workshop}, shop.by);
    if (!made)
        return shop.outcome.refuse(made.error());
    appendAction(shop, made->action, lateSheet(made->cost, *shop.workshop),
                 lateDocument(made->cost, *shop.workshop));
}

void answerHistory(const CostAsked &asked, OpenShop &shop)
{
    const auto part = partAsked(asked.named, *shop.workshop);
    if (!part)
        return shop.outcome.refuse(part.error());
    const auto ofPart = shop.file.movements((*part)->number);
    if (!ofPart)
        return shop.outcome.refuse(ofPart.error());
    const auto steps = costHistory(**part, *ofPart, shop.workshop->bought, *shop.workshop);
    if (shop.asked.json)
        return shop.outcome.print(historyDocument(steps, **part, *shop.workshop));
    shop.outcome.out += historySheet(steps, **part, *shop.workshop);
}

void answerBuild(const CostAsked &asked, OpenShop &shop)
{
    const auto plan = buildAsked(asked.named, *shop.workshop);
    if (!plan)
        return shop.outcome.refuse(plan.error());
    const auto cost = costOf(**plan, shop.file, *shop.workshop);
    if (!cost)
        return shop.outcome.refuse(cost.error());
    if (shop.asked.json)
        return shop.outcome.print(buildCostDocument(*cost, **plan, *shop.workshop));
    shop.outcome.out += buildCostSheet(*cost, **plan, *shop.workshop);
}

void addLate(CLI::App &cost, const std::shared_ptr<CostAsked> &asked, CommandOutcome &outcome)
{
    CLI::App *late = cost.add_subcommand(
        "late", "Freight, duty or a credit that came after the pieces of an order.");
    late->add_option("ORDER", asked->named, "its number: 2026-0007")->required();
    late->add_option("AMOUNT", asked->amount, "in the shop's currency")->required();
    late->add_option("--kind", asked->kind, "freight (if not said), duty, tax, credit, other");
    late->add_option("--document", asked->document, "the carrier's or customs' paper");
    late->add_option("--part", asked->part, "that alone bears it");
    late->add_option("--lot", asked->lot, "that lot alone bears it");
    late->add_option("--weight", asked->weights,
                     "PART=1.2: shared by weight, of one each; not said: by value")
        ->allow_extra_args(false);
    addShopOptions(*late, *asked);
    late->callback([asked, &outcome] {
        withShop(*asked, OpenMode::ReadWrite, outcome,
                 [&](OpenShop &shop) { answerLate(*asked, shop); });
    });
}

} // namespace

void addCostCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<CostAsked>();
    CLI::App *cost = app.add_subcommand("cost", "What parts and builds have really cost.");
    cost->require_subcommand(1);
    addLate(*cost, asked, outcome);
    const auto read = [&](const char *name, const char *what, const char *word, auto answer) {
        CLI::App *command = cost->add_subcommand(name, what);
        command->add_option(word, asked->named, "its number or id")->required();
        command->add_option("--shop", asked->shop, ShopHelp)->required();
        command->add_flag("--json", asked->json, JsonHelp);
        command->callback([asked, &outcome, answer] {
            withShop(*asked, OpenMode::ReadOnly, outcome,
                     [&](OpenShop &shop) { answer(*asked, shop); });
        });
    };
    read("history", "What a part has cost, receipt by receipt.", "PART", answerHistory);
    read("build", "What a build was to cost, and what it has cost.", "BUILD", answerBuild);
}

} // namespace flarestock
