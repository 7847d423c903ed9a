// SPDX-License-Identifier: MIT
//
// Orders for the tests of what is bought.

#pragma once

#include "model/buying/order.h"

#include <array>

namespace flarestock::tests {

inline MovementId idNumber(std::uint8_t number)
{
    std::array<std::uint8_t, 16> bytes{};
    bytes[15] = number;
    return MovementId::ofBytes(bytes);
}

inline Decimal dec(std::string_view text)
{
    return Decimal::parse(text).value();
}

/// A line of one piece for so much, or of several.
inline OrderLine lineOf(const std::string &part, const std::string &price,
                        const std::string &quantity = "1")
{
    OrderLine line;
    line.part = part;
    line.quantity = dec(quantity);
    line.priceEach = dec(price);
    return line;
}

/// A draft in dollars of lines of one piece each for so much.
inline Order orderOf(const std::vector<std::string> &prices, const std::string &currency = "USD")
{
    Order order{idNumber(1),
                "2026-0001",
                "QBF",
                Currency::parse(currency).value(),
                OrderState::Draft,
                {},
                {},
                {},
                {},
                1,
                "2026-11-28",
                {},
                {},
                "buyer",
                5,
                {}};
    for (const std::string &price : prices)
        order.lines.push_back(lineOf("P-" + std::to_string(order.lines.size() + 1), price));
    return order;
}

} // namespace flarestock::tests
