// SPDX-License-Identifier: MIT

#include "app/buyer/still_here.h"

#include <algorithm>

namespace flarestock {

namespace {

constexpr std::string_view LayerWords = ", layer of ";

/// The movement that a receipt came with; of several alike the first that is in none's hands yet.
std::optional<MovementId> movementOf(const Receipt &receipt, const std::vector<Movement> &ofPart,
                                     std::set<MovementId> &used)
{
    for (const Movement &one : ofPart) {
        if (one.action.value_or(one.id).text() == receipt.action && one.deed == Deed::Receive &&
            one.lot == receipt.lot && one.quantity == receipt.quantity &&
            one.value == receipt.value && used.insert(one.id).second)
            return one.id;
    }
    return std::nullopt;
}

/// Of layers that came with that movement, or came back for it.
std::vector<HereAt> layersOf(const MovementId &brought, const std::string &part,
                             const std::map<std::int64_t, MovementId> &origin, const Ledger &ledger)
{
    std::vector<HereAt> here;
    for (const auto &[key, held] : ledger.balancesOf(part)) {
        const Place *place = ledger.place(key.place);
        if (!place || !isStock(place->kind))
            continue;
        for (const auto &[rank, layer] : ledger.layersAt(key)) {
            const auto from = origin.find(rank);
            if (layer.quantity > 0 && from != origin.end() && from->second == brought)
                here.push_back({key, rank, layer.quantity});
        }
    }
    return here;
}

/// What lies in stock of a lot, or of what was cut from it.
std::vector<HereAt> ofLot(const std::string &part, const std::string &lot, const Ledger &ledger)
{
    std::vector<HereAt> here;
    for (const auto &[key, held] : ledger.balancesOf(part)) {
        const Place *place = ledger.place(key.place);
        const bool same = key.lot == lot || (!lot.empty() && rootOf(key.lot) == lot);
        if (place && isStock(place->kind) && same && held.quantity > 0)
            here.push_back({key, 0, held.quantity});
    }
    return here;
}

/// Takes `most` off the last places on; gives what was taken.
std::vector<HereAt> takenOff(std::vector<HereAt> &lying, std::int64_t most)
{
    std::vector<HereAt> taken;
    for (auto at = lying.rbegin(); at != lying.rend() && most > 0; ++at) {
        const std::int64_t part = std::min(most, at->quantity);
        if (part <= 0)
            continue;
        taken.push_back({at->key, 0, part});
        at->quantity -= part;
        most -= part;
    }
    return taken;
}

} // namespace

std::string ofLayer(const std::string &document, const MovementId &origin)
{
    return document + std::string(LayerWords) + origin.text();
}

std::map<std::int64_t, MovementId> origins(const std::vector<Movement> &ofPart)
{
    std::map<std::int64_t, MovementId> found;
    std::int64_t rank = 0;
    for (const Movement &one : ofPart) {
        const auto words = one.document.rfind(LayerWords);
        const auto origin =
            words == std::string::npos
                ? std::nullopt
                : std::optional(MovementId::parse(one.document.substr(words + LayerWords.size())));
        found.emplace(++rank, origin && *origin ? **origin : one.id);
    }
    return found;
}

Result<std::vector<std::vector<HereAt>>> stillHere(const std::vector<Receipt> &receipts,
                                                   const ShopFile &file, const Workshop &workshop)
{
    const Ledger &ledger = workshop.ledger;
    std::vector<std::vector<HereAt>> here(receipts.size());
    if (receipts.empty())
        return here;
    const std::string &part = receipts.front().part;
    if (ledger.costing() == Costing::FirstInFirstOut) {
        const auto ofPart = file.movements(part);
        if (!ofPart)
            return tl::unexpected(ofPart.error());
        const auto origin = origins(*ofPart);
        std::set<MovementId> used;
        for (std::size_t i = 0; i < receipts.size(); ++i) {
            if (const auto brought = movementOf(receipts[i], *ofPart, used))
                here[i] = layersOf(*brought, part, origin, ledger);
        }
        return here;
    }
    std::map<std::string, std::vector<HereAt>> lots;
    for (std::size_t i = receipts.size(); i-- > 0;) {
        const std::string &lot = receipts[i].lot;
        auto at = lots.find(lot);
        if (at == lots.end())
            at = lots.emplace(lot, ofLot(part, lot, ledger)).first;
        here[i] = takenOff(at->second, receipts[i].quantity);
    }
    return here;
}

} // namespace flarestock
