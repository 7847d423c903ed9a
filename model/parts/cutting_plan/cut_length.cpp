// SPDX-License-Identifier: MIT

#include "model/parts/cutting_plan/cut_length.h"

namespace flarestock {

Result<std::int64_t> takenUp(const Part &start, const Part &far)
{
    Quantity allowances{{}, Unit::Millimetre};
    for (const Part *end : {&start, &far}) {
        const auto *facts = end->as<HoseEndFacts>();
        if (!facts || !facts->allowanceMm)
            return problem(end->number, "does not say what it adds to the length",
                           "Measure from seat to seat, or write its allowance in the catalogue.");
        allowances.amount += *facts->allowanceMm;
    }
    return allowances.smallest();
}

Result<std::int64_t> cutLength(std::int64_t betweenSeats, const Part &start, const Part &far)
{
    const auto taken = takenUp(start, far);
    if (!taken)
        return taken;
    if (betweenSeats <= *taken)
        return problem("the length between seats",
                       "is no longer than what " + start.number + " and " + far.number +
                           " take up, " + Quantity::ofSmallest(*taken, Unit::Inch).spoken(),
                       "Measure from seat to seat again, or join the two without a hose.");
    return betweenSeats - *taken;
}

} // namespace flarestock
