// SPDX-License-Identifier: MIT

#include "model/checks/rules/flow/flow_judgement.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace flarestock::rules {

namespace {

constexpr double Psi = 6894.757293168361;
constexpr double BehindRegulatorPa = 1 * Psi;
constexpr double BeforeRegulatorPa = 3 * Psi;
constexpr double InjectionPart = 0.2;
constexpr double InjectionBehindPart = 0.1;
constexpr double SameFlow = 0.995; // As catalogues print it: half a percent.

bool hasCarburettor(const Expansion &expansion)
{
    return std::any_of(expansion.stations.begin(), expansion.stations.end(),
                       [](const PlacedStation &station) {
                           return station.station->demand.kind == Kind::Carburettor;
                       });
}

} // namespace

std::vector<LossBudget> lossBudgets(const BuildUnderCheck &build, const Delivery &delivery)
{
    std::vector<LossBudget> budgets;
    if (!delivery.setPa || delivery.end == DeliveryEnd::Vessel)
        return budgets;
    const bool carburettor = hasCarburettor(build.expansion());
    budgets.push_back(
        {&delivery.line, carburettor ? BeforeRegulatorPa : InjectionPart * *delivery.setPa});
    for (const auto &bowl : delivery.bowls)
        budgets.push_back(
            {&bowl, carburettor ? BehindRegulatorPa : InjectionBehindPart * *delivery.setPa});
    return budgets;
}

double returnShare(const Delivery &delivery)
{
    if (!delivery.bypass || !delivery.setPa || *delivery.setPa <= 0)
        return 0;
    return delivery.bypass->floorPa / *delivery.setPa;
}

bool isFuelTooWarm(const SystemFlow &flow, const PumpAtWork &pump) noexcept
{
    return flow.vapour && pump.inlet &&
           pump.inlet->atmospherePa - flow.vapour->pascal < InletCautionPa;
}

const PumpAtWork *nearestToBoiling(const Delivery &delivery) noexcept
{
    const PumpAtWork *nearest = nullptr;
    for (const auto &pump : delivery.pumps)
        if (pump.inlet && (nearest == nullptr || pump.inlet->marginPa < nearest->inlet->marginPa))
            nearest = &pump;
    return nearest;
}

bool isLineAtFault(const BuildUnderCheck &build, const Delivery &delivery)
{
    const auto budgets = lossBudgets(build, delivery);
    return returnShare(delivery) > 1 || (!budgets.empty() && budgets.front().isExceeded());
}

bool isShort(const Delivery &delivery) noexcept
{
    if (delivery.end == DeliveryEnd::Vessel || !delivery.working)
        return false;
    return delivery.working->flowM3S < delivery.wantedM3S * SameFlow;
}

bool isFoundShort(const BuildUnderCheck &build, const std::string &station)
{
    const auto &deliveries = build.flow().deliveries;
    return std::any_of(deliveries.begin(), deliveries.end(), [&](const Delivery &delivery) {
        const bool itsPump =
            std::any_of(delivery.pumps.begin(), delivery.pumps.end(),
                        [&station](const PumpAtWork &pump) { return pump.station == station; });
        return itsPump && (isShort(delivery) || delivery.reach == CurveReach::BeyondItsEnd) &&
               !isLineAtFault(build, delivery);
    });
}

std::string withDecimals(double number, int decimals)
{
    std::array<char, 64> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), number,
                                   std::chars_format::fixed, decimals);
    return {digits.data(), end.ptr};
}

std::string kilopascals(double pascal)
{
    return withDecimals(pascal / 1e3, 1) + " kPa";
}

std::string litresPerHour(double flowM3S)
{
    return withDecimals(flowM3S * 3.6e6, 0) + " L/h";
}

std::string metresPerSecond(double velocityMS)
{
    return withDecimals(velocityMS, 2) + " m/s";
}

std::string nameOf(const BuildUnderCheck &build, const std::string &station)
{
    const auto *found = build.expansion().station(station);
    return found == nullptr ? station : BuildUnderCheck::named(*found);
}

std::string capitalNameOf(const BuildUnderCheck &build, const std::string &station)
{
    return BuildUnderCheck::capital(nameOf(build, station));
}

std::string wayOf(const BuildUnderCheck &build, const LineSection &section)
{
    return "from " + nameOf(build, section.from) + " to " + nameOf(build, section.to);
}

} // namespace flarestock::rules
