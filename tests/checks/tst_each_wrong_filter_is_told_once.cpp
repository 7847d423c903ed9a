// SPDX-License-Identifier: MIT
//
// Filters that lack, stand in the wrong place or are of the wrong grade: each is told once,
// whatever follows of it. Grades and places: common practice, no source (five trade articles agree,
// no standard was found); ISO 16889 for why ratings of different basis do not compare.

#include "build_by_hand.h"
#include "said_findings.h"

#include <QTest>

using namespace flarestock;
using namespace flarestock::tests;

class FiltersTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void anElectricPumpHasAFilterOnBothSides_data();
    void anElectricPumpHasAFilterOnBothSides();
    void noPumpFilterIsAskedOfGravityBrakesAndCoolant();
    void coarseComesBeforeFine();
    void eachWrongFilterIsToldOnce_data();
    void eachWrongFilterIsToldOnce();
    void oneOfTwinPumpsIsNotSwappedWithWhatBothShare();
    void gradesFitWhatFollows_data();
    void gradesFitWhatFollows();
    void makersFiguresAreComparedWithinAFactorOfTwo_data();
    void makersFiguresAreComparedWithinAFactorOfTwo();
};

void FiltersTest::anElectricPumpHasAFilterOnBothSides_data()
{
    QTest::addColumn<QStringList>("line");
    QTest::addColumn<bool>("sock");
    QTest::addColumn<bool>("electric");
    QTest::addColumn<QString>("stop");
    const QString tank = QStringLiteral("tank"), pre = QStringLiteral("prefilter"),
                  pump = QStringLiteral("pump"), post = QStringLiteral("postfilter"),
                  rail = QStringLiteral("rail");
    QTest::newRow("none before") << QStringList{tank, pump, post, rail} << false << true
                                 << "what it draws";
    QTest::newRow("a sock in the tank")
        << QStringList{tank, pump, post, rail} << true << true << "";
    QTest::newRow("none after") << QStringList{tank, pre, pump, rail} << false << true
                                << "what it delivers";
    QTest::newRow("none at all") << QStringList{tank, pump, rail} << false << true
                                 << "what it draws";
    QTest::newRow("a mechanical pump")
        << QStringList{tank, pump, post, rail} << true << false << "";
}

void FiltersTest::anElectricPumpHasAFilterOnBothSides()
{
    QFETCH(QStringList, line);
    QFETCH(bool, sock);
    QFETCH(bool, electric);
    QFETCH(QString, stop);
    BuildByHand build;
    std::vector<std::string> ids;
    for (const auto &name : line) {
        const auto id = name.toStdString();
        ids.push_back(id);
        if (id == "tank") {
            VesselFacts facts;
            facts.pickupSock = sock;
            build.add(id, Kind::Tank, facts);
        } else if (id == "pump") {
            build.pump(id, electric);
        } else if (id == "rail") {
            build.add(id, Kind::Rail, FuelUserFacts{});
        } else {
            build.filter(id, id == "prefilter" ? 100 : 10, RatingBasis::Absolute);
        }
    }
    build.inLine(ids);
    const auto findings = build.findings();
    const auto stops = of(findings, Severity::Stop);
    const std::size_t lacking = line.contains(QStringLiteral("prefilter")) || sock ? 0 : 1;
    const std::size_t behind = line.contains(QStringLiteral("postfilter")) ? 0 : 1;
    QVERIFY2(stops.size() == lacking + behind, listed(findings)); // Each filter that is not there.
    if (!stop.isEmpty())
        SAYS(findings, Severity::Stop, stop.toStdString());
}

void FiltersTest::noPumpFilterIsAskedOfGravityBrakesAndCoolant()
{
    BuildByHand build;
    build.expansion.filters = FilterRule::None;
    build.add("tank", Kind::Tank, VesselFacts{});
    build.pump("pump");
    build.add("rail", Kind::Rail, FuelUserFacts{});
    build.inLine({"tank", "pump", "rail"});
    QVERIFY2(of(build.findings(), Severity::Stop).empty(), listed(build.findings()));
}

void FiltersTest::coarseComesBeforeFine()
{
    BuildByHand build;
    build.add("tank", Kind::Tank, VesselFacts{});
    build.filter("first", 10);
    build.pump("pump");
    build.filter("second", 100);
    build.add("rail", Kind::Rail, FuelUserFacts{});
    build.inLine({"tank", "first", "pump", "second", "rail"});
    const auto stops = of(build.findings(), Severity::Stop);
    QVERIFY2(stops.size() == 1, listed(stops)); // Two filters changed over are one cause.
    SAYS(stops, Severity::Stop,
         "First 10 µm nominal and second 100 µm nominal stand the wrong way");
    SAYS(stops, Severity::Stop, "starves the pump");
    QVERIFY2(of(build.findings(), Severity::Caution).empty(), listed(build.findings()));
}

void FiltersTest::eachWrongFilterIsToldOnce_data()
{
    QTest::addColumn<int>("before");
    QTest::addColumn<int>("after");
    QTest::addColumn<QString>("says");
    const auto row = [](const char *name, int before, int after, const char *says) {
        QTest::newRow(name) << before << after << QString::fromUtf8(says);
    };
    row("fine before and after", 10, 10, "starves it");
    row("a little fine before", 60, 10, "finer than its suction side likes");
    row("coarse before and after", 100, 100, "too coarse for the user");
    row("coarser after than before", 80, 100, "too coarse for the user");
    row("very coarse before", 200, 10, "lets much through");
}

void FiltersTest::eachWrongFilterIsToldOnce()
{
    QFETCH(int, before);
    QFETCH(int, after);
    QFETCH(QString, says);
    BuildByHand build;
    build.add("tank", Kind::Tank, VesselFacts{});
    build.filter("first", before);
    build.pump("pump");
    build.filter("second", after);
    build.add("user", Kind::Rail, FuelUserFacts{});
    build.inLine({"tank", "first", "pump", "second", "user"});
    auto grave = of(build.findings(), Severity::Stop);
    for (const auto &caution : of(build.findings(), Severity::Caution))
        grave.push_back(caution);
    QVERIFY2(grave.size() == 1, listed(grave));
    QVERIFY2(grave.front().about.find(says.toStdString()) != std::string::npos, listed(grave));
}

/// Two pumps draw through filters of their own; one of them is as fine as the filter behind both.
void FiltersTest::oneOfTwinPumpsIsNotSwappedWithWhatBothShare()
{
    BuildByHand build;
    build.add("tank", Kind::Tank, VesselFacts{});
    for (const char *side : {"left", "right"}) {
        build.filter(std::string(side) + " filter", side == std::string("left") ? 10 : 100);
        build.pump(side);
    }
    build.filter("shared", 100);
    build.add("rail", Kind::Rail, FuelUserFacts{});
    build.inLine({"tank", "left filter", "left", "shared", "rail"});
    build.inLine({"tank", "right filter", "right", "shared"});
    const auto stops = of(build.findings(), Severity::Stop);
    QVERIFY2(stops.size() == 2, listed(stops));
    SAYS(stops, Severity::Stop, "starves it");
    SAYS(stops, Severity::Stop, "Shared P-shared: 100 µm nominal is too coarse for the rail");
}

void FiltersTest::gradesFitWhatFollows_data()
{
    QTest::addColumn<bool>("carburettor");
    QTest::addColumn<int>("micron");
    QTest::addColumn<QString>("severity");
    QTest::newRow("10 before injection") << false << 10 << "";
    QTest::newRow("40 before injection") << false << 40 << "caution";
    QTest::newRow("100 before injection") << false << 100 << "stop";
    QTest::newRow("40 before a carburettor") << true << 40 << "";
    QTest::newRow("10 before a carburettor") << true << 10 << "";
    QTest::newRow("60 before a carburettor") << true << 60 << "caution";
}

void FiltersTest::gradesFitWhatFollows()
{
    QFETCH(bool, carburettor);
    QFETCH(int, micron);
    QFETCH(QString, severity);
    BuildByHand build;
    build.add("tank", Kind::Tank, VesselFacts{});
    build.filter("prefilter", 120);
    build.pump("pump");
    build.filter("postfilter", micron);
    build.add("user", carburettor ? Kind::Carburettor : Kind::Rail, FuelUserFacts{});
    build.inLine({"tank", "prefilter", "pump", "postfilter", "user"});
    const auto findings = build.findings();
    for (const auto grave : {Severity::Stop, Severity::Caution})
        QCOMPARE(says(findings, grave, "too coarse for the user"),
                 severity == QString::fromUtf8(text(grave).data()));
}

void FiltersTest::makersFiguresAreComparedWithinAFactorOfTwo_data()
{
    QTest::addColumn<int>("micron");
    QTest::addColumn<bool>("absolute");
    QTest::addColumn<QString>("severity");
    // The user passes 20 µm by its maker's word.
    QTest::newRow("10 nominal decides") << 10 << false << "";
    QTest::newRow("15 nominal is too near") << 15 << false << "caution";
    QTest::newRow("15 absolute decides") << 15 << true << "";
    QTest::newRow("30 is coarser, within two") << 30 << true << "caution";
    QTest::newRow("50 is beyond two") << 50 << true << "stop";
}

void FiltersTest::makersFiguresAreComparedWithinAFactorOfTwo()
{
    QFETCH(int, micron);
    QFETCH(bool, absolute);
    QFETCH(QString, severity);
    BuildByHand build;
    build.add("tank", Kind::Tank, VesselFacts{});
    build.filter("prefilter", 120);
    build.pump("pump");
    build.filter("postfilter", micron, absolute ? RatingBasis::Absolute : RatingBasis::Nominal);
    FuelUserFacts facts;
    facts.passageMicron = 20;
    build.add("user", Kind::Injector, facts);
    build.inLine({"tank", "prefilter", "pump", "postfilter", "user"});
    const auto findings = build.findings();
    for (const auto grave : {Severity::Stop, Severity::Caution})
        QCOMPARE(says(findings, grave, "too coarse for the user"),
                 severity == QString::fromUtf8(text(grave).data()));
}

QTEST_APPLESS_MAIN(FiltersTest)
#include "tst_each_wrong_filter_is_told_once.moc"
