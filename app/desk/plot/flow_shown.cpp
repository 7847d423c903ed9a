// SPDX-License-Identifier: MIT

#include "app/desk/plot/flow_shown.h"

#include "app/desk/language/sentences.h"
#include "app/desk/opened/detail.h"
#include "app/desk/words/run_words.h"
#include "app/desk/words/spoken.h"
#include "app/workshop/flow/flow_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace flarestock {

namespace {

struct FlowWords {
    Q_DECLARE_TR_FUNCTIONS(FlowPictures)
};

bool isOfFlow(const Finding &finding)
{
    return finding.severity != Severity::Note &&
           (finding.matter == Matter::Flow || finding.matter == Matter::Pressure ||
            finding.matter == Matter::DirectionAndFilters);
}

} // namespace

QString FlowShown::station(const std::string &id) const
{
    return build().station(id) == nullptr ? QString() : titleOf(worked, id);
}

QString FlowShown::run(const std::string &id) const
{
    const PlacedRun &run = *build().run(id);
    QStringList parts;
    if (const QString size = saidRunSize(run); run.line != nullptr && !size.isEmpty())
        parts.append(size);
    if (run.line != nullptr)
        parts.append(saidRunLength(run.length, units));
    parts.append(FlowWords::tr("%1 to %2").arg(station(run.from), station(run.to)));
    return parts.join(QStringLiteral(", "));
}

QString FlowShown::spotOf(const std::string &run) const
{
    const PlacedRun *placed = build().run(run);
    if (placed == nullptr || placed->joints.empty())
        return {};
    return placed->joints.size() > 1
               ? QString(QStringLiteral("run|") + said(run))
               : QString(QStringLiteral("joint|") + said(placed->joints.front()));
}

const Finding *FlowShown::findingAt(const std::string &where) const
{
    const PlacedRun *run = build().run(where);
    const auto isHere = [&](const Finding &finding) {
        if (!isOfFlow(finding) || finding.where.empty())
            return false;
        return finding.where == where ||
               (run != nullptr && std::find(run->joints.begin(), run->joints.end(),
                                            finding.where) != run->joints.end());
    };
    const auto found =
        std::find_if(worked.findings->begin(), worked.findings->end(), isHere); // Gravest first.
    return found == worked.findings->end() ? nullptr : &*found;
}

PlotLayout nothingFlows(const FlowShown &shown, const PlotSpace &space)
{
    PlotLayout plot;
    plot.space = space;
    const auto &fluid = shown.build().fluid;
    if (!shown.flow.unknown.empty()) {
        plot.whyNone = asSentences({inWords(shown.flow.unknown.front())});
        plot.whatToDo = FlowWords::tr("Enter it in Parts, on the card of the part.");
    } else if (fluid && isBrakeFluid(*fluid)) {
        plot.whyNone = FlowWords::tr("Nothing flows in the lines of brakes: they stand under "
                                     "pressure while the pedal is pressed.");
        plot.whatToDo = FlowWords::tr("What each piece has to bear stands in its joint on the line "
                                      "and in the findings.");
    } else if (fluid && isFuel(*fluid)) {
        plot.whyNone =
            FlowWords::tr("Nobody states the engine's power, or what a pump is to give.");
        plot.whatToDo = FlowWords::tr("Answer it above; a template without that question gets one "
                                      "in its form (Ctrl+T).");
    } else {
        plot.whyNone = FlowWords::tr("Nobody states how much goes round: a pump on the engine does "
                                     "not say what it gives.");
        plot.whatToDo = FlowWords::tr("Size the lines by the maker's word.");
    }
    return plot;
}

QString asSentences(const QStringList &parts)
{
    QStringList sentences;
    for (QString part : parts) {
        if (part.isEmpty())
            continue;
        part[0] = part[0].toUpper();
        sentences.append(QString(part + u'.'));
    }
    return sentences.join(u' ');
}

} // namespace flarestock
