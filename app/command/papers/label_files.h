// SPDX-License-Identifier: MIT
//
// Label files: labels written to a file, a page a label, for whatever command makes them.

#pragma once

#include "app/buyer/papers/label_words.h"
#include "app/command/command.h"

namespace flarestock {

struct LabelFile {
    std::string labels;         ///< The file; empty: none.
    std::string size = "50x25"; ///< mm
};

/// --size
void addLabelSize(CLI::App &command, LabelFile &asked);
/// Problem: no size, a file that cannot be written.
[[nodiscard]] Result<void> canWriteLabels(const LabelFile &asked);
/// `now`: milliseconds since 1970. Problem: the same; a label that is too small for its code.
[[nodiscard]] Result<void> writeLabels(const LabelFile &asked, const std::vector<Label> &labels,
                                       std::int64_t now);

} // namespace flarestock
