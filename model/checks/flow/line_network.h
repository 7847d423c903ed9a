// SPDX-License-Identifier: MIT
//
// Line network: the runs of a build that carry fuel, each as its line, and what a path of them
// takes at a flow. A filter whose loss nobody publishes counts nothing; beyond the flow of its
// figure it counts what it takes there, which is the least that it can.

#pragma once

#include "model/checks/flow/flow_paths.h"
#include "model/checks/flow/run_line.h"
#include "model/fluids/liquid.h"

#include <map>

namespace flarestock {

class LineNetwork {
public:
    struct Filled {
        Liquid liquid;
        double accelerationMS2 = 0;
    };
    /// The expansion outlives it. Where several of the paths' runs meet, their tees count.
    LineNetwork(const Expansion &expansion, const Filled &filled,
                const std::vector<const FlowPath *> &paths);

    [[nodiscard]] const RunLine &line(const PlacedRun &run) const;
    /// The line with its flow, and what it loses at it; nothing where two ports meet.
    [[nodiscard]] WholeLine flowing(const PlacedRun &run, double flowM3S) const;
    [[nodiscard]] WholeLineLoss loss(const PlacedRun &run, double flowM3S) const;

    /// Of what one pump gives or takes, how much goes through each run.
    using Shares = std::map<const PlacedRun *, double>;
    [[nodiscard]] static Shares sharesOf(const std::vector<FlowPath> &paths);

    struct Worst {
        const FlowPath *path = nullptr; ///< nullptr: there is none.
        double dropPa = 0;
    };
    /// Paths, and which of their runs count: all, or where usedBy is given only some.
    struct Asked {
        const std::vector<FlowPath> &paths;
        const Shares &shares;
        const std::map<const PlacedRun *, int> *usedBy = nullptr; ///< How many pumps use a run …
        bool common = false; ///< … of which those of one count, or those of several.
    };
    /// The path that takes most where the pump gives that flow.
    [[nodiscard]] Worst worst(const Asked &asked, double flowM3S) const;

private:
    const Expansion &m_expansion;
    Filled m_filled;
    std::map<const PlacedRun *, RunLine> m_lines;
};

} // namespace flarestock
