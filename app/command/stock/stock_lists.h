// SPDX-License-Identifier: MIT
//
// Stock lists: what `flarestock stock` says besides what lies where: what is below its minimum,
// what is away, and the levels of what nobody counts; as tables and as JSON.

#pragma once

#include "app/command/command.h"
#include "app/stockroom/away.h"
#include "app/stockroom/filling_up.h"

#include <QJsonArray>

namespace flarestock {

[[nodiscard]] QJsonArray levelsDocument(const std::vector<LevelSeen> &levels);
[[nodiscard]] std::string levelsTable(const std::vector<LevelSeen> &levels);

[[nodiscard]] QJsonObject belowDocument(const std::vector<FillLine> &lines,
                                        const std::vector<LevelSeen> &levels);
[[nodiscard]] std::string belowTable(const std::vector<FillLine> &lines);

/// Overdue on that day, "2026-12-12".
[[nodiscard]] QJsonObject awayDocument(const std::vector<Away> &away, std::string_view day);
[[nodiscard]] std::string awayTable(const std::vector<Away> &away, std::string_view day);

} // namespace flarestock
