// SPDX-License-Identifier: MIT

#include "model/fluids/wiring/wire.h"

#include "model/fluids/bounds.h"

#include <cmath>
#include <numbers>
#include <utility>

namespace flarestock {

Result<double> gaugeDiameterM(int gauge)
{
    if (auto wrong = beyond({"gauge", "AWG", -3, 40}, gauge, "wire"))
        return tl::unexpected<Problem>(*std::move(wrong));
    constexpr double InchM = 0.0254;
    return 0.005 * InchM * std::pow(92.0, (36 - gauge) / 39.0);
}

Result<double> gaugeAreaM2(int gauge)
{
    return gaugeDiameterM(gauge).map(
        [](double diameterM) { return std::numbers::pi / 4 * diameterM * diameterM; });
}

Result<double> copperResistivityOhmM(double temperatureC)
{
    if (auto wrong = beyond({"temperature", "°C", -60, 260}, temperatureC, "copper"))
        return tl::unexpected<Problem>(*std::move(wrong));
    return 1.7241e-8 * (234.5 + temperatureC) / (234.5 + 20);
}

Result<VoltageDrop> voltageDrop(const PumpWire &wire)
{
    if (auto wrong = firstImpossible({{"cross section", wire.areaM2},
                                      {"wire there", wire.thereM, Allowed::NothingOrMore},
                                      {"wire back", wire.backM, Allowed::NothingOrMore},
                                      {"current", wire.amperes, Allowed::NothingOrMore},
                                      {"contacts", wire.contactOhm, Allowed::NothingOrMore}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    const auto resistivity = copperResistivityOhmM(wire.temperatureC);
    if (!resistivity)
        return tl::unexpected<Problem>(resistivity.error());
    VoltageDrop drop;
    drop.ohm = *resistivity * (wire.thereM + wire.backM) / wire.areaM2 + wire.contactOhm;
    drop.volts = drop.ohm * wire.amperes;
    return drop;
}

Result<double> measuredDropV(const MeasuredWire &wire)
{
    if (auto wrong = firstImpossible({{"resistance", wire.ohmPerM, Allowed::NothingOrMore},
                                      {"length", wire.lengthM, Allowed::NothingOrMore},
                                      {"current", wire.amperes, Allowed::NothingOrMore}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    return wire.ohmPerM * wire.lengthM * wire.amperes;
}

} // namespace flarestock
