// SPDX-License-Identifier: MIT
//
// `flarestock cut`: lengths off a piece of hose or tubing, with kerf and what is left.

#include "app/command/shop_options.h"
#include "app/stockroom/bench/lot_names.h"
#include "app/stockroom/cutting.h"
#include "app/workshop/made_up.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <memory>

namespace flarestock {

namespace {

struct CutAsked : ShopAsked {
    std::string part;
    std::vector<std::string> lengths;
    std::string to;
    std::string lot;
    std::string kerf;
    std::string leastUseful;
};

Result<CutLoss> lossAsked(const CutAsked &asked, const Part &part)
{
    CutLoss loss = usualCutLoss();
    if (!asked.kerf.empty()) {
        const auto kerf = kerfAsked(asked.kerf, part);
        if (!kerf)
            return tl::unexpected(kerf.error());
        loss.kerf = *kerf;
    }
    if (!asked.leastUseful.empty()) {
        const auto least = quantityAsked(asked.leastUseful, part, "--least");
        if (!least)
            return tl::unexpected(least.error());
        if (*least < 0)
            return problem("--least " + asked.leastUseful, "is below zero", "Write a length.");
        loss.leastUseful = *least;
    }
    return loss;
}

/// The piece that is named; else all that somebody may cut for that place on that day.
std::map<BalanceKey, std::int64_t> piecesOf(const Part &part, const CutAsked &asked,
                                            const Place &to, const OpenShop &shop)
{
    const Ledger &ledger = shop.workshop->ledger;
    const std::string car = to.kind == PlaceKind::Car ? to.id : std::string();
    const auto barred = barredLots(shop.workshop->notes.lots, car, dayOf(shop.by.at));
    std::map<BalanceKey, std::int64_t> pieces;
    for (const auto &[key, held] : ledger.balancesOf(part.number)) {
        const Place *place = ledger.place(key.place);
        const bool named = asked.lot.empty()
                               ? isFree(key.condition) && !barred.contains({key.part, key.lot})
                               : key.lot == asked.lot;
        if (place && isStock(place->kind) && named)
            pieces.emplace(key, held.quantity);
    }
    return pieces;
}

Result<std::vector<Movement>> cutsAsked(const CutAsked &asked, const Part &part,
                                        const OpenShop &shop)
{
    const Workshop &workshop = *shop.workshop;
    std::vector<std::int64_t> lengths;
    for (const std::string &typed : asked.lengths) {
        const auto length = quantityAsked(typed, part, "the length");
        if (!length)
            return tl::unexpected(length.error());
        if (*length <= 0)
            return problem("the length " + typed, "is nothing to cut", "Write one above zero.");
        lengths.push_back(*length);
    }
    const auto loss = lossAsked(asked, part);
    if (!loss)
        return tl::unexpected(loss.error());
    const auto to = placeAsked(asked.to, workshop.ledger);
    if (!to)
        return tl::unexpected(to.error());
    if (!isStock((*to)->kind) && (*to)->kind != PlaceKind::Car)
        return problem((*to)->id, "takes no cut lengths", "Name a car, shelf, bin or drawer.");
    const auto scrap = placeOfKind(PlaceKind::Scrap, workshop.ledger);
    if (!scrap)
        return tl::unexpected(scrap.error());
    const auto pieces = piecesOf(part, asked, **to, shop);
    if (pieces.empty() && !asked.lot.empty())
        return problem(part.number, "has no piece " + asked.lot + " in stock",
                       "Look at what there is: flarestock stock --find " + part.number + ".");
    const auto plan = cuttingPlan(part, std::move(lengths), pieces, *loss);
    if (!plan)
        return tl::unexpected(plan.error());
    auto movements = cutMovements(*plan, pieces, {(*to)->id, Deed::Cut, {}, (*scrap)->id, *loss});
    auto names = lotNames(part.number, workshop);
    for (Movement &movement :
         movements) { // A length that goes back to stock is a piece of its own.
        if (movement.deed != Deed::Cut || !isStock((*to)->kind))
            continue;
        movement.newLot = nextPieceOf(part.number, movement.lot, names);
        names.insert({part.number, *movement.newLot});
    }
    return movements;
}

void answerCut(const CutAsked &asked, OpenShop &shop, CommandOutcome &outcome)
{
    const auto part = partAsked(asked.part, *shop.workshop);
    if (!part)
        return outcome.refuse(part.error());
    if (!isLength((*part)->unit))
        return outcome.refuse(
            {(*part)->number, "is not cut from a length", "Use flarestock move."});
    if (wasDone(shop, Deed::Cut, asked.part))
        return;
    const auto movements = cutsAsked(asked, **part, shop);
    if (!movements)
        return outcome.refuse(movements.error());
    Action action = numbered(*movements, shop.by);
    for (const Movement &movement : action.movements) {
        if (movement.newLot)
            keepLotFacts(action, {{movement.part, movement.lot}, *movement.newLot}, *shop.workshop);
    }
    std::string said = "cut: " + (*part)->number;
    QJsonArray all;
    for (const Movement &movement : action.movements) {
        said += (movement.deed == Deed::Cut ? ", " : "; to scrap ") +
                spoken(movement.quantity, **part) + " off " + movement.lot +
                (movement.newLot ? " as " + *movement.newLot : "");
        all.append(movementDocument(movement, *shop.workshop));
    }
    appendAction(shop, action, said, {{QStringLiteral("movements"), all}});
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
    addShopOptions(*command, *asked);
    command->callback([asked, &outcome] {
        withShop(*asked, OpenMode::ReadWrite, outcome,
                 [&](OpenShop &shop) { answerCut(*asked, shop, outcome); });
    });
}

} // namespace flarestock
