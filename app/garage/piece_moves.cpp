// SPDX-License-Identifier: MIT

#include "app/garage/piece_moves.h"

#include "app/stockroom/picking.h"
#include "app/workshop/made_up.h"
#include "model/exact/case_fold.h"

#include <algorithm>

namespace flarestock {

namespace {

/// A length of hose off the shortest piece that gives it, as `issue` cuts it.
Result<PieceMoves> lengthIn(const Part &part, std::int64_t length,
                            const std::map<BalanceKey, std::int64_t> &pieces, const AtCar &at)
{
    const auto &[garage, car, day] = at;
    const auto cuts = cuttingPlan(part, {length}, pieces, usualCutLoss());
    if (!cuts)
        return tl::unexpected(cuts.error());
    const auto scrap = placeOfKind(PlaceKind::Scrap, garage.workshop->ledger);
    if (!scrap)
        return tl::unexpected(scrap.error());
    const BalanceKey &from = cuts->front().piece;
    std::map<BalanceKey, std::int64_t> whole{
        {from, garage.workshop->ledger.balance(from).quantity}};
    PieceMoves moves;
    moves.movements =
        cutMovements(*cuts, std::move(whole), {car, Deed::Renew, {}, (*scrap)->id, usualCutLoss()});
    moves.piece = {part.number, from.lot};
    moves.quantity = length;
    moves.from = from.place;
    return moves;
}

/// What lies in the car already, a spare that was taken along.
Result<PieceMoves> fromTheCar(const WorkWords &asked, const Part &part, const Garage &garage,
                              const std::string &car)
{
    const Ledger &ledger = garage.workshop->ledger;
    std::map<LotKey, std::int64_t> fitted;
    for (const FittedPiece &piece : garage.life(car).fitted)
        fitted[piece.piece] += piece.inside ? 0 : piece.quantity;
    for (const auto &[key, held] : ledger.balancesOf(part.number)) {
        if (key.place != car || !isFree(key.condition) ||
            (!asked.lot.empty() && key.lot != asked.lot) ||
            held.quantity <= fitted[{key.part, key.lot}])
            continue;
        return PieceMoves{{}, {key.part, key.lot}, 1, car, {}};
    }
    return problem(part.number, "does not lie in " + car + " as a spare",
                   "Say where it is taken from: --from PLACE.");
}

/// Of a part at the car what the ledger has; nothing where no movement brought it.
std::optional<BalanceKey> atCar(const FittedPiece &piece, const Ledger &ledger,
                                const std::string &car)
{
    if (piece.inside)
        return std::nullopt;
    for (const auto &[key, held] : ledger.balancesOf(piece.piece.part)) {
        if (key.place == car && key.lot == piece.piece.lot && held.quantity >= piece.quantity)
            return key;
    }
    return std::nullopt;
}

/// Where the old piece goes, and what it is then.
struct Destination {
    const Place *place = nullptr;
    PieceCondition is = PieceCondition::ToBeChecked;
};

Result<Destination> destinationOf(const WorkWords &asked, const Leaving &leaving,
                                  const Ledger &ledger)
{
    Destination to;
    const bool goes = asked.oldTo.empty() && leaving.back.empty();
    to.is = leaving.spent || goes ? PieceCondition::NotToBeUsed : PieceCondition::ToBeChecked;
    if (!asked.oldIs.empty()) {
        const auto is = parsePieceCondition(asked.oldIs);
        if (!is)
            return tl::unexpected(wrongIn("--old-is", is.error()));
        to.is = *is;
    }
    const bool isKept = !leaving.spent && !leaving.back.empty();
    auto place = !asked.oldTo.empty() ? placeAsked(asked.oldTo, ledger)
                 : isKept             ? placeAsked(leaving.back, ledger)
                                      : placeOfKind(PlaceKind::Scrap, ledger);
    if (!place)
        return tl::unexpected(place.error());
    to.place = *place;
    if (isStock(to.place->kind) && leaving.spent && isFree(to.is))
        return problem(leaving.piece->piece.part,
                       "is spent, and cannot be " + std::string(text(to.is)),
                       "Leave out --old-is, or send it to scrap.");
    return to;
}

} // namespace

Result<PieceMoves> pieceIn(const WorkWords &asked, const Part &part, std::int64_t length,
                           const AtCar &at)
{
    const auto &[garage, car, day] = at;
    if (sameFolded(asked.from, car))
        return fromTheCar(asked, part, garage, car);
    const Workshop &workshop = *garage.workshop;
    if (!asked.from.empty()) {
        if (const auto place = stockPlaceAsked(asked.from, workshop.ledger); !place)
            return tl::unexpected(place.error());
    }
    auto pieces = freePieces(part, workshop, {{}, car, day});
    std::erase_if(pieces, [&](const auto &one) {
        return (!asked.from.empty() && !sameFolded(one.first.place, asked.from)) ||
               (!asked.lot.empty() && one.first.lot != asked.lot);
    });
    if (isLength(part.unit))
        return lengthIn(part, length, pieces, at);
    // The nearest place first, as everywhere.
    for (const Place &place : workshop.ledger.places()) {
        for (const auto &[key, free] : pieces) {
            if (key.place != place.id || free < 1)
                continue;
            PieceMoves moves{
                {movementOf(key, 1, car, Deed::Renew)}, {key.part, key.lot}, 1, key.place, {}};
            return moves;
        }
    }
    return problem(part.number,
                   asked.from.empty() && asked.lot.empty() ? "is not free in the stock"
                                                           : "is not free there",
                   "Look at what there is: flarestock stock --find " + part.number + ".");
}

Result<PieceMoves> pieceThere(const WorkWords &asked, const Part &part, std::int64_t length,
                              const AtCar &at)
{
    const auto &[garage, car, day] = at;
    PieceMoves moves;
    moves.piece = {part.number, asked.lot};
    moves.quantity = isLength(part.unit) ? length : 1;
    const Ledger &ledger = garage.workshop->ledger;
    std::int64_t fitted = moves.quantity;
    for (const FittedPiece &piece : garage.life(car).fitted)
        fitted += piece.piece == moves.piece && !piece.inside ? piece.quantity : 0;
    std::int64_t held = 0;
    for (const auto &[key, balance] : ledger.balancesOf(part.number))
        held += key.place == car && key.lot == asked.lot ? balance.quantity : 0;
    if (held >= fitted)
        return moves;
    const auto opening = placeOfKind(PlaceKind::Opening, ledger);
    if (!opening)
        return tl::unexpected(opening.error());
    moves.movements = {
        movementOf({part.number, (*opening)->id, asked.lot, PieceCondition::UsedAndGood},
                   moves.quantity, car, Deed::Move)};
    moves.movements.front().why = "was in the car before";
    return moves;
}

Result<PieceMoves> pieceOut(const WorkWords &asked, const Leaving &leaving, const AtCar &at)
{
    const auto &[garage, car, day] = at;
    const Ledger &ledger = garage.workshop->ledger;
    const FittedPiece &piece = *leaving.piece;
    const auto to = destinationOf(asked, leaving, ledger);
    if (!to)
        return tl::unexpected(to.error());
    PieceMoves moves;
    moves.piece = {piece.piece.part, asked.tag.empty() ? piece.piece.lot : asked.tag};
    moves.quantity = piece.quantity;
    moves.is = to->is;
    auto key = atCar(piece, ledger, car);
    if (!key) {
        // It came inside another piece: it comes off the bench, where its filter's value stays.
        if (!isStock(to->place->kind))
            return moves;
        const auto bench = placeOfKind(PlaceKind::Bench, ledger);
        if (!bench)
            return tl::unexpected(bench.error());
        key = BalanceKey{piece.piece.part, (*bench)->id, piece.piece.lot,
                         PieceCondition::UsedAndGood};
    }
    Movement out = movementOf(*key, piece.quantity, to->place->id, Deed::Renew);
    if (moves.piece.lot != key->lot)
        out.newLot = moves.piece.lot;
    if (to->is != key->condition)
        out.newCondition = to->is;
    moves.movements = {std::move(out)};
    return moves;
}

namespace {

/// How many of it may be taken: of what lies in stock what is free.
std::int64_t thereOf(const BalanceKey &key, const Workshop &workshop, const Due &due)
{
    const Place *place = workshop.ledger.place(key.place);
    const Part *part = workshop.part(key.part);
    if (!place || !part || !isStock(place->kind))
        return workshop.ledger.balance(key).quantity;
    const auto free = freePieces(*part, workshop, due);
    const auto at = free.find(key);
    return at == free.end() ? 0 : at->second;
}

/// A ring that more than one joint takes stands once.
Renewed &ringOf(std::vector<Renewed> &rings, const Part *part)
{
    for (Renewed &ring : rings) {
        if (ring.part == part)
            return ring;
    }
    return rings.emplace_back(Renewed{part, 0, 0, 0});
}

} // namespace

Result<FreshRings> freshRings(const std::string &build, const std::vector<std::string> &joints,
                              const Garage &garage, const By &by)
{
    const Workshop &workshop = *garage.workshop;
    FreshRings fresh;
    std::map<BalanceKey, std::int64_t> taken; // Of what several joints take.
    for (const std::string &joint : joints) {
        auto opened = openedJoint(build, joint, workshop, by);
        if (!opened)
            return tl::unexpected(opened.error());
        for (const Renewed &piece : opened->pieces)
            ringOf(fresh.rings, piece.part).need += piece.need;
        for (Movement &movement : opened->action.movements) {
            const BalanceKey from{movement.part, movement.from, movement.lot, movement.condition};
            const std::string &car = workshop.build(build)->car;
            std::int64_t &gone = taken[from];
            const std::int64_t left = thereOf(from, workshop, {{}, car, dayOf(by.at)}) - gone;
            movement.quantity = std::min(movement.quantity, std::max<std::int64_t>(left, 0));
            gone += movement.quantity;
            movement.action.reset();
            if (movement.quantity == 0)
                continue;
            Renewed &ring = ringOf(fresh.rings, workshop.part(movement.part));
            (movement.from == car ? ring.spent : ring.taken) += movement.quantity;
            fresh.movements.push_back(movement);
        }
    }
    return fresh;
}

} // namespace flarestock
