// SPDX-License-Identifier: MIT

#include "model/fluids/filter/beta.h"

#include "model/fluids/bounds.h"

#include <utility>

namespace flarestock {

Result<double> betaOf(double before, double behind)
{
    if (auto wrong = firstImpossible(
            {{"count before the filter", before}, {"count behind the filter", behind}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    if (behind > before)
        return problem("filter", "lets more through than comes to it", "Look at the two counts.");
    return before / behind;
}

Result<double> efficiencyOfBeta(double beta)
{
    if (auto wrong = firstImpossible({{"beta", beta}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    if (beta < 1)
        return problem("beta", "is below 1", "Give the count before over the count behind.");
    return 1 - 1 / beta;
}

Result<double> betaOfEfficiency(double efficiency)
{
    if (auto wrong = firstImpossible({{"efficiency", efficiency, Allowed::NothingOrMore}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    if (efficiency >= 1)
        return problem("efficiency", "is 1 or above", "Give 0.98667 for 98.667 %.");
    return 1 / (1 - efficiency);
}

} // namespace flarestock
