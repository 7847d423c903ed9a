// SPDX-License-Identifier: MIT

#include "app/desk/plot/pressure/pressure_plot.h"

#include "app/desk/language/sentences.h"
#include "app/desk/plot/label_places.h"
#include "app/desk/plot/pressure/pressure_panels.h"
#include "app/desk/plot/pressure/pressure_points.h"
#include "app/desk/plot/pressure/pressure_words.h"
#include "app/desk/words/run_words.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <cmath>

namespace flarestock {

namespace {

struct PressurePlotWords {
    Q_DECLARE_TR_FUNCTIONS(PressureAlong)
};

constexpr double HeadHeight = 18;    ///< Which part it is, and in what unit.
constexpr double FindingHeight = 26; ///< What is a finding, below it.
constexpr double FootHeight = 66;    ///< Runs and stations by name.
constexpr double FootRow = 15;
constexpr double LeastHeight = 96; ///< Of the panels themselves.
constexpr double MarkSide = 22;
constexpr double Clear = 3; ///< Of words from a stroke.

class PressureDrawn {
public:
    PressureDrawn(const FlowShown &shown, const PressureLine &line, const PlotSpace &space)
        : m_shown(shown), m_line(line),
          m_height(std::max(space.height, HeadHeight + FindingHeight + LeastHeight + FootHeight)),
          m_panels(pressurePanels(
              line, {space.width, HeadHeight + FindingHeight, m_height - FootHeight}, shown.units)),
          m_places(QRectF(0, 0, space.width, m_height))
    {
        m_plot.space = {space.width, m_height};
        m_plot.title = pressureTitle(shown, line);
        m_plot.says = pressureSays(shown, line);
    }

    PlotLayout draw()
    {
        for (const PressurePanel &panel : m_panels) {
            addScale(panel);
            addLine(panel);
            addMarks(panel);
        }
        addMarkWords();
        // What must be read is placed before what may give way.
        for (const PressurePanel &panel : m_panels)
            addLimits(panel);
        for (const PressurePanel &panel : m_panels)
            addDrops(panel);
        for (const PressurePanel &panel : m_panels)
            addNames(panel);
        m_plot.points = pressurePoints(m_shown, m_line, m_panels);
        m_plot.labels = m_places.all();
        return std::move(m_plot);
    }

private:
    void stroke(const QPolygonF &line, PlotInk ink, double thick,
                PlotStroke::Dash dash = PlotStroke::Dash::Whole)
    {
        m_plot.strokes.push_back({line, ink, thick, dash});
    }

    void addScale(const PressurePanel &panel)
    {
        for (const double mark : panel.scale.marks) {
            const double y = panel.y(mark * panel.unitPa);
            stroke({{panel.left(), y}, {panel.right(), y}}, PlotInk::Rule, 1);
            m_places.put({panel.scale.said(mark), {}, PlotInk::Quiet, false},
                         {{{panel.left() - 2, y}, LabelSide::Left}});
        }
        const double zero = panel.y(0);
        stroke({{panel.left(), zero}, {panel.right(), zero}}, PlotInk::Edge, 1.2);
        for (const PressureColumn &column : panel.columns)
            stroke({{column.right, panel.top}, {column.right, panel.bottom}}, PlotInk::Rule, 1,
                   PlotStroke::Dash::Dotted);
        const QString title = QString(partTitle(panel.side) + QStringLiteral(" · ") + panel.unit);
        m_places.putSomewhere({title, {}, PlotInk::Accent, true},
                              {{{panel.left() - PanelGutter + 14, 8}, LabelSide::Right}});
    }

    void addLine(const PressurePanel &panel)
    {
        QPolygonF line;
        for (const PressureColumn &column : panel.columns)
            for (const PressureStep::Along &point : column.step->line)
                line.append({column.x(point.share), panel.y(point.pa)});
        QPolygonF ground = line;
        ground.append({panel.right(), panel.y(0)});
        ground.append({panel.left(), panel.y(0)});
        m_plot.areas.push_back({ground, PlotInk::Accent, PlotArea::Fill::Tint});
        stroke(line, PlotInk::Accent, 2.4);
        for (int at = 1; at < line.size(); ++at)
            keepClear(line[at - 1], line[at]);
    }

    /// No words on a piece of the line: it is followed in small steps.
    void keepClear(const QPointF &from, const QPointF &to)
    {
        const double length = std::hypot(to.x() - from.x(), to.y() - from.y());
        const int steps = std::max(1, static_cast<int>(length / 6));
        for (int at = 0; at < steps; ++at) {
            const double begins = at / static_cast<double>(steps);
            const double ends = (at + 1) / static_cast<double>(steps);
            m_places.keepClear(QRectF(from + begins * (to - from), from + ends * (to - from))
                                   .normalized()
                                   .adjusted(-1, -Clear, 1, Clear));
        }
    }

    /// A finding's mark over its run or station; a station between two panels has one.
    void addMarks(const PressurePanel &panel)
    {
        for (const PressureColumn &column : panel.columns) {
            if (m_marked != column.step->from)
                mark(panel, column.step->from, column.left);
            mark(panel, column.step->run, column.middle());
            mark(panel, column.step->to, column.right);
            m_marked = column.step->to;
        }
    }

    void mark(const PressurePanel &panel, const std::string &where, double x)
    {
        const Finding *finding = m_shown.findingAt(where);
        if (finding == nullptr)
            return;
        const double last = m_found.empty() ? 0 : m_found.back().at.x() + MarkSide + 2;
        const QPointF at(std::max(x, last), HeadHeight + FindingHeight / 2);
        const PlotInk ink = finding->severity == Severity::Stop ? PlotInk::Stop : PlotInk::Caution;
        m_plot.marks.push_back({at, standing(*finding)});
        m_places.keepClear(
            QRectF(at.x() - MarkSide / 2, at.y() - MarkSide / 2, MarkSide, MarkSide));
        m_found.push_back({at, inWords(text(finding->severity)), ink});
        stroke({{at.x(), at.y() + MarkSide / 2}, {at.x(), panel.bottom}}, ink, 1,
               PlotStroke::Dash::Dotted);
    }

    /// The word beside each mark, once all marks lie where they lie.
    void addMarkWords()
    {
        for (const Found &one : m_found)
            m_places.putSomewhere({one.word, {}, one.ink, true},
                                  {{one.at + QPointF(MarkSide / 2, 0), LabelSide::Right},
                                   {one.at - QPointF(MarkSide / 2, 0), LabelSide::Left}});
    }

    void addLimits(const PressurePanel &panel)
    {
        for (const PressureLimit &limit : panel.limits) {
            const bool isRange = limit.what == PressureLimit::What::LeastSet ||
                                 limit.what == PressureLimit::What::MostSet;
            if (isRange)
                continue;
            const double y = panel.y(limit.pa);
            const PlotInk ink = limit.what == PressureLimit::What::Boils     ? PlotInk::Stop
                                : limit.what == PressureLimit::What::TooNear ? PlotInk::Caution
                                                                             : PlotInk::Ink;
            stroke({{panel.left(), y}, {panel.right(), y}}, ink, 1.4, PlotStroke::Dash::Broken);
            m_places.keepClear(QRectF(panel.left(), y - 1, panel.right() - panel.left(), 2));
            sayAt(panel, y, limitWords(m_shown, limit), ink);
        }
        if (&panel == &m_panels.front())
            sayAt(panel, panel.y(0),
                  {PressurePlotWords::tr("0: the air around"), PressurePlotWords::tr("0: air")},
                  PlotInk::Quiet);
    }

    /// Words on a level line, as many as it has room for, the longest first: at its right, left or
    /// middle, above it or below.
    void sayAt(const PressurePanel &panel, double y, const QStringList &words, PlotInk ink)
    {
        const double room = panel.right() - panel.left() - 4;
        QString held = words.back();
        for (const QString &one : words)
            if (sizeOfWords(one, false).width() <= room) {
                held = one;
                break;
            }
        const double half = sizeOfWords(held, false).width() / 2 + 3;
        std::vector<LabelPlaces::Place> places;
        for (const double x :
             {panel.right() - half, panel.left() + half, (panel.left() + panel.right()) / 2})
            for (const LabelSide side : {LabelSide::Above, LabelSide::Below})
                places.push_back({{x, y}, side});
        m_places.putSomewhere({held, {}, ink, false}, places);
    }

    void addDrops(const PressurePanel &panel)
    {
        double most = 0;
        for (const PressureColumn &column : panel.columns)
            most = std::max(most, column.step->dropPa());
        for (const PressureColumn &column : panel.columns) {
            const double drop = column.step->dropPa();
            const QString amount = m_shown.pressure(std::abs(drop));
            const bool isNothing = amount == m_shown.pressure(0);
            const QString sign = isNothing  ? QString()
                                 : drop < 0 ? QLocale().positiveSign()
                                            : QLocale().negativeSign();
            const QString words = QString(sign + amount);
            const bool isMost = drop > 0 && drop >= most && panel.columns.size() > 1 &&
                                panel.side != PressurePart::Side::Gravity;
            const double begins = panel.y(column.step->beginsPa());
            const double ends = panel.y(column.step->endsPa());
            m_places.putSomewhere(
                {words, {}, isMost ? PlotInk::Ink : PlotInk::Quiet, isMost},
                {{{column.middle(), std::min(begins, ends) - 4}, LabelSide::Above},
                 {{column.middle(), (begins + ends) / 2 - 4}, LabelSide::Above},
                 {{column.middle(), std::max(begins, ends) + 4}, LabelSide::Below},
                 {{column.middle(), (begins + ends) / 2 + 4}, LabelSide::Below}});
        }
    }

    /// Under the panel: runs by size and length where there is room, stations by their titles.
    void addNames(const PressurePanel &panel)
    {
        const double foot = panel.bottom + 2;
        for (const PressureColumn &column : panel.columns) {
            const PlacedRun &run = *m_shown.build().run(column.step->run);
            if (run.line == nullptr)
                continue;
            const QString size = saidRunSize(run);
            const QString both =
                QString(size + QStringLiteral(" · ") + saidRunLength(run.length, m_shown.units));
            const double room = column.right - column.left - 4;
            const bool isRoom = sizeOfWords(both, false).width() <= room;
            if (isRoom || sizeOfWords(size, false).width() <= room)
                m_places.put({isRoom ? both : size, {}, PlotInk::Quiet, false},
                             {{{column.middle(), foot}, LabelSide::Below}});
        }
        const auto name = [&](const std::string &station, double x) {
            std::vector<LabelPlaces::Place> rows;
            for (int row = 1; row < 4; ++row)
                rows.push_back({{x, foot + row * FootRow}, LabelSide::Below});
            rows.push_back({{x, foot}, LabelSide::Below});
            const QString title = wordsWithin(m_shown.station(station), false, 130);
            m_places.put({title, {}, PlotInk::Ink, false}, rows);
            stroke({{x, panel.bottom}, {x, panel.bottom + 5}}, PlotInk::Edge, 1);
        };
        name(panel.columns.front().step->from, panel.left());
        for (const PressureColumn &column : panel.columns)
            name(column.step->to, column.right);
    }

    struct Found {
        QPointF at;
        QString word;
        PlotInk ink = PlotInk::Caution;
    };

    const FlowShown &m_shown;
    const PressureLine &m_line;
    double m_height;
    std::vector<PressurePanel> m_panels;
    LabelPlaces m_places;
    std::vector<Found> m_found;
    std::string m_marked; ///< The station to which the last run led.
    PlotLayout m_plot;
};

} // namespace

PlotLayout pressurePlot(const FlowShown &shown, const PressureLine *line, const PlotSpace &space)
{
    if (line != nullptr)
        return PressureDrawn(shown, *line, space).draw();
    PlotLayout plot = nothingFlows(shown, space);
    plot.title = PressurePlotWords::tr("Pressure along the line");
    return plot;
}

} // namespace flarestock
