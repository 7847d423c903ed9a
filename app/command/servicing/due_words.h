// SPDX-License-Identifier: MIT
//
// Due words: what is due, for people and as a document.

#pragma once

#include "app/command/command.h"
#include "app/garage/due_words.h"

namespace flarestock {

[[nodiscard]] std::string dueSheet(const std::vector<DueLine> &lines, const Garage &garage);
[[nodiscard]] QJsonObject dueDocument(const DueLine &line);

} // namespace flarestock
