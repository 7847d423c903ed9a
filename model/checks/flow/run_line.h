// SPDX-License-Identifier: MIT
//
// Run line: a run of a build as the pieces that the liquid passes: what stands before it (a tank, a
// filter, a check valve), adapters and hose ends by their angle, hose or tube by its bore and
// length, and the tank that it ends in.
//
// The dash is not the bore. Hose, tube and hose end have theirs as entered; where none is, that of
// a tube of the dash size is taken and named in `assumed`. Adapters and ports have no bore of their
// own in a catalogue: they count by the tube of their dash size, an elbow by its angle as drilled;
// a thread without a dash size changes nothing.

#pragma once

#include "model/fluids/line/whole_line.h"
#include "model/systems/expansion.h"

namespace flarestock {

struct RunLine {
    WholeLine line; ///< Without its flow and liquid; may have no pieces: two ports that meet.
    std::optional<StraightLine> straight;  ///< Its hose or tube.
    std::vector<std::string> assumed;      ///< Part numbers whose bore nobody has entered.
    const PlacedStation *passed = nullptr; ///< The filter or cooler before it …
    bool lossUnknown = false;       ///< … of which no loss is published; it counts nothing.
    const Part *boreless = nullptr; ///< The line, where not even its dash tells a bore.
    bool unfinished = false; ///< A joint is open or the line missing, which is said elsewhere.
};

/// Whether the flow joins or divides where the run begins: 1 where it does neither.
struct RunMeeting {
    int coming = 1; ///< So many runs bring flow there, each as much.
    int going = 1;  ///< So many take it away, each as much.
};

[[nodiscard]] RunLine runLine(const Expansion &expansion, const PlacedRun &run,
                              const RunMeeting &meeting = {});

} // namespace flarestock
