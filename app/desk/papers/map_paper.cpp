// SPDX-License-Identifier: MIT

#include "app/desk/papers/map_paper.h"

#include "app/desk/drawing/pipe_drawing.h"
#include "app/desk/map/map_rows.h"
#include "app/desk/papers/paper_pen.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QPdfWriter>

#include <algorithm>

namespace flarestock {

namespace {

struct PaperMapWords {
    Q_DECLARE_TR_FUNCTIONS(MapPaper)
};

constexpr double Edge = 34;
constexpr double HeadHeight = 44;
constexpr double KeyHeight = 40;

/// The cells of a row by their names.
class Cells {
public:
    Cells(const QStringList &names, const Row &row) : m_names(names), m_row(row) {}
    [[nodiscard]] QVariant operator[](const char *name) const
    {
        return m_row.cells.at(m_names.indexOf(QLatin1String(name)));
    }
    [[nodiscard]] double at(const char *name) const { return (*this)[name].toDouble(); }
    [[nodiscard]] QString text(const char *name) const { return (*this)[name].toString(); }
    [[nodiscard]] bool is(const char *name) const { return (*this)[name].toBool(); }
    /// The pennant of what the builder has decided on, empty where another would now be taken.
    [[nodiscard]] QString pennant() const
    {
        if (!is("picked"))
            return {};
        return is("outdone") ? QStringLiteral("⚐ ") : QStringLiteral("⚑ ");
    }

private:
    const QStringList &m_names;
    const Row &m_row;
};

struct Fit {
    MapLayout map;
    double scale = 0;
};

/// The layout that may be drawn largest in that room.
Fit fitted(const Expansion &expansion, const QSizeF &room)
{
    Fit best;
    for (int width = 700; width <= 2600; width += 100) {
        MapLayout map = layoutMap(expansion, {.width = static_cast<double>(width)});
        const double scale = std::min({room.width() / map.width, room.height() / map.height, 1.0});
        if (scale > best.scale)
            best = {std::move(map), scale};
    }
    return best;
}

void paintBands(PaperPen &pen, const MapLayout &map)
{
    const QStringList names = bandCells();
    for (const Row &row : bandRows(map)) {
        const Cells cells(names, row);
        const double high = cells.at("high");
        QPainter &painter = pen.painter();
        painter.fillRect(QRectF(22, cells.at("atY"), 2, high), pen.inks().rule);
        painter.save();
        painter.translate(13, cells.at("atY") + high / 2);
        painter.rotate(-90);
        pen.fit({-100, -8, 200, 16}, {cells.text("title"), 11});
        painter.restore();
    }
}

void paintRuns(PaperPen &pen, const std::vector<Row> &rows)
{
    const QStringList names = runCells();
    for (const Row &row : rows) {
        const Cells cells(names, row);
        const double clear = cells.at("thickness") / 2 + 10;
        const QPointF at(cells.at("atX"), cells.at("atY"));
        pen.onWhite(at - QPointF(0, clear), {cells.pennant() + cells.text("dash"), 11});
        pen.onWhite(at + QPointF(0, clear), {cells.text("length"), 11});
    }
}

void paintPlates(PaperPen &pen, const std::vector<Row> &rows)
{
    const QStringList names = plateCells();
    for (const Row &row : rows) {
        const Cells cells(names, row);
        const QRectF box(cells.at("atX"), cells.at("atY"), cells.at("wide"), cells.at("high"));
        const PaperInks &inks = pen.inks();
        const bool lacks = cells.is("lacks");
        QPen edge(lacks ? inks.care : cells.is("echo") ? inks.rule : inks.ink, lacks ? 2 : 1.2);
        if (lacks)
            edge.setDashPattern({4, 3});
        pen.painter().setPen(edge);
        pen.painter().setBrush(Qt::white);
        pen.painter().drawRect(box);
        const double line = box.height() / 3;
        const QRectF words(box.left() + 12, box.top(), box.width() - 24, line);
        pen.fit(words, {cells.pennant() + cells.text("role"), 11});
        pen.fit(words.translated(0, line), {cells.text("part"), 12.5, true, false});
        pen.fit(words.translated(0, 2 * line), {cells.text("fact"), 11});
    }
}

void paintMarks(PaperPen &pen, const std::vector<Row> &rows)
{
    const QStringList names = markCells();
    for (const Row &row : rows) {
        const Cells cells(names, row);
        const QPointF at(cells.at("atX"), cells.at("atY"));
        pen.mark(at, cells["mark"].toInt(), cells.is("toBuy"));
        if (cells.is("picked"))
            pen.write({at.x() + 4, at.y() - 26, 20, 18}, {cells.pennant(), 14, false, false});
    }
}

void paintMap(PaperPen &pen, const MapLayout &map, const WorkedOut &worked, Units units)
{
    paintPipes(&pen.painter(), map, {pen.inks().pipe, Qt::white, Qt::white});
    paintBands(pen, map);
    paintRuns(pen, runRows(map, *worked.expansion, units));
    paintPlates(pen, plateRows(map, worked, units));
    paintMarks(pen, markRows(map, *worked.expansion, {}));
}

void paintHead(PaperPen &pen, const MapPaperWords &words, double width)
{
    pen.write({Edge, Edge, width * 0.7, 20}, {words.title, 13, true, false});
    pen.write({Edge, Edge + 18, width, 14}, {words.about});
    pen.write({Edge + width * 0.7, Edge, width * 0.3, 14},
              {words.made, 8.5, false, true, int{Qt::AlignRight} | int{Qt::AlignTop}});
}

/// What the marks mean, in one line, and the advice below it.
void paintKey(PaperPen &pen, const MapPaperWords &words, const QSizeF &page)
{
    const std::pair<Standing::Mark, QString> entries[] = {
        {Standing::Made, PaperMapWords::tr("made for each other")},
        {Standing::Needs, PaperMapWords::tr("with ring, washer or sealant")},
        {Standing::Caution, PaperMapWords::tr("caution")},
        {Standing::Trap, PaperMapWords::tr("leaks, jams or loose")},
        {Standing::Open, PaperMapWords::tr("open")},
        {Standing::Short, PaperMapWords::tr("dashed: to buy")}};
    double x = Edge;
    const double y = page.height() - Edge - KeyHeight + 14;
    for (const auto &[standing, meaning] : entries) {
        const PaperLetters letters{meaning, 8};
        pen.painter().save();
        pen.painter().translate(x + 6, y);
        pen.painter().scale(0.5, 0.5);
        pen.mark({0, 0}, standing, false);
        pen.painter().restore();
        const double wide = PaperPen::widthOf(letters);
        pen.write({x + 15, y - 6, wide + 10, 12}, letters);
        x += wide + 30;
    }
    pen.write({Edge, y + 10, page.width() - 2 * Edge, 20},
              {words.foot, 7, false, true,
               int{Qt::AlignLeft} | int{Qt::AlignTop} | int{Qt::TextWordWrap}});
}

} // namespace

QByteArray mapPdf(const WorkedOut &worked, const MapPaperWords &words)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setPageLayout({words.size, QPageLayout::Landscape, QMarginsF()});
    writer.setResolution(72 * PaperDots);
    writer.setTitle(words.title);
    writer.setCreator(QStringLiteral("Flarestock"));
    QPainter painter(&writer);
    painter.scale(PaperDots, PaperDots);
    PaperPen pen(painter);
    const QSizeF page = writer.pageLayout().fullRect(QPageLayout::Point).size();
    const QSizeF room(page.width() - 2 * Edge, page.height() - 2 * Edge - HeadHeight - KeyHeight);
    paintHead(pen, words, room.width());
    const Fit fit = fitted(*worked.expansion, room);
    painter.save();
    painter.translate(Edge + (room.width() - fit.map.width * fit.scale) / 2, Edge + HeadHeight);
    painter.scale(fit.scale, fit.scale);
    paintMap(pen, fit.map, worked, words.units);
    painter.restore();
    paintKey(pen, words, page);
    painter.end();
    return bytes;
}

} // namespace flarestock
