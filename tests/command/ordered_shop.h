// SPDX-License-Identifier: MIT
//
// A copy of the demo shop in which orders stand as a buyer has placed them, and another of the same
// that costs first in, first out.

#pragma once

#include "model/buying/order.h"
#include "model/storage/shop_file.h"
#include "tests/command/changed_shop.h"

#include <QDir>

namespace flarestock::tests {

inline OrderLine orderLine(const char *part, const Decimal &quantity, const Decimal &priceEach)
{
    OrderLine line;
    line.part = part;
    line.description = part;
    line.quantity = quantity;
    line.priceEach = priceEach;
    if (line.part.starts_with("PT-"))
        line.unit = Unit::Inch;
    return line;
}

/// In the demo shop's currency, from TCF, with no freight, discount or tax.
inline Order orderTo(const char *number, std::vector<OrderLine> lines)
{
    return {{},
            number,
            "TCF",
            *Currency::parse("USD"),
            OrderState::Placed,
            std::move(lines),
            {},
            {},
            {},
            1,
            "2026-11-02",
            "2026-11-20",
            {},
            {}};
}

inline void place(Order order, const std::string &shop)
{
    static std::uint8_t count = 0;
    std::array<std::uint8_t, 16> bytes{0x01, 0x90, 0xb3, 0xc4, 0x5d, 0x6e, 0x70, 0x00, 0x91};
    bytes[15] = ++count;
    order.id = MovementId::ofBytes(bytes);
    auto file = ShopFile::open(shop, OpenMode::ReadWrite);
    if (!order.fault().empty() || !file || !file->append(Action{{order.asRecord()}, {}}))
        qFatal("order %s cannot be placed", order.number.c_str());
}

/// The catalogue and the places of the demo shop without its stock, that costs first in, first out.
inline std::string firstInFirstOut(const std::string &demo, const std::string &folder)
{
    const std::string files = folder + "/files";
    const std::string shop = folder + "/fifo.shop";
    if (runFlarestock({"export", "--to", files, "--shop", demo}).status != 0)
        qFatal("the demo shop cannot be exported");
    const std::string named = files + "/shop.toml";
    writeBytes(named, "costing = \"first in, first out\"\n" + bytesOf(named));
    if (runFlarestock({"begin", "--from", files, "--to", shop}).status != 0)
        qFatal("a shop cannot be begun");
    return shop;
}

} // namespace flarestock::tests
