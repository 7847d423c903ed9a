// SPDX-License-Identifier: MIT

#include "app/paper/labels.h"

#include "app/paper/bars.h"
#include "app/paper/lettering.h"
#include "app/paper/traces.h"

#include <QBuffer>
#include <QDate>
#include <QFontMetricsF>
#include <QJsonArray>
#include <QPainter>
#include <QPdfWriter>

#include <algorithm>
#include <cmath>

namespace flarestock {

namespace {

// Lengths are millimetres; a hundred dots of the writer are one.
constexpr int Dots = 100;
constexpr int DotsPerInch = 2540;
constexpr double Margin = 1.5;
constexpr double PrinterDot = 25.4 / 203; // Of common label printers; finer ones have its half.
constexpr double LeastModule = 2 * PrinterDot;
constexpr double LargestModule = 4 * PrinterDot;
constexpr double QuietBars = 20;   // Modules, both sides together (ISO/IEC 15417).
constexpr double QuietSquares = 8; // The same of QR (ISO/IEC 18004).
constexpr double LargestLine = 5;  // mm from line to line.

/// The largest module of whole printer dots of which so many fit; less than LeastModule: none does.
double moduleFor(double room, double modules)
{
    if (modules <= 0)
        return 0;
    const double dots = std::floor(room / modules / PrinterDot);
    return std::min(dots * PrinterDot, LargestModule);
}

/// The nearest dot of a printer to a place, so that every bar begins on one.
double onDot(double place)
{
    return std::round(place / PrinterDot) * PrinterDot;
}

QFont fontOf(double height, bool isBold)
{
    return lettering(static_cast<int>(std::floor(height * Dots)),
                     isBold ? QFont::Bold : QFont::Normal);
}

QRectF inDots(const QRectF &box)
{
    return {box.x() * Dots, box.y() * Dots, box.width() * Dots, box.height() * Dots};
}

class LabelPainting {
public:
    LabelPainting(QPdfWriter &writer, const LabelSheet &sheet)
        : m_writer(writer), m_sheet(sheet), m_painter(&writer)
    {
    }

    /// Whether its code fits.
    bool paint(const LabelSheet::Label &label)
    {
        const Bars bars = barsOf(label.code);
        const double module = moduleFor(m_sheet.width, bars.modules + QuietBars);
        if (bars.modules > 0 && module >= LeastModule && m_sheet.height >= LeastBarHeight * 2) {
            paintBars(bars, module, label);
            return true;
        }
        return paintSquares(squaresOf(label.code), label);
    }

private:
    static constexpr double LeastBarHeight = 5;

    void fill(const QRectF &box) { m_painter.fillRect(inDots(box), Qt::black); }

    void paintBars(const Bars &bars, double module, const LabelSheet::Label &label)
    {
        const double high = std::max(LeastBarHeight, m_sheet.height * 0.38);
        const double y = m_sheet.height - Margin - high;
        const double left = onDot((m_sheet.width - bars.modules * module) / 2);
        for (const QRectF &bar : bars.black)
            fill({left + bar.x() * module, y, bar.width() * module, high});
        lines(label.lines, {Margin, Margin, m_sheet.width - 2 * Margin, y - 2 * Margin});
    }

    bool paintSquares(const Squares &squares, const LabelSheet::Label &label)
    {
        const double whole = squares.side + QuietSquares;
        const double module =
            squares.side > 0 ? moduleFor(std::min(m_sheet.height, m_sheet.width), whole) : 0;
        if (module < LeastModule)
            return false;
        const double quiet = QuietSquares / 2 * module;
        const double y = onDot((m_sheet.height - squares.side * module) / 2);
        for (const QRectF &square : squares.black)
            fill({quiet + square.x() * module, y + square.y() * module, square.width() * module,
                  square.height() * module});
        const double used = whole * module;
        lines(label.lines,
              {used, Margin, m_sheet.width - used - Margin, m_sheet.height - 2 * Margin});
        return true;
    }

    void lines(const QStringList &said, const QRectF &room)
    {
        if (said.isEmpty() || room.width() <= 0 || room.height() <= 0)
            return;
        const double step = std::min(LargestLine, room.height() / static_cast<double>(said.size()));
        for (int at = 0; at < said.size(); ++at)
            line(said[at], {room.x(), room.y() + at * step, room.width(), step}, at == 0);
    }

    /// The first is made smaller until it fits; the others end in dots.
    void line(const QString &said, const QRectF &box, bool isFirst)
    {
        double height = box.height() * (isFirst ? 0.8 : 0.65);
        const double wide =
            QFontMetricsF(fontOf(height, isFirst), &m_writer).horizontalAdvance(said);
        if (isFirst && wide > box.width() * Dots)
            height *= box.width() * Dots / wide * 0.99;
        const QFont font = fontOf(height, isFirst);
        const QString shown = isFirst ? said
                                      : QFontMetricsF(font, &m_writer)
                                            .elidedText(said, Qt::ElideRight, box.width() * Dots);
        m_painter.setFont(font);
        m_painter.drawText(inDots(box), int{Qt::AlignLeft} | int{Qt::AlignVCenter}, shown);
    }

    QPdfWriter &m_writer;
    const LabelSheet &m_sheet;
    QPainter m_painter;
};

} // namespace

Result<LabelSheet> LabelSheet::read(const QJsonObject &document)
{
    LabelSheet sheet;
    sheet.width = document.value(QLatin1String("width")).toDouble();
    sheet.height = document.value(QLatin1String("height")).toDouble();
    sheet.made = document.value(QLatin1String("made")).toString();
    for (const auto &one : document.value(QLatin1String("labels")).toArray()) {
        Label label{one[QLatin1String("code")].toString(), {}};
        for (const auto &line : one[QLatin1String("lines")].toArray())
            label.lines << line.toString();
        sheet.labels.append(std::move(label));
    }
    if (sheet.labels.isEmpty() || sheet.width <= 0 || sheet.height <= 0)
        return problem("the labels", "have no size, or there is none",
                       "Say \"labels\", \"width\" and \"height\" in mm.");
    if (!QDate::fromString(sheet.made, Qt::ISODate).isValid())
        return problem("the labels", "do not say when they were made", "Say \"made\": a day.");
    return sheet;
}

Result<QByteArray> pdfOf(const LabelSheet &sheet)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setPageSize(QPageSize(QSizeF(sheet.width, sheet.height), QPageSize::Millimeter,
                                     QStringLiteral("label"), QPageSize::ExactMatch));
        writer.setPageMargins(QMarginsF(0, 0, 0, 0));
        writer.setResolution(DotsPerInch);
        writer.setTitle(QStringLiteral("Labels"));
        writer.setCreator(QStringLiteral("Flarestock"));
        LabelPainting painting(writer, sheet);
        for (int at = 0; at < sheet.labels.size(); ++at) {
            if (at > 0)
                writer.newPage();
            if (!painting.paint(sheet.labels[at]))
                return problem("the code " + sheet.labels[at].code.toStdString(),
                               "does not fit on a label of that size with bars that print sharp",
                               "Say a larger one: --size 70x35.");
        }
    }
    return withoutTraces(bytes, sheet.made);
}

} // namespace flarestock
