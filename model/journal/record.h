// SPDX-License-Identifier: MIT
//
// Record: what the shop has written down beside its movements, in the same journal and the same
// chain: a promise, a count, a leak test. Immutable as they are: a later one stands in its place,
// or takes it back.
//
// All kinds share one form, names and texts, so that a new kind or a further field needs no new
// table. The typed records (promise.h, count.h …) say themselves as a Record and are read from one.

#pragma once

#include "model/journal/movement.h"

#include <map>

namespace flarestock {

enum class RecordKind : std::uint8_t {
    Promise,       ///< So much of a part to a build.
    Count,         ///< What somebody has counted.
    Lot,           ///< What is known of a lot or a serial.
    LeakTest,      ///< Of a build.
    Done,          ///< A build is done, or open again.
    OpenedBox,     ///< A box was opened, and what was in it put to stock.
    MadeHose,      ///< A hose was made up, under a tag of its own.
    Level,         ///< How much is there of what nobody counts.
    Keeping,       ///< How much of a part a place is to hold.
    Instead,       ///< A build has another piece than was planned.
    Order,         ///< An order to a supplier as it stands from then on; its subject is the number.
    Receipt,       ///< What came in of an order; its subject is the order's number.
    SupplierClaim, ///< What a supplier owes for what did not come, or came wrong; as it stands.
    LateCost,  ///< Freight, duty or a credit that came after the pieces; its subject is the order.
    Outing,    ///< How far a car has run at an event; its subject is the car.
    Servicing, ///< What was done to a piece in a car; its subject is the car.
    Trip,      ///< A copy of the shop went along, or was brought back; its subject is "trailer".
    Decision,  ///< What was decided where two copies disagreed; its subject says on what.
};
[[nodiscard]] std::string_view text(RecordKind kind) noexcept;
[[nodiscard]] Result<RecordKind> parseRecordKind(std::string_view text);

struct Record {
    MovementId id;
    RecordKind kind = RecordKind::Promise;
    std::string subject; ///< A build, or a part number.
    std::map<std::string, std::string> fields;
    std::string who;
    std::int64_t at = 0; ///< Milliseconds since 1970, UTC, as the client's clock said.

    /// The text of a field; empty where it has none.
    [[nodiscard]] const std::string &field(const std::string &name) const;
    /// Problem: not a whole number.
    [[nodiscard]] Result<std::int64_t> number(const std::string &name) const;
};

} // namespace flarestock
