// SPDX-License-Identifier: MIT

#include "model/checks/rules/flow/flow_judgement.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace flarestock::rules {

namespace {

constexpr double SameFlow = 0.995; // As catalogues print it: half a percent.

/// What the pumps give against the set pressure and a line that takes just its budget; nothing
/// where a curve is not known. Before its beginning a curve gives no less than there.
std::optional<double> flowWithinBudgetM3S(const SystemFlow &flow, const Delivery &delivery,
                                          const LineBudget &bounds)
{
    double all = 0;
    for (const auto &pump : delivery.pumps) {
        if (!pump.curve)
            return {};
        double volts = flow.conditions.volts;
        auto range = pump.curve->pressureRange(volts);
        if (!range) // Driven by the engine.
            range = pump.curve->pressureRange(volts = 0);
        if (!range)
            return {};
        const double pressure = *delivery.setPa + bounds.cautionPa + pump.suction.dropPa;
        const auto given = pump.curve->flowM3S(std::max(pressure, range->lowPa), volts);
        if (!given)
            return {};
        all += *given;
    }
    return all;
}

} // namespace

FuelSystem systemOf(const BuildUnderCheck &build)
{
    const auto &stations = build.expansion().stations;
    const bool carburettor =
        std::any_of(stations.begin(), stations.end(), [](const PlacedStation &station) {
            return station.station->demand.kind == Kind::Carburettor;
        });
    return carburettor ? FuelSystem::Carburettor : FuelSystem::Injection;
}

std::vector<LossBudget> lossBudgets(const BuildUnderCheck &build, const Delivery &delivery)
{
    std::vector<LossBudget> budgets;
    if (!delivery.setPa || delivery.end == DeliveryEnd::Vessel)
        return budgets;
    const auto system = systemOf(build);
    budgets.push_back(
        {&delivery.line, lineBudget(system, BudgetedLine::BeforeRegulator, *delivery.setPa)});
    for (const auto &bowl : delivery.bowls)
        budgets.push_back(
            {&bowl, lineBudget(system, BudgetedLine::BehindRegulator, *delivery.setPa)});
    return budgets;
}

std::optional<LineBudget> returnBudget(const BuildUnderCheck &build, const Delivery &delivery)
{
    if (!delivery.bypass || !delivery.setPa || *delivery.setPa <= 0)
        return {};
    return lineBudget(systemOf(build), BudgetedLine::Return, *delivery.setPa);
}

bool isReturnTold(const BuildUnderCheck &build, const Delivery &delivery)
{
    const auto bounds = returnBudget(build, delivery);
    return bounds && delivery.bypass->floorPa > bounds->cautionPa;
}

bool cannotHold(const BuildUnderCheck &build, const Delivery &delivery)
{
    const auto bounds = returnBudget(build, delivery);
    return bounds && delivery.bypass->floorPa > bounds->stopPa;
}

bool isFuelTooWarm(const SystemFlow &flow, const PumpAtWork &pump) noexcept
{
    return flow.vapour && pump.inlet &&
           pump.inlet->atmospherePa - flow.vapour->pascal < inletBounds().cautionPa;
}

const PumpAtWork *nearestToBoiling(const Delivery &delivery) noexcept
{
    const PumpAtWork *nearest = nullptr;
    for (const auto &pump : delivery.pumps)
        if (pump.inlet && (nearest == nullptr || pump.inlet->marginPa < nearest->inlet->marginPa))
            nearest = &pump;
    return nearest;
}

bool isInletFound(const BuildUnderCheck &build, const std::string &station)
{
    const auto &flow = build.flow();
    return std::any_of(
        flow.deliveries.begin(), flow.deliveries.end(), [&](const Delivery &delivery) {
            const auto *nearest = nearestToBoiling(delivery);
            const bool its =
                std::any_of(delivery.pumps.begin(), delivery.pumps.end(),
                            [&](const PumpAtWork &pump) { return pump.station == station; });
            return its && nearest != nullptr &&
                   nearest->inlet->marginPa < inletBounds().cautionPa &&
                   !isFuelTooWarm(flow, *nearest);
        });
}

std::vector<FilterShare> filtersIn(const BuildUnderCheck &build, const LineSection &section)
{
    std::vector<FilterShare> filters;
    for (const auto &id : section.runs) {
        const auto *run = build.flow().run(id);
        if (run != nullptr && run->line.passed != nullptr && run->loss.filterPa > 0)
            filters.push_back({run->line.passed, run->loss.filterPa});
    }
    std::stable_sort(
        filters.begin(), filters.end(),
        [](const FilterShare &a, const FilterShare &b) { return a.dropPa > b.dropPa; });
    return filters;
}

bool isLineFound(const BuildUnderCheck &build, const std::string &filter)
{
    for (const auto &delivery : build.flow().deliveries)
        for (const auto &budget : lossBudgets(build, delivery)) {
            const auto filters = filtersIn(build, *budget.section);
            if (budget.isExceeded() &&
                std::any_of(filters.begin(), filters.end(), [&filter](const FilterShare &share) {
                    return share.filter->id == filter;
                }))
                return true;
        }
    return false;
}

bool isLineAtFault(const BuildUnderCheck &build, const Delivery &delivery)
{
    if (cannotHold(build, delivery))
        return true;
    const auto budgets = lossBudgets(build, delivery);
    if (budgets.empty() || !budgets.front().isExceeded())
        return false;
    const auto given = flowWithinBudgetM3S(build.flow(), delivery, budgets.front().bounds);
    return given && *given >= delivery.wantedM3S * SameFlow;
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

std::string percent(double part)
{
    return withDecimals(part * 100, part < 0.1 ? 1 : 0) + " %";
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
