// SPDX-License-Identifier: MIT

#include "model/fluids/pump/pump_power.h"

#include "model/fluids/bounds.h"

#include <utility>

namespace flarestock {

Result<double> hydraulicPowerW(const PumpDuty &duty)
{
    if (auto wrong = firstImpossible({{"pressure", duty.pressurePa, Allowed::NothingOrMore},
                                      {"flow", duty.flowM3S, Allowed::NothingOrMore}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    return duty.pressurePa * duty.flowM3S;
}

Result<double> drivingPowerW(const PumpDuty &duty, double efficiency)
{
    auto power = hydraulicPowerW(duty);
    if (!power)
        return power;
    if (auto wrong = firstImpossible({{"efficiency", efficiency}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    if (efficiency > 1)
        return problem("efficiency", "is above 1", "Give 0.3 for 30 %.");
    return *power / efficiency;
}

Result<double> pumpCurrentA(const PumpDuty &duty, double efficiency, double volts)
{
    if (auto wrong = firstImpossible({{"voltage", volts}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    return drivingPowerW(duty, efficiency).map([volts](double watts) { return watts / volts; });
}

} // namespace flarestock
