// SPDX-License-Identifier: MIT

#include "app/workshop/made_up.h"

#include "model/exact/case_fold.h"

#include <QDateTime>

namespace flarestock {

namespace {

/// The ports of an end that are not for the hose, under the name of their end.
void addPorts(Part &made, const Part *end, const std::string &name)
{
    if (!end)
        return;
    for (const PartPort &port : end->ports) {
        if (!port.port.text().starts_with("HOSE"))
            made.ports.push_back({name, port.port, PortRole::Either});
    }
}

} // namespace

std::string dayOf(std::int64_t at)
{
    return QDateTime::fromMSecsSinceEpoch(at, Qt::UTC).date().toString(Qt::ISODate).toStdString();
}

std::string describe(const MadeHose &hose, Unit unit)
{
    std::string said = hose.hose + " with " + hose.startEnd + " and " + hose.farEnd + ", " +
                       Quantity::ofSmallest(hose.seats, unit).spoken() + " between seats";
    if (!hose.clocking.empty())
        said += ", clocked " + hose.clocking;
    if (!hose.isTested())
        said += ", no proof test";
    else if (hose.passed)
        said += ", proof-tested " + hose.pressure;
    else
        said += ", failed its proof test";
    return said;
}

std::map<std::string, Part, std::less<>> madeUpParts(const ShopNotes &notes,
                                                     const Catalogue &catalogue)
{
    std::map<std::string, Part, std::less<>> parts;
    for (const auto &[tag, hose] : notes.hoses) {
        const Part *line = catalogue.find(hose.hose);
        if (!line)
            continue;
        Part made;
        made.number = tag;
        made.description = describe(hose, line->unit);
        made.kind = Kind::Hose;
        made.unit = Unit::Each;
        addPorts(made, catalogue.find(hose.startEnd), "start");
        addPorts(made, catalogue.find(hose.farEnd), "far");
        parts.emplace(folded(tag), std::move(made));
    }
    return parts;
}

} // namespace flarestock
