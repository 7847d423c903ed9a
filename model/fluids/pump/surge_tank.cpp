// SPDX-License-Identifier: MIT

#include "model/fluids/pump/surge_tank.h"

#include "model/fluids/bounds.h"

#include <utility>

namespace flarestock {

Result<SurgeTankBalance> surgeTankBalance(const SurgeTank &tank)
{
    if (auto wrong =
            firstImpossible({{"flow of the lift pump", tank.liftM3S, Allowed::NothingOrMore},
                             {"flow taken", tank.takenM3S, Allowed::NothingOrMore},
                             {"flow burnt", tank.burntM3S, Allowed::NothingOrMore},
                             {"volume", tank.volumeM3}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    if (tank.takenM3S < tank.burntM3S)
        return problem("surge tank", "gives less than the engine burns",
                       "Choose a stronger pressure pump.");
    SurgeTankBalance balance;
    balance.leastLiftM3S = tank.returnsHere ? tank.burntM3S : tank.takenM3S;
    balance.surplusM3S = tank.liftM3S - balance.leastLiftM3S;
    if (balance.surplusM3S < 0)
        balance.emptyAfterS = tank.volumeM3 / -balance.surplusM3S;
    if (balance.leastLiftM3S > 0)
        balance.lastsWithoutLiftS = tank.volumeM3 / balance.leastLiftM3S;
    return balance;
}

} // namespace flarestock
