// SPDX-License-Identifier: MIT
//
// A build put together by hand, station by station, for the tests of the rules.

#pragma once

#include "model/checks/check.h"

#include <deque>

namespace flarestock::tests {

class BuildByHand {
public:
    BuildByHand()
    {
        expansion.system = "fuel";
        expansion.fluid = Fluid::Gasoline;
        expansion.filters = FilterRule::AroundElectricPump;
    }

    /// A station with a part of its own; returns the part, to be given more facts.
    Part &add(const std::string &id, Kind kind, Facts facts = {})
    {
        stations.push_back({});
        stations.back().id = stations.back().title = id;
        stations.back().demand.kind = kind;
        parts.push_back({});
        Part &part = parts.back();
        part.number = "P-" + id;
        part.kind = kind;
        part.facts = std::move(facts);
        part.ports = {{"in", Port::parse("AN -6 male").value(), PortRole::In},
                      {"out", Port::parse("AN -6 male").value(), PortRole::Out}};
        PlacedStation placed;
        placed.id = id;
        placed.station = &stations.back();
        placed.part = &part;
        expansion.stations.push_back(placed);
        BillLine line;
        line.part = &part;
        line.need = {1, Unit::Each};
        line.stations = {id};
        expansion.lines.push_back(line);
        shelf[part.number] = FreeStock{{1, Unit::Each}, {1, Unit::Each}, 1, {}, {}, {}};
        return part;
    }

    Part &filter(const std::string &id, int micron, RatingBasis basis = RatingBasis::Nominal)
    {
        FilterFacts facts;
        facts.rating = MicronRating{micron, basis, {}};
        return add(id, Kind::Filter, facts);
    }
    Part &pump(const std::string &id, bool electric = true)
    {
        PumpFacts facts;
        facts.electric = electric;
        return add(id, Kind::Pump, facts);
    }

    Run &run(const std::string &from, const std::string &to, Level level = Level::Pressure)
    {
        runs.push_back({});
        Run &made = runs.back();
        made.id = from + "-" + to;
        made.level = level;
        made.from = {from, "out"};
        made.to = {to, "in"};
        PlacedRun placed;
        placed.id = made.id;
        placed.run = &made;
        placed.from = from;
        placed.to = to;
        expansion.runs.push_back(placed);
        return made;
    }

    /// One after the other, with runs between.
    void inLine(const std::vector<std::string> &ids)
    {
        for (std::size_t i = 1; i < ids.size(); ++i)
            run(ids[i - 1], ids[i]);
    }

    PlacedJoint &joint(const std::string &runId, const std::string &id, Way way)
    {
        PlacedJoint joint;
        joint.id = id;
        joint.at = id;
        joint.run = runId;
        joint.way = std::move(way);
        expansion.joints.push_back(std::move(joint));
        for (auto &placed : expansion.runs) {
            if (placed.id == runId)
                placed.joints.push_back(id);
        }
        return expansion.joints.back();
    }

    [[nodiscard]] std::vector<Finding> findings() const
    {
        return check(expansion, catalogue, shelf);
    }

    Expansion expansion;
    Catalogue catalogue;
    Shelf shelf;
    std::deque<Station> stations;
    std::deque<Part> parts;
    std::deque<Run> runs;
};

/// A way of one link between two ports, without pieces.
inline Way direct(const char *a, const char *b)
{
    Way way;
    const auto one = parseEnd(a).value();
    const auto other = parseEnd(b).value();
    auto aids = one.aids;
    aids.insert(aids.end(), other.aids.begin(), other.aids.end());
    way.links = {{one.port, other.port, mating(one.port, other.port, aids)}};
    return way;
}

} // namespace flarestock::tests
