// SPDX-License-Identifier: MIT
//
// Abreast book: the builds of a shop side by side, worked out with some of them by other days than
// they have there: who gets which pieces. It is made away from the window, and all that the screen
// shows is read out of two of them: as the days stand, and as they are tried.

#pragma once

#include "app/buyer/by_date/changed_needs.h"

#include <memory>

namespace flarestock {

/// Of a build, not of a place or a car.
[[nodiscard]] bool isOfBuild(const NeedLine &line) noexcept;

struct AbreastBook {
    std::shared_ptr<const Workshop> workshop;
    std::shared_ptr<const DueInShop> cars; ///< What the cars want besides; the lines point into it.
    std::string today;                     ///< "2026-11-28"
    MovedBuilds moved;
    std::vector<BuildPlan> builds; ///< By their days, as they are moved.
    ShopNeeds needs;
    std::vector<OnOrder> coming; ///< What orders and promised claims still bring.
    std::string problem;         ///< Why it could not be worked out; empty where it was.

    struct Asked {
        std::shared_ptr<const DueInShop> cars;
        std::string today;
        MovedBuilds moved = {};
        std::vector<std::shared_ptr<const TakenInOrder>> known = {}; ///< As needsOf() takes it.
    };
    [[nodiscard]] static std::shared_ptr<const AbreastBook>
    of(const std::shared_ptr<const Workshop> &workshop, const Asked &asked);

    [[nodiscard]] const BuildPlan *build(std::string_view id) const noexcept;
    /// What a build wants of a part; nullptr where it wants none.
    [[nodiscard]] const NeedLine *want(const std::string &build, const std::string &part) const;
    /// All that wants a part, who is served first at the front.
    using Wants = std::vector<const NeedLine *>;
    [[nodiscard]] const Wants &wantsOf(const std::string &part) const;

    /// What a build has of a part already, of what it wants: it stays its own whatever the days
    /// say. In the part's unit.
    struct Own {
        Decimal inCar;
        Decimal reserved;
    };
    [[nodiscard]] Own own(const NeedLine &line) const;
    /// Whether it gets the last pieces of the stock: the last that stock serves, where it or
    /// somebody after it would want more.
    [[nodiscard]] bool getsTheLast(const NeedLine &line) const;

    std::map<std::string, Wants, std::less<>> byPart; ///< Points into the needs.
};

} // namespace flarestock
