// SPDX-License-Identifier: MIT
//
// The nearest word of a list: what somebody probably meant who typed "fitler".
//
//   nearestWord("fitler", {"filter", "hose"});   // "filter"
//   wordRemedy("fitler", words);                 // Perhaps "filter" is meant.
//
// Nearness is the number of single edits (a letter more, less or other, or two neighbours swapped:
// the optimal string alignment distance), case folded.

#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <string_view>

namespace flarestock {

/// Edits between two words, case folded, at most `limit` + 1 (then the true number is larger).
[[nodiscard]] std::size_t edits(std::string_view a, std::string_view b, std::size_t limit);

/// The word with the fewest edits, the first of equals; empty where none is within a third of the
/// typed word's length (at least one edit, at most three) or the typed word is over 64 long.
[[nodiscard]] std::string_view nearestWord(std::string_view typed,
                                           std::span<const std::string_view> words);

/// A remedy that names the nearest word, or else the list (its first twelve).
[[nodiscard]] std::string wordRemedy(std::string_view typed,
                                     std::span<const std::string_view> words);

} // namespace flarestock
