// SPDX-License-Identifier: MIT

#include "app/stockroom/bench/cut_words.h"

#include "app/stockroom/asked.h"
#include "app/workshop/made_up.h"
#include "model/parts/cutting_plan/cut_task.h"

namespace flarestock {

Result<std::vector<std::int64_t>> lengthsAsked(const CutWords &words, const Part &part)
{
    std::vector<std::int64_t> lengths;
    for (const std::string &typed : words.lengths) {
        const auto length = quantityAsked(typed, part, "the length");
        if (!length)
            return tl::unexpected(length.error());
        if (*length <= 0)
            return problem("the length " + typed, "is nothing to cut", "Write one above zero.");
        if (*length > CutLengthMost)
            return problem("the length " + typed, "is more than any piece has", "Write it again.");
        lengths.push_back(*length);
    }
    return lengths;
}

Result<CutLoss> lossAsked(const CutWords &words, const Part &part)
{
    CutLoss loss = usualCutLoss();
    if (!words.kerf.empty()) {
        const auto kerf = kerfAsked(words.kerf, part);
        if (!kerf)
            return tl::unexpected(kerf.error());
        loss.kerf = *kerf;
    }
    if (!words.leastUseful.empty()) {
        const auto least = quantityAsked(words.leastUseful, part, "--least");
        if (!least)
            return tl::unexpected(least.error());
        if (*least < 0)
            return problem("--least " + words.leastUseful, "is below zero", "Write a length.");
        loss.leastUseful = *least;
    }
    return loss;
}

Result<std::map<BalanceKey, std::int64_t>>
piecesToCut(const Part &part, const CutWords &words, const CutFor &cutFor, const Workshop &workshop)
{
    const Ledger &ledger = workshop.ledger;
    const bool forCar = cutFor.to && cutFor.to->kind == PlaceKind::Car;
    const auto barred =
        barredLots(workshop.notes.lots, forCar ? cutFor.to->id : std::string(), cutFor.day);
    std::map<BalanceKey, std::int64_t> pieces;
    for (const auto &[key, held] : ledger.balancesOf(part.number)) {
        const Place *place = ledger.place(key.place);
        const bool named = words.lot.empty()
                               ? isFree(key.condition) && !barred.contains({key.part, key.lot})
                               : key.lot == words.lot;
        if (place && isStock(place->kind) && named && held.quantity > 0)
            pieces.emplace(key, held.quantity);
    }
    if (pieces.empty() && !words.lot.empty())
        return problem(part.number, "has no piece " + words.lot + " in stock",
                       "Look at what there is: flarestock stock --find " + part.number + ".");
    return pieces;
}

} // namespace flarestock
