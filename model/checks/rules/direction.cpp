// SPDX-License-Identifier: MIT
//
// Inlet and outlet by the maker's mark against the way the line is meant to flow.

#include "model/checks/rules/rules.h"

namespace flarestock::rules {

namespace {

constexpr auto Source = "the part maker's mark of inlet and outlet, as entered in the catalogue";

void wrongWay(const PlacedStation &station, const std::string &run, bool leaves, Findings &found)
{
    const auto named = BuildUnderCheck::named(station);
    found.push_back(
        {.severity = Severity::Stop,
         .matter = Matter::DirectionAndFilters,
         .about = BuildUnderCheck::capital(named) +
                  (leaves ? ": the flow leaves by its inlet" : ": the flow enters by its outlet"),
         .where = station.id,
         .text = "The line " + run + (leaves ? " begins" : " ends") +
                 " at the port that its maker " + "marks as " + (leaves ? "inlet" : "outlet") +
                 ". " +
                 (station.part->kind == Kind::Filter || station.part->kind == Kind::Element
                      ? "Reversed flow collapses the pleats or lets the dirt go."
                      : "It works one way round only."),
         .source = Source,
         .remedy = "Turn the part round, or join the line to its other port.",
         .mend = {}});
}

} // namespace

void direction(const BuildUnderCheck &build, Findings &found)
{
    for (const auto &run : build.expansion().runs) {
        const auto *from = build.expansion().station(run.from);
        const auto *to = build.expansion().station(run.to);
        if (from != nullptr && from->part != nullptr) {
            const auto *port = from->part->port(run.run->from.port);
            if (port != nullptr && port->role == PortRole::In)
                wrongWay(*from, run.id, true, found);
        }
        if (to != nullptr && to->part != nullptr) {
            const auto *port = to->part->port(run.run->to.port);
            if (port != nullptr && port->role == PortRole::Out)
                wrongWay(*to, run.id, false, found);
        }
    }
}

} // namespace flarestock::rules
