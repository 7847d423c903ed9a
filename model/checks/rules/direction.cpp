// SPDX-License-Identifier: MIT
//
// Inlet and outlet by the maker's mark against the way the line is meant to flow.

#include "model/checks/rules/rules.h"

namespace flarestock::rules {

namespace {

constexpr auto Source = "the part maker's mark of inlet and outlet, as entered in the catalogue";

/// The lines that are joined to the wrong port of one station; empty where none is.
struct WrongWay {
    std::string entersByOutlet;
    std::string leavesByInlet;
};

std::string what(const WrongWay &wrong)
{
    if (wrong.leavesByInlet.empty())
        return ": the flow enters by its outlet";
    return wrong.entersByOutlet.empty() ? ": the flow leaves by its inlet"
                                        : ": the flow goes through it backwards";
}

std::string where(const WrongWay &wrong)
{
    const std::string ends =
        "line " + wrong.entersByOutlet + " ends at the port that its maker marks as outlet";
    const std::string begins =
        "line " + wrong.leavesByInlet + " begins at the port that its maker marks as inlet";
    if (wrong.leavesByInlet.empty())
        return "The " + ends + ". ";
    return "The " + (wrong.entersByOutlet.empty() ? begins : ends + ", and " + begins) + ". ";
}

/// One part put in the wrong way is one finding, whichever of its lines show it.
void report(const PlacedStation &station, const WrongWay &wrong, Findings &found)
{
    const bool cleans = station.part->kind == Kind::Filter || station.part->kind == Kind::Element;
    found.push_back(
        {.severity = Severity::Stop,
         .matter = Matter::DirectionAndFilters,
         .about = BuildUnderCheck::capital(BuildUnderCheck::named(station)) + what(wrong),
         .where = station.id,
         .text = where(wrong) + (cleans ? "Reversed flow collapses the pleats or lets the dirt go."
                                        : "It works one way round only."),
         .source = Source,
         .remedy = "Turn the part round, or join the line to its other port.",
         .mend = {}});
}

bool isMarked(const PlacedStation &station, const std::string &port, PortRole role)
{
    const auto *found = station.part == nullptr ? nullptr : station.part->port(port);
    return found != nullptr && found->role == role;
}

} // namespace

void direction(const BuildUnderCheck &build, Findings &found)
{
    const Expansion &expansion = build.expansion();
    for (const PlacedStation &station : expansion.stations) {
        WrongWay wrong;
        for (const auto &run : expansion.runs) {
            if (run.to == station.id && isMarked(station, run.run->to.port, PortRole::Out))
                wrong.entersByOutlet = run.id;
            if (run.from == station.id && isMarked(station, run.run->from.port, PortRole::In))
                wrong.leavesByInlet = run.id;
        }
        if (!wrong.entersByOutlet.empty() || !wrong.leavesByInlet.empty())
            report(station, wrong, found);
    }
}

} // namespace flarestock::rules
