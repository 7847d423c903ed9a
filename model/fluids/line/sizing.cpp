// SPDX-License-Identifier: MIT

#include "model/fluids/line/sizing.h"

#include "model/fluids/bounds.h"
#include "model/fluids/table_cells.h"

#include <array>
#include <cassert>
#include <cmath>
#include <numbers>
#include <utility>
#include <vector>

namespace flarestock {

namespace embedded {
extern const std::string_view velocityLimitsCsv; // model/fluids/data/velocity_limits.csv
}

namespace {

constexpr std::size_t RoleCount = 3;

std::vector<VelocityLimit> readLimits()
{
    static constexpr std::array<std::string_view, 2 * RoleCount> Lines{
        "suction", "pressure", "return", "oil suction", "oil pressure", "oil return"};
    const auto rows = rowsOfTable(embedded::velocityLimitsCsv);
    assert(rows.size() == Lines.size() + 1);
    std::vector<VelocityLimit> limits;
    for (std::size_t at = 0; at < Lines.size(); ++at) {
        const TableRow &row = rows[at + 1];
        assert(row[0] == Lines[at]);
        limits.push_back({numberIn(row[1]), numberIn(row[2]), row[3], row[4]});
    }
    return limits;
}

} // namespace

const VelocityLimit &velocityLimit(LineRole role, LineLiquid liquid)
{
    static const auto Limits = readLimits();
    const std::size_t first = liquid == LineLiquid::Oil ? RoleCount : 0;
    return Limits.at(first + static_cast<std::size_t>(role));
}

double staticChargeVelocityMS(double boreM)
{
    assert(boreM > 0);
    return std::sqrt(0.64 / boreM);
}

Result<double> boreForVelocityM(double flowM3S, double velocityMS)
{
    if (auto wrong = firstImpossible({{"flow", flowM3S}, {"velocity", velocityMS}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    return std::sqrt(4 * flowM3S / (std::numbers::pi * velocityMS));
}

Result<double> equivalentLengthM(double k, double boreM, double frictionFactor)
{
    if (auto wrong = firstImpossible({{"loss coefficient", k, Allowed::NothingOrMore},
                                      {"bore", boreM},
                                      {"friction factor", frictionFactor}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    return k * boreM / frictionFactor;
}

} // namespace flarestock
