// SPDX-License-Identifier: MIT

#include "app/paper/painting.h"

#include "app/paper/bars.h"
#include "app/paper/columns.h"
#include "app/paper/layout.h"
#include "app/paper/lettering.h"
#include "app/paper/traces.h"

#include <QBuffer>
#include <QFontMetricsF>
#include <QPainter>
#include <QPdfWriter>

#include <cmath>

namespace flarestock {

namespace {

// Lengths are points (1/72 in) on the paper; ten dots of the writer are one.
constexpr int Dots = 10;
constexpr double Margin = 45;
constexpr double CodeHeight = 30;
constexpr double Module = 1; // 0.35 mm: read off a print by common scanners (common practice).
constexpr double Gap = 8;
constexpr double CellPad = 4;

QFont fontOf(double points, QFont::Weight weight = QFont::Normal)
{
    return lettering(static_cast<int>(std::lround(points * Dots)), weight);
}

/// Paints one paper; every length that it takes and gives is in points.
class Painting {
public:
    Painting(QPdfWriter &writer, const Paper &paper)
        : m_writer(writer), m_paper(paper), m_painter(&writer),
          m_width(paper.size.size(QPageSize::Point).width() - 2 * Margin),
          m_bottom(paper.size.size(QPageSize::Point).height() - Margin - 16)
    {
        m_painter.translate(Margin * Dots, Margin * Dots);
        m_painter.scale(Dots, Dots);
        m_widths =
            columnWidths(paper, m_width * Dots,
                         {fontOf(8, QFont::Bold), fontOf(9), fontOf(7.5), CellPad * Dots}, writer);
    }

    void paint()
    {
        const double head = heading(false);
        Heights heights;
        for (const QStringList &row : m_paper.rows)
            heights.rows.append(rowHeight(row));
        heights.sums = sumsHeight();
        const double room = m_bottom - Margin - HeadRow;
        heights.firstPage = room - head;
        heights.otherPage = room - nextHeading(false);
        const auto pages = pagesOf(heights);
        for (int at = 0; at < pages.size(); ++at)
            page(pages, at);
    }

private:
    static constexpr double HeadRow = 20;
    static constexpr double LineHeight = 12;
    static constexpr double SmallHeight = 10;

    void page(const QVector<PageRows> &pages, int at)
    {
        if (at > 0)
            m_writer.newPage();
        double y = at == 0 ? heading(true) : nextHeading(true);
        y = headRow(y);
        for (int row = pages[at].first; row < pages[at].end; ++row)
            y = paintRow(y, m_paper.rows[row]);
        line(y, 0.8);
        if (at + 1 == pages.size())
            sums(y + Gap);
        foot(at + 1, static_cast<int>(pages.size()));
    }

    void text(const QRectF &box, const QString &said, const QFont &font,
              int flags = int{Qt::AlignLeft} | int{Qt::AlignTop})
    {
        // Fonts have whole pixels: those of the writer, not points.
        m_painter.save();
        m_painter.scale(1.0 / Dots, 1.0 / Dots);
        m_painter.setFont(font);
        m_painter.drawText(QRectF(box.topLeft() * Dots, box.size() * Dots), flags, said);
        m_painter.restore();
    }

    /// How high the words stand when they are broken to a width.
    [[nodiscard]] double heightOf(const QString &said, const QFont &font, double width) const
    {
        if (said.isEmpty())
            return 0;
        const QFontMetricsF metrics(font, &m_writer);
        return metrics.boundingRect(QRectF(0, 0, width * Dots, 1e6), Wrapped, said).height() / Dots;
    }

    void line(double y, double thick)
    {
        m_painter.fillRect(QRectF(0, y, m_width, thick), Qt::black);
    }

    /// The code of the number, its right edge at the paper's; with the number below it.
    void code(double y)
    {
        const Bars bars = barsOf(m_paper.number);
        const double left = m_width - bars.modules * Module;
        for (const QRectF &bar : bars.black)
            m_painter.fillRect(QRectF(left + bar.x() * Module, y, bar.width() * Module, CodeHeight),
                               Qt::black);
    }

    /// The first page's; gives where it ends.
    double heading(bool painted)
    {
        const double half = m_width * 0.56;
        double left = 0;
        for (int at = 0; at < m_paper.from.size(); ++at) {
            const auto font = at == 0 ? fontOf(12, QFont::Bold) : fontOf(8.5);
            if (painted)
                text({0, left, half, 18}, m_paper.from[at], font);
            left += at == 0 ? 18 : SmallHeight + 1;
        }
        if (painted) {
            code(0);
            const auto font =
                within(m_paper.name(), fontOf(15, QFont::Bold), (m_width - half) * Dots, m_writer);
            text({half, CodeHeight + 4, m_width - half, 26}, m_paper.name(), font, TopRight);
        }
        const double below = std::max(left, CodeHeight + 30) + 2 * Gap;
        return std::max(address(below, painted), facts(below, painted)) + 2 * Gap;
    }

    double address(double y, bool painted)
    {
        if (painted && !m_paper.to.isEmpty())
            text({0, y, m_width / 2, 12}, m_paper.words.to, fontOf(8));
        y += LineHeight;
        for (int at = 0; at < m_paper.to.size(); ++at, y += LineHeight + 1) {
            if (painted)
                text({0, y, m_width * 0.56, 14}, m_paper.to[at],
                     fontOf(10, at == 0 ? QFont::Bold : QFont::Normal));
        }
        return y;
    }

    double facts(double y, bool painted)
    {
        const double left = m_width * 0.6;
        const auto bold = fontOf(9, QFont::Bold);
        for (const auto &[name, said] : m_paper.facts) {
            const double named = std::max(
                70.0, QFontMetricsF(fontOf(9), &m_writer).horizontalAdvance(name) / Dots + Gap);
            const double room = m_width - left - named;
            if (painted) {
                text({left, y, named, 14}, name, fontOf(9));
                text({left + named, y, room, 1000}, said, bold, TopRight | int{Qt::TextWordWrap});
            }
            y += std::max(LineHeight, heightOf(said, bold, room)) + 2;
        }
        return y;
    }

    double nextHeading(bool painted)
    {
        if (painted) {
            text({0, 0, m_width * 0.6, 14}, m_paper.from.value(0), fontOf(9));
            text({m_width * 0.4, 0, m_width * 0.6, 14}, m_paper.words.continued.arg(m_paper.name()),
                 fontOf(9, QFont::Bold), TopRight);
        }
        return 14 + Gap;
    }

    [[nodiscard]] double widthOf(int column) const { return m_widths[column] / Dots; }

    static int flagsOf(const PaperColumn &column)
    {
        return column.right ? Wrapped - int{Qt::AlignLeft} + int{Qt::AlignRight} : Wrapped;
    }

    double headRow(double y)
    {
        line(y, 0.8);
        double x = 0;
        for (int at = 0; at < m_paper.columns.size(); ++at) {
            text({x + CellPad, y + 5, widthOf(at) - 2 * CellPad, 14}, m_paper.columns[at].title,
                 fontOf(8, QFont::Bold), flagsOf(m_paper.columns[at]));
            x += widthOf(at);
        }
        line(y + HeadRow - 1, 0.8);
        return y + HeadRow;
    }

    [[nodiscard]] double cellHeight(const QString &cell, int column) const
    {
        const double width = widthOf(column) - 2 * CellPad;
        return heightOf(cell.section(QLatin1Char('\n'), 0, 0), fontOf(9), width) +
               heightOf(cell.section(QLatin1Char('\n'), 1), fontOf(7.5), width);
    }

    [[nodiscard]] double rowHeight(const QStringList &row) const
    {
        double height = 0;
        for (int at = 0; at < row.size(); ++at)
            height = std::max(height, cellHeight(row[at], at));
        return height + 7;
    }

    double paintRow(double y, const QStringList &row)
    {
        double x = 0;
        for (int at = 0; at < row.size(); ++at) {
            const PaperColumn &column = m_paper.columns[at];
            const double width = widthOf(at) - 2 * CellPad;
            const QString first = row[at].section(QLatin1Char('\n'), 0, 0);
            const QString second = row[at].section(QLatin1Char('\n'), 1);
            const double height = heightOf(first, fontOf(9), width);
            text({x + CellPad, y + 3, width, height}, first, fontOf(9), flagsOf(column));
            text({x + CellPad, y + 3 + height, width, 200}, second, fontOf(7.5), flagsOf(column));
            x += widthOf(at);
        }
        const double end = y + rowHeight(row);
        m_painter.fillRect(QRectF(0, end - 0.3, m_width, 0.3), QColor(170, 170, 170));
        return end;
    }

    /// Beside sums; without any from edge to edge in smaller letters.
    [[nodiscard]] bool hasSums() const { return !m_paper.sums.isEmpty(); }
    [[nodiscard]] double noteWidth() const { return m_width * (hasSums() ? 0.5 : 0.98); }
    [[nodiscard]] QFont noteFont() const { return fontOf(hasSums() ? 9 : 8); }

    [[nodiscard]] double sumsHeight() const
    {
        const double note = 14 + heightOf(m_paper.note, noteFont(), noteWidth()); // 14: its head.
        return std::max(note, static_cast<double>(m_paper.sums.size()) * 15 + 8) + 2 * Gap;
    }

    void sums(double y)
    {
        if (!m_paper.note.isEmpty()) {
            text({CellPad, y, m_width * 0.5, 14}, m_paper.words.note, fontOf(8));
            text({CellPad, y + 12, noteWidth(), 1000}, m_paper.note, noteFont(), Wrapped);
        }
        const double left = m_width * 0.58;
        for (int at = 0; at < m_paper.sums.size(); ++at, y += 15) {
            const bool isTotal = at + 1 == m_paper.sums.size();
            const auto font = fontOf(isTotal ? 11 : 9, isTotal ? QFont::Bold : QFont::Normal);
            if (isTotal)
                m_painter.fillRect(QRectF(left, y, m_width - left, 0.8), Qt::black);
            y += isTotal ? 4 : 0;
            text({left, y, m_width * 0.25, 16}, m_paper.sums[at].first, font);
            text({left, y, m_width - left - CellPad, 16}, m_paper.sums[at].second, font, TopRight);
        }
    }

    void foot(int page, int pages)
    {
        const double y = m_bottom - Margin + 6;
        text({0, y, m_width * 0.8, 30}, m_paper.foot, fontOf(7.5), Wrapped);
        text({m_width * 0.82, y, m_width * 0.18, 12}, m_paper.words.page.arg(page).arg(pages),
             fontOf(7.5), TopRight);
    }

    static constexpr int Wrapped = int{Qt::AlignLeft} | int{Qt::AlignTop} | int{Qt::TextWordWrap};
    static constexpr int TopRight = int{Qt::AlignRight} | int{Qt::AlignTop};
    QPdfWriter &m_writer;
    const Paper &m_paper;
    QPainter m_painter;
    double m_width;
    double m_bottom;
    QVector<double> m_widths; ///< Of the columns, in dots.
};

} // namespace

QByteArray pdfOf(const Paper &paper)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setPageSize(paper.size);
        writer.setPageMargins(QMarginsF(0, 0, 0, 0));
        writer.setResolution(72 * Dots);
        writer.setTitle(paper.name());
        writer.setCreator(QStringLiteral("Flarestock"));
        Painting(writer, paper).paint();
    }
    return withoutTraces(bytes, paper.made);
}

} // namespace flarestock
