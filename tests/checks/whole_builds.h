// SPDX-License-Identifier: MIT
//
// Builds by hand with every fact that the rules look at, so that nothing is found: fuel injection
// with its wiring, an oil filter and its cooler, one brake line. A test makes them wrong.

#pragma once

#include "build_by_hand.h"

#include <QtGlobal>

#include <algorithm>

namespace flarestock::tests {

class WholeBuild : public BuildByHand {
public:
    WholeBuild() { expansion.runs.reserve(8); }

    /// A part that stands on the bill without a place, and on the shelf.
    Part &onBill(const std::string &number, Kind kind, Facts facts, const Quantity &need)
    {
        parts.push_back({});
        Part &part = parts.back();
        part.number = number;
        part.kind = kind;
        part.facts = std::move(facts);
        BillLine line;
        line.part = &part;
        line.need = need;
        expansion.lines.push_back(line);
        shelf[number] = FreeStock{need, need, 1, {need}, {}, {}};
        return part;
    }

    /// Hose for every run that is there, with an end at both of its stations.
    void plumb(double ratedKpa)
    {
        hose = &onBill("H", Kind::Hose, HoseFacts{"PT", 6, 8.0, 60.0, "PTFE", true, false},
                       {200, Unit::Inch});
        end = &onBill("E", Kind::HoseEnd, HoseEndFacts{{"PT"}, 6, 0, {}, {}}, {9, Unit::Each});
        end->material = "stainless";
        for (Part *part : {hose, end})
            part->ratings.pressureKpa = ratedKpa;
        for (auto &placed : expansion.runs) {
            placed.line = hose;
            placed.length = {40, Unit::Inch};
            for (const auto &station : {placed.from, placed.to})
                joint(placed.id, placed.id + " at " + station, ended()).station = station;
        }
    }

    Part &part(const std::string &number)
    {
        for (Part &some : parts)
            if (some.number == number)
                return some;
        qFatal("no part %s", number.c_str());
    }
    Run &runOf(const std::string &id)
    {
        for (Run &some : runs)
            if (some.id == id)
                return some;
        qFatal("no run %s", id.c_str());
    }
    void leaveOut(const std::string &number)
    {
        auto &lines = expansion.lines;
        lines.erase(std::find_if(lines.begin(), lines.end(), [&](const BillLine &line) {
            return line.part->number == number;
        }));
    }
    [[nodiscard]] std::vector<Finding> found()
    {
        catalogue = Catalogue::of({element}, {}, {}).value();
        return findings();
    }

    Part *hose = nullptr;
    Part *end = nullptr;
    Part element; ///< The only one of the catalogue.

private:
    [[nodiscard]] Way ended() const
    {
        Way way = direct("AN -6 male", "AN -6 female swivel");
        way.pieces = {{end, "end", "hose"}};
        // The end holds the cut hose, as the closer of joints says it.
        const Port cut = Port::parse("HOSE PT -6").value();
        way.links.push_back({cut, cut, {Verdict::Fits, {}, "made for it", "its maker", {}}});
        return way;
    }
};

inline Varying always(const char *text)
{
    Varying varying;
    varying.alternatives = {{{}, text}};
    return varying;
}

inline Part elementOf(int micron, const char *medium)
{
    Part element;
    element.number = "EL";
    element.kind = Kind::Element;
    element.facts = ElementFacts{{micron, RatingBasis::Absolute, 75}, medium, false};
    return element;
}

/// Tank, 100 µm, pump of 8 A, 10 µm, rail, with wire of AWG 12 over 3 m, a fuse and a relay.
inline void fuel(WholeBuild &build)
{
    build.add("tank", Kind::Tank, VesselFacts{});
    build.filter("coarse", 100);
    build.pump("pump");
    build.filter("fine", 10, RatingBasis::Absolute);
    build.add("rail", Kind::Rail, FuelUserFacts{});
    build.add("regulator", Kind::Regulator, RegulatorFacts{200, 500, true, {}, {}});
    build.inLine({"tank", "coarse", "pump", "fine", "rail", "regulator"});
    for (const char *id : {"tank-coarse", "coarse-pump"})
        build.runOf(id).level = Level::Suction;
    for (std::size_t i : {0U, 1U, 2U})
        build.stations[i].level = Level::Suction;
    build.stations[5].demand.pressure = always("43.5 psi");
    for (std::size_t i : {1U, 3U})
        build.stations[i].demand.flow = always("255 L/h");
    for (Part &part : build.parts) {
        part.ratings.pressureKpa = 1000;
        part.material = "stainless";
    }
    std::get<PumpFacts>(build.part("P-pump").facts).amps = 8;
    auto &coarse = std::get<FilterFacts>(build.part("P-coarse").facts);
    coarse.medium = "stainless mesh";
    coarse.flowLh = 510;
    coarse.cleanLossKpa = 2;
    auto &fine = std::get<FilterFacts>(build.part("P-fine").facts);
    fine.medium = "microglass";
    fine.element = "EL";
    build.element = elementOf(10, "microglass");
    for (Part *part : {&build.part("P-fine"), &build.element})
        part->suits = {Fluid::Gasoline, Fluid::E85, Fluid::Methanol};
    build.plumb(1000);
    build.onBill("W", Kind::Wire, WireFacts{12}, {120, Unit::Inch});
    build.onBill("F", Kind::Fuse, CurrentFacts{15}, {1, Unit::Each});
    build.onBill("R", Kind::Relay, CurrentFacts{40}, {1, Unit::Each});
    build.onBill("I", Kind::Injector, FuelUserFacts{{}, {}, 15.0}, {4, Unit::Each});
}

inline void oil(WholeBuild &build)
{
    build.expansion.system = "oil";
    build.expansion.fluid = Fluid::EngineOil;
    build.expansion.filters = FilterRule::None;
    build.add("engine", Kind::Engine);
    build.filter("filter", 30, RatingBasis::Absolute);
    build.add("cooler", Kind::Cooler).ratings.pressureKpa = 1000;
    build.inLine({"engine", "filter", "cooler"});
    build.part("P-filter").ratings.pressureKpa = 1700;
    auto &filter = std::get<FilterFacts>(build.part("P-filter").facts);
    filter.rating->beta = 200;
    filter.flowLh = 4500;
    filter.cleanLossKpa = 20;
    filter.bypassKpa = 100;
    build.element = elementOf(30, "microglass");
    build.plumb(5000);
    build.hose->ratings.highC = 150;
}

inline void brakes(WholeBuild &build)
{
    build.expansion.system = "brakes";
    build.expansion.fluid = Fluid::Dot4;
    build.expansion.filters = FilterRule::None;
    build.add("cylinder", Kind::MasterCylinder).material = "aluminium";
    build.add("calliper", Kind::Calliper).material = "aluminium";
    for (Part &part : build.parts)
        part.ratings.pressureKpa = 14000;
    build.inLine({"cylinder", "calliper"});
    build.element = elementOf(10, "microglass");
    build.plumb(20000);
}

} // namespace flarestock::tests
