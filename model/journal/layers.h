// SPDX-License-Identifier: MIT
//
// Layers: what lies somewhere, by when it came into the shop, for a shop that costs first in, first
// out. The oldest goes first and takes along what it cost; a layer that is split leaves in
// proportion, half-even, and its last piece takes all the value that is left.

#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string_view>

namespace flarestock {

struct Balance {
    std::int64_t quantity = 0; ///< Smallest units.
    std::int64_t value = 0;    ///< 10^-6 of the shop's currency.
    friend bool operator==(const Balance &, const Balance &) = default;
    [[nodiscard]] bool isNothing() const noexcept { return quantity == 0 && value == 0; }
};

/// By rank, which is the number of the movement that brought it among those of its part: the lower,
/// the earlier it came. No layer is nothing.
using Layers = std::map<std::int64_t, Balance>;

/// How a shop costs what leaves; chosen when it is made.
enum class Costing : std::uint8_t { MovingAverage, FirstInFirstOut };
/// "moving average", "first in, first out".
[[nodiscard]] std::string_view text(Costing costing) noexcept;
[[nodiscard]] std::optional<Costing> costingOf(std::string_view text) noexcept;

/// What goes along with so much of a balance: its value in proportion, half-even to 10^-6, all of
/// it with the last unit. quantity > 0 (asserted); nothing where nothing lies there.
[[nodiscard]] std::int64_t shareOf(const Balance &held, std::int64_t quantity);

/// The oldest so much of the layers; less where there is less. quantity > 0 (asserted).
[[nodiscard]] Layers oldest(const Layers &layers, std::int64_t quantity);
[[nodiscard]] Balance sumOf(const Layers &layers);
[[nodiscard]] bool holds(const Layers &all, const Layers &some); ///< Each of some whole in all's.
void put(Layers &layers, const Layers &more);
/// All of `less` is there (asserted for quantities).
void takeOut(Layers &layers, const Layers &less);

} // namespace flarestock
