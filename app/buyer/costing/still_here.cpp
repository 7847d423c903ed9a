// SPDX-License-Identifier: MIT

#include "app/buyer/costing/still_here.h"

#include <algorithm>

namespace flarestock {

namespace {

constexpr std::string_view LayerWords = ", layer of ";
constexpr std::string_view WorthAnew = ", worth anew";

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

/// A part's movements folded first in, first out, whatever the shop costs by, so that it is known
/// which of its pieces left. What only went over the bench to be worth something else stayed here.
struct Fold {
    explicit Fold(const Ledger &shop)
        : ledger({shop.places().begin(), shop.places().end()}, Costing::FirstInFirstOut)
    {
    }
    void add(Movement movement)
    {
        if (movement.quantity == 0 || movement.document.ends_with(WorthAnew))
            return;
        movement.value = ledger.valueOf(movement);
        if (!ledger.apply(movement))
            applied.push_back(std::move(movement));
    }

    Ledger ledger;
    std::vector<Movement> applied;
};

} // namespace

std::string ofLayer(const std::string &document, const MovementId &origin)
{
    return document + std::string(LayerWords) + origin.text();
}

std::string worthAnew(const std::string &document)
{
    return document + std::string(WorthAnew);
}

std::optional<std::string> onlyCostIsAnother(const std::string &document)
{
    if (document.ends_with(WorthAnew))
        return document.substr(0, document.size() - WorthAnew.size());
    const auto layer = document.rfind(LayerWords);
    const bool isOne = layer != std::string::npos &&
                       MovementId::parse(document.substr(layer + LayerWords.size())).has_value();
    return isOne ? std::optional(document.substr(0, layer)) : std::nullopt;
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
    std::vector<std::vector<HereAt>> here(receipts.size());
    if (receipts.empty())
        return here;
    const auto ofPart = file.movements(receipts.front().part);
    if (!ofPart)
        return tl::unexpected(ofPart.error());
    const bool average = workshop.ledger.costing() == Costing::MovingAverage;
    Fold fold(workshop.ledger);
    if (average) {
        for (const Movement &movement : *ofPart)
            fold.add(movement);
    }
    const Ledger &ledger = average ? fold.ledger : workshop.ledger;
    const auto origin = origins(average ? fold.applied : *ofPart);
    std::set<MovementId> used;
    for (std::size_t i = 0; i < receipts.size(); ++i) {
        if (const auto brought = movementOf(receipts[i], *ofPart, used))
            here[i] = layersOf(*brought, receipts[i].part, origin, ledger);
        for (HereAt &at : here[i])
            at.rank = average ? 0 : at.rank;
    }
    return here;
}

} // namespace flarestock
