// SPDX-License-Identifier: MIT
//
// Return lines: what a bypass regulator that is wide open still keeps up, because its return takes
// it, against what it is set to.

#include "model/checks/rules/flow/flow_judgement.h"
#include "model/checks/rules/rules.h"

namespace flarestock::rules {

namespace {

/// What the open regulator adds of its own, in the middle of a sentence.
std::string ownLoss(const BypassRange &bypass)
{
    return bypass.ownPa ? ", " + kilopascals(*bypass.ownPa) + " of it in the open regulator itself"
                        : "; what the open regulator takes is not known and comes on top";
}

Finding returnTakesMuch(const BuildUnderCheck &build, const Delivery &delivery)
{
    const auto bounds = returnBudget(build, delivery);
    const bool stop = cannotHold(build, delivery);
    const std::string set = kilopascals(*delivery.setPa);
    const std::string floor = kilopascals(delivery.bypass->floorPa);
    return {.severity = stop ? Severity::Stop : Severity::Caution,
            .matter = Matter::Flow,
            .about = capitalNameOf(build, delivery.to) +
                     (stop ? ": cannot hold " + set
                           : ": its return keeps up " + floor + " of the " + set + " it holds"),
            .where = delivery.to,
            .text = "At idle all " + litresPerHour(delivery.back->flowM3S) +
                    " of the pump come back, and wide open it still keeps up " + floor + ", " +
                    percent(delivery.bypass->floorPa / *delivery.setPa) + " of " + set +
                    ownLoss(*delivery.bypass) + "; up to " + kilopascals(bounds->cautionPa) +
                    " is quiet.",
            .source =
                "friction by Darcy-Weisbach and Colebrook-White; " + std::string(bounds->source),
            .remedy = "Use a wider return line and fewer bends in it, or a smaller pump.",
            .mend = {}};
}

Finding overItsFlow(const BuildUnderCheck &build, const Delivery &delivery)
{
    const auto &part = *build.expansion().station(delivery.to)->part;
    return {.severity = Severity::Caution,
            .matter = Matter::Flow,
            .about = capitalNameOf(build, delivery.to) + ": more comes back than it passes",
            .where = delivery.to,
            .text = "At idle all " + litresPerHour(delivery.back->flowM3S) +
                    " of the pump go through it; its maker allows " +
                    withDecimals(part.as<RegulatorFacts>()->flowLh.value_or(0), 0) + " L/h.",
            .source = "the maker's figure, as entered in the catalogue",
            .remedy = "Use a larger regulator or a smaller pump.",
            .mend = {}};
}

} // namespace

void returnLines(const BuildUnderCheck &build, Findings &found)
{
    for (const auto &delivery : build.flow().deliveries) {
        if (isReturnTold(build, delivery)) {
            found.push_back(returnTakesMuch(build, delivery));
        } else if (delivery.bypass && delivery.bypass->overItsFlow) {
            const auto &station = *build.expansion().station(delivery.to);
            const auto wanted = build.wanted(station, station.station->demand.flow);
            const double most = station.part->as<RegulatorFacts>()->flowLh.value_or(0) / 3.6e6;
            if (!wanted || wanted->si <= most) // Else flows() says so.
                found.push_back(overItsFlow(build, delivery));
        }
    }
}

} // namespace flarestock::rules
