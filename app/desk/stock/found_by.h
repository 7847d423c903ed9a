// SPDX-License-Identifier: MIT
//
// Found by: the words, sizes, threads and ratings by which a part is narrowed and found. Everything
// is folded to small letters, "µm" is "micron", and each word stands behind a blank, so that "-8"
// finds "ORB -8" and not "-80" or "AD-810".

#pragma once

#include "model/parts/part.h"

namespace flarestock {

/// " c4" of "C4"; empty of nothing.
[[nodiscard]] std::string foldedWords(std::string_view text);
/// Number, description, kind, ports, rating, material, words.
[[nodiscard]] std::string soughtOf(const Part &part);
/// Whether all the words that were typed stand in `sought`. A word like "-8" has to stand alone;
/// two side by side that say one thing ("-8 orb", "10 micron") are of one port, of one rating.
[[nodiscard]] bool holdsAll(const std::string &sought, const std::vector<std::string> &words);
/// What was typed, folded, word by word.
[[nodiscard]] std::vector<std::string> wordsTyped(std::string_view typed);

[[nodiscard]] std::vector<std::string> dashesOf(const Part &part);  ///< "-6", each once.
[[nodiscard]] std::vector<std::string> threadsOf(const Part &part); ///< "9/16-18", each once.
/// "10" of a filter or element of 10 µm, whatever the basis; empty where it has none.
[[nodiscard]] std::string micronOf(const Part &part);

} // namespace flarestock
