// SPDX-License-Identifier: MIT
//
// Flow words: what flows in a build, named: the same words in the sheet and in the document of the
// command, and in the pictures of the desk.

#pragma once

#include "model/checks/flow/system_flow.h"

namespace flarestock {

[[nodiscard]] std::string_view text(LineRole role) noexcept;    ///< "suction" …
[[nodiscard]] std::string_view text(DeliveryEnd end) noexcept;  ///< "bypass regulator" …
[[nodiscard]] std::string_view text(CurveReach reach) noexcept; ///< "within the curve" …

/// The flow of a build with the curves of its pumps, as both draw it.
[[nodiscard]] SystemFlow drawnFlow(const Expansion &build);
/// Why no flow is worked out, where its runs are none: "nobody states …".
[[nodiscard]] std::string whyNothingFlows(const SystemFlow &flow);

/// "pump P-1" of a station's id.
[[nodiscard]] std::string stationName(const Expansion &build, std::string_view id);
/// "tank FC-1 to pump P-1"
[[nodiscard]] std::string sectionName(const Expansion &build, const LineSection &section);

/// What the regulator that the delivery leads to can hold: a bypass regulator against its return, a
/// dead-head one as its maker says. Nothing of another end, and where he says nothing.
[[nodiscard]] std::optional<BypassRange> heldBy(const Expansion &build, const Delivery &delivery);

/// What the figures rest on that nobody has entered, a sentence each: bores by dash, regulators
/// that are taken to lose nothing, which flow was taken, the friction between laminar and
/// turbulent.
[[nodiscard]] std::vector<std::string> assumptions(const Expansion &build, const SystemFlow &flow);

} // namespace flarestock
