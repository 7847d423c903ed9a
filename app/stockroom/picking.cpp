// SPDX-License-Identifier: MIT

#include "app/stockroom/picking.h"

#include <algorithm>

namespace flarestock {

namespace {

std::size_t rankOf(const Ledger &ledger, const std::string &place)
{
    const auto places = ledger.places();
    return static_cast<std::size_t>(
        std::find_if(places.begin(), places.end(),
                     [&place](const Place &one) { return one.id == place; }) -
        places.begin());
}

} // namespace

std::map<BalanceKey, std::int64_t> freePieces(const Part &part, const Workshop &workshop,
                                              const Due &due)
{
    const auto &ledger = workshop.ledger;
    const auto barred = barredLots(workshop.notes.lots, due.car, due.day);
    const auto promised = ledger.promisedAt(part, workshop.bars, due.build);
    std::map<BalanceKey, std::int64_t> pieces;
    for (const auto &[key, held] : ledger.balancesOf(part.number)) {
        const Place *place = ledger.place(key.place);
        if (!place || !isStock(place->kind) || !isFree(key.condition) ||
            barred.contains({key.part, key.lot}))
            continue;
        const auto taken = promised.find(key);
        const std::int64_t free = held.quantity - (taken == promised.end() ? 0 : taken->second);
        if (free > 0)
            pieces.emplace(key, free);
    }
    return pieces;
}

namespace {

/// Of what comes in pieces: the nearest first.
void pickPieces(std::pair<const Part *, std::int64_t> outstanding,
                const std::map<BalanceKey, std::int64_t> &pieces, const Ledger &ledger,
                PickList &list)
{
    auto &[part, quantity] = outstanding;
    std::vector<std::pair<BalanceKey, std::int64_t>> nearest(pieces.begin(), pieces.end());
    std::stable_sort(nearest.begin(), nearest.end(), [&ledger](const auto &a, const auto &b) {
        return rankOf(ledger, a.first.place) < rankOf(ledger, b.first.place);
    });
    for (const auto &[key, free] : nearest) {
        const std::int64_t here = std::min(free, quantity);
        if (here <= 0)
            break;
        list.picks.push_back({part, key, here, {}});
        quantity -= here;
    }
    if (quantity > 0)
        list.lacking.push_back(outstanding);
}

/// Of what is cut: as many of the build's lengths, the longest first, as are outstanding.
void pickLengths(const BillLine &line, std::int64_t outstanding,
                 const std::map<BalanceKey, std::int64_t> &pieces, PickList &list)
{
    NamedPieces left(pieces, usualCutLoss());
    std::map<BalanceKey, Pick> picks;
    std::int64_t lacking = 0;
    for (const Quantity &cut : line.cuts) {
        const auto length = cut.smallest();
        if (!length || *length > outstanding)
            continue;
        outstanding -= *length;
        const auto from = left.cut(*length);
        if (!from) {
            lacking += *length;
            continue;
        }
        Pick &pick = picks[from->piece];
        pick.part = line.part;
        pick.key = from->piece;
        pick.quantity += *length;
        pick.lengths.push_back(*length);
    }
    for (auto &[key, pick] : picks)
        list.picks.push_back(std::move(pick));
    lacking += outstanding; // Promised, and no length that the build still wants.
    if (lacking > 0)
        list.lacking.emplace_back(line.part, lacking);
}

} // namespace

Result<std::vector<Movement>> takenNearest(const Part &part, std::int64_t quantity,
                                           const Workshop &workshop, const Taking &taking)
{
    const auto pieces = freePieces(part, workshop, taking.due);
    PickList list;
    pickPieces({&part, quantity}, pieces, workshop.ledger, list);
    std::vector<Movement> movements;
    for (const Pick &pick : list.picks)
        movements.push_back(movementOf(pick.key, pick.quantity, taking.to, taking.deed));
    if (!list.lacking.empty())
        return problem(part.number, "is not free in the stock as " + spoken(quantity, part),
                       "Look at what there is: flarestock stock --find " + part.number + ".");
    return movements;
}

std::vector<Promise> promisesLacking(const WorkedBuild &worked, const Workshop &workshop,
                                     const BuildPlan &plan)
{
    std::vector<Promise> promises;
    for (const PricedLine &priced : worked.bill.lines) {
        const BillLine &line = *priced.line;
        const auto stock = workshop.shelf.find(line.part->number);
        const bool uncounted = stock != workshop.shelf.end() && stock->second.level;
        if (!line.consumed || uncounted)
            continue;
        // What the bill allots is what the build has got, what it is promised, and what is free.
        const Claim now = workshop.ledger.claim({line.part->number, plan.id});
        const auto allotted = Quantity{priced.free, line.need.unit}.smallest();
        const std::int64_t more = allotted.value_or(0) - std::max(now.promised, now.issued);
        if (more <= 0)
            continue;
        Promise promise;
        promise.build = plan.id;
        promise.part = line.part->number;
        promise.quantity = more;
        promises.push_back(std::move(promise));
    }
    return promises;
}

std::vector<Promise> promisesLetGo(const Ledger &ledger, std::string_view build)
{
    std::vector<Promise> promises;
    for (const auto &[key, claim] : ledger.claims()) {
        if (key.build != build || claim.outstanding() == 0)
            continue;
        Promise promise;
        promise.build = key.build;
        promise.part = key.part;
        promise.quantity = -claim.outstanding();
        promises.push_back(std::move(promise));
    }
    return promises;
}

PickList pickList(const WorkedBuild &worked, const Workshop &workshop, const BuildPlan &plan)
{
    PickList list;
    const auto &ledger = workshop.ledger;
    for (const Claims::value_type *claimed : workshop.claimsOf(plan.id)) {
        const auto &[key, claim] = *claimed;
        const Part *part = workshop.part(key.part);
        if (claim.outstanding() == 0 || !part)
            continue;
        const auto pieces = freePieces(*part, workshop, {plan.id, plan.car, plan.by});
        const auto &lines = worked.expansion.lines;
        const auto line = std::find_if(lines.begin(), lines.end(),
                                       [part](const BillLine &one) { return one.part == part; });
        // Wire is a length too, and is taken without being cut to lines.
        if (line != lines.end() && !line->cuts.empty())
            pickLengths(*line, claim.outstanding(), pieces, list);
        else
            pickPieces({part, claim.outstanding()}, pieces, ledger, list);
    }
    std::stable_sort(list.picks.begin(), list.picks.end(), [&ledger](const Pick &a, const Pick &b) {
        return rankOf(ledger, a.key.place) < rankOf(ledger, b.key.place);
    });
    return list;
}

Result<std::vector<Movement>> issueMovements(const PickList &list, const Workshop &workshop,
                                             const BuildPlan &plan)
{
    const auto car = placeAsked(plan.car, workshop.ledger);
    if (!car)
        return tl::unexpected(car.error());
    const auto scrap = placeOfKind(PlaceKind::Scrap, workshop.ledger);
    if (!scrap)
        return tl::unexpected(scrap.error());
    std::vector<Movement> movements;
    for (const Pick &pick : list.picks) {
        if (pick.lengths.empty()) {
            movements.push_back(movementOf(pick.key, pick.quantity, (*car)->id, Deed::Issue));
            movements.back().document = plan.id;
            continue;
        }
        std::vector<CutFrom> cuts;
        for (const std::int64_t length : pick.lengths)
            cuts.push_back({pick.key, length});
        auto cut = cutMovements(cuts, {{pick.key, workshop.ledger.balance(pick.key).quantity}},
                                {(*car)->id, Deed::Issue, plan.id, (*scrap)->id, usualCutLoss()});
        std::move(cut.begin(), cut.end(), std::back_inserter(movements));
    }
    return movements;
}

} // namespace flarestock
