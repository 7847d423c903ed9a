// SPDX-License-Identifier: MIT

#include "app/stockroom/bench/opening_box.h"

#include "app/stockroom/bench/lot_names.h"
#include "app/stockroom/handing_out.h"
#include "model/exact/case_fold.h"

#include <algorithm>

namespace flarestock {

namespace {

struct Box {
    const Part *part = nullptr;
    BalanceKey key;
    std::string to;
    std::vector<CameOff> contents;
    std::vector<std::string> missing; ///< What an earlier look had found.
    bool partStays = true;
};

/// "BK-460=12.50" by the number of the part, in 10^-6.
Result<std::map<std::string, std::int64_t>> amountsAsked(const std::vector<std::string> &typed,
                                                         const Workshop &workshop)
{
    std::map<std::string, std::int64_t> amounts;
    for (const std::string &one : typed) {
        const auto equals = one.find('=');
        if (equals == std::string::npos)
            return problem(one, "does not say what costs how much", "Write it as BK-460=12.50.");
        const auto part = partAsked(one.substr(0, equals), workshop.catalogue);
        if (!part)
            return tl::unexpected(part.error());
        const auto value = valueAsked(one.substr(equals + 1), "--cost " + (*part)->number);
        if (!value)
            return tl::unexpected(value.error());
        amounts[(*part)->number] = *value;
    }
    return amounts;
}

/// What the newest look into a box of that lot has found missing, less what was opened since.
std::vector<std::string> foundMissing(const LotKey &box, const Workshop &workshop)
{
    std::vector<std::string> missing;
    std::int64_t at = 0;
    for (const BoxCheck &look : workshop.looks) {
        if (LotKey{look.part, look.lot} == box) {
            missing = look.missing;
            at = look.at;
        }
    }
    for (const OpenedBox &opened : workshop.notes.opened) {
        if (opened.part != box.part || opened.at < at)
            continue;
        if (opened.lot == box.lot) {
            missing.insert(missing.end(), opened.taken.begin(), opened.taken.end());
            continue;
        }
        for (const std::string &gone : opened.missing) {
            const auto there = std::find(missing.begin(), missing.end(), gone);
            if (opened.boxLot == box.lot && there != missing.end())
                missing.erase(there);
        }
    }
    return missing;
}

bool isNamed(const std::vector<std::string> &only, const std::string &number)
{
    return only.empty() || std::any_of(only.begin(), only.end(), [&](const std::string &one) {
               return sameFolded(one, number);
           });
}

/// What is in it, less what is missing.
Result<void> addContents(Box &box, const OpeningWords &asked, const Workshop &workshop)
{
    const auto missing = foundMissing({box.key.part, box.key.lot}, workshop);
    for (const PartCount &inside : box.part->box) {
        const Part *part = workshop.catalogue.find(inside.part);
        const auto all = Quantity{inside.count, part->unit}.smallest();
        if (!all)
            return tl::unexpected(all.error());
        const auto gone = std::count_if(missing.begin(), missing.end(), [&](const auto &one) {
            return sameFolded(one, part->number);
        });
        const std::int64_t one = Quantity{Decimal(1), part->unit}.smallest().value_or(1);
        const std::int64_t there = std::max<std::int64_t>(*all - gone * one, 0);
        for (std::int64_t i = 0; i < gone; ++i)
            box.missing.push_back(part->number);
        if (there > 0 && isNamed(asked.only, part->number))
            box.contents.push_back({part, there, box.to, {}, 0, {}});
    }
    if (box.contents.empty())
        return problem(box.part->number,
                       asked.only.empty() ? "has nothing in its box"
                                          : "has nothing of what is named in its box",
                       "Look at the catalogue, and at what was found missing.");
    return {};
}

Result<Box> boxAsked(const OpeningWords &asked, const Workshop &workshop)
{
    const auto part = partAsked(asked.part, workshop.catalogue);
    if (!part)
        return tl::unexpected(part.error());
    const auto from = placeAsked(asked.from, workshop.ledger);
    if (!from)
        return tl::unexpected(from.error());
    const auto to = placeAsked(asked.to.empty() ? asked.from : asked.to, workshop.ledger);
    if (!to)
        return tl::unexpected(to.error());
    const auto key =
        piecesAsked({(*from)->id, asked.lot, asked.condition}, workshop.ledger, **part);
    if (!key)
        return tl::unexpected(key.error());
    Box box{*part, *key, (*to)->id, {}, {}, true};
    box.partStays = !asked.nothingLeft && !(*part)->says("kit") && !(*part)->says("pack");
    if (const auto filled = addContents(box, asked, workshop); !filled)
        return tl::unexpected(filled.error());
    return box;
}

/// The name of what stood in the box from then on: its own, where it is the only one of it.
std::string lotWithoutBox(const Box &box, const Workshop &workshop)
{
    const Ledger &ledger = workshop.ledger;
    std::int64_t ofLot = 0;
    for (const auto &[key, held] : ledger.balancesOf(box.part->number)) {
        const Place *place = ledger.place(key.place);
        if (key.lot == box.key.lot && place &&
            (isStock(place->kind) || place->kind == PlaceKind::Car))
            ofLot += held.quantity;
    }
    if (!box.key.lot.empty() && ofLot == 1)
        return box.key.lot;
    return nextPieceOf(box.part->number, box.key.lot.empty() ? "opened" : box.key.lot,
                       lotNames(box.part->number, workshop));
}

struct Amounts {
    std::map<std::string, std::int64_t> prices;
    std::map<std::string, std::int64_t> costs;
};

/// How a piece takes its share, and the words for it.
Sharing sharingOf(CameOff &piece, const Amounts &amounts, const Workshop &workshop)
{
    const std::string &number = piece.part->number;
    const Decimal count = Quantity::ofSmallest(piece.quantity, piece.part->unit).amount;
    if (const auto cost = amounts.costs.find(number); cost != amounts.costs.end()) {
        piece.by = "stated";
        return {{}, cost->second};
    }
    if (const auto price = amounts.prices.find(number); price != amounts.prices.end()) {
        const Decimal each = Decimal::scaled(price->second, 6);
        piece.by = "stated price " + each.stripped().text();
        return {each * count, {}};
    }
    const auto offered = offeredCost(*piece.part, count, workshop);
    piece.by = offered ? "offered for " + offered->stripped().text() : "no price";
    return {offered.value_or(Decimal()), {}};
}

Result<void> shareOut(std::vector<CameOff> &pieces, std::int64_t whole, const OpeningWords &asked,
                      const Workshop &workshop)
{
    const auto prices = amountsAsked(asked.prices, workshop);
    if (!prices)
        return tl::unexpected(prices.error());
    const auto costs = amountsAsked(asked.costs, workshop);
    if (!costs)
        return tl::unexpected(costs.error());
    for (const auto *amounts : {&*prices, &*costs}) {
        for (const auto &[number, amount] : *amounts) {
            const bool comesOff =
                std::any_of(pieces.begin(), pieces.end(), [&number = number](const CameOff &one) {
                    return one.part->number == number;
                });
            if (!comesOff)
                return problem(number, "does not come out of this box, and so has no cost in it",
                               "Leave it out of --price and --cost.");
        }
    }
    std::vector<Sharing> sharing;
    sharing.reserve(pieces.size());
    for (CameOff &piece : pieces)
        sharing.push_back(sharingOf(piece, {*prices, *costs}, workshop));
    const auto shares = valueShares(whole, std::move(sharing));
    if (!shares)
        return tl::unexpected(shares.error());
    for (std::size_t i = 0; i < pieces.size(); ++i)
        pieces[i].value = (*shares)[i];
    return {};
}

Record openedRecord(const Box &box, const std::string &lot, const Action &action)
{
    OpenedBox opened;
    opened.id = idWithin(action.movements.front().id, action.movements.size());
    opened.part = box.part->number;
    opened.boxLot = box.key.lot;
    opened.lot = lot;
    for (const CameOff &piece : box.contents) {
        const auto count = Quantity::ofSmallest(piece.quantity, piece.part->unit).amount;
        const std::int64_t pieces = count.rescaled(0, Rounding::Ceiling).toInt64().value_or(1);
        if (box.partStays)
            opened.taken.insert(opened.taken.end(), static_cast<std::size_t>(pieces),
                                piece.part->number);
    }
    opened.missing = box.missing;
    if (box.partStays && lot != box.key.lot) // It goes by another name, and lacks them still.
        opened.taken.insert(opened.taken.end(), box.missing.begin(), box.missing.end());
    opened.who = action.movements.front().who;
    opened.action = action.movements.front().id.text();
    opened.at = action.movements.front().at;
    return opened.asRecord();
}

/// The build that has got the contents with the car where they go; nothing where none has.
Result<const BuildPlan *> gotBy(const Box &box, const OpeningWords &asked, const Workshop &workshop)
{
    if (!asked.build.empty()) {
        auto plan = buildAsked(asked.build, workshop);
        if (plan && (*plan)->car != box.to)
            return problem((*plan)->id,
                           "is of " + (*plan)->car + ", and the contents go to " + box.to,
                           "Say --to " + (*plan)->car + ", or leave out --build.");
        return plan;
    }
    for (const BuildPlan &plan : workshop.builds) {
        const bool hasBox = workshop.ledger.claim({box.part->number, plan.id}).issued > 0;
        if (hasBox && plan.car == box.key.place && plan.car == box.to)
            return &plan;
    }
    return nullptr;
}

/// What comes off the bench.
Movement offTheBench(const CameOff &piece, const Box &box, const std::string &bench,
                     const BuildPlan *build)
{
    Movement movement = movementOf({piece.part->number, bench, piece.lot, box.key.condition},
                                   piece.quantity, piece.to, Deed::Open);
    movement.value = piece.value;
    if (build && piece.part != box.part) {
        movement.deed = Deed::Issue;
        movement.document = build->id;
    }
    return movement;
}

} // namespace

Result<OpenedAction> openedBox(const OpeningWords &asked, const Workshop &workshop, const By &by)
{
    const auto box = boxAsked(asked, workshop);
    if (!box)
        return tl::unexpected(box.error());
    const auto bench = placeOfKind(PlaceKind::Bench, workshop.ledger);
    if (!bench)
        return tl::unexpected(bench.error());
    std::vector<Movement> movements{movementOf(box->key, 1, (*bench)->id, Deed::Open)};
    const auto whole = valuesOf(movements, workshop);
    if (!whole)
        return tl::unexpected(whole.error());
    const auto build = gotBy(*box, asked, workshop);
    if (!build)
        return tl::unexpected(build.error());
    OpenedAction opened{{}, box->contents, box->missing, *build};
    std::string lot;
    if (box->partStays) {
        lot = lotWithoutBox(*box, workshop);
        opened.pieces.push_back({box->part, 1, box->key.place, lot, 0, {}});
    }
    if (const auto shared = shareOut(opened.pieces, whole->front(), asked, workshop); !shared)
        return tl::unexpected(shared.error());
    for (const CameOff &piece : opened.pieces)
        movements.push_back(offTheBench(piece, *box, (*bench)->id, *build));
    opened.action = numbered(std::move(movements), by);
    opened.action.records.push_back(openedRecord(*box, lot, opened.action));
    if (box->partStays) {
        keepLotFacts(opened.action, {{box->key.part, box->key.lot}, lot}, workshop);
        opened.action.promised = Promised::MayGo; // It comes back in the same action.
    }
    openAgain(opened.action, workshop, by);
    return opened;
}

} // namespace flarestock
