// SPDX-License-Identifier: MIT
//
// Buyer's book: what a shop wants, lacks and awaits on a day, worked out once from a snapshot, away
// from the window. All that the area of buying shows is read out of it.

#pragma once

#include "app/buyer/needs.h"

#include <memory>

namespace flarestock {

struct BuyersBook {
    std::shared_ptr<const Workshop> workshop;
    std::shared_ptr<const Garage> cars; ///< What work on the cars wants points into it.
    std::string today;                  ///< "2026-11-28"
    ShopNeeds needs;
    std::vector<Shortage> shortages; ///< What is short of them.
    int onNoSlip = 0;                ///< Of the shortages: nobody sells it, or no rate is known.
    std::vector<OnOrder> coming;     ///< What orders and promised claims still bring.
    std::vector<std::string> unsure; ///< What of it is not what it seems, a sentence each.
    std::string problem;             ///< Why it could not be worked out; empty where it was.

    /// `file`: the shop's, for what is due to its cars and where its copies are.
    [[nodiscard]] static std::shared_ptr<const BuyersBook>
    of(const std::shared_ptr<const Workshop> &workshop, ShopFile &file, const std::string &today);
    /// Why nothing is known of it.
    [[nodiscard]] static std::shared_ptr<const BuyersBook>
    none(const std::shared_ptr<const Workshop> &workshop, const Problem &problem);

    /// The wants of one shortage that lack something: of its part, for its day.
    [[nodiscard]] std::vector<const NeedLine *> wantsOf(const Shortage &shortage) const;
};

/// All that the shop wants: of its builds, its cars and its places. Problem: as needsOf() and
/// dueInShop(). `cars` is what the lines of the cars point into.
struct NeededInShop {
    ShopNeeds needs;
    std::shared_ptr<const Garage> cars;
};
[[nodiscard]] Result<NeededInShop> neededInShop(const Workshop &workshop, const ShopFile &file,
                                                const std::string &today);

} // namespace flarestock
