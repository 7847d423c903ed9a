// SPDX-License-Identifier: MIT
//
// The pump's curve and where its lines meet it: the point lies on both curves, what is burnt and
// what comes back add up to what is given, and what is missing is named with the place to enter it.

#include "app/desk/plot/pump/pump_plot.h"
#include "app/desk/plot/pump/pump_words.h"
#include "app/workshop/flow/flow_words.h"
#include "pictures_on_screen.h"

#include <cmath>

using namespace flarestock;

namespace {

constexpr double LitreHour = 1e-3 / 3600;

/// Between the two points around it, straight; of a curve by rising pressure or flow.
double between(const std::vector<OperatingPoint> &points, double OperatingPoint::*by, double at)
{
    auto OperatingPoint::*other =
        by == &OperatingPoint::pressurePa ? &OperatingPoint::flowM3S : &OperatingPoint::pressurePa;
    for (std::size_t next = 1; next < points.size(); ++next) {
        const OperatingPoint &a = points[next - 1];
        const OperatingPoint &b = points[next];
        if (at >= a.*by && at <= b.*by)
            return a.*other + (at - a.*by) / (b.*by - a.*by) * (b.*other - a.*other);
    }
    return std::nan("");
}

} // namespace

class PumpIsSeen : public QObject, protected PicturesOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase() { open(); }
    void theMeetingLiesOnBothCurves_data();
    void theMeetingLiesOnBothCurves();
    void theCurveIsTheCatalogues();
    void whatIsAskedStandsAtItsLevel();
    void theAnswerIsReachedFirst();
    void morePowerIsMoreThanItCarries();
    void whatIsMissingSaysWhereToEnterIt();
    void twoPumpsAreToldApart();
    void picturesOfTheDemoBuilds();
    void nothingIsWarnedAbout();

private:
    [[nodiscard]] Plot &plot() const { return *m_desk->pictures()->pump(); }
};

void PumpIsSeen::theMeetingLiesOnBothCurves_data()
{
    QTest::addColumn<QString>("build");
    for (const char *build : {"coupe-fuel", "roadster-fuel", "coupe-classic", "single-seater-fuel",
                              "single-seater-return", "roadster-in-tank", "roadster-surge"})
        QTest::newRow(build) << QString::fromLatin1(build);
}

void PumpIsSeen::theMeetingLiesOnBothCurves()
{
    QFETCH(QString, build);
    QVERIFY(m_desk->openBuild(build));
    const SystemFlow flow = drawnFlow(*m_desk->build()->worked().expansion);
    const auto all = pumpCurves(flow);
    QCOMPARE(all.size(), flow.deliveries.size());
    for (const PumpCurves &curves : all) {
        QVERIFY(curves.isThere());
        const OperatingPoint &meeting = *curves.delivery->working;
        const auto &given = curves.together.empty() ? curves.each.front().points : curves.together;
        const double onPumps = between(given, &OperatingPoint::pressurePa, meeting.pressurePa);
        QVERIFY2(std::abs(onPumps - meeting.flowM3S) < meeting.flowM3S * 0.005,
                 qPrintable(QStringLiteral("%1 not %2").arg(onPumps).arg(meeting.flowM3S)));
        const double wanted = between(curves.system, &OperatingPoint::flowM3S, meeting.flowM3S);
        QVERIFY2(std::abs(wanted - meeting.pressurePa) < meeting.pressurePa * 0.005,
                 qPrintable(QStringLiteral("%1 not %2").arg(wanted).arg(meeting.pressurePa)));
        if (curves.burntM3S > 0) {
            QVERIFY(std::abs(curves.burntM3S + curves.restM3S() - meeting.flowM3S) < 1e-12);
            const auto feeding = std::count_if(
                flow.deliveries.begin(), flow.deliveries.end(),
                [](const Delivery &other) { return other.end != DeliveryEnd::Vessel; });
            QVERIFY(std::abs(curves.burntM3S * static_cast<double>(feeding) - *flow.engineM3S) <
                    1e-12);
        }
    }
}

/// EP-460 of the demo catalogue: 13.5 V, from its first pressure to its last.
void PumpIsSeen::theCurveIsTheCatalogues()
{
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-fuel")));
    const WorkedOut &worked = m_desk->build()->worked();
    const PlacedStation *pump = worked.expansion->station("pump");
    const auto *facts = pump->part->as<PumpFacts>();
    const SystemFlow flow = drawnFlow(*worked.expansion);
    const auto curves = pumpCurves(flow);
    int compared = 0;
    for (const PumpFacts::Point &point : facts->curve) {
        if (point.volts != flow.conditions.volts)
            continue;
        const double read = between(curves.front().each.front().points, &OperatingPoint::pressurePa,
                                    point.pressureKpa * 1e3);
        QVERIFY2(std::abs(read - point.flowLh * LitreHour) < 0.005 * point.flowLh * LitreHour,
                 qPrintable(QString::number(read / LitreHour)));
        ++compared;
    }
    QVERIFY(compared >= 2);
}

/// Also where there is little room: not below the axis, as if it were a pressure.
void PumpIsSeen::whatIsAskedStandsAtItsLevel()
{
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-fuel")));
    const WorkedOut &worked = m_desk->build()->worked();
    const SystemFlow flow = drawnFlow(*worked.expansion);
    const auto curves = pumpCurves(flow);
    const auto isAsked = [](const QString &words) {
        return words.startsWith(QStringLiteral("asked, with its margin:"));
    };
    for (const double width : {540.0, 560.0, 580.0, 900.0}) {
        const PlotLayout plot =
            pumpPlot({worked, flow, Units::Metric}, &curves.front(), {width, 270});
        const auto label =
            std::find_if(plot.labels.begin(), plot.labels.end(),
                         [&isAsked](const PlotLabel &one) { return isAsked(one.words); });
        const auto point =
            std::find_if(plot.points.begin(), plot.points.end(),
                         [&isAsked](const PlotPoint &one) { return isAsked(one.says); });
        QVERIFY(label != plot.labels.end() && point != plot.points.end());
        QVERIFY2(std::abs(label->box.center().y() - point->at.y()) <= label->box.height(),
                 qPrintable(QString::number(width)));
    }
}

void PumpIsSeen::theAnswerIsReachedFirst()
{
    look("coupe-fuel", BuildPictures::Pump);
    QVERIFY2(
        words("plotSays").startsWith(QStringLiteral("The pump carries it: 117 gph at 50.6 psi")),
        qPrintable(words("plotSays")));
    item("plot")->forceActiveFocus();
    key(Qt::Key_Home);
    QVERIFY2(words("plotCurrent").startsWith(QStringLiteral("here pump and lines meet: 117 gph")),
             qPrintable(words("plotCurrent")));
    QCOMPARE(m_desk->build()->opened()->spot(), QStringLiteral("station|pump"));
    key(Qt::Key_Right);
    QCOMPARE(m_desk->build()->opened()->spot(), QStringLiteral("station|regulator"));
}

void PumpIsSeen::morePowerIsMoreThanItCarries()
{
    look("coupe-fuel", BuildPictures::Pump);
    QVERIFY(m_desk->build()->pick(QStringLiteral("pump"), QStringLiteral("EP-460")));
    QVERIFY(m_desk->build()->answer(QStringLiteral("power"), QStringLiteral("1100 hp")));
    QTRY_VERIFY2(plot().says().contains(QStringLiteral("does not carry it")),
                 qPrintable(plot().says()));
    keepPictures("pump-too-small");
    m_desk->build()->takeBack();
    m_desk->build()->takeBack();
    QTRY_VERIFY(plot().says().contains(QStringLiteral("carries it")));
}

void PumpIsSeen::whatIsMissingSaysWhereToEnterIt()
{
    look("template|strained-pump", BuildPictures::Pump);
    QTRY_VERIFY(item("plotWhyNone") != nullptr);
    QVERIFY2(words("plotWhyNone").startsWith(QStringLiteral("Nobody says what pressure")),
             qPrintable(words("plotWhyNone")));
    look("template|gravity-feed", BuildPictures::Pump);
    QTRY_VERIFY(words("plotWhyNone").startsWith(QStringLiteral("No pump")));
    // A pump whose maker says nothing.
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-fuel")));
    const WorkedOut &worked = m_desk->build()->worked();
    const SystemFlow flow = drawnFlow(*worked.expansion);
    PumpCurves curves = pumpCurves(flow).front();
    curves.without.push_back(curves.each.front().station);
    curves.each.clear();
    const PlotLayout none = pumpPlot({worked, flow, Units::Inch}, &curves, {600, 300});
    QVERIFY(!none.isThere());
    QCOMPARE(none.whyNone,
             QStringLiteral("Nobody has entered what EP-460 gives at which pressure."));
    QVERIFY(none.whatToDo.contains(QStringLiteral("\"pump curve\"")));
}

void PumpIsSeen::twoPumpsAreToldApart()
{
    look("roadster-surge", BuildPictures::Pump);
    QTRY_COMPARE(plot().views().size(), 2);
    const QString lift = plot().says();
    QVERIFY2(lift.contains(QStringLiteral("more comes into the")), qPrintable(lift));
    item("plotView")->forceActiveFocus();
    key(Qt::Key_Tab);
    QCOMPARE(focusName(*m_window), QStringLiteral("plotView"));
    key(Qt::Key_Space);
    QTRY_VERIFY(plot().says() != lift);
    look("single-seater-fuel", BuildPictures::Pump); // Two side by side are one picture.
    QTRY_COMPARE(plot().views().size(), 0);
}

void PumpIsSeen::picturesOfTheDemoBuilds()
{
    for (const char *build :
         {"coupe-fuel", "single-seater-fuel", "roadster-fuel", "roadster-surge"}) {
        look(build, BuildPictures::Pump);
        QTRY_VERIFY(plot().isThere());
        keepPictures(QByteArray(build).prepend("pump-").constData());
    }
}

void PumpIsSeen::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(PumpIsSeen)
#include "tst_pump_is_seen.moc"
