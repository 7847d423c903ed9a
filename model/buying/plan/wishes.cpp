// SPDX-License-Identifier: MIT

#include "model/buying/plan/wishes.h"

#include "model/buying/plan/days.h"
#include "model/exact/case_fold.h"

#include <algorithm>
#include <map>

namespace flarestock {

namespace {

/// For a need without a day anything comes in time.
constexpr int AnyDay = 1'000'000;

/// In whole steps of 10^-scale, of which there are few enough; `amount` has no more decimals.
std::int64_t stepsOf(const Decimal &amount, std::int32_t scale)
{
    const Decimal steps =
        amount.rescaled(scale, Rounding::HalfEven) *
        Decimal::parse("1" + std::string(static_cast<std::size_t>(scale), '0')).value();
    return steps.toInt64().value_or(0);
}

bool comesBefore(const Shortage *a, const Shortage *b)
{
    if (a->day.empty() != b->day.empty())
        return b->day.empty();
    return a->day < b->day;
}

const Supplier *supplierOf(const Catalogue &catalogue, const std::string &id)
{
    const auto all = catalogue.suppliers();
    const auto found =
        std::find_if(all.begin(), all.end(), [&id](const Supplier &one) { return one.id == id; });
    return found == all.end() ? nullptr : &*found;
}

} // namespace

std::int64_t minorUnits(const Decimal &amount, const Currency &currency)
{
    return stepsOf(amount, currency.minorDigits());
}

bool Parcel::bearsTaxByDocument() const
{
    return !supplier->tax.recovered && supplier->tax.by == TaxRule::By::Document &&
           supplier->tax.percent.sign() > 0;
}

bool Parcel::risesInFreight() const
{
    for (std::size_t at = 1; at < steps.size(); ++at)
        if (steps[at].cost > steps[at - 1].cost)
            return true;
    return false;
}

std::int64_t Parcel::reach() const
{
    std::int64_t drop = 0;
    for (std::size_t at = 0; at < steps.size(); ++at)
        for (std::size_t behind = at + 1; behind < steps.size(); ++behind)
            drop = std::max(drop, steps[at].cost - steps[behind].cost);
    if (drop > 0 && !supplier->tax.recovered) // Its tax goes with it, and a unit of rounding each.
        drop += (Decimal(drop) * supplier->tax.percent * Decimal::scaled(1, 2))
                    .rescaled(0, Rounding::Ceiling)
                    .toInt64()
                    .value_or(0) +
                2;
    return std::max(drop, minimum);
}

const Parcel::Step &Parcel::step(std::int64_t goods) const
{
    const auto behind = std::find_if(steps.begin(), steps.end(),
                                     [goods](const Step &step) { return step.from > goods; });
    return behind == steps.begin() ? steps.front() : *(behind - 1);
}

Wishes::Wishes(const PlanTask &task) : m_task(task)
{
    std::map<std::string, std::vector<const Shortage *>> byPart;
    for (const Shortage &shortage : task.shortages)
        if (shortage.quantity.sign() > 0)
            byPart[folded(shortage.part)].push_back(&shortage);
    for (auto &[part, shortages] : byPart) {
        std::stable_sort(shortages.begin(), shortages.end(), comesBefore);
        addPart(shortages);
    }
}

void Wishes::keepEarliest()
{
    for (PartWish &wish : parts) {
        int first = AnyDay;
        for (const OfferChoices &from : wish.offers)
            first = std::min(first, from.days);
        std::erase_if(wish.offers, [first](const OfferChoices &from) { return from.days > first; });
    }
}

std::int64_t Wishes::inShops(const Decimal &amount, const Parcel &parcel) const
{
    const Currency &shops = m_task.rates.shops();
    return minorUnits((amount * parcel.rate).rescaled(shops.minorDigits(), Rounding::HalfEven),
                      shops);
}

void Wishes::addPart(const std::vector<const Shortage *> &shortages)
{
    const Part *part = m_task.catalogue.find(shortages.front()->part);
    PartWish wish;
    wish.part = part ? part->number : shortages.front()->part;
    wish.shortages = shortages;
    const std::string why = part ? addOffers(wish, *part) : "it is no part of the catalogue";
    if (!why.empty()) {
        for (const Shortage *shortage : shortages)
            unplaced.push_back({*shortage, why});
        return;
    }
    setDues(wish);
    const int last = wish.dues.back().days;
    std::erase_if(wish.offers, [last](const OfferChoices &from) { return from.days > last; });
    for (OfferChoices &from : wish.offers)
        choose(wish, from);
    parts.push_back(std::move(wish));
}

/// Why there is nothing to choose from; empty where there is.
std::string Wishes::addOffers(PartWish &wish, const Part &part)
{
    std::string why = "nobody sells it";
    for (const Shortage *shortage : wish.shortages)
        wish.scale = std::max(wish.scale, shortage->quantity.stripped().scale());
    for (const Offer &offer : m_task.catalogue.offers(part)) {
        const auto parcel = parcelOf(offer);
        if (!parcel) {
            why = "it is sold in " + std::string(offer.currency.code()) +
                  ", of which no rate is known";
            continue;
        }
        wish.scale = std::max(wish.scale, (offer.pack * offer.multiple).stripped().scale());
        wish.offers.push_back({&offer, *parcel, offer.leadDays, {}});
    }
    return wish.offers.empty() ? why : std::string();
}

/// What comes too late is taken only where nothing comes in time, and then what comes first.
void Wishes::setDues(PartWish &wish) const
{
    int first = AnyDay;
    for (const OfferChoices &from : wish.offers)
        first = std::min(first, from.days);
    std::int64_t units = 0;
    for (const Shortage *shortage : wish.shortages) {
        units += stepsOf(shortage->quantity, wish.scale);
        const int days =
            shortage->day.empty() ? AnyDay : std::max(daysFrom(m_task.today, shortage->day), first);
        if (!wish.dues.empty() && wish.dues.back().days == days)
            wish.dues.back().units = units;
        else
            wish.dues.push_back({days, units});
    }
}

std::optional<std::size_t> Wishes::parcelOf(const Offer &offer)
{
    const auto found = std::find_if(parcels.begin(), parcels.end(), [&offer](const Parcel &one) {
        return one.supplier->id == offer.supplier && one.currency == offer.currency;
    });
    if (found != parcels.end())
        return static_cast<std::size_t>(found - parcels.begin());
    const Supplier *supplier = supplierOf(m_task.catalogue, offer.supplier);
    const auto rate = m_task.rates.of(offer.currency, m_task.today);
    const auto theirs =
        supplier ? m_task.rates.of(supplier->currency.value_or(m_task.rates.shops()), m_task.today)
                 : std::nullopt;
    if (!rate || !theirs)
        return std::nullopt;
    Parcel parcel{supplier, offer.currency, *rate, {}, 0};
    const auto inOrders = [&](const Decimal &amount, Rounding rounding) {
        const auto digits = offer.currency.minorDigits();
        return divide(amount * *theirs, *rate, digits, rounding);
    };
    parcel.minimum =
        minorUnits(inOrders(supplier->minimumOrder, Rounding::Ceiling), offer.currency);
    for (const Supplier::FreightStep &step : supplier->freight) {
        const Decimal cost = inOrders(step.cost, Rounding::HalfEven);
        const Decimal tax = (cost * supplier->tax.percent * Decimal::scaled(1, 2))
                                .rescaled(offer.currency.minorDigits(), supplier->tax.rounding);
        const bool isTaxed = !supplier->tax.recovered && supplier->tax.by == TaxRule::By::Item;
        parcel.steps.push_back({minorUnits(inOrders(step.from, Rounding::Ceiling), offer.currency),
                                minorUnits(cost, offer.currency),
                                inShops(cost, parcel) + (isTaxed ? inShops(tax, parcel) : 0)});
    }
    if (parcel.steps.empty())
        parcel.steps.emplace_back();
    parcels.push_back(std::move(parcel));
    return parcels.size() - 1;
}

LineChoice Wishes::choice(const PartWish &wish, const OfferChoices &from,
                          const Decimal &quantity) const
{
    const Parcel &parcel = parcels[from.parcel];
    const TaxRule &tax = parcel.supplier->tax;
    const auto digits = parcel.currency.minorDigits();
    const Decimal cost =
        (quantity * from.offer->priceEach(quantity)).rescaled(digits, Rounding::HalfEven);
    LineChoice made{quantity, stepsOf(quantity, wish.scale), minorUnits(cost, parcel.currency),
                    inShops(cost, parcel)};
    if (!tax.recovered && tax.by == TaxRule::By::Item)
        made.worth += inShops(
            (cost * tax.percent * Decimal::scaled(1, 2)).rescaled(digits, tax.rounding), parcel);
    return made;
}

} // namespace flarestock
