// SPDX-License-Identifier: MIT
//
// Decimals read, print and count as on paper. Expected values by hand unless a source is named.

#include "model/exact/decimal.h"

#include <QTest>

#include <limits>

using flarestock::Decimal;
using flarestock::Rounding;
using flarestock::operator""_dec;

namespace {

QString shown(const Decimal &number)
{
    return QString::fromStdString(number.text());
}

} // namespace

class DecimalTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void readsAndPrintsPlainDigits_data();
    void readsAndPrintsPlainDigits();
    void refusesWhatIsNotPlainDigits_data();
    void refusesWhatIsNotPlainDigits();
    void keepsTheScaleAndComparesTheNumber();
    void spillsBeyond64BitsAndComesBack();
    void limitsHostileInput();
    void knowsWholeNumbers();
    void approximatesToTheNearestDouble();
};

void DecimalTest::readsAndPrintsPlainDigits_data()
{
    QTest::addColumn<QString>("typed");
    QTest::addColumn<QString>("printed");
    const std::pair<const char *, const char *> rows[] = {
        {"1.10", "1.10"},
        {"0", "0"},
        {"-0.0", "0.0"},
        {"+5", "5"},
        {"010", "10"},
        {"-0.05", "-0.05"},
        {"0099.50", "99.50"},
        {"0.5", "0.5"},
        {"-9223372036854775808", "-9223372036854775808"},
        {"123456789012345678901234567890.1200", "123456789012345678901234567890.1200"},
        {"00000000000000000000000000007", "7"},
    };
    for (const auto &[typed, printed] : rows)
        QTest::newRow(typed) << QString::fromLatin1(typed) << QString::fromLatin1(printed);
}

void DecimalTest::readsAndPrintsPlainDigits()
{
    QFETCH(const QString, typed);
    QFETCH(const QString, printed);
    const auto number = Decimal::parse(typed.toStdString());
    QVERIFY(number.has_value());
    QCOMPARE(shown(*number), printed);
}

void DecimalTest::refusesWhatIsNotPlainDigits_data()
{
    QTest::addColumn<QString>("typed");
    for (const char *typed : {"", ".", ".5", "5.", "-", "+", "--1", "1,5", "1e3", "0x10", "nan",
                              "inf", " 1", "1 ", "1.2.3", "1_000", "½", "+-1", "1-"})
        QTest::newRow(*typed ? typed : "nothing") << QString::fromUtf8(typed);
}

void DecimalTest::refusesWhatIsNotPlainDigits()
{
    QFETCH(const QString, typed);
    const auto number = Decimal::parse(typed.toStdString());
    QVERIFY(!number.has_value());
    QVERIFY(!number.error().sentence().empty());
}

void DecimalTest::keepsTheScaleAndComparesTheNumber()
{
    QCOMPARE(shown("1.10"_dec + "2.2"_dec), QStringLiteral("3.30"));
    QCOMPARE(shown("1.10"_dec - "1.1"_dec), QStringLiteral("0.00"));
    QCOMPARE(shown("1.10"_dec * "2.500"_dec), QStringLiteral("2.75000"));
    QCOMPARE(shown(-"1.10"_dec), QStringLiteral("-1.10"));
    QVERIFY("1.10"_dec == "1.1"_dec);
    QVERIFY(!"1.10"_dec.sameScale("1.1"_dec));
    QCOMPARE("1.10"_dec.hash(), "1.1"_dec.hash());
    QCOMPARE("100"_dec.hash(), "100.000"_dec.hash());
    QVERIFY("-2"_dec < "-1.99"_dec);
    QVERIFY("0.30"_dec > "0.2999999999999999999999999999"_dec);
    QCOMPARE(shown("1.10"_dec.stripped()), QStringLiteral("1.1"));
    QCOMPARE(shown("100"_dec.stripped()), QStringLiteral("100"));
    QCOMPARE(shown("0.000"_dec.stripped()), QStringLiteral("0"));
    QVERIFY(!"1.25"_dec.rescaledExact(1).has_value());
    QCOMPARE(shown("1.20"_dec.rescaledExact(1).value()), QStringLiteral("1.2"));
    QCOMPARE(shown(remainder("-7.5"_dec, "2"_dec)), QStringLiteral("-1.5"));
}

void DecimalTest::spillsBeyond64BitsAndComesBack()
{
    const Decimal most(std::numeric_limits<std::int64_t>::max());
    const Decimal least(std::numeric_limits<std::int64_t>::min());
    QCOMPARE(shown(most + Decimal(1)), QStringLiteral("9223372036854775808"));
    QCOMPARE(shown(-least), QStringLiteral("9223372036854775808"));
    QCOMPARE(shown(least.abs()), QStringLiteral("9223372036854775808"));
    QCOMPARE(shown(divide(least, Decimal(-1), 0, Rounding::Down)),
             QStringLiteral("9223372036854775808"));
    QVERIFY((most + Decimal(1)) - Decimal(1) == most);
    QCOMPARE(((most + Decimal(1)) - Decimal(1)).toInt64().value(),
             std::numeric_limits<std::int64_t>::max());
    QCOMPARE((least - Decimal(1)).toInt64().has_value(), false);
    QCOMPARE(shown(Decimal(std::numeric_limits<std::uint64_t>::max())),
             QStringLiteral("18446744073709551615"));
    QCOMPARE((most * most).hash(), (most * most * "1.00"_dec).hash());
    QCOMPARE(shown(most * most), QStringLiteral("85070591730234615847396907784232501249"));
    Decimal copied = most * most;
    Decimal assigned;
    assigned = copied;
    copied = Decimal(1);
    QVERIFY(assigned == most * most);
    QCOMPARE(shown(std::move(assigned)), QStringLiteral("85070591730234615847396907784232501249"));
}

void DecimalTest::limitsHostileInput()
{
    const std::string most(Decimal::DigitsMax, '9');
    QVERIFY(Decimal::parse(most).has_value());
    QVERIFY(Decimal::parse(std::string(5000, '0') + most).has_value());
    QVERIFY(!Decimal::parse(most + "9").has_value());
    QVERIFY(Decimal::parse("0." + most).has_value());
    QVERIFY(!Decimal::parse("0.0" + most).has_value());
    QVERIFY(!Decimal::parse("9" + std::string(".") + most).has_value());
    const auto refused = Decimal::parse(std::string(1000000, 'x'));
    QVERIFY(!refused.has_value());
    QVERIFY(refused.error().sentence().size() < 200);
}

void DecimalTest::knowsWholeNumbers()
{
    QVERIFY("12.000"_dec.isWhole());
    QVERIFY(!"12.001"_dec.isWhole());
    QCOMPARE("12.000"_dec.toInt64().value(), std::int64_t{12});
    QVERIFY(!"12.5"_dec.toInt64().has_value());
    QVERIFY(!"99999999999999999999"_dec.toInt64().has_value());
    QCOMPARE(Decimal(-3).sign(), -1);
    QCOMPARE(Decimal().sign(), 0);
    QVERIFY("0.00"_dec.isZero());
}

void DecimalTest::approximatesToTheNearestDouble()
{
    QCOMPARE("0.1"_dec.approximate(), 0.1);
    QCOMPARE("-1234.5"_dec.approximate(), -1234.5);
    QCOMPARE(Decimal::parse("1" + std::string(400, '0')).value().approximate(),
             std::numeric_limits<double>::infinity());
    QCOMPARE(Decimal::parse("-0." + std::string(400, '0') + "1").value().approximate(), -0.0);
}

QTEST_APPLESS_MAIN(DecimalTest)
#include "tst_decimal_keeps_every_digit.moc"
