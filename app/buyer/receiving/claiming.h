// SPDX-License-Identifier: MIT
//
// Claiming: a claim on a supplier from its raising to its end. What it ends with comes into the
// books in the same action: a piece, with its value where the order has not booked it yet; or a
// credit, off what the pieces cost.
//
// A piece that did not come at all was booked with nothing: its share of the order's cost waits for
// it. A credit is set off against that share, and only what differs changes the cost of the rest; a
// claim given up sends the share to the differences. What came damaged, or in a box with a hole,
// was booked as a whole: a credit takes off its value.

#pragma once

#include "app/buyer/books.h"
#include "app/stockroom/deed.h"

namespace flarestock {

struct RaiseWords {
    std::string order;    ///< Its number; empty: `supplier` is said.
    std::string supplier; ///< Id.
    std::string part;
    std::string quantity;
    std::string fault; ///< "missing", "wrong part", "damaged", "short delivery"
    std::string boxOf;
    std::string boxLot;
    std::string note;
};
/// Problem: no such order, supplier or part; no quantity; no such fault.
[[nodiscard]] Result<SupplierClaim> raised(const RaiseWords &asked, const Bought &bought,
                                           const Workshop &workshop, const By &by);

/// The next step of a claim that is not settled. Problem: it is; no day.
[[nodiscard]] Result<SupplierClaim> promisedBy(const ClaimStanding &claim, const std::string &day,
                                               const By &by);

struct SettleWords {
    std::string came;   ///< So much of it came: "1"; empty: none.
    std::string to;     ///< Where it goes; empty: into the box that lacked it.
    std::string lot;    ///< Its serial or lot.
    std::string value;  ///< What it carries; empty: what the order still has for it, or nothing.
    std::string credit; ///< What the supplier pays back, in the shop's currency.
    bool givenUp = false;
    std::string note;
};
struct SettledAction {
    Action action;
    std::optional<SupplierClaim> step; ///< Nothing where some of it is owed yet.
    std::optional<BoxCheck> look;      ///< Of the box that has got its piece.
    std::int64_t value = 0;            ///< That came with the piece.
    std::optional<LateCost> late;      ///< What a credit changed.
};
/// Problem: it is settled; none or several of the ends are said; more came than is owed; nowhere to
/// put it; as chargedLate().
[[nodiscard]] Result<SettledAction> settled(const ClaimStanding &claim, const SettleWords &asked,
                                            const Books &books, const By &by);

} // namespace flarestock
