// SPDX-License-Identifier: MIT
//
// Count: what somebody has counted at a place, before he was told what should be there. A
// difference goes with a movement of its own, in the same action.

#pragma once

#include "model/journal/ledger.h"

namespace flarestock {

struct Count {
    MovementId id;
    BalanceKey key;
    std::int64_t found = 0;    ///< Smallest units.
    std::int64_t expected = 0; ///< What the journal said; nothing of it was shown.
    std::string who;
    std::string why;
    std::int64_t at = 0;

    [[nodiscard]] Record asRecord() const;
    [[nodiscard]] static Result<Count> read(const Record &record); ///< Problem: not a count.
};

/// The movement that makes the journal agree with what was found: to the place of differences, or
/// from it with so much value as the same pieces carry that lie there; nothing where it agrees.
/// `difference` is the id of that place.
[[nodiscard]] std::optional<Movement> differenceOf(const Count &count, const Ledger &ledger,
                                                   const std::string &difference);

} // namespace flarestock
