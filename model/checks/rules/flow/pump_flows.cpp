// SPDX-License-Identifier: MIT
//
// Pump flow: what the pumps give against their own lines and the regulator, read on their curves at
// the voltage of a running car, against what the engine burns and a quarter more.

#include "model/checks/rules/flow/flow_judgement.h"
#include "model/checks/rules/rules.h"

namespace flarestock::rules {

namespace {

constexpr auto CurveSource = "the maker's curve, as entered, which is not read beyond its ends";

std::string pumpsOf(const BuildUnderCheck &build, const Delivery &delivery)
{
    return delivery.pumps.size() == 1
               ? capitalNameOf(build, delivery.pumps.front().station)
               : "The " + std::to_string(delivery.pumps.size()) + " pumps together";
}

std::string wantedBy(const SystemFlow &flow, const Delivery &delivery)
{
    const std::string wanted = litresPerHour(delivery.wantedM3S);
    if (!flow.engineM3S)
        return "the system asks for " + wanted;
    return "the engine burns " + litresPerHour(delivery.wantedM3S / flow.conditions.margin) +
           " at full power, and " + withDecimals(flow.conditions.margin * 100 - 100, 0) +
           " % over that are " + wanted;
}

std::string at(const SystemFlow &flow, const Delivery &delivery)
{
    return "At " + kilopascals(delivery.working->pressurePa) + " and " +
           withDecimals(flow.conditions.volts, 1) + " V ";
}

Finding tooLittle(const BuildUnderCheck &build, const Delivery &delivery)
{
    const auto &flow = build.flow();
    return {.severity = Severity::Stop,
            .matter = Matter::Flow,
            .about = pumpsOf(build, delivery) + ": " + litresPerHour(delivery.working->flowM3S) +
                     " where " + litresPerHour(delivery.wantedM3S) + " is wanted",
            .where = delivery.pumps.front().station,
            .text = at(flow, delivery) + "no more comes through its lines; " +
                    wantedBy(flow, delivery) + ".",
            .source = std::string(flow.engineM3S ? marginOf(Feed::Pump).source
                                                 : std::string_view(CurveSource)),
            .remedy = "Use a stronger pump, or a second one beside it.",
            .mend = {}};
}

Finding beyond(const BuildUnderCheck &build, const Delivery &delivery)
{
    return {.severity = Severity::Stop,
            .matter = Matter::Flow,
            .about = pumpsOf(build, delivery) + ": works beyond the end of its curve",
            .where = delivery.pumps.front().station,
            .text = at(build.flow(), delivery) + "its curve ends with " +
                    litresPerHour(delivery.working->flowM3S) +
                    "; lines and regulator want more pressure, and what it gives there is not "
                    "known.",
            .source = CurveSource,
            .remedy = "Use a stronger pump, or enter a point of its curve at more pressure.",
            .mend = {}};
}

Finding below(const BuildUnderCheck &build, const Delivery &delivery)
{
    return {.severity = Severity::Caution,
            .matter = Matter::Flow,
            .about = pumpsOf(build, delivery) + ": works before the beginning of its curve",
            .where = delivery.pumps.front().station,
            .text =
                at(build.flow(), delivery) + "its curve begins with " +
                litresPerHour(delivery.working->flowM3S) +
                "; its lines want less pressure, and how much more it gives there is not known.",
            .source = CurveSource,
            .remedy = "Enter a point of its curve at less pressure.",
            .mend = {}};
}

/// Before its curve a pump gives at least what the curve begins with: enough may well be shown.
bool isEnoughShown(const Delivery &delivery)
{
    if (delivery.end == DeliveryEnd::Vessel)
        return delivery.balance && delivery.balance->surplusM3S >= 0;
    return delivery.end != DeliveryEnd::Bypass && !isShort(delivery);
}

} // namespace

void pumpFlows(const BuildUnderCheck &build, Findings &found)
{
    for (const auto &delivery : build.flow().deliveries) {
        if (isLineAtFault(build, delivery))
            continue;
        if (delivery.reach == CurveReach::BeyondItsEnd)
            found.push_back(beyond(build, delivery));
        else if (delivery.reach == CurveReach::BelowItsBeginning && !isEnoughShown(delivery))
            found.push_back(below(build, delivery));
        else if (delivery.reach == CurveReach::Within && isShort(delivery))
            found.push_back(tooLittle(build, delivery));
    }
}

void surgeTanks(const BuildUnderCheck &build, Findings &found)
{
    for (const auto &delivery : build.flow().deliveries) {
        if (!delivery.balance || delivery.balance->surplusM3S >= 0 ||
            delivery.reach != CurveReach::Within)
            continue;
        const auto &balance = *delivery.balance;
        found.push_back(
            {.severity = Severity::Stop,
             .matter = Matter::Flow,
             .about = capitalNameOf(build, delivery.to) + ": runs empty at full power",
             .where = delivery.to,
             .text = nameOf(build, delivery.pumps.front().station) + " brings " +
                     litresPerHour(delivery.working->flowM3S) + " where " +
                     litresPerHour(balance.leastLiftM3S) + " leaves; from full it lasts " +
                     withDecimals(balance.emptyAfterS.value_or(0), 0) + " s.",
             .source = "what flows in against what flows out",
             .remedy = "Use a stronger lift pump, or bring the return back into the surge tank.",
             .mend = {}});
        found.back().text = BuildUnderCheck::capital(std::move(found.back().text));
    }
}

} // namespace flarestock::rules
