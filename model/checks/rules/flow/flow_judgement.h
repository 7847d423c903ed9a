// SPDX-License-Identifier: MIT
//
// Flow judgement: the bounds by which the rules of flow judge a build, and which rule speaks where
// one cause would show at several places: of a line that is too narrow the line is told, not also
// the pump that cannot push through it, nor how fast the fuel runs in it.

#pragma once

#include "model/checks/rules/build_under_check.h"

namespace flarestock::rules {

/// A loss and what it may be. The budgets are judgement: 1 psi from a regulator to a carburettor is
/// what the rules of thumb of dash against power come to, 3 psi before it; of an injection 20 % of
/// its set pressure at the pump's flow, which at the engine's is the usual 5 to 10 %.
struct LossBudget {
    const LineSection *section = nullptr;
    double budgetPa = 0;

    [[nodiscard]] bool isExceeded() const noexcept { return section->dropPa > budgetPa; }
};
[[nodiscard]] std::vector<LossBudget> lossBudgets(const BuildUnderCheck &build,
                                                  const Delivery &delivery);

/// What the return alone keeps up against what the regulator is set to; 0 where nothing is known.
[[nodiscard]] double returnShare(const Delivery &delivery);
/// From half of the set pressure on its return is told (judgement).
inline constexpr double ReturnShareMost = 0.5;

/// Bounds of the inlet's margin over the vapour pressure (judgement): a healthy build on a summer's
/// day stays above the first. Aircraft pumps are held to 5 psi, 34 kPa (pump handbook).
inline constexpr double InletCautionPa = 20e3;
inline constexpr double InletStopPa = 10e3;

/// The fuel alone is too near to boiling, whatever the lines.
[[nodiscard]] bool isFuelTooWarm(const SystemFlow &flow, const PumpAtWork &pump) noexcept;
/// The pump of the delivery with the least margin; nullptr where none is known.
[[nodiscard]] const PumpAtWork *nearestToBoiling(const Delivery &delivery) noexcept;

/// Whether a line of the delivery, and not its pump, is told to be at fault.
[[nodiscard]] bool isLineAtFault(const BuildUnderCheck &build, const Delivery &delivery);
/// Its pumps do not give what is wanted, as far as their curves say; a lift pump is judged by its
/// surge tank.
[[nodiscard]] bool isShort(const Delivery &delivery) noexcept;
/// Whether pumpFlows() says of that pump that it gives too little.
[[nodiscard]] bool isFoundShort(const BuildUnderCheck &build, const std::string &station);

/// "12.3 kPa", "255 L/h", "1.46 m/s", in the C locale.
[[nodiscard]] std::string kilopascals(double pascal);
[[nodiscard]] std::string litresPerHour(double flowM3S);
[[nodiscard]] std::string metresPerSecond(double velocityMS);
/// A number with so many decimals.
[[nodiscard]] std::string withDecimals(double number, int decimals);
/// "pump P-1" of a station's id, with a capital where it begins a sentence.
[[nodiscard]] std::string nameOf(const BuildUnderCheck &build, const std::string &station);
[[nodiscard]] std::string capitalNameOf(const BuildUnderCheck &build, const std::string &station);
/// "from tank FC-1 to pump P-1"
[[nodiscard]] std::string wayOf(const BuildUnderCheck &build, const LineSection &section);

} // namespace flarestock::rules
