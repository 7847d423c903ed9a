// SPDX-License-Identifier: MIT
//
// Due words: what is due, for people and as a document.

#pragma once

#include "app/command/command.h"
#include "app/garage/due_list.h"

namespace flarestock {

[[nodiscard]] std::string dueSheet(const std::vector<DueLine> &lines, const Garage &garage);
[[nodiscard]] QJsonObject dueDocument(const DueLine &line);
/// What lacks for it, as `flarestock plan --needs` reads it: part, quantity, day, for.
[[nodiscard]] std::string dueNeeds(const std::vector<DueLine> &lines);
/// "wash", "inspect", "replace".
[[nodiscard]] std::string_view doText(Work work) noexcept;
/// "EC-100-L 1", "PT-8 2 ft, 1 ft short"; empty where nothing is taken.
[[nodiscard]] std::string partsText(const DueLine &line);
/// "12 runs since fitted, every 10; stops hill-1".
[[nodiscard]] std::string whyText(const DueWork &work);

} // namespace flarestock
