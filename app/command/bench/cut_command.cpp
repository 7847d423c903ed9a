// SPDX-License-Identifier: MIT
//
// `flarestock cut`: lengths off a piece of hose or tubing, with kerf and what is left.

#include "app/command/bench/cut_words.h"
#include "app/command/shop_options.h"
#include "app/stockroom/asked.h"
#include "app/stockroom/bench/lot_names.h"
#include "app/stockroom/cut_planning.h"
#include "app/workshop/made_up.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <memory>

namespace flarestock {

namespace {

struct CutAsked : ShopAsked, CutWords {
    std::string to;
    std::string plan;
};

/// By the plan that was asked for; else each length off the shortest piece that gives it.
Result<std::vector<CutFrom>> cutsOff(const CutAsked &asked, const CutWish &wish)
{
    if (asked.plan.empty())
        return cuttingPlan(wish.part, wish.lengths, wish.pieces, wish.loss);
    const auto aim = parseCutAim(asked.plan);
    if (!aim)
        return tl::unexpected(wrongIn("--plan", aim.error()));
    const NamedTask named(wish);
    return named.cuts(planCuts(named.task(), *aim), wish.part);
}

Result<std::vector<Movement>> cutsAsked(const CutAsked &asked, const Part &part,
                                        const OpenShop &shop)
{
    const Workshop &workshop = *shop.workshop;
    auto lengths = lengthsAsked(asked, part);
    if (!lengths)
        return tl::unexpected(lengths.error());
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
    auto pieces = piecesToCut(part, asked, {*to, dayOf(shop.by.at)}, workshop);
    if (!pieces)
        return tl::unexpected(pieces.error());
    const CutWish wish{part, std::move(*lengths), std::move(*pieces), *loss, {}};
    const auto plan = cutsOff(asked, wish);
    if (!plan)
        return tl::unexpected(plan.error());
    auto movements =
        cutMovements(*plan, wish.pieces, {(*to)->id, Deed::Cut, {}, (*scrap)->id, *loss});
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
