// SPDX-License-Identifier: MIT
//
// Seeing: what a hand has seen or decided at a place: what was counted, how much is there of what
// nobody counts, how much the place is to hold. The commands and the desk call the same.

#pragma once

#include "app/stockroom/deed.h"

namespace flarestock {

struct CountWords {
    std::string part;
    std::string found; ///< "3", "11 ft 2 in"
    std::string place;
    std::string lot; ///< Both may be empty.
    std::string condition;
};
/// Its `expected` is set by whoever writes it down. Problem: no such part, place or piece, below
/// zero.
[[nodiscard]] Result<Count> countOf(const CountWords &asked, const Workshop &workshop,
                                    const By &by);

struct LevelWords {
    std::string part; ///< Or the name of a tin that is no part, where `holds` says what lies in it.
    std::string place;
    std::string level; ///< "plenty", "low", "out"
    std::string holds;
};
/// Problem: no such part or place, one that is counted or comes in lengths, no level.
[[nodiscard]] Result<LevelSeen> levelOf(const LevelWords &asked, const Workshop &workshop,
                                        const By &by);

struct KeepWords {
    std::string part;
    std::string place;
    std::string least; ///< 0 ends it.
    std::string most;  ///< Empty: as the least.
};
/// Problem: no such part or place, no minimum and maximum.
[[nodiscard]] Result<Keeping> keepingOf(const KeepWords &asked, const Workshop &workshop,
                                        const By &by);

/// What was said of that part and place before a keeping or a level, to be said again; nothing
/// where of a level nothing was. Of a keeping that was the first: that it is kept there no more.
/// Problem: it was said anew since; the file cannot be read.
[[nodiscard]] Result<std::optional<Record>> wordBefore(const Record &past, const ShopFile &file);

} // namespace flarestock
