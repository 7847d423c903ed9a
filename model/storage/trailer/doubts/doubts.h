// SPDX-License-Identifier: MIT
//
// Doubts: what both sides have written about one thing since the copy was taken, so that their sum
// is no answer: both have counted, both have said what a lot is, both went on from one order. Some
// are asked before the copy's entries are taken in, as the answer says how; the others behind them.

#pragma once

#include "model/storage/trailer/doubts/both_sides.h"

namespace flarestock {

/// Records of the copy that are kept with their words and count for nothing: of an order or a claim
/// that both sides have opened or changed, where that was decided so.
[[nodiscard]] std::set<MovementId> keptAside(const BothSides &sides,
                                             const EntriesBrought::Into &into);
/// Of what both have counted, the copy's movements take whatever they say, until that is settled.
void lendToCounts(const BothSides &sides, EntriesBrought &entries);
/// What was taken back on one side and built on on the other is done again, where that was decided.
void doAgain(const BothSides &sides, EntriesBrought &entries, const EntriesBrought::Into &into);

/// Behind the copy's entries. All throw StorageFailure: what was decided cannot be done.
void settleCounts(const BothSides &sides, EntriesBrought &entries,
                  const EntriesBrought::Into &into);
/// What both have put in, or taken out, at one position of a car.
void settleRenewals(const BothSides &sides, EntriesBrought &entries,
                    const EntriesBrought::Into &into);
/// What both have washed at one position of a car.
void settleWashes(const BothSides &sides, EntriesBrought &entries,
                  const EntriesBrought::Into &into);
void settlePromises(const BothSides &sides, const EntriesBrought::Into &into);
void settleWords(const BothSides &sides, const EntriesBrought::Into &into);
/// What was kept aside under a number that somebody else had drawn is said again under the next.
void sayAgainUnderNextNumber(const BothSides &sides, const EntriesBrought::Into &into);
/// Parts, builds and templates that the copy's entries name and that are others here by now.
void settlePlans(const BothSides &sides, EntriesBrought &entries, const EntriesBrought::Into &into);

} // namespace flarestock
