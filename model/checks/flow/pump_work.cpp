// SPDX-License-Identifier: MIT

#include "model/checks/flow/pump_work.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace flarestock {

namespace {

constexpr double LitreHour = 1 / 3.6e6;
constexpr int CurveSteps = 16; ///< Between which a curve behind its own lines is straight.

/// The curve as published. One flow at a voltage gives no curve there and is left out.
Result<PumpCurve> curveOf(const PumpFacts &facts)
{
    std::map<double, std::vector<PumpCurve::Point>> byVolts;
    for (const auto &point : facts.curve)
        byVolts[point.volts].push_back(
            {point.pressureKpa * 1e3, point.volts, point.flowLh * LitreHour});
    std::vector<PumpCurve::Point> points;
    for (const auto &[volts, some] : byVolts)
        if (some.size() > 1)
            points.insert(points.end(), some.begin(), some.end());
    return PumpCurve::of(points);
}

} // namespace

PumpWork::PumpWork(const DeliveryPlan &plan, const LineNetwork &network,
                   const FlowConditions &conditions)
    : m_plan(plan), m_network(network), m_conditions(conditions),
      m_back(LineNetwork::sharesOf(plan.back))
{
    for (const auto &pump : plan.pumps) {
        m_lines.push_back({LineNetwork::sharesOf(pump.drawn), LineNetwork::sharesOf(pump.pushed)});
        for (const auto *shares : {&m_lines.back().drawn, &m_lines.back().pushed})
            for (const auto &[run, unused] : *shares)
                ++m_usedBy[run];
    }
}

double PumpWork::volts(const DeliveryPlan::Pump &pump) const
{
    const auto *facts = pump.station->part->as<PumpFacts>();
    return facts != nullptr && facts->electric ? m_conditions.volts : 0;
}

double PumpWork::alonePa(std::size_t pump, double flowM3S) const
{
    const auto &[drawn, pushed] = m_lines[pump];
    const auto &plan = m_plan.pumps[pump];
    return m_network.worst({plan.drawn, drawn, &m_usedBy, false}, flowM3S).dropPa +
           m_network.worst({plan.pushed, pushed, &m_usedBy, false}, flowM3S).dropPa;
}

double PumpWork::togetherPa(double allM3S) const
{
    const auto &[drawn, pushed] = m_lines.front();
    const auto &plan = m_plan.pumps.front();
    return m_network.worst({plan.drawn, drawn, &m_usedBy, true}, allM3S).dropPa +
           m_network.worst({plan.pushed, pushed, &m_usedBy, true}, allM3S).dropPa;
}

double PumpWork::backPa(double flowM3S) const
{
    const double own =
        m_plan.end == DeliveryEnd::Bypass ? wideOpenPa(*m_plan.to, flowM3S).value_or(0) : 0;
    return m_network.worst({m_plan.back, m_back}, flowM3S).dropPa + own;
}

Result<PumpCurve> PumpWork::behindOwnLines(const PumpCurve &curve, std::size_t pump) const
{
    const double running = volts(m_plan.pumps[pump]);
    const auto range = curve.pressureRange(running);
    if (!range)
        return tl::unexpected<Problem>(range.error());
    std::vector<PumpCurve::Point> points;
    for (int step = 0; step <= CurveSteps; ++step) {
        const double pressure =
            std::lerp(range->lowPa, range->highPa, step / static_cast<double>(CurveSteps));
        const auto flow = curve.flowM3S(std::min(pressure, range->highPa), running);
        if (!flow)
            return tl::unexpected<Problem>(flow.error());
        const double left = pressure - alonePa(pump, *flow);
        if (left >= 0)
            points.push_back({left, m_conditions.volts, *flow});
    }
    return PumpCurve::of(points);
}

Result<PumpSet> PumpWork::pumpsAtMeeting(const Delivery &delivery) const
{
    if (delivery.pumps.size() == 1)
        return PumpSet{{*delivery.pumps.front().curve}, volts(m_plan.pumps.front())};
    PumpSet set{{}, m_conditions.volts};
    for (std::size_t pump = 0; pump < delivery.pumps.size(); ++pump) {
        auto curve = behindOwnLines(*delivery.pumps[pump].curve, pump);
        if (!curve)
            return tl::unexpected<Problem>(curve.error());
        set.pumps.push_back(*std::move(curve));
    }
    return set;
}

void PumpWork::readCurves(Delivery &delivery, std::vector<std::string> &unknown) const
{
    for (const auto &pump : m_plan.pumps) {
        PumpAtWork work;
        work.station = pump.station->id;
        const auto *facts = pump.station->part->as<PumpFacts>();
        auto curve = facts == nullptr ? Result<PumpCurve>(problem("pump", "has no curve", ""))
                                      : curveOf(*facts);
        if (!curve)
            unknown.push_back(pump.station->part->number + ": no curve of its flow");
        else if (const auto range = curve->pressureRange(volts(pump)); !range)
            unknown.push_back(pump.station->part->number + ": no curve at the voltage that it has");
        else
            work.curve = *std::move(curve);
        delivery.pumps.push_back(std::move(work));
    }
}

void PumpWork::into(Delivery &delivery, std::vector<std::string> &unknown, int picturePoints) const
{
    readCurves(delivery, unknown);
    const bool known = std::all_of(delivery.pumps.begin(), delivery.pumps.end(),
                                   [](const PumpAtWork &pump) { return pump.curve.has_value(); });
    if (!known || !delivery.setPa)
        return;
    const auto set = pumpsAtMeeting(delivery);
    const auto range = set ? commonRange(*set) : tl::unexpected<Problem>(set.error());
    if (!range)
        return;
    const bool alone = delivery.pumps.size() == 1;
    const SystemCurve system = [&](double flowM3S) -> Result<double> {
        const double lines = togetherPa(flowM3S) + (alone ? alonePa(0, flowM3S) : 0);
        return lines + std::max(*delivery.setPa, backPa(flowM3S));
    };
    const double most = flowTogether(*set, range->lowPa).value();
    const double least = flowTogether(*set, range->highPa).value();
    if (system(most).value() < range->lowPa) {
        delivery.reach = CurveReach::BelowItsBeginning;
        delivery.working = OperatingPoint{range->lowPa, most};
    } else if (system(least).value() > range->highPa) {
        delivery.reach = CurveReach::BeyondItsEnd;
        delivery.working = OperatingPoint{range->highPa, least};
    } else if (const auto meeting = operatingPoint(*set, system)) {
        delivery.reach = CurveReach::Within;
        delivery.working = *meeting;
        if (auto picture = picturePoints > 1 ? pumpPicture(*set, system, picturePoints)
                                             : tl::unexpected<Problem>(Problem{}))
            delivery.picture = *std::move(picture);
    }
    if (!delivery.working)
        return;
    for (std::size_t pump = 0; pump < delivery.pumps.size(); ++pump)
        delivery.pumps[pump].flowM3S =
            flowTogether({{set->pumps[pump]}, set->volts}, delivery.working->pressurePa)
                .value_or(0);
}

} // namespace flarestock
