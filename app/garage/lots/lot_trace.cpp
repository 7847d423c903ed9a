// SPDX-License-Identifier: MIT

#include "app/garage/lots/lot_trace.h"

#include "app/garage/lots/lot_acts.h"
#include "app/garage/standing_moves.h"
#include "model/exact/case_fold.h"

#include <algorithm>

namespace flarestock {

namespace {

LotKey sourceOf(const Movement &movement)
{
    return {movement.part, movement.lot};
}

LotKey targetOf(const Movement &movement)
{
    return {movement.part, movement.newLot.value_or(movement.lot)};
}

/// What became of what: one name of another, what was in a box, a hose of what it is made of.
class Becoming {
public:
    Becoming(const std::vector<Movement> &movements, const Ledger &ledger);
    /// All that it became, or (`up`) came of; what has no lot is not followed.
    [[nodiscard]] std::set<LotKey> closure(std::set<LotKey> from, bool up) const;
    [[nodiscard]] const std::vector<const Movement *> &standing() const { return m_standing; }

private:
    struct AtBench {
        std::set<LotKey> on;
        std::set<LotKey> off;
    };
    std::map<LotKey, std::set<LotKey>> m_down;
    std::map<LotKey, std::set<LotKey>> m_up;
    std::vector<const Movement *> m_standing;
};

Becoming::Becoming(const std::vector<Movement> &movements, const Ledger &ledger)
{
    const auto isBench = [&ledger](const std::string &id) {
        const Place *place = ledger.place(id);
        return place && place->kind == PlaceKind::Bench;
    };
    std::map<MovementId, AtBench> benches;
    for (const StandingMove &move : standingMoves(movements, ledger)) {
        const Movement &one = *move.movement;
        m_standing.push_back(&one);
        const LotKey from = sourceOf(one);
        const LotKey to = targetOf(one);
        if (from != to) {
            m_down[from].insert(to);
            m_up[to].insert(from);
        }
        // What comes off goes to stock, or is issued to a build at once.
        if (isBench(one.to) && (one.deed == Deed::Open || one.deed == Deed::MakeUp))
            benches[one.action.value_or(one.id)].on.insert(from);
        if (isBench(one.from))
            benches[one.action.value_or(one.id)].off.insert(to);
    }
    for (const auto &[action, bench] : benches) {
        for (const LotKey &on : bench.on) {
            for (const LotKey &off : bench.off) {
                m_down[on].insert(off);
                m_up[off].insert(on);
            }
        }
    }
}

std::set<LotKey> Becoming::closure(std::set<LotKey> from, bool up) const
{
    const auto &edges = up ? m_up : m_down;
    std::vector<LotKey> left(from.begin(), from.end());
    std::set<LotKey> all = std::move(from);
    while (!left.empty()) {
        const LotKey key = std::move(left.back());
        left.pop_back();
        const auto next = edges.find(key);
        if (next == edges.end())
            continue;
        for (const LotKey &one : next->second) {
            const bool isNew = all.insert(one).second;
            if (isNew && (!one.lot.empty() || up))
                left.push_back(one);
        }
    }
    return all;
}

/// All that movements have moved, and all that is or was in a car, also from before the program.
std::set<LotKey> namesEver(const Garage &garage, const std::vector<Movement> &movements)
{
    std::set<LotKey> names;
    for (const Movement &one : movements) {
        names.insert(sourceOf(one));
        names.insert(targetOf(one));
    }
    for (const auto &[car, life] : garage.lives) {
        for (const FittedPiece &piece : life.fitted)
            names.insert(piece.piece);
        for (const Serviced &one : life.done) {
            names.insert(one.piece);
            names.insert(one.old);
        }
    }
    return names;
}

/// The names that were meant: of a lot all parts that bear it, of a part all its lots.
std::set<LotKey> namesAsked(const std::string &asked, const std::set<LotKey> &names)
{
    std::set<LotKey> lots;
    std::set<LotKey> parts;
    for (const LotKey &key : names) {
        if (!key.lot.empty() && (key.lot == asked || rootOf(key.lot) == asked))
            lots.insert(key);
        if (!key.part.empty() && sameFolded(key.part, asked))
            parts.insert(key);
    }
    return lots.empty() ? parts : lots;
}

void addCameIn(LotTrace &trace, const Movement &one, const Ledger &ledger)
{
    const Place *from = ledger.place(one.from);
    const bool supplied = from && from->kind == PlaceKind::Supplier;
    const bool opening = from && from->kind == PlaceKind::Opening;
    const LotKey key = targetOf(one);
    if ((supplied || opening) && (trace.pieces.contains(key) || trace.sources.contains(key)))
        trace.cameIn.push_back({one, opening});
}

CarriedBy &carriedBy(LotTrace &trace, const std::string &car)
{
    const auto at = std::find_if(trace.cars.begin(), trace.cars.end(),
                                 [&car](const CarriedBy &one) { return one.car == car; });
    return at == trace.cars.end() ? trace.cars.emplace_back(CarriedBy{car, false, {}, {}}) : *at;
}

void addCar(LotTrace &trace, const Movement &one, const Workshop &workshop)
{
    const LotKey key = targetOf(one);
    const Place *to = workshop.ledger.place(one.to);
    if (!to || to->kind != PlaceKind::Car || !trace.pieces.contains(key))
        return;
    CarriedBy &car = carriedBy(trace, one.to);
    if (const BuildPlan *plan = workshop.build(one.document))
        car.builds.insert(plan->id);
}

/// Where it is in the car, by what was fitted there.
std::string positionOf(const BalanceKey &key, const Garage &garage)
{
    std::string positions;
    for (const FittedPiece &piece : garage.life(key.place).fitted) {
        if (piece.piece == LotKey{key.part, key.lot} && !piece.inside)
            positions += (positions.empty() ? "" : ", ") + piece.position;
    }
    return positions;
}

void addNow(LotTrace &trace, const Garage &garage)
{
    const Ledger &ledger = garage.workshop->ledger;
    for (const auto &[key, held] : ledger.balances()) {
        const Place *place = ledger.place(key.place);
        const bool isReal =
            place && (isStock(place->kind) || place->kind == PlaceKind::Car ||
                      place->kind == PlaceKind::Borrower || place->kind == PlaceKind::Repair ||
                      place->kind == PlaceKind::InTransit);
        if (held.quantity <= 0 || !isReal || !trace.pieces.contains({key.part, key.lot}))
            continue;
        const bool inCar = place->kind == PlaceKind::Car;
        trace.now.push_back(
            {key, held.quantity, place, inCar ? positionOf(key, garage) : std::string()});
        const auto car =
            std::find_if(trace.cars.begin(), trace.cars.end(),
                         [&place = key.place](const CarriedBy &one) { return one.car == place; });
        if (car == trace.cars.end())
            continue;
        car->has = true;
        for (const FittedPiece &piece : garage.life(key.place).fitted) {
            if (piece.piece == LotKey{key.part, key.lot} && !piece.inside)
                car->positions.insert(piece.position);
        }
    }
}

/// What is in a car and no movement brought: it was there before the program.
void addFittedBefore(LotTrace &trace, const Garage &garage)
{
    const Ledger &ledger = garage.workshop->ledger;
    for (const auto &[car, life] : garage.lives) {
        std::map<LotKey, std::int64_t> held;
        for (const auto &[key, balance] : ledger.balances())
            held[{key.part, key.lot}] += key.place == car ? balance.quantity : 0;
        for (const FittedPiece &piece : life.fitted) {
            std::int64_t &left = held[piece.piece];
            left -= piece.inside ? 0 : piece.quantity;
            const Place *place = ledger.place(car);
            if (piece.inside || left >= 0 || !place || !trace.pieces.contains(piece.piece))
                continue;
            trace.now.push_back(
                {{piece.piece.part, car, piece.piece.lot, PieceCondition::UsedAndGood},
                 piece.quantity,
                 place,
                 piece.position});
            CarriedBy &carries = carriedBy(trace, car);
            carries.has = true;
            carries.positions.insert(piece.position);
            if (garage.workshop->build(piece.build))
                carries.builds.insert(piece.build);
        }
    }
}

} // namespace

Result<LotTrace> traceOf(const std::string &asked, const Garage &garage,
                         const std::vector<Movement> &movements, const std::string &today)
{
    const Workshop &workshop = *garage.workshop;
    const auto names = namesAsked(asked, namesEver(garage, movements));
    if (names.empty())
        return problem(asked, "is no lot, serial, tag or part that ever was in this shop",
                       "Look up how it is written: flarestock stock --find " + asked + ".");
    const Becoming becoming(movements, workshop.ledger);
    LotTrace trace;
    trace.pieces = becoming.closure(names, false);
    std::erase_if(trace.pieces, [&](const LotKey &key) {
        const bool mixed =
            key.lot.empty() && !names.contains(key) && !workshop.notes.hoses.contains(key.part);
        if (mixed)
            trace.unnamed.insert(key);
        return mixed;
    });
    for (const LotKey &key : becoming.closure(names, true)) {
        if (!trace.pieces.contains(key) && !key.lot.empty())
            trace.sources.insert(key);
    }
    for (const Movement *one : becoming.standing()) {
        addCameIn(trace, *one, workshop.ledger);
        addCar(trace, *one, workshop);
    }
    for (const auto &[tag, hose] : workshop.notes.hoses) {
        const bool isOf = std::any_of(trace.pieces.begin(), trace.pieces.end(),
                                      [&tag = tag](const LotKey &key) { return key.part == tag; });
        if (isOf)
            trace.hoses.insert(tag);
    }
    addNow(trace, garage);
    addFittedBefore(trace, garage);
    trace.acts = actsFor(trace, garage, today);
    return trace;
}

} // namespace flarestock
