// SPDX-License-Identifier: MIT

#include "model/journal/layers.h"

#include <algorithm>
#include <cassert>

namespace flarestock {

namespace {

__extension__ using Wide = __int128;

/// a × b / c to the nearest whole, a tie to the even one. a ≥ 0, b ≥ 0, c > 0, b ≤ c (asserted).
std::int64_t proportionHalfEven(std::int64_t a, std::int64_t b, std::int64_t c)
{
    assert(a >= 0 && b >= 0 && c > 0 && b <= c);
    const Wide product = Wide{a} * b;
    Wide whole = product / c;
    const Wide rest = product % c;
    if (2 * rest > c || (2 * rest == c && whole % 2 != 0))
        ++whole;
    return static_cast<std::int64_t>(whole);
}

void add(Layers &layers, std::int64_t rank, std::int64_t quantity, std::int64_t value)
{
    const auto at = layers.try_emplace(rank).first;
    at->second.quantity += quantity;
    at->second.value += value;
    if (at->second.isNothing())
        layers.erase(at);
}

} // namespace

std::string_view text(Costing costing) noexcept
{
    return costing == Costing::FirstInFirstOut ? "first in, first out" : "moving average";
}

std::optional<Costing> costingOf(std::string_view spelt) noexcept
{
    for (const Costing costing : {Costing::MovingAverage, Costing::FirstInFirstOut}) {
        if (spelt == text(costing))
            return costing;
    }
    return std::nullopt;
}

std::int64_t shareOf(const Balance &held, std::int64_t quantity)
{
    assert(quantity > 0);
    if (held.quantity <= 0 || held.value <= 0)
        return 0;
    if (quantity >= held.quantity)
        return held.value;
    return proportionHalfEven(held.value, quantity, held.quantity);
}

Layers oldest(const Layers &layers, std::int64_t quantity)
{
    assert(quantity > 0);
    Layers taken;
    for (const auto &[rank, layer] : layers) {
        if (quantity <= 0)
            break;
        if (layer.quantity <= 0)
            continue;
        const std::int64_t part = std::min(quantity, layer.quantity);
        taken[rank] = {part, shareOf(layer, part)};
        quantity -= part;
    }
    return taken;
}

Balance sumOf(const Layers &layers)
{
    Balance sum;
    for (const auto &[rank, layer] : layers) {
        sum.quantity += layer.quantity;
        sum.value += layer.value;
    }
    return sum;
}

bool holds(const Layers &all, const Layers &some)
{
    return std::all_of(some.begin(), some.end(), [&all](const auto &entry) {
        const auto at = all.find(entry.first);
        if (at == all.end())
            return false;
        const Balance &there = at->second;
        return there == entry.second ||
               (there.quantity > entry.second.quantity && there.value >= entry.second.value);
    });
}

void put(Layers &layers, const Layers &more)
{
    for (const auto &[rank, layer] : more)
        add(layers, rank, layer.quantity, layer.value);
}

void takeOut(Layers &layers, const Layers &less)
{
    for (const auto &[rank, layer] : less) {
        assert(layers.contains(rank) && layers[rank].quantity >= layer.quantity);
        add(layers, rank, -layer.quantity, -layer.value);
    }
}

} // namespace flarestock
