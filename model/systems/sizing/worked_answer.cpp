// SPDX-License-Identifier: MIT

#include "model/systems/sizing/worked_answer.h"

#include <algorithm>

namespace flarestock {

const SizeTried *WorkedAnswer::Sizes::of(int dash) const noexcept
{
    const auto found = std::find_if(tried.begin(), tried.end(),
                                    [dash](const SizeTried &one) { return one.size.dash == dash; });
    return found == tried.end() ? nullptr : &*found;
}

const SizeTried *WorkedAnswer::Sizes::nextDown() const noexcept
{
    const SizeTried *below = nullptr;
    for (const SizeTried &one : tried)
        if (one.size.dash < worked)
            below = &one;
    return below;
}

double WorkedAnswer::Sizes::overWorkedPa(const SizeTried &size) const noexcept
{
    const SizeTried *base = of(worked);
    return base ? size.dropPa - base->dropPa : 0;
}

} // namespace flarestock
