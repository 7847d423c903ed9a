// SPDX-License-Identifier: MIT

#include "model/buying/order.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

constexpr std::array<std::string_view, 4> StateTexts = {"draft", "placed", "closed", "cancelled"};

} // namespace

std::string_view text(OrderState state) noexcept
{
    return StateTexts[static_cast<std::size_t>(state)];
}

Result<OrderState> parseOrderState(std::string_view text)
{
    const auto *const at = std::find(StateTexts.begin(), StateTexts.end(), text);
    if (at == StateTexts.end())
        return problem(std::string(text), "is no state of an order",
                       "Say draft, placed, closed or cancelled.");
    return static_cast<OrderState>(at - StateTexts.begin());
}

const OrderLine *Order::line(std::string_view part) const noexcept
{
    const auto found = std::find_if(lines.begin(), lines.end(),
                                    [&](const OrderLine &line) { return line.part == part; });
    return found == lines.end() ? nullptr : &*found;
}

} // namespace flarestock
