// SPDX-License-Identifier: MIT

#include "app/desk/stock/overtime/on_hand.h"

#include <algorithm>

namespace flarestock {

namespace {

constexpr std::int64_t OneDay = 24LL * 60 * 60 * 1000;
constexpr std::int64_t Span = 365 * OneDay;

/// When, and by how much. What a copy brought stands behind what came before it, whenever it was.
std::vector<std::pair<std::int64_t, std::int64_t>>
changesOf(const std::vector<Movement> &movements,
          const std::function<bool(const std::string &)> &isStock)
{
    std::vector<std::pair<std::int64_t, std::int64_t>> changes;
    for (const Movement &one : movements) {
        const std::int64_t change =
            (isStock(one.to) ? one.quantity : 0) - (isStock(one.from) ? one.quantity : 0);
        if (change != 0)
            changes.emplace_back(one.at, change);
    }
    std::stable_sort(changes.begin(), changes.end(),
                     [](const auto &a, const auto &b) { return a.first < b.first; });
    return changes;
}

} // namespace

bool OnHand::isThere() const noexcept
{
    return !days.empty() && to - from >= 2 * OneDay;
}

OnHand onHandOver(const std::vector<Movement> &movements,
                  const std::function<bool(const std::string &)> &isStock, std::int64_t now)
{
    OnHand hand;
    hand.to = now;
    hand.from = now - Span;
    for (const auto &[at, change] : changesOf(movements, isStock)) {
        hand.now += change;
        if (at < hand.from) {
            hand.before = hand.now;
            continue;
        }
        if (hand.days.empty() || hand.days.back().at / OneDay != at / OneDay)
            hand.days.push_back({at, 0, false, false});
        OnHandDay &day = hand.days.back();
        day.onHand = hand.now;
        (change > 0 ? day.came : day.went) = true;
        (change > 0 ? hand.came : hand.went) += std::abs(change);
    }
    const bool beganWithin = hand.before == 0 && !hand.days.empty();
    if (beganWithin)
        hand.from = hand.days.front().at;
    hand.least = hand.most = beganWithin ? hand.days.front().onHand : hand.before;
    for (const OnHandDay &day : hand.days) {
        hand.least = std::min(hand.least, day.onHand);
        hand.most = std::max(hand.most, day.onHand);
    }
    return hand;
}

} // namespace flarestock
