// SPDX-License-Identifier: MIT

#include "app/stockroom/bench/cutting_off.h"

#include "app/stockroom/bench/lot_names.h"
#include "app/stockroom/handing_out.h"
#include "app/workshop/made_up.h"

namespace flarestock {

namespace {

/// By the plan that was asked for; else each length off the shortest piece that gives it.
Result<std::vector<CutFrom>> cutsOff(const CuttingWords &asked, const CutWish &wish)
{
    if (asked.plan.empty())
        return cuttingPlan(wish.part, wish.lengths, wish.pieces, wish.loss);
    const auto aim = parseCutAim(asked.plan);
    if (!aim)
        return tl::unexpected(wrongIn("--plan", aim.error()));
    const NamedTask named(wish);
    return named.cuts(planCuts(named.task(), *aim), wish.part);
}

/// Where the lengths go, and for which build, if for one.
struct Goes {
    const Place *to = nullptr;
    const BuildPlan *build = nullptr;
};
Result<Goes> goesTo(const CuttingWords &asked, const Workshop &workshop)
{
    Goes goes;
    if (!asked.build.empty()) {
        const auto build = buildAsked(asked.build, workshop);
        if (!build)
            return tl::unexpected(build.error());
        goes.build = *build;
    }
    const auto to = placeAsked(goes.build ? goes.build->car : asked.to, workshop.ledger);
    if (!to)
        return tl::unexpected(to.error());
    if (!isStock((*to)->kind) && (*to)->kind != PlaceKind::Car)
        return problem((*to)->id, "takes no cut lengths", "Name a car, shelf, bin or drawer.");
    goes.to = *to;
    return goes;
}

Result<CutWish> wishOf(const CuttingWords &asked, const Place &to, const Workshop &workshop,
                       const By &by)
{
    const auto part = partAsked(asked.part, workshop);
    if (!part)
        return tl::unexpected(part.error());
    if (!isLength((*part)->unit))
        return problem((*part)->number, "is not cut from a length", "Use flarestock move.");
    auto lengths = lengthsAsked(asked, **part);
    if (!lengths)
        return tl::unexpected(lengths.error());
    const auto loss = lossAsked(asked, **part);
    if (!loss)
        return tl::unexpected(loss.error());
    const auto day = dayAsked({}, by.at);
    if (!day)
        return tl::unexpected(day.error());
    auto pieces = piecesToCut(**part, asked, {&to, *day}, workshop);
    if (!pieces)
        return tl::unexpected(pieces.error());
    return CutWish{**part, std::move(*lengths), std::move(*pieces), *loss, {}};
}

Result<std::vector<Movement>> movementsOf(const CuttingWords &asked, const CutWish &wish,
                                          const Goes &goes, const Workshop &workshop)
{
    const auto scrap = placeOfKind(PlaceKind::Scrap, workshop.ledger);
    if (!scrap)
        return tl::unexpected(scrap.error());
    const auto cuts = cutsOff(asked, wish);
    if (!cuts)
        return tl::unexpected(cuts.error());
    return cutMovements(*cuts, wish.pieces,
                        {goes.to->id, goes.build ? Deed::Issue : Deed::Cut,
                         goes.build ? goes.build->id : std::string(), (*scrap)->id, wish.loss});
}

} // namespace

Result<CutWish> cutWish(const CuttingWords &asked, const Workshop &workshop, const By &by)
{
    const auto goes = goesTo(asked, workshop);
    if (!goes)
        return tl::unexpected(goes.error());
    return wishOf(asked, *goes->to, workshop, by);
}

Result<Action> cutOff(const CuttingWords &asked, const Workshop &workshop, const By &by)
{
    const auto goes = goesTo(asked, workshop);
    if (!goes)
        return tl::unexpected(goes.error());
    const auto wish = wishOf(asked, *goes->to, workshop, by);
    if (!wish)
        return tl::unexpected(wish.error());
    auto movements = movementsOf(asked, *wish, *goes, workshop);
    if (!movements)
        return tl::unexpected(movements.error());
    if (goes->build)
        return changed(std::move(*movements), workshop, *goes->build, by);
    const std::string &number = wish->part.number;
    auto names = lotNames(number, workshop);
    for (Movement &movement : *movements) {
        if (movement.deed != Deed::Cut || !isStock(goes->to->kind))
            continue; // A length that goes back to stock is a piece of its own.
        movement.newLot = nextPieceOf(number, movement.lot, names);
        names.insert({number, *movement.newLot});
    }
    Action action = numbered(std::move(*movements), by);
    for (const Movement &movement : action.movements) {
        if (movement.newLot)
            keepLotFacts(action, {{movement.part, movement.lot}, *movement.newLot}, workshop);
    }
    return action;
}

} // namespace flarestock
