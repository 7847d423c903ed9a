// SPDX-License-Identifier: MIT
//
// CBC search: one aim of a programme, searched by the library (COIN-OR CBC, branch and cut). It is
// loaded at the first search: with all that it needs it takes longer to load than Qt Core, and a
// program that chooses nothing starts without it. It prints nothing. What it gives is near whole
// numbers, and is given here as the nearest whole ones: whether they keep the limits is for the
// caller to see.

#pragma once

#include "model/programme/programme.h"

namespace flarestock {

struct Search {
    std::vector<Programme::Range> numbers; ///< At least one.
    std::vector<Programme::Limit> limits;  ///< Each number once in a sum.
    LinearSum aim;                         ///< The same; to be as low as it can be.
};

struct Searched {
    enum class End : std::uint8_t { Lowest, Impossible, Stopped };
    End end = End::Stopped;
    std::vector<std::int64_t> values;  ///< Empty where none were found.
    std::optional<std::int64_t> bound; ///< The aim is no lower; nothing where that is not known.
};

/// Works at most about so long, after those that other threads asked for; `time` is above zero.
/// Stopped at once where the library cannot be loaded.
[[nodiscard]] Searched searchedByCbc(const Search &search, std::chrono::milliseconds time);

} // namespace flarestock
