// SPDX-License-Identifier: MIT
//
// Picking: what a build is promised, where a hand finds it in the order of the bins, and its way to
// the car and back.

#pragma once

#include "app/stockroom/cutting.h"
#include "app/workshop/worked_build.h"

namespace flarestock {

/// What of a part lies where it may be taken for a build, its car and day; all three may be empty:
/// then what is free to whoever comes.
[[nodiscard]] std::map<BalanceKey, std::int64_t>
freePieces(const Part &part, const Workshop &workshop, const Due &due);

struct Taking {
    std::string to; ///< Place id.
    Deed deed = Deed::Move;
    Due due;
};
/// So many of a part that comes in pieces, the nearest first. Problem: fewer are free.
[[nodiscard]] Result<std::vector<Movement>> takenNearest(const Part &part, std::int64_t quantity,
                                                         const Workshop &workshop,
                                                         const Taking &taking);

/// The promises that a build lacks: of each line what it needs and what is free to it, less what it
/// is promised or has already. Tools are not promised, they come back.
[[nodiscard]] std::vector<Promise> promisesLacking(const WorkedBuild &worked,
                                                   const Workshop &workshop, const BuildPlan &plan);
/// Letting go of all that is still outstanding to a build.
[[nodiscard]] std::vector<Promise> promisesLetGo(const Ledger &ledger, std::string_view build);

/// One line of the walk.
struct Pick {
    const Part *part = nullptr;
    BalanceKey key;
    std::int64_t quantity = 0;         ///< Smallest units.
    std::vector<std::int64_t> lengths; ///< Of what is cut; sum: quantity.
};
struct PickList {
    std::vector<Pick> picks;                                    ///< In the order of places().
    std::vector<std::pair<const Part *, std::int64_t>> lacking; ///< Promised and not found.
};
/// What is outstanding to a build. Hose comes in the build's own lengths, each whole from one
/// piece.
[[nodiscard]] PickList pickList(const WorkedBuild &worked, const Workshop &workshop,
                                const BuildPlan &plan);

/// The movements that bring the list (or one part of it) to the build's car. Problem: the plan
/// names no car that the shop has, the shop has no scrap.
[[nodiscard]] Result<std::vector<Movement>>
issueMovements(const PickList &list, const Workshop &workshop, const BuildPlan &plan);

} // namespace flarestock
