// SPDX-License-Identifier: MIT
//
// Size words: what was worked out for a build, as a person and as a program reads it.

#pragma once

#include "model/systems/expansion.h"

#include <QJsonArray>

namespace flarestock {

/// The section of the bill sheet; empty where nothing was worked out.
[[nodiscard]] std::string sizesSheet(const Expansion &build);

/// "sizes" of the bill's document, in the order of the questions.
[[nodiscard]] QJsonArray sizesDocument(const Expansion &build);

} // namespace flarestock
