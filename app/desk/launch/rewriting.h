// SPDX-License-Identifier: MIT
//
// Rewriting: changed documents of a shop are written from the desk: parts, suppliers, offers.

#pragma once

#include "app/desk/shop/shop_on_desk.h"

namespace flarestock {

/// Documents instead of an action, all or none. What they were is kept, so that it can be written
/// again. Problem: what makes them, what takeIn() refuses, the file cannot be opened or read.
[[nodiscard]] Result<std::shared_ptr<const Wrote>>
rewriteShop(const std::filesystem::path &path, const MakeTexts &make, const std::string &who);

} // namespace flarestock
