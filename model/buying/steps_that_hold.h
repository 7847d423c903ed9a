// SPDX-License-Identifier: MIT
//
// Steps that hold: of what was written down step by step, each whole, those that nobody has taken
// back. A step is taken back by a further one that says what was said before it.
//
//   draft ─▶ placed ─▶ cancelled ─▶ placed again, as before      // draft and placed hold

#pragma once

#include <vector>

namespace flarestock {

/// Oldest first, as they stand in `steps`; the last says what the newest step says. What a step
/// says is compared by its saysAs().
template <class Step>
[[nodiscard]] std::vector<const Step *> stepsThatHold(const std::vector<Step> &steps)
{
    std::vector<const Step *> holding;
    holding.reserve(steps.size());
    for (const Step &step : steps) {
        if (holding.size() > 1 && holding[holding.size() - 2]->saysAs(step))
            holding.pop_back();
        else
            holding.push_back(&step);
    }
    return holding;
}

} // namespace flarestock
