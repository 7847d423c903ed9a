// SPDX-License-Identifier: MIT
//
// Lengths convert without loss, pieces stay pieces, packs are whole.
// Exact: 1 in = 2.54 cm, 1 ft = 30.48 cm (16 CFR 500.19). The rest follows by hand.

#include "model/exact/quantity.h"

#include <QTest>

using namespace flarestock;

class QuantityTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void readsWhatPeopleWrite_data();
    void readsWhatPeopleWrite();
    void refusesWhatIsNoQuantity_data();
    void refusesWhatIsNoQuantity();
    void lengthsConvertExactly();
    void kindsDoNotMix();
    void smallestUnitsAreWhole();
    void saysItAsAtTheBench_data();
    void saysItAsAtTheBench();
    void packsAndCoilsHoldSoMuch();
    void tapeMarksAreNeverShort();
};

void QuantityTest::readsWhatPeopleWrite_data()
{
    QTest::addColumn<QString>("typed");
    QTest::addColumn<QString>("read");
    struct Row {
        const char *typed;
        const char *read;
    };
    static const Row Rows[] = {
        {"3", "3 each"},
        {"3 each", "3 each"},
        {"3 pcs", "3 each"},
        {"66 in", "66 in"},
        {"66in", "66 in"},
        {"5.5 ft", "5.5 ft"},
        {"5 ft 6 in", "66 in"},
        {"5ft 6in", "66 in"},
        {"6 1/2 in", "6.5 in"},
        {"1/64 in", "0.015625 in"},
        {"5 ft 6 1/2 in", "66.5 in"},
        {"2 m", "2 m"},
        {"850 mm", "850 mm"},
        {"1.10 each", "1.10 each"},
        {"2 packs", "2 pack"},
        {"1 coil", "1 coil"},
        {"  4   in ", "4 in"},
        {"-3 each", "-3 each"},
    };
    for (const Row &row : Rows)
        QTest::newRow(row.typed) << QString::fromLatin1(row.typed) << QString::fromLatin1(row.read);
}

void QuantityTest::readsWhatPeopleWrite()
{
    QFETCH(const QString, typed);
    QFETCH(const QString, read);
    const auto quantity = Quantity::parse(typed.toStdString());
    QVERIFY2(quantity.has_value(), quantity ? "" : quantity.error().text().c_str());
    QCOMPARE(QString::fromStdString(quantity->text()), read);
}

void QuantityTest::refusesWhatIsNoQuantity_data()
{
    QTest::addColumn<QString>("typed");
    for (const char *typed : {"", "in", "3 furlong", "1/3 in", "3 in 5 ft", "5 ft 6", "1,5 m",
                              "nan", "5 ft -6 in", "-5 ft 6 in", "5 ft 6 in 2 in", "1/0 in",
                              "5 6/4 in", "2 m 5 in", "3 each 2 each", "1/2/3 in", "5 1/2 1/2 in"})
        QTest::newRow(*typed ? typed : "nothing") << QString::fromLatin1(typed);
}

void QuantityTest::refusesWhatIsNoQuantity()
{
    QFETCH(const QString, typed);
    const auto quantity = Quantity::parse(typed.toStdString());
    QVERIFY(!quantity.has_value());
    QVERIFY(!quantity.error().wrong.empty());
}

void QuantityTest::lengthsConvertExactly()
{
    const auto inUnit = [](const char *typed, Unit unit) {
        return Quantity::parse(typed).value().in(unit).value();
    };
    QVERIFY(inUnit("1 in", Unit::Millimetre) == Rational(Decimal(127), Decimal(5)));
    QVERIFY(inUnit("1 ft", Unit::Millimetre) == Rational(Decimal(1524), Decimal(5)));
    QVERIFY(inUnit("1 m", Unit::Foot) == Rational(Decimal(1250), Decimal(381)));
    QVERIFY(inUnit("1 ft", Unit::Inch) == Rational(Decimal(12)));
    // There and back is the same, which 1/25.4 × 25.4 in doubles is not.
    for (const Unit unit : {Unit::Foot, Unit::Metre, Unit::Millimetre}) {
        const Rational there = inUnit("37.5 in", unit);
        const Rational back = inUnit("1 ft", Unit::Inch).times(there).over(inUnit("1 ft", unit));
        QVERIFY(back == Rational("37.5"_dec));
    }
    QCOMPARE(Quantity::parse("5 ft 6 in").value().exactlyIn(Unit::Inch).value().text(),
             std::string("66 in"));
    QCOMPARE(Quantity::parse("2.54 m").value().exactlyIn(Unit::Inch).value().text(),
             std::string("100 in"));
    QVERIFY(!Quantity::parse("1 m").value().exactlyIn(Unit::Inch).has_value());
}

void QuantityTest::kindsDoNotMix()
{
    QVERIFY(!Quantity::parse("3 each").value().in(Unit::Inch).has_value());
    QVERIFY(!Quantity::parse("3 in").value().in(Unit::Each).has_value());
    QVERIFY(!Quantity::parse("3 pack").value().in(Unit::Each).has_value());
    QVERIFY(!Quantity::parse("3 each").value().in(Unit::Pack).has_value());
    QVERIFY(!Quantity::parse("3 coil").value().smallest().has_value());
    QVERIFY(Quantity::parse("3 pack").value().in(Unit::Pack).has_value());
}

void QuantityTest::smallestUnitsAreWhole()
{
    QCOMPARE(Quantity::parse("1/64 in").value().smallest().value(), std::int64_t{3175});
    QCOMPARE(Quantity::parse("0.001 mm").value().smallest().value(), std::int64_t{8});
    QCOMPARE(Quantity::parse("7").value().smallest().value(), std::int64_t{7});
    QVERIFY(!Quantity::parse("1.5 each").value().smallest().has_value());
    QVERIFY(!Quantity::parse("0.0001 mm").value().smallest().has_value());
    QVERIFY(!Quantity::parse("99999999999999999 m").value().smallest().has_value());
    for (const char *typed : {"1/64 in", "5.5 ft", "850 mm", "2.75 m", "12 each"}) {
        const Quantity quantity = Quantity::parse(typed).value();
        QVERIFY(Quantity::ofSmallest(quantity.smallest().value(), quantity.unit) == quantity);
    }
}

void QuantityTest::saysItAsAtTheBench_data()
{
    QTest::addColumn<QString>("typed");
    QTest::addColumn<QString>("spoken");
    struct Row {
        const char *typed;
        const char *spoken;
    };
    static const Row Rows[] = {
        {"66 in", "5 ft 6 in"},
        {"5.5 ft", "5 ft 6 in"},
        {"66.5 in", "5 ft 6 1/2 in"},
        {"24 in", "2 ft"},
        {"9 in", "9 in"},
        {"0.75 in", "3/4 in"},
        {"6.015625 in", "6 1/64 in"},
        {"0.3 in", "0.3 in"},
        {"3 each", "3"},
        {"1 pack", "1 pack"},
        {"2 pack", "2 packs"},
        {"2.5 m", "2.5 m"},
        {"-18 in", "-1 ft 6 in"},
        {"0 in", "0 in"},
    };
    for (const Row &row : Rows)
        QTest::newRow(row.typed) << QString::fromLatin1(row.typed)
                                 << QString::fromLatin1(row.spoken);
}

void QuantityTest::saysItAsAtTheBench()
{
    QFETCH(const QString, typed);
    QFETCH(const QString, spoken);
    const Quantity quantity = Quantity::parse(typed.toStdString()).value();
    QCOMPARE(QString::fromStdString(quantity.spoken()), spoken);
    if (quantity.amount.sign() >= 0)
        QVERIFY(Quantity::parse(quantity.spoken()).has_value());
}

void QuantityTest::packsAndCoilsHoldSoMuch()
{
    const Packing coil{Unit::Coil, Quantity::parse("20 ft").value()};
    QCOMPARE(coil.opened(Decimal(1)).exactlyIn(Unit::Inch).value().text(), std::string("240 in"));
    QCOMPARE(coil.wholePacksUp(Quantity::parse("240 in").value()).value(), std::int64_t{1});
    QCOMPARE(coil.wholePacksUp(Quantity::parse("240 1/64 in").value()).value(), std::int64_t{2});
    QCOMPARE(coil.wholePacksUp(Quantity::parse("6.096 m").value()).value(), std::int64_t{1});
    QVERIFY(!coil.wholePacksUp(Quantity::parse("3 each").value()).has_value());
    const Packing ten{Unit::Pack, Quantity::parse("10").value()};
    QCOMPARE(ten.wholePacksUp(Quantity::parse("0").value()).value(), std::int64_t{0});
    for (int need = 1; need <= 50; ++need)
        QCOMPARE(ten.wholePacksUp({Decimal(need), Unit::Each}).value(),
                 std::int64_t{(need + 9) / 10});
}

void QuantityTest::tapeMarksAreNeverShort()
{
    const auto mark = [](const char *length, Unit unit) {
        return upToTapeMark(Rational(Decimal::parse(length).value()), unit).text();
    };
    QCOMPARE(mark("37.5", Unit::Inch), std::string("37.5 in"));
    QCOMPARE(mark("37.51", Unit::Inch), std::string("37.5625 in"));
    QCOMPARE(mark("5.5", Unit::Foot), std::string("66 in"));
    QCOMPARE(mark("850.2", Unit::Millimetre), std::string("851 mm"));
    QCOMPARE(mark("0.8502", Unit::Metre), std::string("0.851 m"));
    QCOMPARE(upToTapeMark(Rational(Decimal(127), Decimal(3)), Unit::Inch).text(),
             std::string("42.375 in"));
}

QTEST_APPLESS_MAIN(QuantityTest)
#include "tst_quantities_convert_exactly.moc"
