// SPDX-License-Identifier: MIT

#include "app/workshop/flow/flow_words.h"

#include "model/fluids/line/dash_bore.h"

#include <algorithm>
#include <set>

namespace flarestock {

namespace {

constexpr int CurvePoints = 50;

void addBores(const SystemFlow &flow, std::vector<std::string> &said)
{
    std::set<std::string> parts;
    for (const auto &run : flow.runs)
        parts.insert(run.line.assumed.begin(), run.line.assumed.end());
    if (parts.empty())
        return;
    std::string all;
    for (const auto &part : parts)
        all += (all.empty() ? "" : ", ") + part;
    said.push_back("The bores of " + all + " are those of tubes of their dash size (" +
                   std::string(assumedBore(6, DashNumbering::AsTube)->source) + ").");
}

void addRegulators(const Expansion &build, const SystemFlow &flow, std::vector<std::string> &said)
{
    for (const auto &delivery : flow.deliveries)
        if (delivery.bypass && !delivery.bypass->ownPa)
            said.push_back("The open " + stationName(build, delivery.to) +
                           " takes nothing itself: its maker says nothing of it.");
}

void addFlows(const SystemFlow &flow, std::vector<std::string> &said)
{
    const auto ends = [&flow](DeliveryEnd end) {
        return std::any_of(flow.deliveries.begin(), flow.deliveries.end(),
                           [end](const Delivery &delivery) { return delivery.end == end; });
    };
    if (ends(DeliveryEnd::Bypass))
        said.emplace_back("The engine idles and burns nothing: all that the pump gives comes "
                          "back, the most that these lines carry.");
    if (!flow.gravityFeeds.empty())
        said.emplace_back("Gravity brings half as much again as the engine burns (14 CFR 23.955).");
    if (flow.deliveries.empty() && flow.gravityFeeds.empty())
        said.emplace_back(
            "It is cold, when it takes most, and the pump gives what is asked of it.");
}

void addRegimes(const SystemFlow &flow, std::vector<std::string> &said)
{
    if (std::any_of(flow.runs.begin(), flow.runs.end(), [](const RunFlow &run) {
            return run.boreM > 0 && run.regime == Regime::Uncertain;
        }))
        said.emplace_back("Between Re 2040 and 4000 friction may be either; the larger, turbulent "
                          "figure was taken.");
}

} // namespace

std::string_view text(LineRole role) noexcept
{
    return role == LineRole::Suction    ? "suction"
           : role == LineRole::Pressure ? "pressure"
                                        : "return";
}

std::string_view text(DeliveryEnd end) noexcept
{
    switch (end) {
    case DeliveryEnd::Bypass:
        return "bypass regulator";
    case DeliveryEnd::DeadHead:
        return "dead-head regulator";
    case DeliveryEnd::Vessel:
        return "tank";
    case DeliveryEnd::User:
        return "user";
    }
    return {};
}

std::string_view text(CurveReach reach) noexcept
{
    switch (reach) {
    case CurveReach::Within:
        return "within the curve";
    case CurveReach::BelowItsBeginning:
        return "before the beginning of the curve";
    case CurveReach::BeyondItsEnd:
        return "beyond the end of the curve";
    case CurveReach::NotKnown:
        return "not known";
    }
    return {};
}

SystemFlow drawnFlow(const Expansion &build)
{
    return systemFlow(build, conditionsOf(build), CurvePoints);
}

std::string whyNothingFlows(const SystemFlow &flow)
{
    return !flow.unknown.empty()    ? flow.unknown.front()
           : flow.notJudged.empty() ? "nothing flows in its lines"
                                    : flow.notJudged;
}

std::string stationName(const Expansion &build, std::string_view id)
{
    const auto *station = build.station(id);
    if (station == nullptr)
        return std::string(id);
    const std::string &title = station->station->title;
    return station->part == nullptr ? title : title + " " + station->part->number;
}

std::string sectionName(const Expansion &build, const LineSection &section)
{
    return stationName(build, section.from) + " to " + stationName(build, section.to);
}

std::optional<BypassRange> heldBy(const Expansion &build, const Delivery &delivery)
{
    if (delivery.end != DeliveryEnd::DeadHead)
        return delivery.bypass;
    const auto *facts = build.station(delivery.to)->part->as<RegulatorFacts>();
    if (facts == nullptr || !facts->lowKpa || !facts->highKpa)
        return {};
    BypassRange range;
    range.fromPa = *facts->lowKpa * 1e3;
    range.toPa = *facts->highKpa * 1e3;
    return range;
}

std::vector<std::string> assumptions(const Expansion &build, const SystemFlow &flow)
{
    std::vector<std::string> said;
    addFlows(flow, said);
    addBores(flow, said);
    addRegulators(build, flow, said);
    addRegimes(flow, said);
    return said;
}

} // namespace flarestock
