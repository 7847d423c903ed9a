// SPDX-License-Identifier: MIT
//
// Bench shop: a shop of a few invented parts and one build, worked out by hand and without a file,
// so that the view models are tested on what they are given and on nothing else.
//
//   power above 500 hp: the supply goes from -8 to -10
//   "rail.in" is a trap (flare in a boss) until AD-66 is picked; "regulator.out" stays open

#pragma once

#include "app/desk/build/build_desk.h"
#include "app/desk/shop/shop_on_desk.h"

namespace flarestock {

/// The plan of its one build.
[[nodiscard]] BuildPlan benchPlan();
[[nodiscard]] ShopOnDesk benchShop();
/// Problem: a pick of a part that the bench shop does not have.
[[nodiscard]] Result<WorkedOut> workOutBench(const BuildPlan &plan);
/// Puts that build on the desk.
[[nodiscard]] Result<void> openBench(BuildDesk &desk);

} // namespace flarestock
