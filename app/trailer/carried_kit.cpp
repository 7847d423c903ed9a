// SPDX-License-Identifier: MIT

#include "app/trailer/carried_kit.h"

namespace flarestock {

namespace {

/// What one piece costs: of the offer that is cheapest for one, in the shop's currency.
Result<std::int64_t> priceOf(const Part &part, const Workshop &workshop)
{
    const Offer *offer = workshop.catalogue.bestOffer(part, Decimal(1), workshop.settings.currency);
    const auto micros =
        offer ? (offer->priceEach(Decimal(1)) * Decimal(1'000'000)).rescaled(0, Rounding::HalfUp)
              : Decimal(0);
    const auto price = micros.toInt64();
    if (!price || *price <= 0 || *price > KitPart::PriceEachMost)
        return problem(part.number, "has no price in the shop's currency",
                       "Enter an offer for it, or leave it out.");
    return *price;
}

} // namespace

std::optional<std::int64_t> CarriedKit::carried(std::string_view part) const
{
    for (std::size_t i = 0; i < parts.size(); ++i)
        if (parts[i].part == part)
            return plan.best.carried[i];
    for (const PartCarry &carry : besides)
        if (carry.part->number == part)
            return carry.line.carry;
    return std::nullopt;
}

Result<CarriedKit> carriedKit(const std::vector<PartCarry> &carries, const Workshop &workshop,
                              double certainty)
{
    CarriedKit kit;
    for (const PartCarry &carry : carries) {
        const auto price = priceOf(*carry.part, workshop);
        if (!price)
            return tl::unexpected(price.error());
        if (carry.line.spending == Spending::Chance) {
            kit.parts.push_back({carry.part->number, *carry.line.demand, *price});
            kit.lines.push_back(carry.line);
            continue;
        }
        kit.besidesCost += carry.line.carry * *price;
        kit.besides.push_back(carry);
    }
    kit.plan = planKit(kit.parts, certainty);
    return kit;
}

Action keptInDrawers(const std::vector<CarriedPart> &parts, const By &by)
{
    const MovementId action = by.action.value();
    Action kept;
    for (std::size_t i = 0; i < parts.size(); ++i)
        kept.records.push_back(Keeping{idWithin(action, i), parts[i].part, parts[i].drawer,
                                       parts[i].carry, parts[i].carry, by.who, by.at}
                                   .asRecord());
    return kept;
}

} // namespace flarestock
