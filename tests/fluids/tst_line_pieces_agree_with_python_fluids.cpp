// SPDX-License-Identifier: MIT
//
// The pieces of a line against python-fluids, run by the test: straight lines in all regimes, tees,
// changes of bore, bends. And the table of answers beside the tests is really that library's.

#include "model/fluids/line/whole_line.h"
#include "tests/fluids/python_fluids.h"
#include "tests/fluids/table_file.h"

#include <QTest>

using namespace flarestock;

namespace {

QString said(double number)
{
    return QString::number(number, 'g', 17);
}

} // namespace

class LinePiecesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void straightLines();
    void tees_data();
    void tees();
    void changesOfBore();
    void endsLoseAsTheirBends();
    void anotherAngleIsRefused();
};

void LinePiecesTest::straightLines()
{
    QFile file(QStringLiteral(FLARESTOCK_SOURCE_DIR "/tests/fluids/pipe_by_python_fluids.csv"));
    QVERIFY(file.open(QIODevice::ReadOnly));
    QStringList asked;
    std::vector<std::array<double, 4>> ours; // Re, f, loss, and the loss that the table has
    while (!file.atEnd()) {
        const QByteArray row = file.readLine().trimmed();
        if (row.startsWith('#') || row.startsWith("liquid,"))
            continue;
        const auto cells = row.split(',');
        const auto number = [&cells](int at) { return cells[at].toDouble(); };
        WholeLine line;
        line.densityKgM3 = number(1);
        line.viscosityPaS = number(2);
        line.flowM3S = number(6);
        line.pieces = {{StraightLine{number(3), number(4), number(5)}}};
        const PieceLoss loss = wholeLineLoss(line).value().losses.front();
        asked << QStringLiteral("f.Reynolds(V=%1,D=%2,rho=%3,mu=%4)")
                     .arg(said(loss.velocityMS), said(loss.boreM), said(line.densityKgM3),
                          said(line.viscosityPaS))
              << QStringLiteral("f.friction_factor(Re=%1,eD=%2)")
                     .arg(said(loss.reynolds), said(number(5) / number(3)))
              << QStringLiteral("f.one_phase_dP(m=%1,rho=%2,mu=%3,D=%4,roughness=%5,L=%6)")
                     .arg(said(line.densityKgM3 * line.flowM3S), said(line.densityKgM3),
                          said(line.viscosityPaS), said(loss.boreM), said(number(5)),
                          said(number(4)));
        ours.push_back({loss.reynolds, loss.frictionFactor, loss.dropPa(), number(10)});
    }
    QCOMPARE(ours.size(), std::size_t(38));
    const auto answers = pythonFluids(asked);
    for (std::size_t row = 0; row < ours.size(); ++row) {
        for (std::size_t at = 0; at < 3; ++at)
            NEAR_PERCENT(ours[row][at], answers[3 * row + at], 1e-9);
        NEAR_PERCENT(ours[row][3], answers[3 * row + 2], 1e-7); // The table has ten figures.
    }
}

void LinePiecesTest::tees_data()
{
    QTest::addColumn<int>("way");
    QTest::addColumn<int>("leg");
    QTest::addColumn<QString>("function");
    const auto row = [](const char *name, TeeWay way, TeeLeg leg, const char *function) {
        QTest::newRow(name) << static_cast<int>(way) << static_cast<int>(leg)
                            << QString::fromLatin1(function);
    };
    row("in by the branch", TeeWay::Converging, TeeLeg::Branch, "K_branch_converging_");
    row("in by the run", TeeWay::Converging, TeeLeg::Run, "K_run_converging_");
    row("out by the branch", TeeWay::Diverging, TeeLeg::Branch, "K_branch_diverging_");
    row("out by the run", TeeWay::Diverging, TeeLeg::Run, "K_run_diverging_");
}

void LinePiecesTest::tees()
{
    QFETCH(const int, way);
    QFETCH(const int, leg);
    QFETCH(const QString, function);
    QStringList asked;
    std::vector<double> ours;
    for (const double degrees : {30.0, 45.0, 60.0, 90.0}) {
        for (int part = 0; part <= 20; ++part) {
            const double share = part / 20.0;
            ours.push_back(
                teeCoefficient({static_cast<TeeWay>(way), static_cast<TeeLeg>(leg), share, degrees})
                    .value());
            // The paper's rule for "0 to 60 degrees" ends just before 60 in the library.
            asked << QStringLiteral("by('%1')(0.0103,0.0103,1-%2,%2,%3)")
                         .arg(function, said(share), said(degrees == 60 ? 59.9999999 : degrees));
        }
    }
    const auto answers = pythonFluids(asked);
    for (std::size_t at = 0; at < ours.size(); ++at)
        QVERIFY2(std::abs(ours[at] - answers[at]) < 1e-6, qPrintable(asked[qsizetype(at)]));
}

void LinePiecesTest::changesOfBore()
{
    QStringList asked;
    std::vector<double> ours;
    for (const double small : {0.0048, 0.0075, 0.0103, 0.0126}) {
        asked << QStringLiteral("f.diffuser_sharp(Di1=%1, Di2=0.0127)").arg(said(small))
              << QStringLiteral("by('contraction_conical_C')(0.0127, %1, l=0)").arg(said(small));
        ours.push_back(boreChangeCoefficient(small, 0.0127));
        ours.push_back(boreChangeCoefficient(0.0127, small));
    }
    const auto answers = pythonFluids(asked);
    for (std::size_t at = 0; at < ours.size(); ++at)
        NEAR_PERCENT(ours[at], answers[at], 1e-9);
    QCOMPARE(boreChangeCoefficient(0.01, 0.01), 0.0);
}

void LinePiecesTest::endsLoseAsTheirBends()
{
    // A bend of 1.5 bores radius at a friction factor of 0.025; our table rounds up, by 6 % at
    // most.
    QStringList asked;
    for (const int degrees : {90, 150, 180})
        asked << QStringLiteral("f.bend_rounded(Di=0.0103,angle=%1,fd=0.025,bend_diameters=1.5)")
                     .arg(degrees);
    const auto answers = pythonFluids(asked);
    const double ours[] = {endCoefficient(EndForm::Swept, 90).value().k,
                           endCoefficient(EndForm::Swept, 150).value().k,
                           endCoefficient(EndForm::Swept, 180).value().k};
    for (std::size_t at = 0; at < answers.size(); ++at)
        QVERIFY(ours[at] >= answers[at] && ours[at] <= answers[at] * 1.06);
    // Textbook tables: sharp entrance 0.5, exit 1.0, threaded 45 degree elbow 0.4, mitre 1.1-1.3.
    QCOMPARE(openingCoefficient(Opening::SharpEntrance).k, 0.5);
    QCOMPARE(openingCoefficient(Opening::Exit).k, 1.0);
    QCOMPARE(endCoefficient(EndForm::Drilled, 45).value().k, 0.4);
    QCOMPARE(endCoefficient(EndForm::Drilled, 90).value().k, 1.3);
    QCOMPARE(endCoefficient(EndForm::Drilled, 0).value().k, 0.0);
    double before = -1;
    for (double degrees = 0; degrees <= 180; degrees += 15) {
        QVERIFY(endCoefficient(EndForm::Swept, degrees).value().k >= before);
        before = endCoefficient(EndForm::Swept, degrees).value().k;
    }
}

void LinePiecesTest::anotherAngleIsRefused()
{
    QVERIFY(!endCoefficient(EndForm::Swept, 181) && !endCoefficient(EndForm::Swept, -1));
    QVERIFY(!teeCoefficient({TeeWay::Diverging, TeeLeg::Run, 0.5, 75}).has_value());
    QVERIFY(!teeCoefficient({TeeWay::Diverging, TeeLeg::Run, 1.01, 90}).has_value());
}

QTEST_APPLESS_MAIN(LinePiecesTest)
#include "tst_line_pieces_agree_with_python_fluids.moc"
