// SPDX-License-Identifier: MIT

#include "app/stockroom/asked.h"

#include "app/workshop/made_up.h"
#include "model/exact/case_fold.h"
#include "model/exact/nearest_word.h"

#include <algorithm>

namespace flarestock {

namespace {

/// What is probably meant; `otherwise` where nothing is near.
std::string remedyFor(const std::string &typed, const std::vector<std::string_view> &words,
                      std::string otherwise)
{
    const std::string_view near = nearestWord(typed, words);
    return near.empty() ? std::move(otherwise) : "Perhaps " + std::string(near) + " is meant.";
}

/// More of them are no help in a sentence.
constexpr std::size_t MostListed = 20;

} // namespace

std::string listed(const std::vector<std::string_view> &words)
{
    std::string all;
    for (const std::string_view word : words)
        all += (all.empty() ? "" : ", ") + std::string(word);
    return all;
}

Result<const Part *> partAsked(const std::string &typed, const Catalogue &catalogue)
{
    if (const Part *part = catalogue.find(typed))
        return part;
    std::vector<std::string_view> numbers;
    for (const Part &part : catalogue.parts())
        numbers.push_back(part.number);
    return problem(typed, "is no part of the catalogue",
                   remedyFor(typed, numbers, "Check the part number."));
}

Result<const Part *> partAsked(const std::string &typed, const Workshop &workshop)
{
    if (const Part *part = workshop.part(typed))
        return part;
    return partAsked(typed, workshop.catalogue);
}

Result<const Place *> placeAsked(const std::string &typed, const Ledger &ledger)
{
    std::vector<std::string_view> ids;
    for (const Place &place : ledger.places()) {
        if (folded(place.id) == folded(typed))
            return &place;
        ids.push_back(place.id);
    }
    return problem(typed, "is no place of this shop",
                   remedyFor(typed, ids,
                             ids.size() > MostListed ? "Look them up: flarestock place."
                                                     : "Places are: " + listed(ids) + "."));
}

Result<const Place *> stockPlaceAsked(const std::string &typed, const Ledger &ledger)
{
    auto place = placeAsked(typed, ledger);
    if (place && !isStock((*place)->kind))
        return problem((*place)->id, "is not where stock lies", "Name a shelf, bin or drawer.");
    return place;
}

Result<const BuildPlan *> buildAsked(const std::string &typed, const Workshop &workshop)
{
    if (const BuildPlan *plan = workshop.build(typed))
        return plan;
    std::vector<std::string_view> ids;
    for (const BuildPlan &plan : workshop.builds)
        ids.push_back(plan.id);
    return problem(
        typed, "is no build of this shop",
        remedyFor(typed, ids, ids.empty() ? "It has none." : "Builds are: " + listed(ids) + "."));
}

Result<const Place *> placeOfKind(PlaceKind kind, const Ledger &ledger)
{
    for (const Place &place : ledger.places()) {
        if (place.kind == kind)
            return &place;
    }
    return problem("the shop", "has no place of the kind " + std::string(text(kind)),
                   "Add one, or name the place.");
}

Result<StockAsked> stockAsked(const StockWords &words, const Workshop &workshop)
{
    const auto part = partAsked(words.part, workshop);
    if (!part)
        return tl::unexpected(part.error());
    const auto from = placeAsked(words.from, workshop.ledger);
    if (!from)
        return tl::unexpected(from.error());
    const auto to = placeAsked(words.to, workshop.ledger);
    if (!to)
        return tl::unexpected(to.error());
    const auto quantity = quantityAsked(words.quantity, **part);
    if (!quantity)
        return tl::unexpected(quantity.error());
    return StockAsked{*part, *quantity, *from, *to};
}

Problem wrongIn(const std::string &option, Problem wrong)
{
    wrong.thing = wrong.thing.empty() ? option : option + " " + wrong.thing;
    wrong.line = wrong.column = 0;
    wrong.excerpt.clear();
    return wrong;
}

Result<std::int64_t> quantityAsked(const std::string &typed, const Part &part,
                                   const std::string &option)
{
    auto quantity = Quantity::parse(typed);
    if (!quantity)
        return tl::unexpected(wrongIn(option, quantity.error()));
    if (const auto bare = Decimal::parse(typed))
        quantity = Quantity{*bare, part.unit};
    const auto inUnit = quantity->nearestIn(part.unit);
    if (!inUnit)
        return tl::unexpected(wrongIn(option, inUnit.error()));
    auto smallest = inUnit->smallest();
    if (!smallest)
        return tl::unexpected(wrongIn(option, smallest.error()));
    return smallest;
}

std::string spoken(std::int64_t quantity, const Part &part)
{
    return Quantity::ofSmallest(quantity, part.unit).spoken();
}

std::string amountText(std::int64_t quantity, const Part &part)
{
    return Quantity::ofSmallest(quantity, part.unit).amount.text();
}

std::string amountText(std::int64_t quantity, const std::string &part, const Workshop &workshop)
{
    const Part *known = workshop.part(part);
    return known ? amountText(quantity, *known) : std::to_string(quantity);
}

Result<BalanceKey> piecesAsked(const PiecesAsked &asked, const Ledger &ledger, const Part &part)
{
    BalanceKey named{part.number, asked.place, asked.lot, PieceCondition::New};
    if (!asked.condition.empty()) {
        const auto condition = parsePieceCondition(asked.condition);
        if (!condition)
            return tl::unexpected(condition.error());
        named.condition = *condition;
    }
    std::vector<BalanceKey> there;
    std::string lots;
    for (const auto &[key, balance] : ledger.balancesOf(part.number)) {
        if (key.place != asked.place || balance.quantity <= 0 ||
            (!asked.lot.empty() && key.lot != asked.lot) ||
            (!asked.condition.empty() && key.condition != named.condition))
            continue;
        if (key.lot.empty() && key.condition == PieceCondition::New)
            return key;
        there.push_back(key);
        lots += (lots.empty() ? "" : "; ") + (key.lot.empty() ? "" : key.lot + ", ") +
                std::string(text(key.condition));
    }
    if (there.size() > 1)
        return problem(part.number, "lies at " + asked.place + " as " + lots,
                       "Say which: --lot, or --condition.");
    return there.empty() ? named : there.front();
}

Result<std::string> dayAsked(const std::string &typed, std::int64_t now)
{
    if (typed.empty())
        return dayOf(now);
    if (!isDay(typed))
        return problem(typed, "is no day", "Write it as 2026-12-01.");
    return typed;
}

Result<std::int64_t> valueAsked(const std::string &typed, const std::string &option)
{
    const auto amount = Decimal::parse(typed);
    if (!amount)
        return tl::unexpected(wrongIn(option, amount.error()));
    const auto micros = amount->rescaledExact(6);
    const auto whole = micros ? (*micros * Decimal(1'000'000)).toInt64() : std::nullopt;
    if (!whole || amount->sign() < 0)
        return problem(option + " " + typed,
                       "is below zero, too large or has more than six decimals",
                       "Write an amount of the shop's currency: 12.50.");
    return *whole;
}

} // namespace flarestock
