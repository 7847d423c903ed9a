// SPDX-License-Identifier: MIT
//
// Fuel builds whose lines are made by hand, so that what flows in them can be worked out beside the
// test: gasoline on the day that its answers say, hose by its bore.

#pragma once

#include "build_by_hand.h"

#include "model/checks/flow/system_flow.h"

namespace flarestock::tests {

inline constexpr double LitreHour = 1 / 3.6e6;

class FlowByHand : public BuildByHand {
public:
    FlowByHand() { expansion.answers = {{"power", "300 hp"}}; }

    /// A pump that gives so much at 13.5 V at two pressures, in kPa.
    Part &pumpOf(const std::string &id, std::vector<PumpFacts::Point> curve)
    {
        Part &part = pump(id);
        part.facts = PumpFacts{std::move(curve), {}, true, false, "in-line"};
        return part;
    }
    /// A filter that takes so much, clean, at 1000 L/h.
    Part &filterOf(const std::string &id, int micron, double lossKpa)
    {
        Part &part = filter(id, micron, RatingBasis::Absolute);
        auto facts = *part.as<FilterFacts>();
        facts.flowLh = 1000;
        facts.cleanLossKpa = lossKpa;
        part.facts = facts;
        return part;
    }
    Part &regulatorOf(const std::string &id, const std::string &pressure, bool bypass)
    {
        Part &part = add(id, Kind::Regulator, RegulatorFacts{10.0, 900.0, bypass, 1000.0, 0.0});
        part.ports.push_back({"return", Port::parse("AN -6 male").value(), PortRole::Return});
        stations.back().demand.pressure = said(pressure);
        return part;
    }

    struct Line {
        double boreMm = 0; ///< 0: nobody has entered it.
        int lengthMm = 0;
        int dash = 6;
    };
    /// The run's hose, by its run's id.
    Part &hose(const std::string &runId, const Line &line)
    {
        parts.push_back({});
        Part &part = parts.back();
        part.number = "H-" + runId;
        part.kind = Kind::Hose;
        HoseFacts facts;
        facts.dash = line.dash;
        if (line.boreMm > 0)
            facts.boreMm = line.boreMm;
        part.facts = facts;
        auto &run = placed(runId);
        run.line = &part;
        run.dash = line.dash;
        run.length = {line.lengthMm, Unit::Millimetre};
        return part;
    }

    PlacedRun &placed(const std::string &runId)
    {
        return *std::find_if(expansion.runs.begin(), expansion.runs.end(),
                             [&](const PlacedRun &run) { return run.id == runId; });
    }
    Part &partAt(const std::string &id)
    {
        return *std::find_if(parts.begin(), parts.end(),
                             [&](const Part &part) { return part.number == "P-" + id; });
    }
    Station &stationAt(const std::string &id)
    {
        return *std::find_if(stations.begin(), stations.end(),
                             [&](const Station &station) { return station.id == id; });
    }

    /// The first joint of a run passes these pieces: adapters and hose ends made here.
    void passes(const std::string &runId, const std::vector<const Part *> &pieces)
    {
        Way way = direct("AN -6 male", "AN -6 female swivel");
        for (const auto *part : pieces)
            way.pieces.push_back({part, part->ports.front().name, part->ports.back().name});
        joint(runId, runId + ".start", std::move(way));
    }
    const Part &elbow(int degrees, const std::string &dash)
    {
        parts.push_back({});
        Part &part = parts.back();
        part.number = "E-" + std::to_string(parts.size());
        part.description = "elbow " + std::to_string(degrees) + "°";
        part.ports = {{"a", Port::parse("AN " + dash + " female swivel").value(), PortRole::Either},
                      {"b", Port::parse("AN " + dash + " male").value(), PortRole::Either}};
        return part;
    }
    const Part &hoseEnd(int degrees, double boreMm)
    {
        parts.push_back({});
        Part &part = parts.back();
        part.number = "HE-" + std::to_string(parts.size());
        part.kind = Kind::HoseEnd;
        part.facts = HoseEndFacts{{"X"}, 10, degrees, boreMm, {}};
        part.ports = {{"end", Port::parse("AN -10 female swivel").value(), PortRole::Either},
                      {"hose", Port::parse("HOSE X -10").value(), PortRole::Either}};
        return part;
    }

    /// From regulator to tank.
    Run &returnRun(const std::string &from, const std::string &to)
    {
        Run &made = run(from, to, Level::Return);
        made.from.port = "return";
        return made;
    }

    [[nodiscard]] SystemFlow flow() const
    {
        return systemFlow(expansion, conditionsOf(expansion), 20);
    }
    [[nodiscard]] std::vector<Finding> flowFindings() const
    {
        std::vector<Finding> some;
        for (const auto &finding : findings())
            if (finding.matter == Matter::Flow)
                some.push_back(finding);
        return some;
    }

    static Varying said(const std::string &text) { return {{{Condition(), text}}}; }
};

/// Injection with a return, healthy: 3 bar, a pump of 255 L/h there, lines wide enough.
inline FlowByHand injectionWithReturn()
{
    FlowByHand build;
    build.add("tank", Kind::Tank, VesselFacts{});
    build.filterOf("prefilter", 100, 1.2);
    build.pumpOf("pump", {{200, 13.5, 272}, {300, 13.5, 255}, {400, 13.5, 235}});
    build.filterOf("postfilter", 10, 9);
    build.add("rail", Kind::Rail, FuelUserFacts{});
    build.regulatorOf("regulator", "3 bar", true);
    build.inLine({"tank", "prefilter", "pump", "postfilter", "rail", "regulator"});
    build.returnRun("regulator", "tank");
    build.stationAt("prefilter").level = Level::Suction;
    for (const char *id : {"tank-prefilter", "prefilter-pump"})
        build.hose(id, {12.7, 700, 10});
    for (const char *id : {"pump-postfilter", "postfilter-rail", "rail-regulator"})
        build.hose(id, {7.94, 1200});
    build.hose("regulator-tank", {7.94, 3000});
    return build;
}

/// A carburettor behind a bypass regulator, healthy: 45 kPa, 255 L/h whatever the pressure.
inline FlowByHand carburettorWithReturn()
{
    FlowByHand build;
    build.add("tank", Kind::Tank, VesselFacts{});
    build.filterOf("prefilter", 100, 1.2);
    build.pumpOf("pump", {{20, 13.5, 255}, {300, 13.5, 255}});
    build.filterOf("postfilter", 40, 3);
    build.regulatorOf("regulator", "45 kPa", true);
    build.add("carburettor", Kind::Carburettor, FuelUserFacts{30.0, 60.0, {}});
    build.inLine({"tank", "prefilter", "pump", "postfilter", "regulator", "carburettor"});
    build.returnRun("regulator", "tank");
    build.stationAt("prefilter").level = Level::Suction;
    for (const char *id : {"tank-prefilter", "prefilter-pump"})
        build.hose(id, {12.7, 700, 10});
    for (const char *id : {"pump-postfilter", "postfilter-regulator"})
        build.hose(id, {10.3, 1200, 8});
    build.hose("regulator-carburettor", {7.94, 400});
    build.partAt("tank").ports.clear(); // Its openings are as wide as the hoses.
    build.hose("regulator-tank", {14.3, 3000, 10});
    return build;
}

/// A tank and a carburettor below it, 100 hp at 20 °C.
inline FlowByHand gravityFeed()
{
    FlowByHand build;
    build.expansion.answers = {{"power", "100 hp"}, {"fuel-temperature", "20 C"}};
    build.add("tank", Kind::Tank, VesselFacts{}).ports.clear();
    build.add("carburettor", Kind::Carburettor, FuelUserFacts{});
    build.run("tank", "carburettor", Level::Suction);
    return build;
}

/// Gear oil round a cooler, 400 L/h by a pump of its own.
inline FlowByHand gearboxCooler()
{
    FlowByHand build;
    build.expansion.fluid = Fluid::GearOil;
    build.expansion.system = "gearbox";
    build.expansion.answers.clear();
    build.add("gearbox", Kind::Engine);
    build.filterOf("filter", 100, 5);
    build.pump("pump");
    build.stationAt("pump").demand.flow = FlowByHand::said("400 L/h");
    build.add("cooler", Kind::Cooler);
    build.run("gearbox", "filter", Level::Suction);
    build.run("filter", "pump", Level::Suction);
    build.run("pump", "cooler");
    build.run("cooler", "gearbox", Level::Return);
    for (const auto &run : build.expansion.runs)
        build.hose(run.id, {15, 1000, 10});
    return build;
}

/// For the message of a test that fails.
inline std::string listed(const std::vector<Finding> &findings)
{
    std::string all;
    for (const auto &finding : findings)
        all += std::string(text(finding.severity)) + " at \"" + finding.where +
               "\": " + finding.about + " | " + finding.text + "\n";
    return all;
}

} // namespace flarestock::tests
