// SPDX-License-Identifier: MIT
//
// Flow judgement: how a build lies against the bounds of its lines (model/fluids/line), and which
// rule speaks where one cause would show at several places: of a line that is too narrow the line
// is told, not also the pump that cannot push through it, nor how fast the fuel runs in it.

#pragma once

#include "model/checks/rules/build_under_check.h"
#include "model/fluids/line/line_budget.h"

namespace flarestock::rules {

/// Whose budgets count: a build with a carburettor is one of low pressure.
[[nodiscard]] FuelSystem systemOf(const BuildUnderCheck &build);

/// A loss and what it may be.
struct LossBudget {
    const LineSection *section = nullptr;
    LineBudget bounds;

    [[nodiscard]] bool isExceeded() const noexcept { return section->dropPa > bounds.cautionPa; }
    /// Even as the lower estimate has it.
    [[nodiscard]] bool isStop() const noexcept { return section->dropLeastPa > bounds.stopPa; }
};
/// From the pumps to regulator or rail first, then from a regulator on; none to a surge tank, or
/// where nobody says what is set.
[[nodiscard]] std::vector<LossBudget> lossBudgets(const BuildUnderCheck &build,
                                                  const Delivery &delivery);

/// The bounds of what the return keeps up; nothing where it or the set pressure is not known.
[[nodiscard]] std::optional<LineBudget> returnBudget(const BuildUnderCheck &build,
                                                     const Delivery &delivery);
[[nodiscard]] bool isReturnTold(const BuildUnderCheck &build, const Delivery &delivery);
/// Wide open it still keeps more than it is set to.
[[nodiscard]] bool cannotHold(const BuildUnderCheck &build, const Delivery &delivery);

/// The fuel alone is too near to boiling, whatever the lines.
[[nodiscard]] bool isFuelTooWarm(const SystemFlow &flow, const PumpAtWork &pump) noexcept;
/// The pump of the delivery with the least margin; nullptr where none is known.
[[nodiscard]] const PumpAtWork *nearestToBoiling(const Delivery &delivery) noexcept;

/// Whether pumpInlets() says of that pump that its lines leave too little; not where the fuel alone
/// is too warm.
[[nodiscard]] bool isInletFound(const BuildUnderCheck &build, const std::string &station);

/// What the filters of a section take of its pressure, the largest first.
struct FilterShare {
    const PlacedStation *filter = nullptr;
    double dropPa = 0;
};
[[nodiscard]] std::vector<FilterShare> filtersIn(const BuildUnderCheck &build,
                                                 const LineSection &section);
/// Whether lineLosses() says that the line with that filter takes too much.
[[nodiscard]] bool isLineFound(const BuildUnderCheck &build, const std::string &filter);

/// Whether a line of the delivery, and not its pump, is told to be at fault: it takes too much, and
/// with a line that keeps to its budget the pumps would give what is wanted.
[[nodiscard]] bool isLineAtFault(const BuildUnderCheck &build, const Delivery &delivery);
/// Its pumps do not give what is wanted, as far as their curves say; a lift pump is judged by its
/// surge tank.
[[nodiscard]] bool isShort(const Delivery &delivery) noexcept;
/// Whether pumpFlows() says of that pump that it gives too little.
[[nodiscard]] bool isFoundShort(const BuildUnderCheck &build, const std::string &station);

/// Whether gravityFeeds() says of that feed that its level pushes too little.
[[nodiscard]] bool isGravityTold(const GravityFeed &feed) noexcept;

/// "12 %" of a part of the whole; below 10 % with a decimal.
[[nodiscard]] std::string percent(double part);
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
