// SPDX-License-Identifier: MIT
//
// A picture of the window as it is now.

#pragma once

#include "model/exact/problem.h"

#include <QImage>
#include <QSize>
#include <QString>

class QQuickWindow;

namespace flarestock {

/// The window at this size, laid out and painted. Null where nothing could be grabbed.
[[nodiscard]] QImage pictureOf(QQuickWindow &window, const QSize &size);
/// Problem: nothing to grab, or the file cannot be written.
[[nodiscard]] Result<void> writePicture(QQuickWindow &window, const QSize &size,
                                        const QString &file);

} // namespace flarestock
