// SPDX-License-Identifier: MIT
//
// Opening a shop file for the desk: the snapshot that everything is worked out from, and how a
// changed build is kept in the file.

#pragma once

#include "model/exact/problem.h"

#include <string>

namespace flarestock {

struct ShopOnDesk;

/// Problem: not there, not a shop file, damaged, a document that does not read.
[[nodiscard]] Result<ShopOnDesk> openShopFile(const std::string &file);
/// Makes the demo shop in a new file and opens it. Problem: the file exists, cannot be written.
[[nodiscard]] Result<ShopOnDesk> makeDemoFile(const std::string &file);

} // namespace flarestock
