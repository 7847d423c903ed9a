// SPDX-License-Identifier: MIT
//
// Paper pen: what is written and drawn on a sheet of paper: letters, marks, in the inks of paper.
// Lengths are points (1/72 in); ten dots of the writer are one.

#pragma once

#include "app/desk/drawing/mark_drawing.h"

#include <QFont>
#include <QPainter>

namespace flarestock {

inline constexpr int PaperDots = 10;

struct PaperInks {
    QColor ink{0x1d, 0x22, 0x25};
    QColor quiet{0x55, 0x5c, 0x61};
    QColor pipe{0x6f, 0x7f, 0x8a};
    QColor rule{0xb8, 0xb2, 0xa3};
    QColor accent{0x0a, 0x5d, 0x56};
    QColor stop{0xa1, 0x22, 0x1b};
    QColor care{0x76, 0x50, 0x00};
};

struct PaperLetters {
    QString text;
    double points = 8.5;
    bool bold = false;
    bool quiet = true;
    int flags = int{Qt::AlignLeft} | int{Qt::AlignTop};
};

class PaperPen {
public:
    explicit PaperPen(QPainter &painter) : m_painter(painter) {}

    [[nodiscard]] QPainter &painter() { return m_painter; }
    [[nodiscard]] const PaperInks &inks() const { return m_inks; }
    void write(const QRectF &box, const PaperLetters &letters);
    /// In the middle of the box, as large as goes into it.
    void fit(const QRectF &box, PaperLetters letters);
    /// In the middle of white that keeps the words clear of what is behind them.
    void onWhite(const QPointF &middle, const PaperLetters &letters);
    /// A mark of Standing, on white.
    void mark(const QPointF &at, int standing, bool toBuy);
    [[nodiscard]] static double widthOf(const PaperLetters &letters);

private:
    QPainter &m_painter;
    PaperInks m_inks;
};

} // namespace flarestock
