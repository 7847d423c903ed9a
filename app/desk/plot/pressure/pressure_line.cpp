// SPDX-License-Identifier: MIT

#include "app/desk/plot/pressure/pressure_line.h"

#include "app/workshop/flow/flow_words.h"
#include "model/fluids/line/line_budget.h"

#include <algorithm>

namespace flarestock {

namespace {

using Side = PressurePart::Side;
using What = PressureLimit::What;

PressureStep stepOf(const Expansion &build, const RunFlow &run)
{
    const PlacedRun &placed = *build.run(run.run);
    PressureStep step;
    step.run = run.run;
    step.from = placed.from;
    step.to = placed.to;
    step.inFull = !run.line.lossUnknown && run.line.boreless == nullptr && !run.line.unfinished;
    return step;
}

/// Where the points of a run lie: by its length, or one after the other where it has none.
void spread(PressureStep &step, const std::vector<std::pair<double, double>> &points)
{
    const double begins = points.front().first;
    step.lengthM = points.back().first - begins;
    for (std::size_t at = 0; at < points.size(); ++at) {
        const double share = step.lengthM > 0 ? (points[at].first - begins) / step.lengthM
                             : points.size() > 1
                                 ? static_cast<double>(at) / static_cast<double>(points.size() - 1)
                                 : 0;
        step.line.push_back({share, points[at].second});
    }
    if (step.line.size() < 2)
        step.line.push_back({1, step.line.front().pa});
}

/// Runs one after the other from a pressure on, each by its own loss.
PressurePart follow(const Expansion &build, const SystemFlow &flow,
                    const std::vector<std::string> &runs, double startPa)
{
    PressurePart part;
    for (const std::string &id : runs) {
        const RunFlow *run = flow.run(id);
        if (run == nullptr)
            continue;
        std::vector<std::pair<double, double>> points;
        for (const LinePoint &point : run->loss.along)
            points.emplace_back(point.alongM, startPa + point.totalPa);
        if (points.empty())
            points.emplace_back(0, startPa);
        startPa = points.back().second;
        PressureStep step = stepOf(build, *run);
        spread(step, points);
        part.steps.push_back(std::move(step));
    }
    return part;
}

Side sideOf(LineRole role)
{
    return role == LineRole::Suction    ? Side::Suction
           : role == LineRole::Pressure ? Side::Pressure
                                        : Side::Return;
}

/// The picture that systemFlow() gives, cut into its runs.
void takePicture(const Expansion &build, const SystemFlow &flow, PressureLine &line)
{
    const auto &points = line.delivery->pressures;
    for (std::size_t at = 0; at < points.size();) {
        std::size_t end = at;
        std::vector<std::pair<double, double>> some;
        for (; end < points.size() && points[end].at == points[at].at; ++end)
            some.emplace_back(points[end].alongM, points[end].totalPa);
        if (const RunFlow *run = flow.run(points[at].at)) {
            const Side side = sideOf(run->role);
            if (line.parts.empty() || line.parts.back().side != side)
                line.parts.push_back({side, {}, {}});
            PressureStep step = stepOf(build, *run);
            spread(step, some);
            line.parts.back().steps.push_back(std::move(step));
        }
        at = end;
    }
}

/// From a regulator on: the way that loses most.
void addOnwards(const Expansion &build, const SystemFlow &flow, PressureLine &line)
{
    const auto &bowls = line.delivery->bowls;
    const auto worst = std::max_element(
        bowls.begin(), bowls.end(),
        [](const LineSection &a, const LineSection &b) { return a.dropPa < b.dropPa; });
    if (worst == bowls.end() || !line.delivery->setPa)
        return;
    PressurePart part = follow(build, flow, worst->runs, *line.delivery->setPa);
    part.side = Side::Onwards;
    const auto back =
        std::find_if(line.parts.begin(), line.parts.end(),
                     [](const PressurePart &other) { return other.side == Side::Return; });
    if (!part.steps.empty())
        line.parts.insert(back, std::move(part));
}

/// What nobody states the wanted pressure of: what its runs take, one after the other.
void addLosses(const Expansion &build, const SystemFlow &flow, PressureLine &line)
{
    const Delivery &delivery = *line.delivery;
    PressurePart drawn = follow(build, flow, delivery.pumps.front().suction.runs, 0);
    drawn.side = Side::Suction;
    PressurePart pushed = follow(build, flow, delivery.line.runs, 0);
    pushed.side = Side::Loss;
    for (PressurePart *part : {&drawn, &pushed})
        if (!part->steps.empty())
            line.parts.push_back(std::move(*part));
}

void addLimits(const Expansion &build, PressureLine &line)
{
    const Delivery &delivery = *line.delivery;
    const auto &inlet = delivery.pumps.front().inlet;
    for (PressurePart &part : line.parts) {
        if (part.side == Side::Suction && inlet) {
            // The inlet's own margin says where: that far below its pressure the fuel boils.
            const double boils = inlet->inletPa - inlet->marginPa - inlet->atmospherePa;
            part.limits.push_back({What::Boils, boils});
            part.limits.push_back({What::TooNear, boils + inletBounds().cautionPa});
        }
        if (part.side != Side::Pressure || !delivery.setPa || delivery.end == DeliveryEnd::Vessel)
            continue;
        part.limits.push_back({What::Set, *delivery.setPa});
        if (const auto held = heldBy(build, delivery); held && held->fromPa <= held->toPa) {
            part.limits.push_back({What::LeastSet, held->fromPa});
            part.limits.push_back({What::MostSet, held->toPa});
        }
    }
}

PressureLine lineOf(const Expansion &build, const SystemFlow &flow, const Delivery &delivery)
{
    PressureLine line;
    line.delivery = &delivery;
    takePicture(build, flow, line);
    if (line.parts.empty())
        addLosses(build, flow, line);
    addOnwards(build, flow, line);
    addLimits(build, line);
    const PumpAtWork &pump = delivery.pumps.front();
    line.from = pump.suction.runs.empty() ? pump.station : pump.suction.from;
    line.to = delivery.to;
    return line;
}

PressureLine lineOf(const Expansion &build, const SystemFlow &flow, const GravityFeed &feed)
{
    PressureLine line;
    line.feed = &feed;
    line.from = feed.line.from;
    line.to = feed.user;
    PressurePart part = follow(build, flow, feed.line.runs, 0);
    part.side = Side::Gravity;
    if (!part.steps.empty())
        line.parts.push_back(std::move(part));
    return line;
}

PressureLine circleOf(const Expansion &build, const SystemFlow &flow)
{
    std::vector<std::string> runs;
    for (const RunFlow &run : flow.runs)
        runs.push_back(run.run);
    PressureLine line;
    PressurePart part = follow(build, flow, runs, 0);
    part.side = Side::Loss;
    line.from = part.steps.front().from;
    line.to = part.steps.back().to;
    line.parts.push_back(std::move(part));
    return line;
}

} // namespace

const PressurePart *PressureLine::part(PressurePart::Side side) const
{
    const auto found = std::find_if(parts.begin(), parts.end(),
                                    [side](const PressurePart &one) { return one.side == side; });
    return found == parts.end() ? nullptr : &*found;
}

std::vector<PressureLine> pressureLines(const Expansion &build, const SystemFlow &flow)
{
    std::vector<PressureLine> lines;
    for (const Delivery &delivery : flow.deliveries)
        lines.push_back(lineOf(build, flow, delivery));
    for (const GravityFeed &feed : flow.gravityFeeds)
        lines.push_back(lineOf(build, flow, feed));
    std::erase_if(lines, [](const PressureLine &line) { return line.parts.empty(); });
    if (lines.empty() && !flow.runs.empty())
        lines.push_back(circleOf(build, flow));
    return lines;
}

} // namespace flarestock
