// SPDX-License-Identifier: MIT
//
// Claim ends: the three ways in which a claim is settled: the piece, a credit, giving up.

#pragma once

#include "app/buyer/receiving/claiming.h"

namespace flarestock {

struct Settling {
    const ClaimStanding &claim;
    const SettleWords &asked;
    const Books &books;
    const By &by;
};

/// The claim's next step, without its day in an action; `by` has the id of the action.
[[nodiscard]] SupplierClaim nextStep(const ClaimStanding &claim, ClaimState state, const By &by);

/// Each gives the action without the claim's own record, which is `step`. Problem: as settled().
[[nodiscard]] Result<SettledAction> byPiece(const Settling &settling);
[[nodiscard]] Result<SettledAction> byCredit(const Settling &settling);
[[nodiscard]] Result<SettledAction> byGivingUp(const Settling &settling);

} // namespace flarestock
