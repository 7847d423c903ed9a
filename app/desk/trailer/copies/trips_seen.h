// SPDX-License-Identifier: MIT
//
// Trips seen: which copies of the shop are away and which are back, as the journal has them; and
// whether this shop is such a copy itself.

#pragma once

#include "app/desk/rows/rows.h"
#include "app/desk/shop/shop_on_desk.h"
#include "model/storage/trailer/travelling.h"

namespace flarestock {

/// As ShopOnDesk::read.
using ReadShop = std::function<Result<void>(const LookUp &look)>;

struct TripsSeen {
    Trips trips;
    std::optional<Trip> own;        ///< The trip of which this file is the copy.
    std::optional<Problem> problem; ///< Why nothing is known of them.

    /// `read` may be empty; may be called from any thread.
    [[nodiscard]] static TripsSeen of(const ReadShop &read);
    [[nodiscard]] int away() const;
    /// "with Ada, since Fri 27 Nov 2026"; empty where the place is here.
    [[nodiscard]] QString awayWith(const std::string &place) const;
};

/// name stands detail isOut places says; the key is the trip's id. Those that are away first.
[[nodiscard]] QStringList tripCells();
[[nodiscard]] std::vector<Row> tripRows(const TripsSeen &seen);

} // namespace flarestock
