// SPDX-License-Identifier: MIT
//
// Supplies: what so many of a part cost a joint: those that are free at their carried cost, the
// rest at the best offer's price. Offers are worked out once for a catalogue (StockedParts), the
// shelf once for all joints of a build (Supplies), as dense rows: a search looks up no text.

#pragma once

#include "model/joints/closing.h"
#include "model/joints/rank_scale.h"

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
    /// Thousandths of the price of one that each costs at least, however many are bought.
    [[nodiscard]] int fallsTo() const noexcept { return m_fallsTo; }
    /// What one more adds at least, whatever the number; 0 where it does not rise.
    [[nodiscard]] std::int64_t leastMore() const;

private:
    bool m_sold = false;
    bool m_rises = true;
    int m_fallsTo = 1000;
    std::int64_t m_one = 0;
    std::vector<std::int64_t> m_byCount; ///< Only where the price each depends on the number.
};

/// A part that ways are made of, piece or aid.
struct Stocked {
    const Part *part = nullptr;
    BuyingPrice price;
};
using StockedIndex = std::uint32_t;

/// All of them, by part number.
struct StockedParts {
    static constexpr StockedIndex None = ~StockedIndex{0};
    const Catalogue *catalogue = nullptr;
    std::vector<Stocked> parts;
    std::vector<StockedIndex> places; ///< By PartIndex; None for what joins nothing.

    [[nodiscard]] StockedIndex place(const Part &part) const
    {
        return places[catalogue->index(part)];
    }
};

class Supplies {
public:
    /// All that the shelf has free. Both outlive it.
    Supplies(const StockedParts &stocked, const Shelf &shelf);
    /// What `left` says of each part, with what the shelf says that it cost.
    Supplies(const StockedParts &stocked, const Shelf &shelf, const FreeLeft &left);

    /// Something was taken: so much of the part is left, in its unit. Parts that join nothing are
    /// passed over.
    void setLeft(const Part &part, const Decimal &left);
    /// By StockedIndex: what one more takes at least, however many are or will be taken, as the
    /// preference's RankScale says.
    [[nodiscard]] const std::vector<std::uint64_t> &least(Preference preference);

    struct Cost {
        int toBuy = 0;
        int unpriced = 0;
        std::int64_t micro = 0;
    };
    [[nodiscard]] Cost cost(StockedIndex index, int count);
    /// What so many cost, exact to 6 decimals.
    [[nodiscard]] Decimal amount(StockedIndex index, int count);
    /// The same, of a part of which so many are here and so many are to be bought.
    [[nodiscard]] static Decimal exactCost(const Catalogue &catalogue, const Part &part,
                                           const FreeStock *stock, std::array<int, 2> hereAndToBuy);

private:
    struct Here {
        int free = 0;
        const FreeStock *stock = nullptr;
        std::array<std::int64_t, 3> micro{-1, -1, -1}; ///< By count less one; -1: not asked yet.
    };
    void setFree(StockedIndex index, int free, const FreeStock *stock);
    [[nodiscard]] Decimal exactCost(StockedIndex index, int count);
    [[nodiscard]] int freeOf(StockedIndex index) const noexcept;
    [[nodiscard]] std::uint64_t leastOf(StockedIndex index, Preference preference);

    const StockedParts &m_stocked;
    std::vector<std::uint32_t> m_slots; ///< By StockedIndex; place in m_here plus one.
    std::vector<Here> m_here;
    std::array<std::vector<std::uint64_t>, 3> m_least; ///< By preference; empty: not asked yet.
};

} // namespace flarestock
