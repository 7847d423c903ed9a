// SPDX-License-Identifier: MIT

#include "app/workshop/taking_in.h"

#include "app/workshop/plans_stand.h"
#include "app/workshop/suppliers.h"
#include "model/journal/notes/shop_notes.h"

#include <algorithm>

namespace flarestock {

namespace {

/// Of what lies somewhere the catalogue has to know what it is. Where the shop's own does not read,
/// nobody knows in which units that is kept.
Result<void> knowsTheStock(const Catalogue &catalogue, const TextFiles &before,
                           const ShopFile &file)
{
    const auto ledger = file.ledger();
    if (!ledger)
        return tl::unexpected(ledger.error());
    const auto records = file.records();
    if (!records)
        return tl::unexpected(records.error());
    const auto notes = ShopNotes::of(*records, *ledger);
    if (!notes)
        return tl::unexpected(notes.error());
    const auto old = readCatalogue(before);
    for (const auto &[key, held] : ledger->balances()) {
        const Part *was = old ? old->find(key.part) : nullptr;
        const bool isOfNone = (old && !was) || notes->hoses.contains(key.part);
        if (held.quantity == 0 || isOfNone)
            continue;
        const Part *now = catalogue.find(key.part);
        if (!now)
            return problem(key.part, "is no longer in the catalogue, and lies at " + key.place,
                           "Keep its row for as long as there is any.");
        if (was && now->unit != was->unit)
            return problem(key.part, "is kept in another unit, and lies at " + key.place,
                           "Give the new unit a new part number.");
    }
    return {};
}

/// What a supplier sends comes from a place of his.
Result<void> addSuppliersPlaces(const Catalogue &catalogue, ShopFile &file)
{
    const auto places = file.places();
    if (!places)
        return tl::unexpected(places.error());
    for (const Supplier &supplier : catalogue.suppliers()) {
        const bool hasOne = std::any_of(places->begin(), places->end(), [&](const Place &one) {
            return isPlaceOf(supplier.id, one);
        });
        if (hasOne)
            continue;
        if (auto added = file.add(newPlaceOf(supplier)); !added)
            return added;
    }
    return {};
}

bool hasTemplate(const TextFiles &changed)
{
    return std::any_of(changed.begin(), changed.end(),
                       [](const auto &one) { return one.first.starts_with("templates/"); });
}

/// As it would be with the changes. Problem: as takeIn().
Result<Catalogue> catalogueWith(const TextFiles &changed, const TextFiles &before,
                                const ShopFile &file)
{
    TextFiles all = changed;
    all.insert(before.begin(), before.end()); // Those that are not there yet.
    auto catalogue = readCatalogueAndPlans(all);
    if (!catalogue)
        return tl::unexpected(catalogue.error());
    if (const auto knows = knowsTheStock(*catalogue, before, file); !knows)
        return tl::unexpected(knows.error());
    if (hasTemplate(changed)) {
        if (auto stand = plansStand(before, all); !stand)
            return tl::unexpected(stand.error());
    }
    const auto ledger = file.ledger();
    if (!ledger)
        return tl::unexpected(ledger.error());
    if (auto fits = seasonFits(all, ledger->places()); !fits)
        return tl::unexpected(fits.error());
    return catalogue;
}

} // namespace

Result<void> canBeTakenIn(const TextFiles &changed, const TextFiles &before, const ShopFile &file)
{
    const auto catalogue = catalogueWith(changed, before, file);
    return catalogue ? Result<void>() : tl::unexpected(catalogue.error());
}

Result<void> takeIn(const TextFiles &changed, const TextFiles &before, ShopFile &file,
                    const TakenInBy &by)
{
    const auto catalogue = catalogueWith(changed, before, file);
    if (!catalogue)
        return tl::unexpected(catalogue.error());
    if (auto added = addSuppliersPlaces(*catalogue, file); !added)
        return added;
    return file.putDocuments(changed, before, by.who, by.at);
}

} // namespace flarestock
