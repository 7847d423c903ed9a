// SPDX-License-Identifier: MIT
//
// Due words: due work as people say it, and what it lacks as a table.

#pragma once

#include "app/garage/due_list.h"

namespace flarestock {

/// "wash", "inspect", "replace".
[[nodiscard]] std::string_view doText(Work work) noexcept;
/// "EC-100-L 1", "PT-8 2 ft, 1 ft short"; empty where nothing is taken.
[[nodiscard]] std::string partsText(const DueLine &line);
/// "12 runs since fitted, every 10; stops hill-1".
[[nodiscard]] std::string whyText(const DueWork &work);
/// What lacks for it, as `flarestock plan --needs` reads it: part, quantity, day, for.
[[nodiscard]] std::string dueNeeds(const std::vector<DueLine> &lines);

} // namespace flarestock
