// SPDX-License-Identifier: MIT
//
// Measures against GNU units (Debian package units, run by the test) and, for the values that are
// exact by definition, against the definitions themselves.

#include "model/fluids/measure.h"
#include "tests/fluids/gnu_units.h"
#include "tests/fluids/table_file.h"

#include <QTest>

#include <cmath>

using namespace flarestock;

namespace {

bool isNear(double left, double right, double relative)
{
    return std::abs(left - right) <= relative * std::max(std::abs(left), std::abs(right));
}

} // namespace

class MeasureUnitsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void agreesWithGnuUnits_data();
    void agreesWithGnuUnits();
    void definitionsAreExact_data();
    void definitionsAreExact();
    void factorsOfTheTable();
};

void MeasureUnitsTest::agreesWithGnuUnits_data()
{
    QTest::addColumn<QString>("typed");
    QTest::addColumn<QString>("said"); ///< The same for GNU units.
    QTest::addColumn<QString>("si");
    struct Row {
        const char *typed;
        const char *said;
        const char *si;
    };
    // GNU units: "gallon" depends on the locale, so usgallon; "100 degF" would be a difference.
    static const Row Rows[] = {
        {"8.71 mm", "8.71 mm", "m"},
        {"3.5 cm", "3.5 cm", "m"},
        {"0.5 in", "0.5 inch", "m"},
        {"3 ft", "3 ft", "m"},
        {"2 yd", "2 yd", "m"},
        {"1.5 um", "1.5 um", "m"},
        {"5 ft 6 in", "5 ft + 6 inch", "m"},
        {"12.5 mm2", "12.5 mm^2", "m^2"},
        {"7 cm2", "7 cm^2", "m^2"},
        {"0.08 in2", "0.08 inch^2", "m^2"},
        {"45 L", "45 liter", "m^3"},
        {"12 gal", "12 usgallon", "m^3"},
        {"250 mL", "250 ml", "m^3"},
        {"440 cc", "440 cc", "m^3"},
        {"255 L/h", "255 liter/hour", "m^3/s"},
        {"3 L/min", "3 liter/min", "m^3/s"},
        {"2 L/s", "2 liter/s", "m^3/s"},
        {"48.2 gph", "48.2 usgallon/hour", "m^3/s"},
        {"120 gpm", "120 usgallon/min", "m^3/s"},
        {"0.002 m3/s", "0.002 m^3/s", "m^3/s"},
        {"7 m3/h", "7 m^3/hour", "m^3/s"},
        {"550 cc/min", "550 cc/min", "m^3/s"},
        {"136 kg/h", "136 kg/hour", "kg/s"},
        {"300 lb/h", "300 lb/hour", "kg/s"},
        {"5 lb/min", "5 lb/min", "kg/s"},
        {"37.8 g/s", "37.8 g/s", "kg/s"},
        {"300000 Pa", "300000 Pa", "Pa"},
        {"300 kPa", "300 kPa", "Pa"},
        {"0.3 MPa", "0.3 MPa", "Pa"},
        {"3 bar", "3 bar", "Pa"},
        {"980 mbar", "980 mbar", "Pa"},
        {"43.5 psi", "43.5 psi", "Pa"},
        {"18 inHg", "18 inHg", "Pa"},
        {"335 kW", "335 kW", "W"},
        {"90 W", "90 W", "W"},
        {"450 hp", "450 hp", "W"},
        {"450 PS", "450 metrichorsepower", "W"},
        {"745 kg/m3", "745 kg/m^3", "kg/m^3"},
        {"0.745 g/cm3", "0.745 g/cm^3", "kg/m^3"},
        {"0.745 kg/L", "0.745 kg/liter", "kg/m^3"},
        {"0.745 g/mL", "0.745 g/ml", "kg/m^3"},
        {"6.2 lb/gal", "6.2 lb/usgallon", "kg/m^3"},
        {"0.001 Pa.s", "0.001 Pa s", "Pa s"},
        {"0.41 mPa.s", "0.41 mPa s", "Pa s"},
        {"50 cP", "50 cP", "Pa s"},
        {"0.55 mm2/s", "0.55 mm^2/s", "m^2/s"},
        {"100 cSt", "100 cSt", "m^2/s"},
        {"0.001 m2/s", "0.001 m^2/s", "m^2/s"},
        {"20 C", "tempC(20)", "tempK"},
        {"-40 F", "tempF(-40)", "tempK"},
        {"212 F", "tempF(212)", "tempK"},
        {"293 K", "tempK(293)", "tempK"},
        {"150 deg", "150 degree", "radian"},
        {"1.25 rad", "1.25 radian", "radian"},
        {"14 tpi", "1|14 inch", "m"},
        {"13.5 V", "13.5 V", "V"},
        {"250 mV", "250 mV", "V"},
        {"7 A", "7 A", "A"},
        {"80 mA", "80 mA", "A"},
        {"3 m/s", "3 m/s", "m/s"},
        {"10 ft/s", "10 ft/s", "m/s"},
        {"15 m/s2", "15 m/s^2", "m/s^2"},
        {"1.5 g", "1.5 gravity", "m/s^2"},
        {"10 min", "10 min", "s"},
        {"30 s", "30 s", "s"},
        {"0.5 h", "0.5 hour", "s"},
        // As textbooks and handbooks write them; a barrel of oil is 42 US gallons.
        {"40 mil", "40 mil", "m"},
        {"3 km", "3 km", "m"},
        {"2 mi", "2 mile", "m"},
        {"2 ft2", "2 ft^2", "m^2"},
        {"5 qt", "5 usquart", "m^3"},
        {"12 in3", "12 inch^3", "m^3"},
        {"2 ft3", "2 ft^3", "m^3"},
        {"3 impgal", "3 brgallon", "m^3"},
        {"2 bbl", "84 usgallon", "m^3"},
        {"7 gal/s", "7 usgallon/s", "m^3/s"},
        {"40 impgal/min", "40 brgallon/min", "m^3/s"},
        {"9 impgal/h", "9 brgallon/hour", "m^3/s"},
        {"0.2 ft3/s", "0.2 ft^3/s", "m^3/s"},
        {"0.3 cfs", "0.3 ft^3/s", "m^3/s"},
        {"7 ft3/min", "7 ft^3/min", "m^3/s"},
        {"2 cfm", "2 ft^3/min", "m^3/s"},
        {"70 ft3/h", "70 ft^3/hour", "m^3/s"},
        {"4 in3/s", "4 inch^3/s", "m^3/s"},
        {"231 in3/min", "231 inch^3/min", "m^3/s"},
        {"3 m3/min", "3 m^3/min", "m^3/s"},
        {"30 mL/min", "30 ml/min", "m^3/s"},
        {"30 mL/s", "30 ml/s", "m^3/s"},
        {"600 bbl/h", "25200 usgallon/hour", "m^3/s"},
        {"900 bbl/d", "37800 usgallon/day", "m^3/s"},
        {"2 kg/min", "2 kg/min", "kg/s"},
        {"900 g/min", "900 g/min", "kg/s"},
        {"3 t/h", "3 tonne/hour", "kg/s"},
        {"2 lb/s", "2 lb/s", "kg/s"},
        {"0.1 slug/s", "0.1 slug/s", "kg/s"},
        {"3 ksi", "3 ksi", "Pa"},
        {"144 psf", "144 lbf/ft^2", "Pa"},
        {"50 lbf/in2", "50 lbf/inch^2", "Pa"},
        {"50 lbf/ft2", "50 lbf/ft^2", "Pa"},
        {"2 atm", "2 atm", "Pa"},
        {"760 mmHg", "760 mmHg", "Pa"},
        {"760 Torr", "760 torr", "Pa"},
        {"1200 N/m2", "1200 N/m^2", "Pa"},
        {"2 kgf/cm2", "2 kgf/cm^2", "Pa"},
        {"3 mH2O", "3 m water", "Pa"},
        {"20 inH2O", "20 inch water", "Pa"},
        {"10 ftH2O", "10 ft water", "Pa"},
        {"550 ft.lbf/s", "550 ft lbf/s", "W"},
        {"1.2 g/L", "1.2 g/liter", "kg/m^3"},
        {"0.8 g/cc", "0.8 g/cc", "kg/m^3"},
        {"62.4 lb/ft3", "62.4 lb/ft^3", "kg/m^3"},
        {"0.03 lb/in3", "0.03 lb/inch^3", "kg/m^3"},
        {"1.94 slug/ft3", "1.94 slug/ft^3", "kg/m^3"},
        {"0.01 P", "0.01 poise", "Pa s"},
        {"0.001 N.s/m2", "0.001 N s/m^2", "Pa s"},
        {"0.002 kg/(m.s)", "0.002 kg/m s", "Pa s"},
        {"0.002 kg/m.s", "0.002 kg/m s", "Pa s"},
        {"6.7e-4 lb/ft.s", "6.7e-4 lb/ft s", "Pa s"},
        {"2.42 lb/ft.h", "2.42 lb/ft hour", "Pa s"},
        {"2.1e-5 lbf.s/ft2", "2.1e-5 lbf s/ft^2", "Pa s"},
        {"2.34e-5 lb.s/ft2", "2.34e-5 lbf s/ft^2", "Pa s"},
        {"1.5e-7 lbf.s/in2", "1.5e-7 lbf s/inch^2", "Pa s"},
        {"2.1e-5 slug/ft.s", "2.1e-5 slug/ft s", "Pa s"},
        {"0.5 St", "0.5 stokes", "m^2/s"},
        {"0.01 cm2/s", "0.01 cm^2/s", "m^2/s"},
        {"1.08e-5 ft2/s", "1.08e-5 ft^2/s", "m^2/s"},
        {"0.0016 in2/s", "0.0016 inch^2/s", "m^2/s"},
        {"520 degR", "520 degR", "K"},
        {"300 ft/min", "300 ft/min", "m/s"},
        {"80 cm/s", "80 cm/s", "m/s"},
        {"100 km/h", "100 km/hour", "m/s"},
        {"60 mph", "60 mile/hour", "m/s"},
        {"32.2 ft/s2", "32.2 ft/s^2", "m/s^2"},
    };
    for (const Row &row : Rows)
        QTest::newRow(row.typed) << QString::fromLatin1(row.typed) << QString::fromLatin1(row.said)
                                 << QString::fromLatin1(row.si);
}

void MeasureUnitsTest::agreesWithGnuUnits()
{
    QFETCH(const QString, typed);
    QFETCH(const QString, said);
    QFETCH(const QString, si);
    const auto measure = Measure::parse(typed.toStdString());
    QVERIFY2(measure.has_value(), measure ? "" : measure.error().text().c_str());
    const double expected = gnuUnits(said, si);
    QVERIFY2(std::isfinite(expected), "GNU units did not answer; install the package units");
    QVERIFY2(isNear(measure->si, expected, 1e-11), qPrintable(QStringLiteral("%1 against %2")
                                                                  .arg(measure->si, 0, 'g', 17)
                                                                  .arg(expected, 0, 'g', 17)));
}

void MeasureUnitsTest::definitionsAreExact_data()
{
    QTest::addColumn<QString>("typed");
    QTest::addColumn<double>("si");
    struct Row {
        const char *typed;
        double si;
    };
    // 16 CFR 500.19 marks inch, foot and yard as exact; 231 in³ a US gallon, pound and standard
    // gravity as in NIST Special Publication 811 (from memory).
    static const Row Rows[] = {
        {"1 in", 0.0254},
        {"1 ft", 0.3048},
        {"1 yd", 0.9144},
        {"1 gal", 0.003785411784},
        {"1 lb/h", 0.45359237 / 3600},
        {"1 g", 9.80665},
        {"1 psi", 6894.757293168361},
        {"1 hp", 745.69987158227022},
        {"1 PS", 735.49875},
        {"1 bar", 100000},
        {"1 ft/s", 0.3048},
        {"1 cSt", 1e-6},
    };
    for (const Row &row : Rows)
        QTest::newRow(row.typed) << QString::fromLatin1(row.typed) << row.si;
}

void MeasureUnitsTest::definitionsAreExact()
{
    QFETCH(const QString, typed);
    QFETCH(const double, si);
    const auto measure = Measure::parse(typed.toStdString());
    QVERIFY(measure.has_value());
    QVERIFY2(isNear(measure->si, si, 4e-16),
             qPrintable(
                 QStringLiteral("%1 against %2").arg(measure->si, 0, 'g', 17).arg(si, 0, 'g', 17)));
}

void MeasureUnitsTest::factorsOfTheTable()
{
    // units.csv: what each is by definition, as GNU units says it too. A hundred degrees of
    // difference are not 100 °F.
    const TableFile table("units.csv");
    int ours = 0;
    for (std::size_t row = 0; row < table.size(); ++row) {
        const double value = table.number(row, "value");
        NEAR_PERCENT(gnuUnits(QString::fromStdString(table.cell(row, "from")),
                              QString::fromStdString(table.cell(row, "to"))),
                     value, 1e-9); // Twelve figures in the table.
        if (table.cell(row, "typed").empty())
            continue;
        const auto measure = Measure::parse(table.cell(row, "typed")).value();
        const bool isMisreading = table.cell(row, "misreading") == "yes";
        QVERIFY2(isWithinPercent(in(measure, table.cell(row, "in")), value, 1e-9) != isMisreading,
                 table.cell(row, "typed").c_str());
        ++ours;
    }
    QCOMPARE(table.size(), std::size_t(30));
    QCOMPARE(ours, 18);
}

QTEST_APPLESS_MAIN(MeasureUnitsTest)
#include "tst_measures_agree_with_gnu_units.moc"
