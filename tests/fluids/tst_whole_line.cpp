// SPDX-License-Identifier: MIT
//
// A line of many pieces: against sums by hand, and what its pieces owe each other. (Examples of
// textbooks: tst_line_examples_of_textbooks.cpp.)

#include "model/fluids/line/sizing.h"
#include "model/fluids/line/whole_line.h"
#include "tests/fluids/table_file.h"

#include <QTest>

#include <limits>
#include <random>

using namespace flarestock;

namespace {

constexpr double Foot = 0.3048;
constexpr double Inch = 0.0254;
constexpr double LitreHour = 1e-3 / 3600;

/// Gasoline, 745 kg/m³ and 0.41 mPa·s.
WholeLine gasolineLine(double litresPerHour)
{
    WholeLine line;
    line.flowM3S = litresPerHour * LitreHour;
    line.densityKgM3 = 745;
    line.viscosityPaS = 0.41e-3;
    return line;
}

CleanLoss ratedFilter()
{
    CleanLoss filter;
    filter.points = {{400 * LitreHour, 10e3}};
    filter.viscosityPaS = 0.41e-3;
    return filter;
}

} // namespace

class WholeLineTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void launchTakesMoreThanFriction();
    void losesWhatItsPiecesLose();
    void changeOfBoreIsCountedOnce();
    void pressureAlongTheLine();
    void teesChangeTheFlow();
    void uncertainFlowIsTold();
    void assumedBoreIsCarriedThrough();
    void filterByItsCurve();
    void velocitiesOfRoles();
    void impossiblePiecesAreNamed();
    void lawsOfAnyLine();
};

void WholeLineTest::launchTakesMoreThanFriction()
{
    // By hand: 3 m of gasoline at 1.5 g: 745 × 1.5 × 9.80665 × 3 = 32.88 kPa; a metre up 7.306 kPa.
    WholeLine line = gasolineLine(60);
    line.pieces = {{StraightLine{0.00794, 3, 1.5e-6}, 1.0, 3.0}};
    line.accelerationMS2 = 1.5 * 9.80665;
    const WholeLineLoss loss = wholeLineLoss(line).value();
    NEAR_PERCENT(loss.accelerationPa, 32876.8, 1e-3);
    NEAR_PERCENT(loss.levelPa, 7305.95, 1e-3);
    QVERIFY(loss.frictionPa < loss.accelerationPa);
    line.accelerationMS2 = -1.5 * 9.80665;
    NEAR_PERCENT(wholeLineLoss(line).value().accelerationPa, -32876.8, 1e-3);
}

void WholeLineTest::losesWhatItsPiecesLose()
{
    WholeLine line = gasolineLine(255);
    line.pieces = {{EntryOrExit{0.00794, Opening::RoundedEntrance}},
                   {HoseEnd{0.00794, EndForm::Swept, 45}},
                   {StraightLine{0.00794, 3, 1.5e-6}, 0.3},
                   {HoseEnd{0.00794, EndForm::Drilled, 90}},
                   {EntryOrExit{0.00794, Opening::Exit}}};
    LineFlow sum;
    sum.flowM3S = line.flowM3S;
    sum.boreM = 0.00794;
    sum.lengthM = 3;
    sum.densityKgM3 = 745;
    sum.viscosityPaS = 0.41e-3;
    sum.roughnessM = 1.5e-6;
    sum.minorK = 0.05 + 0.2 + 1.3 + 1.0;
    sum.riseM = 0.3;
    const WholeLineLoss loss = wholeLineLoss(line).value();
    NEAR_PERCENT(loss.dropPa, lineLoss(sum).value().dropPa, 1e-9);
    NEAR_PERCENT(loss.minorPa, lineLoss(sum).value().minorPa, 1e-9);
    QVERIFY(!loss.boreAssumed && !loss.fromRatedPoint);
}

void WholeLineTest::changeOfBoreIsCountedOnce()
{
    // Borda and Carnot for widening, Technical Paper 410 for narrowing: (1 - β²)² = 0.117129 and
    // 0.5 (1 - β²) = 0.171120 between 10.3 and 12.7 mm, on the velocity in the smaller, here
    // 1.5 m/s: 98.168 and 143.420 Pa (worked out with python-fluids).
    WholeLine line = gasolineLine(0);
    line.flowM3S = 1.5 * std::acos(-1.0) / 4 * 0.0103 * 0.0103;
    line.pieces = {{Adapter{0.0103}}, {Adapter{0.0127}}};
    NEAR_PERCENT(wholeLineLoss(line).value().dropPa, 98.16848, 1e-4);
    line.pieces = {{Adapter{0.0127}}, {Adapter{0.0103}}};
    NEAR_PERCENT(wholeLineLoss(line).value().dropPa, 143.420237, 1e-4);
    line.flowM3S = 200 * LitreHour;
    line.pieces = {
        {Adapter{0.0127}}, {Adapter{0.0127}}, {FilterPiece{ratedFilter()}}, {Adapter{0.0103}}};
    QCOMPARE(wholeLineLoss(line).value().minorPa, 0.0); // The filter's curve has its ports in it.
    line.pieces = {{EntryOrExit{0.0127, Opening::Exit}}, {EntryOrExit{0.0103, Opening::Exit}}};
    QCOMPARE(wholeLineLoss(line).value().losses.size(),
             std::size_t(2)); // Between them is a vessel.
}

void WholeLineTest::pressureAlongTheLine()
{
    WholeLine line = gasolineLine(300);
    line.startPa = 350e3;
    line.pieces = {{EntryOrExit{0.01032, Opening::SharpEntrance}},
                   {StraightLine{0.01032, 2, 1.5e-6}},
                   {HoseEnd{0.0065, EndForm::Swept, 90}},
                   {StraightLine{0.01032, 1.5, 1.5e-6}},
                   {EntryOrExit{0.01032, Opening::Exit}}};
    const WholeLineLoss loss = wholeLineLoss(line).value();
    QCOMPARE(loss.along.size(), loss.losses.size() + 1);
    QCOMPARE(loss.losses.size(), std::size_t(7));
    for (std::size_t at = 1; at < loss.along.size(); ++at) {
        QVERIFY(loss.along[at].totalPa < loss.along[at - 1].totalPa);
        QVERIFY(loss.along[at].alongM >= loss.along[at - 1].alongM);
        QVERIFY(loss.along[at].wallPa <= loss.along[at].totalPa);
    }
    QCOMPARE(loss.along.back().alongM, 3.5);
    NEAR_PERCENT(loss.along.front().totalPa - loss.along.back().totalPa, loss.dropPa, 1e-6);
    QCOMPARE(loss.along.back().wallPa, loss.along.back().totalPa); // At rest in the vessel.
    // Bernoulli: at the wall of the narrow end less by ρ v²/2, with v = 4 Q / π d².
    const double velocity = 4 * line.flowM3S / (std::acos(-1.0) * 0.0065 * 0.0065);
    const LinePoint &narrow = loss.along[4];
    NEAR_PERCENT(narrow.totalPa - narrow.wallPa, 745 * velocity * velocity / 2, 1e-6);
}

void WholeLineTest::teesChangeTheFlow()
{
    // Technical Paper 410, problem 7.35 (re-typed copy): 100 gpm by the branch into 300 by the run,
    // 4.026 in bores, K -0.0422 and 0.325; the run loses 0.513 ft.
    const double gallonMinute = 3.785411784e-3 / 60;
    WholeLine line;
    line.densityKgM3 = 998;
    line.viscosityPaS = 1e-3;
    line.flowM3S = 300 * gallonMinute;
    line.pieces = {{Tee{4.026 * Inch, TeeWay::Converging, TeeLeg::Run, 100 * gallonMinute}}};
    const WholeLineLoss run = wholeLineLoss(line).value();
    NEAR_PERCENT(run.dropPa / (998 * 9.80665) / Foot, 0.513, 0.3);
    NEAR_PERCENT(run.endFlowM3S, 400 * gallonMinute, 1e-9);
    line.flowM3S = 100 * gallonMinute;
    line.pieces = {{Tee{4.026 * Inch, TeeWay::Converging, TeeLeg::Branch, 300 * gallonMinute}}};
    NEAR_PERCENT(wholeLineLoss(line).value().dropPa / run.dropPa, -0.0421875 / 0.325, 1e-6);
    // Half of the fuel goes off to the other rail: what follows loses as half of it does.
    WholeLine rails = gasolineLine(200);
    rails.pieces = {{Tee{0.0103, TeeWay::Diverging, TeeLeg::Branch, 100 * LitreHour}},
                    {StraightLine{0.0103, 1, 0}}};
    WholeLine half = gasolineLine(100);
    half.pieces = {{StraightLine{0.0103, 1, 0}}};
    NEAR_PERCENT(wholeLineLoss(rails).value().frictionPa, wholeLineLoss(half).value().dropPa, 1e-9);
    NEAR_PERCENT(wholeLineLoss(rails).value().endFlowM3S, 100 * LitreHour, 1e-9);
}

void WholeLineTest::uncertainFlowIsTold()
{
    WholeLine line = gasolineLine(36); // Re 2915 in 7.9375 mm (python-fluids)
    line.pieces = {{StraightLine{0.0079375, 5, 1.5e-6}}};
    const WholeLineLoss loss = wholeLineLoss(line).value();
    QCOMPARE(loss.losses.front().regime, Regime::Uncertain);
    NEAR_PERCENT(loss.dropPa, 422.3613, 1e-4);
    // 64/Re against 0.0440744, both on the same velocity pressure.
    NEAR_PERCENT(loss.dropLeastPa, 422.3613 * (64 / 2914.733) / 0.04407439, 1e-4);
    line.flowM3S *= 4;
    QCOMPARE(wholeLineLoss(line).value().dropLeastPa, wholeLineLoss(line).value().dropPa);
}

void WholeLineTest::assumedBoreIsCarriedThrough()
{
    WholeLine line = gasolineLine(200);
    StraightLine hose{0.00794, 1, 0, true};
    line.pieces = {{Adapter{0.0103}}, {hose}, {Adapter{0.00794}}};
    const WholeLineLoss loss = wholeLineLoss(line).value();
    QVERIFY(loss.boreAssumed);
    QVERIFY(!loss.losses[0].boreAssumed && loss.losses[1].boreAssumed);
    QVERIFY(loss.losses[1].boreChange && loss.losses[2].boreAssumed);
    QVERIFY(!loss.losses[3].boreAssumed);
}

void WholeLineTest::filterByItsCurve()
{
    WholeLine line = gasolineLine(200);
    line.pieces = {{FilterPiece{ratedFilter()}}};
    // Darcy's law through the one point: half the flow, half the loss; twice the viscosity, twice.
    NEAR_PERCENT(wholeLineLoss(line).value().dropPa, 5e3, 1e-9);
    QVERIFY(wholeLineLoss(line).value().fromRatedPoint);
    line.viscosityPaS *= 2;
    NEAR_PERCENT(wholeLineLoss(line).value().dropPa, 10e3, 1e-9);
    CleanLoss curve;
    curve.points = {{100 * LitreHour, 1e3}, {200 * LitreHour, 3e3}, {400 * LitreHour, 10e3}};
    NEAR_PERCENT(cleanLossAt(curve, 50 * LitreHour, 1).value().pascal, 500, 1e-9);
    NEAR_PERCENT(cleanLossAt(curve, 150 * LitreHour, 1).value().pascal, 2e3, 1e-9);
    NEAR_PERCENT(cleanLossAt(curve, 300 * LitreHour, 1).value().pascal, 6.5e3, 1e-9);
    NEAR_PERCENT(cleanLossAt(curve, 400 * LitreHour, 1).value().pascal, 10e3, 1e-9);
    QVERIFY(!cleanLossAt(curve, 400 * LitreHour, 1).value().viscosityScaled);
    QVERIFY(!cleanLossAt(curve, 100 * LitreHour, 1).value().fromRatedPoint);
    QVERIFY(!cleanLossAt(curve, 401 * LitreHour, 1).has_value());
    QVERIFY(!cleanLossAt({}, 1e-6, 1).has_value());
    curve.points[1].lossPa = 500;
    QVERIFY(!cleanLossAt(curve, 50 * LitreHour, 1).has_value());
}

void WholeLineTest::velocitiesOfRoles()
{
    // AS 1020-1984, as quoted: 8 m/s in 10 mm, 4.9 in 25 mm, 3.5 in 50 mm.
    NEAR_PERCENT(staticChargeVelocityMS(0.010), 8, 0.1);
    NEAR_PERCENT(staticChargeVelocityMS(0.025), 4.9, 4);
    NEAR_PERCENT(staticChargeVelocityMS(0.050), 3.5, 3);
    // Judgement within hydraulic practice: suction slowest.
    QVERIFY(velocityLimit(LineRole::Suction).stopMS < velocityLimit(LineRole::Return).stopMS);
    QVERIFY(velocityLimit(LineRole::Return).stopMS < velocityLimit(LineRole::Pressure).stopMS);
    for (const LineRole role : {LineRole::Suction, LineRole::Pressure, LineRole::Return})
        QVERIFY(velocityLimit(role).cautionMS < velocityLimit(role).stopMS);
    // Hydraulics, as four pages have it: suction to 4 ft/s, return to 10, pressure to 15.
    const auto oil = [](LineRole role) { return velocityLimit(role, LineLiquid::Oil).cautionMS; };
    NEAR_PERCENT(oil(LineRole::Suction), 4 * 0.3048, 2);
    NEAR_PERCENT(oil(LineRole::Return), 10 * 0.3048, 2);
    NEAR_PERCENT(oil(LineRole::Pressure), 15 * 0.3048, 2);
    QVERIFY(!boreForVelocityM(0, 1) && !boreForVelocityM(1, 0) && !equivalentLengthM(1, 0.01, 0));
}

void WholeLineTest::impossiblePiecesAreNamed()
{
    WholeLine line = gasolineLine(200);
    QVERIFY(!wholeLineLoss(line).has_value());
    line.pieces = {{Adapter{0.0103}}, {StraightLine{0, 1}}};
    QCOMPARE(wholeLineLoss(line).error().thing, std::string("piece 2, bore"));
    const double nothing = std::numeric_limits<double>::quiet_NaN();
    for (const LinePiece &wrong :
         {LinePiece{Adapter{nothing}}, LinePiece{Adapter{0.01, -1}},
          LinePiece{Adapter{0.01}, nothing}, LinePiece{Adapter{0.01}, 0, nothing},
          LinePiece{HoseEnd{0.01, EndForm::Swept, 200}},
          LinePiece{Tee{0.01, TeeWay::Diverging, TeeLeg::Run, 201 * LitreHour}},
          LinePiece{StraightLine{0.01, -1}}, LinePiece{StraightLine{0.01, 1, 0.001}}}) {
        line.pieces = {{Adapter{0.0103}}, wrong};
        QVERIFY(!wholeLineLoss(line).has_value());
        QVERIFY(wholeLineLoss(line).error().thing.starts_with("piece 2"));
    }
    line.pieces = {{Adapter{0.01}}};
    line.viscosityPaS = 0;
    QVERIFY(!wholeLineLoss(line).has_value());
}

void WholeLineTest::lawsOfAnyLine()
{
    const int given = qEnvironmentVariableIntValue("FLARESTOCK_SEED");
    const quint32 seed = given != 0 ? quint32(given) : 5108;
    qDebug("FLARESTOCK_SEED=%u", seed);
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> share(0, 1);
    for (int at = 0; at < 500; ++at) {
        WholeLine line = gasolineLine(5 + 400 * share(random));
        line.accelerationMS2 = 30 * share(random) - 15;
        while (line.pieces.size() < 6) {
            const double bore = 0.005 + 0.012 * share(random);
            line.pieces.push_back({StraightLine{bore, 3 * share(random), 1e-5}, share(random) - 0.5,
                                   share(random) - 0.5});
            line.pieces.push_back({HoseEnd{0.9 * bore, EndForm::Drilled, 180 * share(random)}});
        }
        const WholeLineLoss loss = wholeLineLoss(line).value();
        double sum = 0;
        for (const PieceLoss &each : loss.losses)
            sum += each.dropPa();
        const double small = 1e-9 * (std::abs(sum) + 1e5);
        QVERIFY(std::abs(loss.dropPa - sum) < small);
        QVERIFY(std::abs(loss.along.back().totalPa + sum) < small);
        QVERIFY(loss.dropLeastPa <= loss.dropPa);
        // A piece cut in two loses the same; more flow loses more.
        WholeLine cut = line;
        auto &first = std::get<StraightLine>(cut.pieces[0].piece);
        first.lengthM *= 0.3;
        LinePiece rest{StraightLine{first.boreM, first.lengthM / 0.3 * 0.7, 1e-5}};
        cut.pieces.insert(cut.pieces.begin() + 1, rest);
        QVERIFY(std::abs(wholeLineLoss(cut).value().dropPa - sum) < small);
        line.flowM3S *= 1.1;
        QVERIFY(wholeLineLoss(line).value().dropPa > loss.dropPa);
    }
}

QTEST_APPLESS_MAIN(WholeLineTest)
#include "tst_whole_line.moc"
