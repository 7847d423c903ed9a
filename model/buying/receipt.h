// SPDX-License-Identifier: MIT
//
// Receipt: what came in of an order, one for each movement that it came with, in the same action.
// Once that movement is taken back, the receipt does not count any more.
//
//   order 2026-0007: 4 of OX-210-6, two come on Monday and two on Friday: two receipts of 2

#pragma once

#include "model/journal/record.h"

namespace flarestock {

struct Receipt {
    MovementId id;
    std::string order;         ///< Its number.
    std::string part;          ///< What came, as the catalogue spells it.
    std::int64_t quantity = 0; ///< Smallest units; more than zero.
    std::int64_t value = 0;    ///< 10^-6 of the shop's currency that came with it; not below zero.
    std::string lot;           ///< Lot, serial or name of the piece; empty where none.
    std::string note;
    bool wrongPart = false; ///< It is not what was ordered.
    std::string claim;      ///< The id of the claim that it came for; empty where for none.
    bool inPlace = false;   ///< It stands in the place of one that had come, or of a piece that had
                            ///< lacked in a box.
    std::string action;     ///< The id of the first movement of its action.
    std::string who;
    std::int64_t at = 0; ///< Milliseconds since 1970, UTC.

    /// Whether it is a part of what was ordered and not yet there: neither a wrong part, nor in the
    /// place of what had come before.
    [[nodiscard]] bool countsForOrder() const noexcept { return !wrongPart && !inPlace; }
    [[nodiscard]] Record asRecord() const;
    [[nodiscard]] static Result<Receipt> read(const Record &record); ///< Problem: not one.
    friend bool operator==(const Receipt &, const Receipt &) = default;
};

} // namespace flarestock
