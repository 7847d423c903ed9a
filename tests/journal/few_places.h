// SPDX-License-Identifier: MIT
//
// A handful of places and short movements between them, for the tests of the journal.

#pragma once

#include "model/journal/ledger.h"

namespace flarestock::tests {

/// Three that are stock, two out of which value comes, two that are neither.
inline std::vector<Place> fewPlaces()
{
    return {{"A1", "bin A1", PlaceKind::Bin},
            {"SH-1", "hose rack", PlaceKind::Shelf},
            {"trailer-2", "drawer 2", PlaceKind::Drawer},
            {"car-1", "roadster", PlaceKind::Car},
            {"scrap", "scrap", PlaceKind::Scrap},
            {"supplier", "fittings by post", PlaceKind::Supplier},
            {"opening", "opening count", PlaceKind::Opening}};
}

inline MovementId idNumber(std::uint32_t number)
{
    std::array<std::uint8_t, 10> random{};
    for (std::size_t i = 0; i < 4; ++i)
        random[9 - i] = static_cast<std::uint8_t>(number >> (8 * i));
    return MovementId::make(1'780'000'000'000, random);
}

/// New adapters AD-8-10 without a lot; `value` counts only out of a supplier or the opening.
inline Movement moved(std::uint32_t number, std::int64_t quantity, const std::string &from,
                      const std::string &to, std::int64_t value = 0)
{
    Movement movement;
    movement.id = idNumber(number);
    movement.part = "AD-8-10";
    movement.quantity = quantity;
    movement.value = value;
    movement.from = from;
    movement.to = to;
    movement.who = "test";
    return movement;
}

/// The same pieces back the same way.
inline Movement takenBack(const Movement &movement, std::uint32_t number)
{
    Movement back = movement;
    back.id = idNumber(number);
    std::swap(back.from, back.to);
    back.reverses = movement.id;
    back.value = 0;
    return back;
}

/// As a shop file does it: the value is the ledger's, then the movement is applied. `movement`
/// holds the value that went along.
inline std::optional<Refusal> carriedOut(Ledger &ledger, Movement &movement)
{
    if (ledger.place(movement.from) && movement.quantity > 0)
        movement.value = ledger.valueOf(movement);
    return ledger.apply(movement);
}

inline BalanceKey adaptersAt(const std::string &place)
{
    return {"AD-8-10", place, "", PieceCondition::New};
}

} // namespace flarestock::tests
