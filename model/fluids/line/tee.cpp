// SPDX-License-Identifier: MIT

#include "model/fluids/line/tee.h"

#include "model/fluids/bounds.h"

#include <cassert>
#include <cmath>
#include <numbers>
#include <utility>

namespace flarestock {

namespace {

bool isSquare(const TeeFlow &flow)
{
    return flow.branchDegrees == 90;
}

/// The paper's F: 1.74, 1.41, 1.00 and 0, rounded from 2 cos of the angle.
double dragOf(double degrees)
{
    if (degrees == 30)
        return 1.74;
    if (degrees == 45)
        return 1.41;
    return degrees == 60 ? 1.0 : 0.0;
}

double converging(const TeeFlow &flow)
{
    const double q = flow.branchShare;
    const double rest = 1 - q;
    const double drag = dragOf(flow.branchDegrees);
    if (flow.leg == TeeLeg::Run)
        return isSquare(flow) ? 1.55 * q - q * q : 1 - rest * rest - drag * q * q;
    const double scale = q <= 0.4 ? 0.9 * rest : 0.55;
    return scale * (1 + q * q - 2 * rest * rest - drag * q * q);
}

double diverging(const TeeFlow &flow)
{
    const double q = flow.branchShare;
    if (flow.leg == TeeLeg::Run)
        return (q <= 0.5 ? 2 : 0.3) * (2 * q - 1) * q * q;
    if (isSquare(flow)) {
        const double side = 1 + 0.3 * q * q;
        return side * side;
    }
    const double scale = q <= 0.6 ? 1 - 0.6 * q : 0.6;
    const double cosine = std::cos(flow.branchDegrees * std::numbers::pi / 180);
    return scale * (1 + q * q - 2 * q * cosine);
}

} // namespace

Result<double> teeCoefficient(const TeeFlow &flow)
{
    if (auto wrong = beyond({"share of the branch", "", 0, 1}, flow.branchShare, "tee"))
        return tl::unexpected<Problem>(*std::move(wrong));
    const double degrees = flow.branchDegrees;
    if (degrees != 30 && degrees != 45 && degrees != 60 && degrees != 90)
        return problem("tee", "has a branch at an angle for which no figures are known",
                       "Give 30, 45, 60 or 90 degrees.");
    return flow.way == TeeWay::Converging ? converging(flow) : diverging(flow);
}

} // namespace flarestock
