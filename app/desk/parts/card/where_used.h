// SPDX-License-Identifier: MIT
//
// Where used: which builds and which templates take a part, and how much of it, as their bills say.
// A template is worked out with its own answers. It takes its time, so it is made away from the
// window and can be stopped.

#pragma once

#include "app/workshop/workshop.h"

#include <atomic>
#include <unordered_map>

namespace flarestock {

struct WhereUsed {
    struct Use {
        std::string title;
        std::string day; ///< By when a build is due; empty: nobody says, or a template.
        bool isBuild = false;
        Quantity need;
    };
    /// Builds that are worked out at most: the first ones.
    static constexpr std::size_t BuildsMost = 60;

    std::shared_ptr<const Workshop> workshop;
    std::unordered_map<std::string, std::vector<Use>> byPart;

    /// Nothing where it was stopped. What cannot be worked out takes nothing.
    [[nodiscard]] static std::shared_ptr<const WhereUsed>
    of(const std::shared_ptr<const Workshop> &workshop, const std::atomic<bool> &isStopped);
};

} // namespace flarestock
