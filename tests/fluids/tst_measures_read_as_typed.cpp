// SPDX-License-Identifier: MIT
//
// A measure is a number and a unit; what is not says so and points at the place.

#include "model/fluids/measure.h"

#include <QTest>

#include <numbers>

using namespace flarestock;

class MeasureTextTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void spellingsOfOneUnitAreOne_data();
    void spellingsOfOneUnitAreOne();
    void keepsWhatWasTyped();
    void pitchIsReadFromEitherKind();
    void countIsABareNumber();
    void refusesAndPointsAtThePlace_data();
    void refusesAndPointsAtThePlace();
    void goesBackToAnyUnitOfItsDimension();
    void ofAnotherDimensionIsRefused();
};

void MeasureTextTest::spellingsOfOneUnitAreOne_data()
{
    QTest::addColumn<QString>("typed");
    QTest::addColumn<QString>("same");
    struct Row {
        const char *typed;
        const char *same;
    };
    static const Row Rows[] = {
        {"1.5 µm", "1.5 um"},         {"1.5 μm", "1.5 um"},
        {"12 mm²", "12 mm2"},         {"2.7 mm²/s", "2.7 mm2/s"},
        {"745 kg/m³", "745 kg/m3"},   {"745 kg/m^3", "745 kg/m3"},
        {"0.41 mPa·s", "0.41 mPa.s"}, {"20 °C", "20 C"},
        {"20 degC", "20 C"},          {"90°", "90 deg"},
        {"255L/h", "255 L/h"},        {"255 l/h", "255 L/h"},
        {"43.5 PSI", "43.5 psi"},     {"450 HP", "450 hp"},
        {"  3 bar  ", "3 bar"},       {"+3 bar", "3 bar"},
        {"1.5e3 mm", "1500 mm"},      {"0.745E+3 kg/m3", "745 kg/m3"},
        {"1/2 in", "0.5 in"},         {"5 1/2 in", "5.5 in"},
        {"5 ft 6 in", "66 in"},       {"5 ft 6 1/2 in", "66.5 in"},
        {"5ft 6in", "66 in"},         {"5' 6\"", "66 in"},
        {"3 foot", "3 ft"},           {"067 gph", "67 gph"},
    };
    for (const Row &row : Rows)
        QTest::newRow(row.typed) << QString::fromUtf8(row.typed) << QString::fromUtf8(row.same);
}

void MeasureTextTest::spellingsOfOneUnitAreOne()
{
    QFETCH(const QString, typed);
    QFETCH(const QString, same);
    const auto left = Measure::parse(typed.toStdString());
    const auto right = Measure::parse(same.toStdString());
    QVERIFY2(left.has_value(), left ? "" : left.error().text().c_str());
    QVERIFY(right.has_value());
    QCOMPARE(left->dimension, right->dimension);
    QCOMPARE(left->si, right->si);
}

void MeasureTextTest::keepsWhatWasTyped()
{
    QCOMPARE(Measure::parse("  5 ft  6 in ").value().typed, std::string("5 ft  6 in"));
}

void MeasureTextTest::pitchIsReadFromEitherKind()
{
    const auto inch = Measure::parse("14 tpi", Dimension::Pitch).value();
    QCOMPARE(inch.dimension, Dimension::Pitch);
    QCOMPARE(in(inch, "mm"), 25.4 / 14);
    const auto metric = Measure::parse("1.5 mm", Dimension::Pitch).value();
    QCOMPARE(metric.dimension, Dimension::Pitch);
    QCOMPARE(in(metric, "mm"), 1.5);
    QCOMPARE(in(metric, "tpi"), 25.4 / 1.5);
    QVERIFY(!Measure::parse("0 tpi", Dimension::Pitch).has_value());
    QVERIFY(!Measure::parse("14 tpi", Dimension::Length).has_value());
}

void MeasureTextTest::countIsABareNumber()
{
    QCOMPARE(Measure::parse("3", Dimension::Count).value().si, 3.0);
    QVERIFY(!Measure::parse("3 m", Dimension::Count).has_value());
    QVERIFY(!Measure::parse("3").has_value());
    QVERIFY(!Measure::parse("3", Dimension::Length).has_value());
}

void MeasureTextTest::refusesAndPointsAtThePlace_data()
{
    QTest::addColumn<QString>("typed");
    QTest::addColumn<int>("column"); ///< 0: there is nothing to point at.
    struct Row {
        const char *typed;
        int column;
    };
    static const Row Rows[] = {
        {"", 0},           {"   ", 0},         {"255", 4},
        {"L/h", 1},        {"255 furlong", 5}, {"2,7 mm", 1},
        {"1e mm", 2},      {"1.2.3 mm", 1},    {"5 ft 6", 7},
        {"5 ft 6 m", 6},   {"3 bar 2 psi", 7}, {"5 ft 6 in 1 in", 6},
        {"-5 ft 6 in", 7}, {"1/0 in", 1},      {"1//2 in", 1},
        {"-1 K", 1},       {"-500 F", 1},      {"µ 3 mm", 1},
        {"3 MM", 3},       {"5 -1/2 in", 1},   {"nan mm", 1},
        {"inf mm", 1},     {"0x10 mm", 2},     {".5 in", 1},
        {"1e999 mm", 1},   {"1,5e2 mm", 1},
    };
    for (const Row &row : Rows)
        QTest::newRow(*row.typed ? row.typed : "nothing")
            << QString::fromUtf8(row.typed) << row.column;
}

void MeasureTextTest::refusesAndPointsAtThePlace()
{
    QFETCH(const QString, typed);
    QFETCH(const int, column);
    const auto measure = Measure::parse(typed.toStdString());
    QVERIFY(!measure.has_value());
    QVERIFY(!measure.error().wrong.empty());
    QVERIFY(!measure.error().remedy.empty());
    QCOMPARE(static_cast<int>(measure.error().column), column);
}

void MeasureTextTest::goesBackToAnyUnitOfItsDimension()
{
    QCOMPARE(in(Measure{Dimension::Pressure, 300000, {}}, "bar"), 3.0);
    QCOMPARE(in(Measure::parse("212 F").value(), "C"), 100.0);
    QCOMPARE(in(Measure::parse("180 deg").value(), "rad"), std::numbers::pi);
    // 500 hp × 0.60 lb/hp·h = 300 lb/h = 136.078 kg/h, by the definition of the pound.
    QVERIFY(qAbs(in(Measure::parse("300 lb/h").value(), "kg/h") - 136.077711) < 1e-6);
}

void MeasureTextTest::ofAnotherDimensionIsRefused()
{
    const auto measure = Measure::parse("5 m", Dimension::Pressure);
    QVERIFY(!measure.has_value());
    QCOMPARE(measure.error().wrong, std::string("\"5 m\" is a length, and a pressure is wanted"));
    QCOMPARE(measure.error().remedy, std::string("Write one such as 3 bar or 43.5 psi."));
}

QTEST_APPLESS_MAIN(MeasureTextTest)
#include "tst_measures_read_as_typed.moc"
