// SPDX-License-Identifier: MIT
//
// Columns: how wide each column of a paper is. By its share, but never narrower than its title and
// the longest word in it, which no line can break; the others give what that takes.

#pragma once

#include "app/paper/paper.h"

#include <QFont>

class QPaintDevice;

namespace flarestock {

/// How a table is lettered, in dots of the device.
struct ColumnLetters {
    QFont head;
    QFont first;    ///< Of a cell's first line.
    QFont rest;     ///< Of the lines below it.
    double pad = 0; ///< On either side of a cell.
};

/// A width for each column; their sum is `room`, in dots. Where not all words have room, by shares.
[[nodiscard]] QVector<double> columnWidths(const Paper &paper, double room,
                                           const ColumnLetters &letters, QPaintDevice &device);

/// In the largest letters of at most `font`'s size in which the words are no wider than `room`.
[[nodiscard]] QFont within(const QString &words, QFont font, double room, QPaintDevice &device);

} // namespace flarestock
