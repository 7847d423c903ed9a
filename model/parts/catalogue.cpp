// SPDX-License-Identifier: MIT

#include "model/parts/catalogue.h"

#include "model/exact/case_fold.h"

#include <algorithm>
#include <cassert>
#include <map>
#include <numeric>
#include <set>

namespace flarestock {

namespace {

using NumberIndex = std::unordered_map<std::string, PartIndex>;

/// The parts in the order of their numbers. Parts are large, so each is moved once.
std::vector<Part> byNumber(std::vector<Part> parts)
{
    std::vector<PartIndex> order(parts.size());
    std::iota(order.begin(), order.end(), PartIndex{0});
    std::sort(order.begin(), order.end(),
              [&parts](PartIndex a, PartIndex b) { return parts[a].number < parts[b].number; });
    std::vector<Part> sorted;
    sorted.reserve(parts.size());
    for (const PartIndex at : order)
        sorted.push_back(std::move(parts[at]));
    return sorted;
}

Result<NumberIndex> indexed(const std::vector<Part> &parts)
{
    NumberIndex index;
    index.reserve(parts.size());
    for (PartIndex i = 0; i < parts.size(); ++i) {
        const std::string &number = parts[i].number;
        if (number.empty())
            return problem("part", "a part has no number", "Give it one.");
        if (const auto [at, isNew] = index.emplace(folded(number), i); !isNew)
            return problem(parts[at->second].number, "this part number stands twice",
                           "Give one of them another number.");
    }
    return index;
}

/// Spells a reference as the part that it names; the part is nullptr where there is none.
const Part *resolve(std::string &reference, const std::vector<Part> &parts,
                    const NumberIndex &index)
{
    const auto found = index.find(folded(reference));
    if (found == index.end())
        return nullptr;
    reference = parts[found->second].number;
    return &parts[found->second];
}

tl::unexpected<Problem> unknownPart(const std::string &thing, std::string_view role,
                                    const std::string &reference)
{
    return problem(thing, std::string(role) + " \"" + reference + "\" is no part of the catalogue",
                   "Enter that part, or correct its number.");
}

/// Empty where all references of the part are good.
tl::expected<void, Problem> resolveReferences(Part &part, const std::vector<Part> &parts,
                                              const NumberIndex &index)
{
    const auto resolveOne = [&](std::string &reference,
                                std::string_view role) -> tl::expected<const Part *, Problem> {
        const Part *const named = resolve(reference, parts, index);
        if (!named)
            return unknownPart(part.number, role, reference);
        if (named == &part)
            return problem(part.number, std::string(role) + " is the part itself",
                           "Name another part, or none.");
        return named;
    };
    for (PartCount &inside : part.box) {
        if (const auto named = resolveOne(inside.part, "what lies in its box"); !named)
            return tl::unexpected(named.error());
    }
    for (PartCount &used : part.fitting) {
        if (const auto named = resolveOne(used.part, "what fitting it takes"); !named)
            return tl::unexpected(named.error());
    }
    for (std::string &substitute : part.substitutes) {
        if (const auto named = resolveOne(substitute, "its substitute"); !named)
            return tl::unexpected(named.error());
    }
    if (auto *const filter = std::get_if<FilterFacts>(&part.facts);
        filter && !filter->element.empty()) {
        const auto named = resolveOne(filter->element, "its element");
        if (!named)
            return tl::unexpected(named.error());
        if ((*named)->kind != Kind::Element)
            return problem(part.number,
                           "its element \"" + filter->element +
                               "\" is not an element but: " + std::string(text((*named)->kind)),
                           "Name a part of the kind element.");
    }
    return {};
}

Decimal leastOf(const Offer &offer)
{
    const Decimal lot = offer.pack * offer.multiple;
    return divide(std::max(offer.minimum, lot), lot, 0, Rounding::Ceiling) * lot;
}

/// What is wrong with the figures of an offer; empty where nothing is.
std::string_view wrongFigures(const Offer &offer)
{
    if (offer.pack.sign() <= 0)
        return "the pack of an offer is not more than zero";
    if (offer.multiple.sign() <= 0)
        return "the multiple of an offer is not more than zero";
    if (offer.minimum.sign() < 0)
        return "the minimum of an offer is below zero";
    if (offer.breaks.empty())
        return "an offer has no price";
    for (std::size_t i = 0; i < offer.breaks.size(); ++i) {
        if (offer.breaks[i].priceEach.sign() < 0)
            return "a price is below zero";
        if (i > 0 && offer.breaks[i].from <= offer.breaks[i - 1].from)
            return "price breaks do not rise";
    }
    if (offer.breaks.front().from > leastOf(offer))
        return "there is no price for the least quantity that can be bought";
    return {};
}

tl::expected<void, Problem> checkOffers(std::vector<Offer> &offers, const std::vector<Part> &parts,
                                        const NumberIndex &index,
                                        const std::vector<Supplier> &suppliers)
{
    std::map<std::string, std::string_view> supplierIds;
    for (const Supplier &supplier : suppliers) {
        if (supplier.id.empty())
            return problem("supplier", "a supplier has no id", "Give it one.");
        if (!supplierIds.emplace(folded(supplier.id), supplier.id).second)
            return problem(supplier.id, "this supplier stands twice", "Give one another id.");
    }
    for (Offer &offer : offers) {
        if (!resolve(offer.part, parts, index))
            return unknownPart("offer", "its part", offer.part);
        const auto supplier = supplierIds.find(folded(offer.supplier));
        if (supplier == supplierIds.end())
            return problem(offer.part, "its supplier \"" + offer.supplier + "\" is not known",
                           "Enter the supplier, or correct its id.");
        offer.supplier = supplier->second;
        if (const auto wrong = wrongFigures(offer); !wrong.empty())
            return problem(offer.part, std::string(wrong), "Correct the offer.");
    }
    return {};
}

/// The currency in which most is offered: the one that a shop buys in, which a catalogue of parts
/// does not know. Of two the first by its code; empty where nothing is offered.
std::string mainCurrency(const std::vector<Offer> &offers)
{
    std::map<std::string, std::size_t> counts;
    for (const Offer &offer : offers)
        ++counts[std::string(offer.currency.code())];
    const auto most =
        std::max_element(counts.begin(), counts.end(),
                         [](const auto &a, const auto &b) { return a.second < b.second; });
    return most == counts.end() ? std::string() : most->first;
}

/// By part; then what is offered in the main currency, so that a foreign price is not taken for the
/// lower one because its number is.
bool listsBefore(const Offer &a, const Offer &b, std::string_view main)
{
    const auto key = [main](const Offer &offer) {
        return std::tuple(std::string_view(offer.part), offer.currency.code() != main,
                          offer.currency.code());
    };
    if (key(a) != key(b))
        return key(a) < key(b);
    const Decimal &priceOfA = a.priceEach(leastOf(a));
    const Decimal &priceOfB = b.priceEach(leastOf(b));
    if (priceOfA != priceOfB)
        return priceOfA < priceOfB;
    return std::tie(a.supplier, a.supplierNumber) < std::tie(b.supplier, b.supplierNumber);
}

} // namespace

Catalogue::Catalogue(Catalogue &&) noexcept = default;
Catalogue &Catalogue::operator=(Catalogue &&) noexcept = default;
Catalogue::~Catalogue() = default;

Result<Catalogue> Catalogue::of(std::vector<Part> parts, std::vector<Supplier> suppliers,
                                std::vector<Offer> offers)
{
    Catalogue made;
    made.m_parts = byNumber(std::move(parts));
    auto index = indexed(made.m_parts);
    if (!index)
        return tl::unexpected(std::move(index.error()));
    made.m_byNumber = std::move(*index);
    for (Part &part : made.m_parts) {
        if (auto good = resolveReferences(part, made.m_parts, made.m_byNumber); !good)
            return tl::unexpected(std::move(good.error()));
    }
    std::sort(suppliers.begin(), suppliers.end(),
              [](const Supplier &a, const Supplier &b) { return a.id < b.id; });
    made.m_suppliers = std::move(suppliers);
    if (auto good = checkOffers(offers, made.m_parts, made.m_byNumber, made.m_suppliers); !good)
        return tl::unexpected(std::move(good.error()));
    std::sort(offers.begin(), offers.end(),
              [main = mainCurrency(offers)](const Offer &a, const Offer &b) {
                  return listsBefore(a, b, main);
              });
    made.m_offers = std::move(offers);

    made.m_byPort = PartsByPort(made.m_parts);
    made.m_byKind.resize(KindCount);
    made.m_offersOf.reserve(made.m_parts.size());
    std::uint32_t at = 0;
    for (const Part &part : made.m_parts) {
        made.m_byKind[static_cast<std::size_t>(part.kind)].push_back(&part);
        const std::uint32_t first = at;
        while (at < made.m_offers.size() && made.m_offers[at].part == part.number)
            ++at;
        made.m_offersOf.emplace_back(first, at);
    }
    assert(at == made.m_offers.size());
    return made;
}

const Part *Catalogue::find(std::string_view number) const
{
    const auto found = m_byNumber.find(folded(number));
    return found == m_byNumber.end() ? nullptr : &m_parts[found->second];
}

PartIndex Catalogue::index(const Part &part) const noexcept
{
    assert(!m_parts.empty() && &part >= m_parts.data() && &part <= &m_parts.back());
    return static_cast<PartIndex>(&part - m_parts.data());
}

std::span<const Part *const> Catalogue::ofKind(Kind kind) const noexcept
{
    if (m_byKind.empty())
        return {};
    return m_byKind[static_cast<std::size_t>(kind)];
}

std::span<const Offer> Catalogue::offers(const Part &part) const noexcept
{
    const auto [first, end] = m_offersOf[index(part)];
    return std::span(m_offers).subspan(first, end - first);
}

std::optional<Purchase> Catalogue::bestPurchase(const Part &part, const Decimal &quantity,
                                                const std::optional<Currency> &only) const
{
    std::optional<Purchase> best;
    const auto isBetter = [&best](const Purchase &other) {
        if (!best || other.cost != best->cost)
            return !best || other.cost < best->cost;
        return std::tie(other.offer->leadDays, other.offer->supplier) <
               std::tie(best->offer->leadDays, best->offer->supplier);
    };
    const auto sold = offers(part);
    for (const Offer &offer : sold) {
        if (offer.currency != (only ? *only : sold.front().currency))
            continue;
        if (Purchase other = cheapestPurchase(offer, quantity); isBetter(other))
            best = std::move(other);
    }
    return best;
}

const Offer *Catalogue::bestOffer(const Part &part, const Decimal &quantity,
                                  const std::optional<Currency> &only) const
{
    const auto best = bestPurchase(part, quantity, only);
    return best ? best->offer : nullptr;
}

} // namespace flarestock
