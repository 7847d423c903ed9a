// SPDX-License-Identifier: MIT

#include "app/desk/parts/card/card_book.h"

#include "app/desk/shop/aside.h"
#include "app/workshop/clock.h"
#include "app/workshop/made_up.h"

namespace flarestock {

std::shared_ptr<const CardBook> CardBook::of(const std::shared_ptr<const Workshop> &workshop)
{
    const auto book = StockBook::of(workshop, dayOf(nowMilliseconds()));
    return goesAside(std::make_shared<const CardBook>(
        CardBook{book, PortsOfShop(*book), NamedBy(workshop->catalogue)}));
}

} // namespace flarestock
