// SPDX-License-Identifier: MIT
//
// Station demand: what a station asks of its part, with the answers put in, and what a part lacks
// of it. What a maker does not publish cannot be shown to meet a demand, so it does not; only the
// fluids are different: a maker who names none forbids none.

#pragma once

#include "model/parts/part.h"
#include "model/systems/expanding/flattening.h"

namespace flarestock {

struct StationDemand {
    const Demand *as = nullptr; ///< As the template says it: kind and words.
    std::string part;           ///< The template's own choice; empty where it has none.
    struct Microns {
        Decimal least;
        Decimal most;
        std::string typed; ///< "75 to 150"
    };
    std::optional<Microns> microns;
    std::optional<Measure> flow;
    std::optional<Measure> pressure;
    std::optional<Measure> rated;
    std::optional<Fluid> fluid;
    std::vector<std::string_view> ports; ///< Those that the runs use, by name, and the plugged.
};

/// Problem: a text that is no measure of its sort, or no micron range; thing names the station.
[[nodiscard]] Result<StationDemand> demandOf(const FlatStation &station);

/// What a part lacks, the first that applies.
enum class Lack : std::uint8_t {
    Nothing,
    Kind,
    Word,
    Micron,
    Flow,
    Pressure,
    Rated,
    Fluid,
    Port,
};
[[nodiscard]] Lack lackOf(const Part &part, const StationDemand &demand);
/// "200 L/h at 43.5 psi where 255 L/h is wanted"; empty for Nothing.
[[nodiscard]] std::string text(Lack lack, const Part &part, const StationDemand &demand);
/// What a part that lacks nothing has: "286 L/h at 43.5 psi, 255 L/h wanted"; may be empty.
[[nodiscard]] std::string meritOf(const Part &part, const StationDemand &demand);

} // namespace flarestock
