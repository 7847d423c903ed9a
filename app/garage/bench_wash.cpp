// SPDX-License-Identifier: MIT

#include "app/garage/bench_wash.h"

#include "model/exact/case_fold.h"

namespace flarestock {

namespace {

/// Wherever it lies as what nobody has looked at yet.
std::vector<Movement> calledGood(const LotKey &piece, const Ledger &ledger)
{
    std::vector<Movement> movements;
    for (const auto &[key, held] : ledger.balancesOf(piece.part)) {
        const Place *place = ledger.place(key.place);
        if (key.lot != piece.lot || held.quantity <= 0 || !place || !isStock(place->kind) ||
            key.condition != PieceCondition::ToBeChecked)
            continue;
        Movement movement;
        movement.part = piece.part;
        movement.lot = piece.lot;
        movement.quantity = held.quantity;
        movement.from = movement.to = key.place;
        movement.condition = key.condition;
        movement.newCondition = PieceCondition::UsedAndGood;
        movement.deed = Deed::Judge;
        movements.push_back(std::move(movement));
    }
    return movements;
}

bool liesInStock(const LotKey &piece, const Ledger &ledger)
{
    for (const auto &[key, held] : ledger.balancesOf(piece.part)) {
        const Place *place = ledger.place(key.place);
        if (key.lot == piece.lot && held.quantity > 0 && place && isStock(place->kind))
            return true;
    }
    return false;
}

} // namespace

FittedPiece asFitted(const PieceOut &out)
{
    FittedPiece piece;
    piece.position = out.position;
    piece.piece = out.piece;
    piece.washed = out.washed;
    return piece;
}

const PieceOut *outAsked(const std::string &typed, const CarLife &life)
{
    const PieceOut *meant = nullptr;
    for (const PieceOut &out : life.out) {
        const bool isLot = !out.piece.lot.empty() && out.piece.lot == typed;
        if (!isLot && !sameFolded(out.piece.part, typed))
            continue;
        if (meant && meant->piece != out.piece)
            return nullptr;
        meant = meant ? meant : &out;
    }
    return meant;
}

Result<BenchWash> washedAtBench(const PieceOut &out, const Begun &begun, const Garage &garage)
{
    const FittedPiece piece = asFitted(out);
    const std::string said =
        out.piece.part + (out.piece.lot.empty() ? std::string() : " " + out.piece.lot);
    if (const std::string why = notWashedBecause(garage.kindOf(piece)); !why.empty())
        return problem(said, why, "Scrap it.");
    if (const std::string why = spentBecause(piece, garage.intervalsOf(piece, begun.car->id));
        !why.empty())
        return problem(said, "is spent: " + why, "Scrap it.");
    if (!liesInStock(out.piece, garage.workshop->ledger))
        return problem(said, "went out of " + begun.car->id + " and lies in no bin",
                       "Move it where it lies, then wash it.");
    BenchWash wash{begun.serviced, calledGood(out.piece, garage.workshop->ledger)};
    wash.serviced.position = out.position;
    wash.serviced.piece = out.piece;
    return wash;
}

} // namespace flarestock
