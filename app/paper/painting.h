// SPDX-License-Identifier: MIT
//
// Painting: a paper as a PDF, page by page: who it is from and to, its number as a code that scans,
// its rows under a heading that stands on every page, its sums, and which page of how many it is.
//
// The file says nothing of the computer: its day is the paper's own, so that the same paper is the
// same file.

#pragma once

#include "app/paper/paper.h"

#include <QByteArray>

namespace flarestock {

/// Needs a QGuiApplication, and fonts.
[[nodiscard]] QByteArray pdfOf(const Paper &paper);

} // namespace flarestock
