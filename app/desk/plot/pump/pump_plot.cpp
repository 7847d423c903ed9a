// SPDX-License-Identifier: MIT

#include "app/desk/plot/pump/pump_plot.h"

#include "app/desk/plot/label_places.h"
#include "app/desk/plot/pump/pump_axes.h"
#include "app/desk/plot/pump/pump_words.h"
#include "app/desk/words/spoken.h"

#include <QCoreApplication>

#include <algorithm>

namespace flarestock {

namespace {

struct PumpPlotWords {
    Q_DECLARE_TR_FUNCTIONS(PumpAndLines)
};

constexpr double LeftRoom = 46;   ///< Figures of the flow.
constexpr double RightRoom = 150; ///< The bar of what becomes of it, with its words.
constexpr double HeadRoom = 26;
constexpr double FootRoom = 34;
constexpr double LeastPumpHeight = 120;
constexpr double BarWide = 18;
constexpr double FingerReachSide = 40;

class PumpDrawn {
public:
    PumpDrawn(const FlowShown &shown, const PumpCurves &curves, const PlotSpace &space)
        : m_shown(shown), m_curves(curves), m_delivery(*curves.delivery),
          m_height(std::max(space.height, HeadRoom + LeastPumpHeight + FootRoom)),
          m_axes(pumpAxes(curves,
                          QRectF(LeftRoom, HeadRoom, space.width - LeftRoom - RightRoom,
                                 m_height - HeadRoom - FootRoom),
                          shown.units)),
          m_area(m_axes.area), m_places(QRectF(0, 0, space.width, m_height))
    {
        m_plot.space = {space.width, m_height};
        m_plot.title = pumpTitle(shown, curves);
        m_plot.says = pumpSays(shown, curves);
    }

    PlotLayout draw()
    {
        addAxes();
        addBar();
        addCurves();
        addMeeting(); // The answer comes first.
        addSet();
        addAsked();
        addCurveNames();
        m_plot.labels = m_places.all();
        return std::move(m_plot);
    }

private:
    [[nodiscard]] double x(double pa) const { return m_axes.x(pa); }
    [[nodiscard]] double y(double m3S) const { return m_axes.y(m3S); }

    void stroke(const QPolygonF &line, PlotInk ink, double thick,
                PlotStroke::Dash dash = PlotStroke::Dash::Whole)
    {
        m_plot.strokes.push_back({line, ink, thick, dash});
    }
    void say(const QString &words, PlotInk ink, bool strong,
             const std::vector<LabelPlaces::Place> &places)
    {
        m_places.putSomewhere({words, {}, ink, strong}, places);
    }

    void addAxes()
    {
        for (const double mark : m_axes.flows.marks) {
            const double level = y(mark * m_axes.oneM3S);
            stroke({{m_area.left(), level}, {m_area.right(), level}}, PlotInk::Rule, 1);
            m_places.put({m_axes.flows.said(mark), {}, PlotInk::Quiet, false},
                         {{{m_area.left() - 3, level}, LabelSide::Left}});
        }
        for (const double mark : m_axes.pressures.marks) {
            const double upright = x(mark * m_axes.onePa);
            stroke({{upright, m_area.top()}, {upright, m_area.bottom()}}, PlotInk::Rule, 1);
            m_places.put({m_axes.pressures.said(mark), {}, PlotInk::Quiet, false},
                         {{{upright, m_area.bottom() + 2}, LabelSide::Below}});
        }
        stroke({m_area.topLeft(), m_area.bottomLeft(), m_area.bottomRight()}, PlotInk::Edge, 1.2);
        say(PumpPlotWords::tr("flow · %1").arg(m_axes.flowUnit), PlotInk::Accent, true,
            {{{4, 8}, LabelSide::Right}});
        say(PumpPlotWords::tr("pressure at the pump · %1").arg(m_axes.pressureUnit),
            PlotInk::Accent, true,
            {{{m_area.right() + 40, m_area.bottom() + 25}, LabelSide::Left}});
    }

    void addCurve(const std::vector<OperatingPoint> &points, const PlotStroke &as)
    {
        PlotStroke drawn = as;
        for (const OperatingPoint &point : points)
            drawn.line.append(m_axes.at(point));
        for (int step = 1; step < drawn.line.size(); ++step)
            m_places.keepClear(
                QRectF(drawn.line[step - 1], drawn.line[step]).normalized().adjusted(-1, -2, 1, 2));
        m_plot.strokes.push_back(std::move(drawn));
    }

    void addCurves()
    {
        const bool several = !m_curves.together.empty();
        for (const PumpCurves::One &one : m_curves.each)
            addCurve(one.points, {{},
                                  PlotInk::Accent,
                                  several ? 1.4 : 2.4,
                                  several ? PlotStroke::Dash::Broken : PlotStroke::Dash::Whole});
        addCurve(m_curves.together, {{}, PlotInk::Accent, 2.4, PlotStroke::Dash::Whole});
        addCurve(m_curves.system, {{}, PlotInk::Pipe, 3, PlotStroke::Dash::Whole});
    }

    /// Names stand last: they find their place along the curve that they name.
    void addCurveNames()
    {
        using Sides = std::vector<LabelSide>;
        const Sides level{LabelSide::Above, LabelSide::Below, LabelSide::Left, LabelSide::Right};
        const Sides steep{LabelSide::Right, LabelSide::Left};
        const auto name = [&](const std::vector<OperatingPoint> &points, const QString &words,
                              const Sides &sides) {
            std::vector<LabelPlaces::Place> places;
            for (const double share : {0.12, 0.88, 0.5, 0.3, 0.7}) {
                const auto &point = points[static_cast<std::size_t>(
                    share * static_cast<double>(points.size() - 1))];
                for (const LabelSide side : sides) {
                    const double away = side == LabelSide::Right  ? 6
                                        : side == LabelSide::Left ? -6
                                                                  : 0;
                    places.push_back({m_axes.at(point) + QPointF(away, 0), side});
                }
            }
            say(words, PlotInk::Accent, true, places);
        };
        const bool several = !m_curves.together.empty();
        if (several)
            name(m_curves.together, PumpPlotWords::tr("together, behind their own lines"), level);
        QStringList named;
        for (const PumpCurves::One &one : m_curves.each) {
            const QString title = m_shown.station(one.station);
            if (!named.contains(title))
                name(one.points, several ? PumpPlotWords::tr("%1, each").arg(title) : title, level);
            named.append(title);
            reach(m_axes.at(one.points.front()), opensStation(one.station),
                  PumpPlotWords::tr("%1: its curve goes from %2 at %3 to %4 at %5")
                      .arg(title, m_shown.flowOf(one.points.front().flowM3S),
                           m_shown.pressure(one.points.front().pressurePa),
                           m_shown.flowOf(one.points.back().flowM3S),
                           m_shown.pressure(one.points.back().pressurePa)));
        }
        if (!m_curves.system.empty())
            name(m_curves.system, PumpPlotWords::tr("what the lines want"), steep);
    }

    void addSet()
    {
        if (!m_delivery.setPa || *m_delivery.setPa <= 0)
            return;
        const double upright = x(*m_delivery.setPa);
        stroke({{upright, m_area.top()}, {upright, m_area.bottom()}}, PlotInk::Ink, 1.4,
               PlotStroke::Dash::Broken);
        m_places.keepClear(QRectF(upright - 1, m_area.top(), 2, m_area.height()));
        say(PumpPlotWords::tr("set to %1").arg(m_shown.pressure(*m_delivery.setPa)), PlotInk::Ink,
            false,
            {{{upright - 4, m_area.bottom() - 10}, LabelSide::Left},
             {{upright + 4, m_area.bottom() - 10}, LabelSide::Right}});
        reach({upright, y(0)}, opensStation(m_delivery.to),
              PumpPlotWords::tr("%1: set to %2")
                  .arg(m_shown.station(m_delivery.to), m_shown.pressure(*m_delivery.setPa)));
    }

    void level(double m3S, const QString &words, PlotInk ink, PlotStroke::Dash dash)
    {
        const double high = y(m3S);
        stroke({{m_area.left(), high}, {m_area.right() + 8, high}}, ink, 1.4, dash);
        m_places.keepClear(QRectF(m_area.left(), high - 1, m_area.width(), 2));
        const auto places = [this, high](const QString &said) -> std::vector<LabelPlaces::Place> {
            const double half = sizeOfWords(said, false).width() / 2 + 6;
            return {{{m_area.left() + half, high}, LabelSide::Below},
                    {{m_area.left() + half, high}, LabelSide::Above},
                    {{m_area.right() - half, high}, LabelSide::Below},
                    {{m_area.right() - half, high}, LabelSide::Above}};
        };
        const QString narrow = QString(words).replace(QStringLiteral(": "), QStringLiteral(":\n"));
        if (!m_places.put({words, {}, ink, false}, places(words)))
            say(narrow, ink, false, places(narrow));
        reach({m_area.left(), high}, opensStation(m_delivery.to), words);
    }

    void addAsked()
    {
        if (m_curves.burntM3S > 0)
            level(m_curves.burntM3S,
                  PumpPlotWords::tr("the engine burns %1").arg(m_shown.flowOf(m_curves.burntM3S)),
                  PlotInk::Quiet, PlotStroke::Dash::Dotted);
        if (m_delivery.wantedM3S > 0)
            level(m_delivery.wantedM3S,
                  m_curves.burntM3S > 0
                      ? PumpPlotWords::tr("asked, with its margin: %1")
                            .arg(m_shown.flowOf(m_delivery.wantedM3S))
                      : PumpPlotWords::tr("asked: %1").arg(m_shown.flowOf(m_delivery.wantedM3S)),
                  PlotInk::Ink, PlotStroke::Dash::Broken);
    }

    void addMeeting()
    {
        const OperatingPoint &meeting = *m_delivery.working;
        const QPointF point = m_axes.at(meeting);
        m_places.keepClear(QRectF(point.x() - 8, point.y() - 8, 16, 16));
        const QString words =
            PumpPlotWords::tr("%1 at %2")
                .arg(m_shown.flowOf(meeting.flowM3S), m_shown.pressure(meeting.pressurePa));
        say(words, PlotInk::Ink, true,
            {{point + QPointF(8, -8), LabelSide::Right},
             {point + QPointF(8, 10), LabelSide::Right},
             {point - QPointF(8, 10), LabelSide::Left},
             {point + QPointF(-8, 10), LabelSide::Left}});
        stroke({point, {m_area.right() + 8, point.y()}}, PlotInk::Accent, 1,
               PlotStroke::Dash::Dotted);
        reach(point, opensStation(m_delivery.pumps.front().station),
              PumpPlotWords::tr("here pump and lines meet: %1").arg(words));
    }

    /// At the right: what the engine burns of what is given, and what becomes of the rest.
    void addBar()
    {
        if (m_curves.burntM3S <= 0)
            return;
        const double left = m_area.right() + 10;
        const double given = m_delivery.working->flowM3S;
        const double burnt = std::min(m_curves.burntM3S, given);
        addPiece({left, y(burnt), BarWide, y(0) - y(burnt)}, PlotInk::Accent, PlotArea::Fill::Full,
                 QStringList{PumpPlotWords::tr("burnt"), m_shown.flowOf(burnt)}.join(u'\n'));
        if (given > burnt)
            addPiece(
                {left, y(given), BarWide, y(burnt) - y(given)}, PlotInk::Accent,
                PlotArea::Fill::Hatched,
                QStringList{restWords(m_curves), m_shown.flowOf(m_curves.restM3S())}.join(u'\n'));
        if (m_curves.burntM3S > given)
            addPiece(
                {left, y(m_curves.burntM3S), BarWide, y(given) - y(m_curves.burntM3S)},
                PlotInk::Stop, PlotArea::Fill::Hatched,
                QStringList{PumpPlotWords::tr("lacks"), m_shown.flowOf(m_curves.burntM3S - given)}
                    .join(u'\n'));
    }

    void addPiece(const QRectF &box, PlotInk ink, PlotArea::Fill fill, const QString &words)
    {
        m_plot.areas.push_back({QPolygonF(box), ink, fill});
        m_places.keepClear(box);
        say(words, ink == PlotInk::Stop ? ink : PlotInk::Ink, false,
            {{{box.right() + 3, box.center().y()}, LabelSide::Right}});
    }

    static QString opensStation(const std::string &station)
    {
        return QString(QStringLiteral("station|") + said(station));
    }

    void reach(const QPointF &point, const QString &opens, const QString &says)
    {
        PlotPoint one;
        one.key = QString::number(m_plot.points.size());
        one.at = point;
        one.box = QRectF(point.x() - FingerReachSide / 2, point.y() - FingerReachSide / 2,
                         FingerReachSide, FingerReachSide);
        one.says = says;
        one.opens = opens;
        m_plot.points.push_back(std::move(one));
    }

    const FlowShown &m_shown;
    const PumpCurves &m_curves;
    const Delivery &m_delivery;
    double m_height;
    PumpAxes m_axes;
    QRectF m_area;
    LabelPlaces m_places;
    PlotLayout m_plot;
};

} // namespace

PlotLayout pumpPlot(const FlowShown &shown, const PumpCurves *curves, const PlotSpace &space)
{
    if (curves == nullptr || !curves->isThere())
        return pumpMissing(shown, curves, space);
    return PumpDrawn(shown, *curves, space).draw();
}

} // namespace flarestock
