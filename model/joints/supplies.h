// SPDX-License-Identifier: MIT
//
// Supplies: what so many of a part cost a joint: those that are free at their carried cost, the
// rest at the best offer's price. Offers are worked out once for a catalogue (BuyingPrice), the
// shelf once for each question (Supplies).

#pragma once

#include "model/joints/closing.h"

#include <array>
#include <cstdint>

namespace flarestock {

/// Millionths of the shop's currency, capped so that the sum of a way cannot overflow.
inline constexpr std::int64_t MicroMax = 100'000'000'000'000'000;
[[nodiscard]] std::int64_t toMicro(const Decimal &amount);

/// What one to CountMax of a part cost at the best offer for that number.
class BuyingPrice {
public:
    static constexpr int CountMax = 16;
    BuyingPrice(const Catalogue &catalogue, const Part &part);

    [[nodiscard]] bool isSold() const noexcept { return m_sold; }
    /// More never costs less in all, so that a part of a way is no dearer than the whole of it.
    /// Price breaks can make it otherwise.
    [[nodiscard]] bool rises() const noexcept { return m_rises; }
    /// 0 where nobody sells it. count is 0 or more.
    [[nodiscard]] std::int64_t micro(int count) const;

private:
    bool m_sold = false;
    bool m_rises = true;
    std::int64_t m_one = 0;
    std::vector<std::int64_t> m_byCount; ///< Only where the price each depends on the number.
};

/// A part that ways are made of, piece or aid.
struct Stocked {
    const Part *part = nullptr;
    BuyingPrice price;
};
using StockedIndex = std::uint32_t;

class Supplies {
public:
    Supplies(const Catalogue &catalogue, const std::vector<Stocked> &stocked, const Shelf &shelf,
             const FreeLeft &left);

    struct Cost {
        int toBuy = 0;
        int unpriced = 0;
        std::int64_t micro = 0;
    };
    [[nodiscard]] Cost cost(StockedIndex index, int count);
    /// The same, exact to 6 decimals.
    [[nodiscard]] static Decimal exactCost(const Catalogue &catalogue, const Part &part,
                                           const FreeStock *stock, std::array<int, 2> hereAndToBuy);
    [[nodiscard]] Decimal exactCost(StockedIndex index, int count);

private:
    struct Known {
        int free = 0;
        const FreeStock *stock = nullptr;
        std::array<std::int64_t, 3> micro{-1, -1, -1}; ///< By count less one; -1: not asked yet.
    };
    [[nodiscard]] Known &known(StockedIndex index);

    const Catalogue &m_catalogue;
    const std::vector<Stocked> &m_stocked;
    const Shelf &m_shelf;
    const FreeLeft &m_left;
    std::vector<std::uint32_t> m_slots; ///< By StockedIndex; place in m_known plus one.
    std::vector<Known> m_known;
};

} // namespace flarestock
