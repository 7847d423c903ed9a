// SPDX-License-Identifier: MIT

#include "app/command/flow/flow_sheet.h"

#include "app/command/text_table.h"
#include "app/workshop/flow/flow_words.h"
#include "model/fluids/line/line_budget.h"

#include <QString>

namespace flarestock {

namespace {

std::string number(double figure, int decimals)
{
    return QString::number(figure, 'f', decimals).toStdString();
}

std::string kilopascals(double pascal)
{
    return number(pascal / 1e3, 1) + " kPa";
}

std::string litresPerHour(double flowM3S)
{
    return number(flowM3S * 3.6e6, 0) + " L/h";
}

/// In kPa; nothing where there is none.
std::string partOf(double pascal)
{
    return pascal == 0 ? std::string() : number(pascal / 1e3, 2);
}

/// "450 hp (335.6 kW; hp is mechanical, 550 ft.lbf/s)": which horsepower is meant is said, as the
/// metric one is 1.4 % less.
std::string powerOf(const Expansion &build)
{
    const auto asked = build.answers.find("power");
    const auto power = asked == build.answers.end()
                           ? Result<Measure>(Measure())
                           : Measure::parse(asked->second, Dimension::Power);
    if (!power || power->dimension != Dimension::Power)
        return {};
    const std::string_view typed = power->typed;
    const std::string kind = typed.ends_with("hp")   ? "; hp is mechanical, 550 ft.lbf/s"
                             : typed.ends_with("PS") ? "; PS is metric, 75 kgf.m/s"
                                                     : "";
    return ", " + power->typed + " (" + number(power->si / 1e3, 1) + " kW" + kind +
           ") at the crankshaft";
}

std::string headOf(const Expansion &build, const SystemFlow &flow)
{
    const auto &conditions = flow.conditions;
    std::string head = build.title + "\n" + std::string(text(*build.fluid)) + " at " +
                       number(flow.liquidC, 0) + " °C: " + number(flow.liquid->densityKgM3, 0) +
                       " kg/m3, " + number(flow.liquid->viscosityPaS * 1e3, 2) + " mPa.s (" +
                       std::string(flow.liquid->status) + ": " + std::string(flow.liquid->source) +
                       ")\n";
    if (flow.vapour)
        head += "boils under " + kilopascals(flow.vapour->pascal) + " (" +
                std::string(flow.vapour->source) + ")\n";
    head += number(conditions.altitudeM, 0) + " m above the sea, " + number(conditions.volts, 1) +
            " V, boost " + kilopascals(conditions.boostPa) + ", acceleration " +
            number(conditions.accelerationMS2 / StandardGravityMS2, 1) + " g\n";
    if (flow.engineM3S)
        head += "the engine burns " + litresPerHour(*flow.engineM3S) + " at full power" +
                powerOf(build) + "\n";
    return head;
}

void addRun(const Expansion &build, const RunFlow &run, TextTable &table)
{
    const bool line = run.boreM > 0;
    const auto inLine = [line](double figure, int decimals) {
        return line ? number(figure, decimals) : std::string();
    };
    const bool assumed = run.line.straight && run.line.straight->boreAssumed;
    const auto *placed = build.run(run.run);
    table.add({stationName(build, placed->from) + " to " + stationName(build, placed->to),
               std::string(text(run.role)),
               line ? number(run.boreM * 1e3, 2) + (assumed ? " assumed" : "") : std::string(),
               number(run.flowM3S * 3.6e6, 0), inLine(run.velocityMS, 2), inLine(run.reynolds, 0),
               line ? std::string(text(run.regime)) : std::string(), partOf(run.loss.frictionPa),
               partOf(run.loss.minorPa),
               run.line.lossUnknown ? "not known" : partOf(run.loss.filterPa),
               partOf(run.loss.levelPa), partOf(run.loss.accelerationPa),
               number(run.loss.dropPa / 1e3, 2)});
}

std::string linesOf(const Expansion &build, const SystemFlow &flow)
{
    using enum TextTable::Side;
    using enum TextTable::Shown;
    TextTable table({{"line", Left},
                     {"side", Left},
                     {"bore mm", Right},
                     {"L/h", Right},
                     {"m/s", Right},
                     {"Re", Right},
                     {"flow", Left},
                     {"friction", Right},
                     {"ends", Right},
                     {"filter", Right, WhereFilled},
                     {"level", Right, WhereFilled},
                     {"acceleration", Right, WhereFilled},
                     {"takes kPa", Right}});
    for (const auto &run : flow.runs)
        addRun(build, run, table);
    return "\nlines\n" + table.text();
}

std::string sectionOf(const Expansion &build, const LineSection &section)
{
    if (section.runs.empty())
        return {};
    return "  " + sectionName(build, section) + ": " + std::string(text(section.role)) + ", " +
           litresPerHour(section.flowM3S) + " take " + kilopascals(section.dropPa) +
           (section.dropLeastPa < section.dropPa
                ? " (" + kilopascals(section.dropLeastPa) + " where it runs laminar)"
                : "") +
           (section.lossUnknown ? ", and what is not known of it" : "") + "\n";
}

std::string sectionsOf(const Expansion &build, const SystemFlow &flow)
{
    std::string said;
    for (const auto &delivery : flow.deliveries) {
        for (const auto &pump : delivery.pumps)
            said += sectionOf(build, pump.suction);
        said += sectionOf(build, delivery.line);
        for (const auto &bowl : delivery.bowls)
            said += sectionOf(build, bowl);
        if (delivery.back)
            said += sectionOf(build, *delivery.back);
    }
    for (const auto &feed : flow.gravityFeeds)
        said += sectionOf(build, feed.line);
    return said.empty() ? said : "\nsections\n" + said;
}

std::string inletOf(const InletMargin &inlet)
{
    const auto &bounds = inletBounds();
    return "    its inlet: " + kilopascals(inlet.marginPa) + " from boiling, NPSH " +
           number(inlet.npshM, 2) + " m" +
           (inlet.marginPa < bounds.aircraftPa
                ? "; aircraft pumps are held to " + kilopascals(bounds.aircraftPa)
                : "") +
           "\n";
}

std::string pumpsOf(const Expansion &build, const SystemFlow &flow)
{
    std::string said;
    for (const auto &delivery : flow.deliveries) {
        for (const auto &pump : delivery.pumps) {
            said += "  " + stationName(build, pump.station) + ": " + litresPerHour(pump.flowM3S);
            if (delivery.working)
                said += " in its lines, " + std::string(text(delivery.reach));
            said += "\n";
            if (pump.inlet)
                said += inletOf(*pump.inlet);
        }
        if (delivery.working)
            said += "    meets its lines at " + litresPerHour(delivery.working->flowM3S) + " and " +
                    kilopascals(delivery.working->pressurePa) + "; " +
                    litresPerHour(delivery.wantedM3S) + " is wanted\n";
        if (delivery.balance)
            said += "    " + stationName(build, delivery.to) + ": " +
                    litresPerHour(delivery.balance->surplusM3S) + " more comes than leaves\n";
    }
    return said.empty() ? said : "\npumps\n" + said;
}

std::string regulatorsOf(const Expansion &build, const SystemFlow &flow)
{
    std::string said;
    for (const auto &delivery : flow.deliveries) {
        const auto held = heldBy(build, delivery);
        if (!held)
            continue;
        const auto &range = *held;
        said += "  " + stationName(build, delivery.to) + ": holds ";
        said += range.fromPa > range.toPa
                    ? std::string("nothing it can be set to")
                    : kilopascals(range.fromPa) + " to " + kilopascals(range.toPa);
        if (delivery.bypass)
            said += "; wide open " + kilopascals(range.floorPa) + " stay up";
        if (range.ownPa)
            said += ", " + kilopascals(*range.ownPa) + " of it its own";
        if (delivery.setPa)
            said += "; set to " + kilopascals(*delivery.setPa);
        said += "\n";
    }
    return said.empty() ? said : "\nregulators\n" + said;
}

std::string gravityOf(const Expansion &build, const SystemFlow &flow)
{
    std::string said;
    for (const auto &feed : flow.gravityFeeds) {
        said += "  " + stationName(build, feed.user) + ": " + litresPerHour(feed.wantedM3S) +
                " is wanted; ";
        said += feed.isLevelSaid
                    ? "a level worth " + kilopascals(feed.headPa) + " pushes " +
                          (feed.reachesM3S < feed.wantedM3S
                               ? litresPerHour(feed.reachesM3S)
                               : "that and leaves " + kilopascals(-feed.line.dropPa) + " there")
                    : "nobody says how far its tank stands above it";
        said += "\n";
    }
    return said.empty() ? said : "\ngravity feed\n" + said;
}

std::string listOf(std::string_view title, const std::vector<std::string> &texts)
{
    std::string said = texts.empty() ? std::string() : "\n" + std::string(title) + "\n";
    for (const auto &text : texts)
        said += "  " + text + "\n";
    return said;
}

} // namespace

std::string flowSheet(const Expansion &build, const SystemFlow &flow)
{
    return headOf(build, flow) + linesOf(build, flow) + sectionsOf(build, flow) +
           pumpsOf(build, flow) + regulatorsOf(build, flow) + gravityOf(build, flow) +
           listOf("assumed", assumptions(build, flow)) +
           listOf("not known, and counted as nothing", flow.unknown);
}

} // namespace flarestock
