// SPDX-License-Identifier: MIT
//
// Made shop: the shop of years that the frames are measured on. The demo shop with its builds,
// templates and orders, and beside it a catalogue and a journal as they are after years.

#pragma once

#include "model/exact/problem.h"

#include <cstdint>
#include <string>

namespace flarestock {

struct YearsAsked {
    std::uint32_t parts = 100'000;
    std::size_t movements = 1'000'000;
};

/// Problem: the file is there already, or cannot be written.
[[nodiscard]] Result<void> makeShopOfYears(const std::string &file, const YearsAsked &asked);

} // namespace flarestock
