// SPDX-License-Identifier: MIT

#include "model/fluids/crossing.h"

#include <boost/math/tools/toms748_solve.hpp>

#include <cassert>
#include <cmath>
#include <cstdint>
#include <utility>

namespace flarestock {

namespace {

Result<double> valueOf(const Curve &curve, double at)
{
    auto value = curve(at);
    if (value && !std::isfinite(*value))
        return problem("curve", "is not a number at one place", "Look at the figures entered.");
    return value;
}

} // namespace

Result<Crossing> crossing(const Curve &curve, SearchEnds ends)
{
    assert(ends.low < ends.high);
    const auto atLow = valueOf(curve, ends.low);
    if (!atLow)
        return tl::unexpected<Problem>(atLow.error());
    const auto atHigh = valueOf(curve, ends.high);
    if (!atHigh)
        return tl::unexpected<Problem>(atHigh.error());
    Crossing found{std::nullopt, *atLow, *atHigh};
    if (*atLow == 0)
        found.at = ends.low;
    else if (*atHigh == 0)
        found.at = ends.high;
    if (found.at || (*atLow > 0) == (*atHigh > 0))
        return found;
    std::optional<Problem> wrong;
    const auto search = [&curve, &wrong](double at) {
        auto value = valueOf(curve, at);
        if (value)
            return *value;
        wrong = std::move(value.error());
        return 0.0; // Ends the search.
    };
    std::uintmax_t steps = 200;
    const auto [left, right] =
        boost::math::tools::toms748_solve(search, ends.low, ends.high, *atLow, *atHigh,
                                          boost::math::tools::eps_tolerance<double>(40), steps);
    if (wrong)
        return tl::unexpected<Problem>(*std::move(wrong));
    found.at = left + (right - left) / 2;
    return found;
}

} // namespace flarestock
