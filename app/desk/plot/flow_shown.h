// SPDX-License-Identifier: MIT
//
// Flow shown: a build with its flow and the person's units: what the pictures of flow are made of,
// and what they say alike.

#pragma once

#include "app/desk/build/worked_out.h"
#include "app/desk/plot/plot_layout.h"
#include "app/desk/words/units.h"
#include "model/checks/flow/system_flow.h"

namespace flarestock {

struct FlowShown {
    const WorkedOut &worked;
    const SystemFlow &flow;
    Units units = Units::Metric;

    [[nodiscard]] const Expansion &build() const { return *worked.expansion; }
    [[nodiscard]] QString pressure(double pa) const { return saidFinePressure(pa / 1e3, units); }
    [[nodiscard]] QString flowOf(double m3S) const { return saidFlow(m3S * 3.6e6, units); }
    /// "pump"; empty of a station that there is not.
    [[nodiscard]] QString station(const std::string &id) const;
    /// "-6, 11 ft, post-filter to rail"
    [[nodiscard]] QString run(const std::string &id) const;
    /// As the line map writes it: "run|supply", of two ports that join directly "joint|hanger".
    /// Empty where nothing can be opened.
    [[nodiscard]] QString spotOf(const std::string &run) const;

    /// The gravest finding about flow, pressure or filters at a run, its joints or a station.
    [[nodiscard]] const Finding *findingAt(const std::string &where) const;
};

/// A picture of what cannot be drawn, as no flow was worked out: why, and what would help.
[[nodiscard]] PlotLayout nothingFlows(const FlowShown &shown, const PlotSpace &space);

/// Sentences of one text, the first letter of each large and a point behind.
[[nodiscard]] QString asSentences(const QStringList &parts);

} // namespace flarestock
