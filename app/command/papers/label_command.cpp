// SPDX-License-Identifier: MIT
//
// `flarestock label`: labels with a code that scans, for parts, lots, bins, or all that came of an
// order.

#include "app/buyer/order_words.h"
#include "app/command/papers/paper_options.h"
#include "app/command/shop_options.h"
#include "app/stockroom/asked.h"
#include "model/exact/nearest_word.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <memory>

namespace flarestock {

namespace {

struct LabelAsked : ShopAsked, LabelFile {
    std::vector<std::string> parts;
    std::vector<std::string> lots;
    std::vector<std::string> places;
    std::string order;
    int count = 1;
};

/// The lot as the shop spells it. Problem: it has none of that name.
Result<std::string> lotAsked(const std::string &typed, const Part &part, const Ledger &ledger)
{
    std::vector<std::string_view> lots;
    for (const auto &[key, balance] : ledger.balances()) {
        if (key.part == part.number && key.lot == typed)
            return typed;
        if (key.part == part.number && !key.lot.empty())
            lots.emplace_back(key.lot);
    }
    return problem(typed, "is no lot of " + part.number + " that the shop has",
                   lots.empty() ? "None of it has one: leave out --lot." : wordRemedy(typed, lots));
}

Result<std::vector<Label>> partLabels(const LabelAsked &asked, const Workshop &workshop)
{
    if (asked.places.size() > 1)
        return problem("--place", "stands twice, and a part's label names one",
                       "Make one label after the other.");
    std::string place;
    if (!asked.places.empty()) {
        const auto found = placeAsked(asked.places.front(), workshop.ledger);
        if (!found)
            return tl::unexpected(found.error());
        place = (*found)->id;
    }
    if (!asked.lots.empty() && asked.parts.size() != 1)
        return problem("--lot", "is of one part", "Name that part alone.");
    std::vector<Label> labels;
    for (const std::string &typed : asked.parts) {
        const auto part = partAsked(typed, workshop);
        if (!part)
            return tl::unexpected(part.error());
        const auto in = [&](const std::string &lot) {
            return place.empty() ? lyingIn((*part)->number, lot, workshop.ledger) : place;
        };
        if (asked.lots.empty())
            labels.push_back(partLabel(**part, in({})));
        for (const std::string &said : asked.lots) {
            const auto lot = lotAsked(said, **part, workshop.ledger);
            if (!lot)
                return tl::unexpected(lot.error());
            labels.push_back(lotLabel(**part, *lot, in(*lot), {workshop}));
        }
    }
    return labels;
}

/// Of each part and lot that came of an order, once.
Result<std::vector<Label>> orderLabels(const std::string &typed, const Workshop &workshop)
{
    const auto order = orderAsked(typed, workshop.bought.orders);
    if (!order)
        return tl::unexpected(order.error());
    std::vector<Label> labels;
    for (const Receipt &receipt : (*order)->receipts) {
        const Part *part = workshop.part(receipt.part);
        if (!part)
            continue;
        const std::string place = lyingIn(part->number, receipt.lot, workshop.ledger);
        Label label = receipt.lot.empty() ? partLabel(*part, place)
                                          : lotLabel(*part, receipt.lot, place, {workshop});
        if (std::find(labels.begin(), labels.end(), label) == labels.end())
            labels.push_back(std::move(label));
    }
    if (labels.empty())
        return problem("order " + (*order)->now().number, "has brought nothing yet",
                       "Receive it, or name the parts.");
    return labels;
}

Result<std::vector<Label>> labelsAsked(const LabelAsked &asked, const Workshop &workshop)
{
    const bool isOfOrder = !asked.order.empty();
    if (isOfOrder && !(asked.parts.empty() && asked.lots.empty() && asked.places.empty()))
        return problem("--order", "says which parts and lots", "Leave out the others.");
    if (isOfOrder)
        return orderLabels(asked.order, workshop);
    if (!asked.parts.empty())
        return partLabels(asked, workshop);
    if (!asked.lots.empty())
        return problem("--lot", "is of a part", "Name that part.");
    std::vector<Label> labels;
    for (const std::string &typed : asked.places) {
        const auto place = placeAsked(typed, workshop.ledger);
        if (!place)
            return tl::unexpected(place.error());
        labels.push_back(placeLabel(**place));
    }
    if (labels.empty())
        return problem("flarestock label", "needs what the label is for",
                       "Name a part, --place or --order.");
    return labels;
}

void answerLabel(const LabelAsked &asked, OpenShop &shop)
{
    if (asked.count < 1 || asked.count > LabelsMost)
        return shop.outcome.refuse(
            {"--count " + std::to_string(asked.count), "is no count", "Say 1 to 500 of each."});
    const auto kinds = labelsAsked(asked, *shop.workshop);
    if (!kinds)
        return shop.outcome.refuse(kinds.error());
    std::vector<Label> labels;
    for (const Label &one : *kinds)
        labels.insert(labels.end(), static_cast<std::size_t>(asked.count), one);
    if (const auto written = writeLabels(asked, labels, shop.by.at); !written)
        return shop.outcome.refuse(written.error());
    if (!asked.json)
        return shop.outcome.print(counted(labels.size(), "label") + " in " + asked.labels);
    QJsonArray said;
    for (const Label &label : *kinds)
        said.append(QJsonObject{{QStringLiteral("code"), jsonText(label.code)},
                                {QStringLiteral("lines"), textArray(label.lines)},
                                {QStringLiteral("count"), asked.count}});
    shop.outcome.print(QJsonObject{{QStringLiteral("labels"), said},
                                   {QStringLiteral("pdf"), jsonText(asked.labels)}});
}

} // namespace

void addLabelCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<LabelAsked>();
    CLI::App *command = app.add_subcommand(
        "label", "Makes labels with a code that scans: of parts, lots, places, or an order.");
    command->add_option("PART", asked->parts, "part numbers, or tags of made-up hoses");
    command->add_option("--lot", asked->lots, "a lot or serial of the part; may stand again")
        ->allow_extra_args(false);
    command
        ->add_option("--place", asked->places,
                     "of a part: where it belongs; alone: the label of that place, may stand again")
        ->allow_extra_args(false);
    command->add_option("--order", asked->order, "all that came of this order, lot by lot");
    command->add_option("--count", asked->count, "so many of each; 1 where not said");
    command->add_option("--pdf", asked->labels, "the file, a page a label")->required();
    addLabelSize(*command, *asked);
    addShopOptions(*command, *asked);
    command->callback([asked, &outcome] {
        withShop(*asked, OpenMode::ReadOnly, outcome,
                 [&](OpenShop &shop) { answerLabel(*asked, shop); });
    });
}

} // namespace flarestock
