// SPDX-License-Identifier: MIT
//
// Made shop: what is said of a shop file that was made just now.

#pragma once

#include "app/command/command.h"
#include "model/storage/shop_file.h"

namespace flarestock {

/// Where it is, its title, and how many movements of opening stock it began with.
void sayMade(const std::string &to, const Result<ShopFile> &shop, bool json,
             CommandOutcome &outcome);

} // namespace flarestock
