// SPDX-License-Identifier: MIT
//
// Shop state: how far a shop has been written, as a short text: the same text, the same shop. Who
// was told that somebody has written finds out by it whether he has read that already.

#pragma once

#include "model/exact/problem.h"

#include <filesystem>
#include <string>

namespace flarestock {

/// Of a file or a server's shop, as long as that may have become however long. Problem: it cannot
/// be opened or read.
[[nodiscard]] Result<std::string> shopState(const std::filesystem::path &shop);

} // namespace flarestock
