// SPDX-License-Identifier: MIT
//
// Torque: how tight a nut or stud is turned, as each published table says it. Published figures
// differ by a factor of two for one and the same boss, so a figure never goes without its source,
// and none is made out of two. The part maker's own figure comes before all of them.
//
//   torquesFor({Port::parse("ORB -6 male").value()}).size(); // 2: 43 to 53 and 21.6 to 26.4 N·m

#pragma once

#include "model/ports/port.h"

#include <optional>
#include <span>

namespace flarestock {

/// What a flare nut holds, which the tables distinguish.
enum class NutOn : std::uint8_t { Fitting, Hose, AluminiumTube, SteelTube, OtherTube };
[[nodiscard]] std::string_view text(NutOn on) noexcept; ///< "fitting", "hose", "aluminium tube" …
[[nodiscard]] Result<NutOn> parseNutOn(std::string_view text); ///< Problem: none of them.

struct TorqueAsked {
    Port port;                 ///< Nut, stud or the port that it goes into.
    NutOn on = NutOn::Fitting; ///< Of no account for a boss.
    bool ferrous = true;       ///< All is of steel; never where the tube is not.
};

struct Torque {
    double leastNm = 0;
    double mostNm = 0;
    std::string published;         ///< As it is printed: "100 to 125 in-lb".
    std::string_view metal;        ///< What the table says that it is for: "ferrous", "not stated".
    bool halved = false;           ///< By the table's own rule: half where not all is ferrous.
    std::string_view note;         ///< "threads lubricated"; may be empty.
    std::string_view sourceId;     ///< "S20"
    std::string_view source;       ///< Never empty.
    std::string_view sourceStands; ///< How much it is worth: "primary", "good".
};

/// Every published torque for the joint, as in model/ports/data/torques.csv, the greatest first.
/// Tables of flare nuts that do not say what the nut holds count for whatever it holds. A table for
/// ferrous parts only counts where all is, or with the half that it allows otherwise; one that does
/// not say counts always. Empty: none is published (pipe threads, face
/// seals, inverted and bubble flares, metric, banjos, sizes that no table has).
[[nodiscard]] std::vector<Torque> torquesFor(const TorqueAsked &asked);

/// The middle of the greatest over the middle of the least, where it is 1.5 or more: then no two
/// fitters with two books tighten alike. Nothing otherwise.
[[nodiscard]] std::optional<double> disagreement(std::span<const Torque> torques);

} // namespace flarestock
