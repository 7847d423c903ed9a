// SPDX-License-Identifier: MIT
//
// Paths: a file or folder as somebody types it at the desk.

#pragma once

#include <QString>

namespace flarestock {

/// Why this is no place that can be found, as a sentence with what to do; empty where it is one.
/// What is below nothing (no root, no drive) depends on where the program was started from.
[[nodiscard]] QString notWhole(const QString &path);

} // namespace flarestock
