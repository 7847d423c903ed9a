// SPDX-License-Identifier: MIT
//
// Card book: what the cards of a shop are looked up by, all made from one snapshot, away from the
// window.

#pragma once

#include "app/desk/parts/card/card_links.h"
#include "app/desk/parts/card/port_meetings.h"

namespace flarestock {

struct CardBook {
    std::shared_ptr<const StockBook> book; ///< Cards first, by number.
    PortsOfShop ports;
    NamedBy named;

    [[nodiscard]] static std::shared_ptr<const CardBook>
    of(const std::shared_ptr<const Workshop> &workshop);
    [[nodiscard]] const Catalogue &catalogue() const { return book->workshop->catalogue; }
};

} // namespace flarestock
