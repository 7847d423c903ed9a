// SPDX-License-Identifier: MIT
//
// Load words: what to bring into the trailer and what to take out of it, by drawer, as a list to
// print and as a document.

#pragma once

#include "app/trailer/loading.h"

#include <QJsonObject>

namespace flarestock {

[[nodiscard]] QJsonObject loadDocument(const Workshop &workshop,
                                       const std::vector<LoadLine> &lines);
[[nodiscard]] std::string loadSheet(const Workshop &workshop, const std::vector<LoadLine> &lines);

[[nodiscard]] QJsonObject unloadDocument(const std::vector<UnloadLine> &lines);
[[nodiscard]] std::string unloadSheet(const Workshop &workshop,
                                      const std::vector<UnloadLine> &lines);

} // namespace flarestock
