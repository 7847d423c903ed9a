// SPDX-License-Identifier: MIT

#include "app/desk/papers/paper_pen.h"

#include "app/paper/lettering.h"

#include <QFontMetricsF>

#include <algorithm>

namespace flarestock {

namespace {

constexpr int Middle = int{Qt::AlignHCenter} | int{Qt::AlignVCenter};

QFont fontOf(const PaperLetters &letters)
{
    return lettering(static_cast<int>(letters.points * PaperDots),
                     letters.bold ? QFont::Bold : QFont::Normal);
}

const QColor &inkOf(const PaperInks &inks, int standing)
{
    switch (standing) {
    case Standing::Trap:
    case Standing::Open:
        return inks.stop;
    case Standing::Caution:
    case Standing::Short:
        return inks.care;
    case Standing::Note:
        return inks.quiet;
    default:
        return inks.accent;
    }
}

} // namespace

double PaperPen::widthOf(const PaperLetters &letters)
{
    return QFontMetricsF(fontOf(letters)).horizontalAdvance(letters.text) / PaperDots;
}

void PaperPen::write(const QRectF &box, const PaperLetters &letters)
{
    m_painter.save();
    m_painter.scale(1.0 / PaperDots, 1.0 / PaperDots); // Fonts have whole dots of the writer.
    m_painter.setFont(fontOf(letters));
    m_painter.setPen(letters.quiet ? m_inks.quiet : m_inks.ink);
    m_painter.drawText(QRectF(box.topLeft() * PaperDots, box.size() * PaperDots), letters.flags,
                       letters.text);
    m_painter.restore();
}

void PaperPen::fit(const QRectF &box, PaperLetters letters)
{
    while (letters.points > 6 && widthOf(letters) > box.width())
        letters.points -= 0.5;
    letters.flags = Middle;
    write(box, letters);
}

void PaperPen::onWhite(const QPointF &middle, const PaperLetters &letters)
{
    if (letters.text.isEmpty())
        return;
    const double wide = widthOf(letters) + 6;
    const double high = letters.points * 1.3;
    const QRectF box(middle.x() - wide / 2, middle.y() - high / 2, wide, high);
    m_painter.fillRect(box, Qt::white);
    PaperLetters inMiddle = letters;
    inMiddle.flags = Middle;
    write(box, inMiddle);
}

void PaperPen::mark(const QPointF &at, int standing, bool toBuy)
{
    m_painter.save();
    m_painter.translate(at);
    m_painter.setPen(Qt::NoPen);
    m_painter.setBrush(Qt::white);
    m_painter.drawEllipse(QPointF(0, 0), 10, 10);
    paintMark(&m_painter, static_cast<Standing::Mark>(standing), toBuy,
              {inkOf(m_inks, standing), Qt::white});
    m_painter.restore();
}

} // namespace flarestock
