// SPDX-License-Identifier: MIT
//
// ShopOnDesk: what the desk needs of an open shop, as plain values and four deeds. The composition
// root makes it out of a shop file; tests make it out of a few parts.

#pragma once

#include "app/desk/build/worked_out.h"

#include <functional>
#include <string>
#include <vector>

namespace flarestock {

struct ShopOnDesk {
    std::string title;
    std::string file; ///< Where the data lives.
    std::vector<BuildPlan> builds;
    struct Form {
        std::string id;
        std::string title;
    };
    std::vector<Form> templates;
    WorkOut workOut;
    /// The title of a place, for the car of a build.
    std::function<std::string(const std::string &place)> placeTitle;
    /// Keeps a changed build in the shop. Problem: read-only, disk full. Empty: nothing is kept.
    std::function<Result<void>(const BuildPlan &plan)> keep;
};

/// Opens a shop by its file, or makes the demo shop there.
using OpenShop = std::function<Result<ShopOnDesk>(const std::string &file)>;

} // namespace flarestock
