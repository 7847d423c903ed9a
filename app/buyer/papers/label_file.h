// SPDX-License-Identifier: MIT
//
// Label file: labels written to a file, a page a label, for whatever makes them.

#pragma once

#include "app/buyer/papers/label_words.h"

namespace flarestock {

struct LabelFile {
    std::string labels;         ///< The file; empty: none.
    std::string size = "50x25"; ///< mm
};

/// More of one label than this are a slip of the finger.
constexpr int LabelsMost = 500;

/// Problem: no size, a file that cannot be written.
[[nodiscard]] Result<void> canWriteLabels(const LabelFile &asked);
/// `now`: milliseconds since 1970. Problem: the same; a label that is too small for its code.
[[nodiscard]] Result<void> writeLabels(const LabelFile &asked, const std::vector<Label> &labels,
                                       std::int64_t now);

} // namespace flarestock
