// SPDX-License-Identifier: MIT
//
// Where pieces came from that the copy took and that do not lie there by now.

#include "model/storage/trailer/entries_brought.h"
#include "model/storage/trailer/own_trip.h"

namespace flarestock {

/// Nowhere, or from a place of the stock where as much of the same lies, unless another copy has
/// it.
std::vector<Choice> EntriesBrought::whence(const BalanceKey &key, std::int64_t lacking) const
{
    std::vector<Choice> all{
        {"difference", "what lacks is a difference of the shop's, as if it were found by a count"}};
    const Trips trips = tripsIn(m_into.connection);
    const Ledger &ledger = m_into.writer.knowing(key.part);
    for (const auto &[other, held] : ledger.balances()) {
        const BalanceKey same{key.part, other.place, key.lot, key.condition};
        const Place *place = ledger.place(other.place);
        const TravellingCopy *away = trips.away(other.place);
        const bool isElsewhere = away != nullptr && away->taken.trip != m_into.trip;
        const bool hasThem = other == same && other.place != key.place && held.quantity >= lacking;
        if (hasThem && place != nullptr && isStock(place->kind) && !isElsewhere)
            all.push_back({"from:" + other.place,
                           "what lacks came from " + other.place,
                           {},
                           HowMuch{key.part, held.quantity}});
    }
    return all;
}

bool EntriesBrought::fetched(const BalanceKey &key, TakenTooMuch tooMuch, const std::string &what)
{
    const std::int64_t lacking = tooMuch.lacking;
    const std::string name = "below-zero:" + spelt(key);
    Disagreement *const known = m_into.disagreements.named(name);
    if (known != nullptr && known->decided.empty()) { // Asked once for all that lacks.
        known->tooMuch->lacking += lacking;
        known->tooMuch->taken += tooMuch.taken;
        known->choices = whence(key, known->tooMuch->lacking);
    }
    const auto word = m_into.disagreements.decide(
        {name,
         what + " more of " + key.part + " from " + key.place +
             (key.lot.empty() ? "" : ", lot " + key.lot) + " than lies there by now",
         known != nullptr ? std::vector<Choice>() : whence(key, lacking),
         {},
         std::move(tooMuch)});
    if (!word.starts_with("from:")) {
        m_settled.push_back("what lacked of " + key.part + " at " + key.place +
                            (key.lot.empty() ? "" : ", lot " + key.lot) + " is a difference now");
        return false;
    }
    BalanceKey other = key;
    other.place = word.substr(5);
    settle();
    static_cast<void>(
        m_into.writer.append(m_into.own.movement(other, lacking, key.place, "came from there")));
    return true;
}

} // namespace flarestock
