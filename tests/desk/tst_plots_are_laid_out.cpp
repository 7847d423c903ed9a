// SPDX-License-Identifier: MIT
//
// The pictures of every demo build at every width: no two words lie on one another, every run and
// station is reached, and the figures add up.

#include "app/desk/launch/open_shop.h"
#include "app/desk/plot/cost/cost_plot.h"
#include "app/desk/plot/label_places.h"
#include "app/desk/plot/pressure/pressure_panels.h"
#include "app/desk/plot/pressure/pressure_plot.h"
#include "app/desk/plot/pump/pump_plot.h"
#include "app/desk/plot/round_scale.h"
#include "app/desk/shop/shop_on_desk.h"
#include "app/desk/words/spoken.h"
#include "app/workshop/flow/flow_words.h"

#include <QTemporaryDir>
#include <QTest>

#include <cmath>

using namespace flarestock;

namespace {

constexpr double Widths[] = {520, 640, 890, 1400};
constexpr double Heights[] = {150, 240, 330};

struct Build {
    std::string id;
    WorkedOut worked;
    SystemFlow flow;
    std::vector<PressureLine> lines;
};

QString overlapIn(const PlotLayout &plot)
{
    const QRectF all(0, 0, plot.space.width, plot.space.height);
    for (std::size_t a = 0; a < plot.labels.size(); ++a) {
        const PlotLabel &one = plot.labels[a];
        if (!all.contains(one.box))
            return QString(one.words + QStringLiteral(" leaves the picture"));
        if (one.box.size() != sizeOfWords(one.words, one.strong))
            return QString(one.words + QStringLiteral(" has a box that is not its own"));
        for (std::size_t b = a + 1; b < plot.labels.size(); ++b)
            if (one.box.intersects(plot.labels[b].box))
                return QString(one.words + QStringLiteral(" lies on ") + plot.labels[b].words);
    }
    return {};
}

/// All pictures of a build that there are.
std::vector<PlotLayout> plotsOf(const Build &build, const FlowShown &shown, const PlotSpace &space)
{
    std::vector<PlotLayout> plots;
    for (const PressureLine &line : build.lines)
        plots.push_back(pressurePlot(shown, &line, space));
    for (const PumpCurves &curves : pumpCurves(build.flow))
        plots.push_back(pumpPlot(shown, &curves, space));
    for (const auto &bars : {costBySide(build.worked), costBy(build.worked, Grouping::Station),
                             costBy(build.worked, Grouping::Kind)})
        plots.push_back(costPlot({QStringLiteral("cost"), costSays(bars, QStringLiteral("USD")),
                                  bars, QStringLiteral("USD")},
                                 space));
    std::erase_if(plots, [](const PlotLayout &plot) { return !plot.isThere(); });
    return plots;
}

bool isSaid(const PlotLayout &plot, const QString &words)
{
    return std::any_of(plot.labels.begin(), plot.labels.end(),
                       [&words](const PlotLabel &label) { return label.words == words; });
}

} // namespace

class PlotsAreLaidOut : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void aScaleHasRoundMarks_data();
    void aScaleHasRoundMarks();
    void aLabelGivesWay();
    void noWordsLieOnOthers();
    void everyRunAndStationIsReached();
    void theDropsAddUpToTheDifference();
    void thePanelsShowWhatFlowSays();

private:
    QTemporaryDir m_folder;
    std::vector<Build> m_builds;
};

void PlotsAreLaidOut::initTestCase()
{
    const auto shop = makeDemoFile(m_folder.filePath(QStringLiteral("demo")).toStdString());
    QVERIFY2(shop, shop ? "" : shop.error().sentence().c_str());
    std::vector<BuildPlan> plans = shop->builds;
    for (const ShopOnDesk::Form &form : shop->templates) {
        plans.emplace_back();
        plans.back().id = form.id;
        plans.back().templateId = form.id;
    }
    for (const BuildPlan &plan : plans) {
        const auto worked = shop->workOut(plan);
        QVERIFY2(worked, worked ? "" : worked.error().sentence().c_str());
        m_builds.push_back({plan.id, *worked, drawnFlow(*worked->expansion), {}});
    }
    int drawn = 0;
    for (Build &build : m_builds) {
        build.lines = pressureLines(*build.worked.expansion, build.flow);
        drawn += build.lines.empty() ? 0 : 1;
    }
    QVERIFY(drawn >= 14);
}

void PlotsAreLaidOut::aScaleHasRoundMarks_data()
{
    QTest::addColumn<double>("least");
    QTest::addColumn<double>("most");
    QTest::addColumn<QString>("marks");
    QTest::newRow("rail pressure") << 0.0 << 50.2 << "0 10 20 30 40 50 60";
    QTest::newRow("below the air") << -3.95 << 0.0 << "-4 -3 -2 -1 0";
    QTest::newRow("hundredths") << 0.0 << 0.061 << "0.00 0.01 0.02 0.03 0.04 0.05 0.06 0.07";
    QTest::newRow("nothing at all") << 0.0 << 0.0 << "0.0 0.2";
    QTest::newRow("a pump's flow") << 0.0 << 486.0 << "0 100 200 300 400 500";
}

void PlotsAreLaidOut::aScaleHasRoundMarks()
{
    QFETCH(double, least);
    QFETCH(double, most);
    QFETCH(QString, marks);
    const RoundScale scale = roundScale(least, most, 8);
    QStringList said;
    for (const double mark : scale.marks)
        said.append(scale.said(mark));
    QCOMPARE(said.join(u' '), marks);
    QVERIFY(scale.low <= least && scale.high >= most);
}

void PlotsAreLaidOut::aLabelGivesWay()
{
    LabelPlaces places(QRectF(0, 0, 200, 60));
    const PlotLabel label{QStringLiteral("43.5 psi"), {}, PlotInk::Quiet, false};
    const std::vector<LabelPlaces::Place> above{{{100, 30}, LabelSide::Above}};
    QVERIFY(places.put(label, above));
    QVERIFY(!places.put(label, above));
    QVERIFY(places.putSomewhere(label, above));
    QVERIFY(!places.all()[0].box.intersects(places.all()[1].box));
    LabelPlaces full(QRectF(0, 0, 200, 60));
    full.keepClear(QRectF(0, 0, 200, 60));
    QVERIFY(!full.putSomewhere(label, above));
}

void PlotsAreLaidOut::noWordsLieOnOthers()
{
    int drawn = 0;
    for (const Build &build : m_builds)
        for (const double width : Widths)
            for (const double height : Heights)
                for (const Units units : {Units::Inch, Units::Metric})
                    for (const PlotLayout &plot :
                         plotsOf(build, {build.worked, build.flow, units}, {width, height})) {
                        QVERIFY(!plot.labels.empty() && !plot.says.isEmpty());
                        const QString wrong = overlapIn(plot);
                        QVERIFY2(wrong.isEmpty(), qPrintable(QStringLiteral("%1, %2 at %3: %4")
                                                                 .arg(said(build.id), plot.title)
                                                                 .arg(width)
                                                                 .arg(wrong)));
                        ++drawn;
                    }
    QVERIFY(drawn > 1000);
}

void PlotsAreLaidOut::everyRunAndStationIsReached()
{
    for (const Build &build : m_builds) {
        const FlowShown shown{build.worked, build.flow, Units::Inch};
        for (const PressureLine &line : build.lines) {
            const PlotLayout plot = pressurePlot(shown, &line, {560, 300});
            for (const PressurePart &part : line.parts)
                for (const PressureStep &step : part.steps) {
                    const QString opens = shown.spotOf(step.run);
                    QVERIFY2(std::any_of(plot.points.begin(), plot.points.end(),
                                         [&opens](const PlotPoint &point) {
                                             return point.opens == opens && !point.says.isEmpty();
                                         }),
                             qPrintable(opens));
                    for (const std::string &station : {step.from, step.to})
                        QVERIFY2(isSaid(plot, wordsWithin(shown.station(station), false, 130)),
                                 (build.id + ": " + station).c_str());
                }
        }
    }
}

/// Each part begins and ends where its runs' drops say.
void PlotsAreLaidOut::theDropsAddUpToTheDifference()
{
    int parts = 0;
    for (const Build &build : m_builds)
        for (const PressureLine &line : build.lines)
            for (const PressurePart &part : line.parts) {
                double sum = 0;
                for (const PressureStep &step : part.steps) {
                    const RunFlow *run = build.flow.run(step.run);
                    QVERIFY(run != nullptr);
                    QVERIFY(std::abs(step.dropPa() - run->loss.dropPa) < 1e-6 * 1e5);
                    sum += run->loss.dropPa;
                }
                const double difference =
                    part.steps.front().beginsPa() - part.steps.back().endsPa();
                QVERIFY2(std::abs(difference - sum) < 0.1, build.id.c_str());
                ++parts;
            }
    QVERIFY(parts > 20);
}

/// The rail's 43.5 psi, lines and pump of the coupe, by hand out of systemFlow().
void PlotsAreLaidOut::thePanelsShowWhatFlowSays()
{
    const Build &coupe = m_builds.front();
    QCOMPARE(coupe.id, std::string("coupe-fuel"));
    const PressureLine &line = coupe.lines.front();
    const Delivery &delivery = coupe.flow.deliveries.front();
    const auto *pressure = line.part(PressurePart::Side::Pressure);
    QVERIFY(std::abs(pressure->steps.back().endsPa() - 43.5 * 6894.757293) < 1);
    QVERIFY(std::abs(pressure->steps.front().beginsPa() - 43.5 * 6894.757293 -
                     delivery.line.dropPa) < 1);
    const auto *suction = line.part(PressurePart::Side::Suction);
    const InletMargin &inlet = *delivery.pumps.front().inlet;
    QVERIFY(std::abs(suction->steps.back().endsPa() - (inlet.inletPa - inlet.atmospherePa)) < 0.1);
    // It boils at the fuel's vapour pressure, less the air around.
    QCOMPARE(suction->limits.front().what, PressureLimit::What::Boils);
    QVERIFY(std::abs(suction->limits.front().pa - (coupe.flow.vapour->pascal - 101325)) < 0.1);
    const auto panels = pressurePanels(line, {900, 44, 300}, Units::Inch);
    QCOMPARE(panels.size(), std::size_t(3));
    QVERIFY(panels[0].y(0) < panels[0].y(suction->limits.front().pa)); // Boiling lies below.
    QCOMPARE(panels[1].unit, QStringLiteral("psi"));
}

QTEST_MAIN(PlotsAreLaidOut)
#include "tst_plots_are_laid_out.moc"
