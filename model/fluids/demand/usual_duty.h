// SPDX-License-Identifier: MIT
//
// Usual duty: the pressure and temperature that a kind of system commonly reaches, for the
// checks where neither template nor car says more (model/fluids/data/usual_duty.csv).

#pragma once

#include <optional>
#include <string_view>

namespace flarestock {

struct UsualDuty {
    std::optional<double> pressureKpa;  ///< Gauge.
    std::optional<double> temperatureC; ///< Of the fluid.
    std::string_view status;            ///< "from memory"
    std::string_view source;            ///< Never empty.
};

/// By the system's word: "oil", "gearbox", "coolant", "brakes". Nothing for another: what a fuel
/// system runs at is asked of its template.
[[nodiscard]] std::optional<UsualDuty> usualDuty(std::string_view system);

} // namespace flarestock
