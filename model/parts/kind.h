// SPDX-License-Identifier: MIT
//
// Kinds of parts, by the trade's words. A kind decides which facts a part carries (facts.h).

#pragma once

#include "model/exact/problem.h"

#include <cstdint>
#include <string_view>

namespace flarestock {

enum class Kind : std::uint8_t {
    Hose,
    HoseEnd,
    Tubing, ///< Hard tube by the length.
    TubeNut,
    TubeSleeve,
    Adapter,
    Tee,
    Manifold,
    Bulkhead,
    Cap,
    Plug,
    Filter,
    Element,
    Pump,
    Regulator,
    CheckValve,
    RolloverValve,
    Tank, ///< Tank or cell, also oil and surge tanks.
    Sender,
    Gauge,
    Rail,
    Carburettor,
    Injector,
    Cooler,
    Engine, ///< The car's own end of a line: engine block, gearbox, radiator neck.
    MasterCylinder,
    Calliper,
    BrakeValve, ///< Balance, proportioning or residual valve of brakes.
    Bracket,
    Clamp,
    Ring,
    Washer,
    Sealant,
    Wire,
    Fuse,
    Relay,
    Tool,
};
inline constexpr std::size_t KindCount = 37;

[[nodiscard]] std::string_view text(Kind kind) noexcept; ///< "hose end", "check valve", …
/// Whether it is used up by measure, a little at each joint, so that one piece does all of a
/// build's and no count of joints says how many are needed.
[[nodiscard]] bool isUsedByMeasure(Kind kind) noexcept;
/// Case forgiven; blank, hyphen and underscore are the same. Problem: unknown; lists near ones.
[[nodiscard]] Result<Kind> parseKind(std::string_view text);

} // namespace flarestock
