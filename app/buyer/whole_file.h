// SPDX-License-Identifier: MIT
//
// A file that is written whole or not at all: whatever happens meanwhile, what stood there before
// stays until all of the new one is on the disk.

#pragma once

#include "model/exact/problem.h"

namespace flarestock {

/// Problem: it cannot be written; then it is as it was.
[[nodiscard]] Result<void> writeWhole(const std::string &path, std::string_view bytes);

/// Whether it could be, without touching it. Problem: the same.
[[nodiscard]] Result<void> canWriteWhole(const std::string &path);

} // namespace flarestock
