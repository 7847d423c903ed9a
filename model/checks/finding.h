// SPDX-License-Identifier: MIT
//
// Finding: something that the checks say about a build: how grave, where, why, by which source, and
// what to do. One cause, one finding. No finding is never "safe", only "no finding".

#pragma once

#include "model/systems/answers.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace flarestock {

enum class Severity : std::uint8_t { Stop, Caution, Note };
[[nodiscard]] std::string_view text(Severity severity) noexcept; ///< "stop" "caution" "note"

/// What a finding is about, in order of danger: findings of one severity are listed in this order.
enum class Matter : std::uint8_t {
    FluidAndMaterial,
    Fit,
    Assembly,
    Pressure,
    DirectionAndFilters,
    Flow,
    Stock,
};
[[nodiscard]] std::string_view text(Matter matter) noexcept;

struct Finding {
    Severity severity = Severity::Note;
    Matter matter = Matter::Fit;
    std::string about;  ///< "Rail inlet: -6 flare in a -6 boss screws in and leaks"
    std::string where;  ///< Id of the joint, station or run; empty for the whole build.
    std::string text;   ///< One or two sentences: why.
    std::string source; ///< Never empty.
    std::string remedy; ///< What to do, as a sentence.
    Picks mend; ///< Picks that would do it (an empty part number lets a pick go); may be empty.
    bool isShortage = false; ///< About pieces that are not on the shelf.

    friend bool operator==(const Finding &, const Finding &) = default;
};

} // namespace flarestock
