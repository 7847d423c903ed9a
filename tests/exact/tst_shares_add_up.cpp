// SPDX-License-Identifier: MIT
//
// Currencies by ISO 4217, and shares that add up.

#include "model/exact/money.h"

#include <QTest>

#include <map>

using namespace flarestock;

namespace {

Money euros(const char *amount)
{
    return {Decimal::parse(amount).value(), Currency::parse("EUR").value()};
}

QStringList said(const std::vector<Money> &parts)
{
    QStringList result;
    for (const Money &part : parts)
        result << QString::fromStdString(part.amount.text());
    return result;
}

std::vector<Decimal> weights(const QStringList &texts)
{
    std::vector<Decimal> result;
    for (const QString &each : texts)
        result.push_back(Decimal::parse(each.toStdString()).value());
    return result;
}

} // namespace

class MoneyTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void currenciesHaveTheDigitsOfTheStandard();
    void otherWordsAreNoCurrency_data();
    void otherWordsAreNoCurrency();
    void roundsToItsMinorDigits();
    void sharesAddUp_data();
    void sharesAddUp();
    void aNegativeTotalIsSharedAlike();
    void aPriceBySixteenthsCarriesNoCentAway();
};

void MoneyTest::currenciesHaveTheDigitsOfTheStandard()
{
    // ISO 4217: how many codes have how many minor digits, and the exceptions by name. The forint
    // and the rupiah have two, whatever a locale shows.
    std::map<int, std::string> byDigits;
    std::map<int, int> count;
    std::string code = "AAA";
    for (code[0] = 'A'; code[0] <= 'Z'; ++code[0]) {
        for (code[1] = 'A'; code[1] <= 'Z'; ++code[1]) {
            for (code[2] = 'A'; code[2] <= 'Z'; ++code[2]) {
                const auto currency = Currency::parse(code);
                if (!currency)
                    continue;
                QCOMPARE(std::string(currency->code()), code);
                ++count[currency->minorDigits()];
                byDigits[currency->minorDigits()] += " " + code;
            }
        }
    }
    QCOMPARE(count[2], 139);
    QCOMPARE(byDigits[0], std::string(" BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF"
                                      " XOF XPF"));
    QCOMPARE(byDigits[3], std::string(" BHD IQD JOD KWD LYD OMR TND"));
    QCOMPARE(byDigits[4], std::string(" CLF UYW"));
    QCOMPARE(count.size(), std::size_t{4});
    for (const char *two : {"EUR", "USD", "GBP", "HUF", "IDR", "PKR", "CHF", "SEK", "MGA", "MRU"})
        QCOMPARE(Currency::parse(two).value().minorDigits(), 2);
}

void MoneyTest::otherWordsAreNoCurrency_data()
{
    QTest::addColumn<std::string>("code");
    for (const char *code : {"", "EU", "EURO", "eur", "XAU", "DEM", "E R", "R U", " EU"})
        QTest::newRow(*code ? code : "nothing") << std::string(code);
}

void MoneyTest::otherWordsAreNoCurrency()
{
    QFETCH(const std::string, code);
    QVERIFY(!Currency::parse(code).has_value());
}

void MoneyTest::roundsToItsMinorDigits()
{
    QCOMPARE(euros("3.325").toMinorDigits(Rounding::HalfEven).text(), std::string("3.32 EUR"));
    QCOMPARE(euros("3.325").toMinorDigits(Rounding::HalfUp).text(), std::string("3.33 EUR"));
    const Money yen{"12.5"_dec, Currency::parse("JPY").value()};
    QCOMPARE(yen.toMinorDigits(Rounding::HalfEven).text(), std::string("12 JPY"));
    const Money dinar{"1.2345"_dec, Currency::parse("KWD").value()};
    QCOMPARE(dinar.toMinorDigits(Rounding::HalfEven).text(), std::string("1.234 KWD"));
    QVERIFY(euros("1.10") + euros("2.2") == euros("3.3"));
    QVERIFY(euros("1.10") - euros("2.2") == euros("-1.1"));
    QVERIFY(!(euros("1") == Money{Decimal(1), Currency::parse("USD").value()}));
}

void MoneyTest::sharesAddUp_data()
{
    QTest::addColumn<QString>("total");
    QTest::addColumn<QStringList>("by");
    QTest::addColumn<QStringList>("expected");
    const auto list = [](const char *texts) {
        return QString::fromLatin1(texts).split(QLatin1Char(' '));
    };
    // A published question: a refund of 2.10 on an invoice of three lines.
    QTest::newRow("refund 2.10") << QStringLiteral("2.10") << list("1.99 2.17 0.82")
                                 << list("0.84 0.91 0.35");
    QTest::newRow("refund 2.00") << QStringLiteral("2.00") << list("1.99 2.17 0.82")
                                 << list("0.80 0.87 0.33");
    // Worked by hand: naive half-even rounding would give 25.01.
    QTest::newRow("freight 25.00") << QStringLiteral("25.00") << list("12.50 7.25 8.99 24.99 3.33")
                                   << list("5.48 3.17 3.94 10.95 1.46");
    // A published question: 33.34 in four equal shares.
    QTest::newRow("four equal shares")
        << QStringLiteral("33.34") << list("1 1 1 1") << list("8.34 8.34 8.33 8.33");
    QTest::newRow("one that weighs nothing")
        << QStringLiteral("1.00") << list("0 3 3 3") << list("0.00 0.34 0.33 0.33");
    QTest::newRow("nothing to share") << QStringLiteral("0.00") << list("1 2") << list("0.00 0.00");
}

void MoneyTest::sharesAddUp()
{
    QFETCH(const QString, total);
    QFETCH(const QStringList, by);
    QFETCH(const QStringList, expected);
    QCOMPARE(said(shares(euros(total.toStdString().c_str()), weights(by))), expected);
}

void MoneyTest::aNegativeTotalIsSharedAlike()
{
    QCOMPARE(
        said(shares(euros("-2.10"), weights({QStringLiteral("1.99"), QStringLiteral("2.17"),
                                             QStringLiteral("0.82")}))),
        QStringList({QStringLiteral("-0.84"), QStringLiteral("-0.91"), QStringLiteral("-0.35")}));
}

void MoneyTest::aPriceBySixteenthsCarriesNoCentAway()
{
    // A 20 ft coil at 64.90 has 240 in: 649/2400 an inch (worked by hand).
    const Rational inch(Decimal::parse("64.90").value(), Decimal(240));
    QVERIFY(inch.numerator() == Decimal(649));
    QVERIFY(inch.denominator() == Decimal(2400));
    const Rational cut = inch.times("37.5"_dec);
    QVERIFY(cut == Rational(Decimal(649), Decimal(64)));
    QCOMPARE(cut.exactDecimal(6).value().text(), std::string("10.140625"));
    QCOMPARE(cut.toDecimal(2, Rounding::HalfEven).text(), std::string("10.14"));
    const Rational six = cut.times(Decimal(6));
    QCOMPARE(six.toDecimal(2, Rounding::HalfEven).text(), std::string("60.84"));
    QVERIFY(!inch.exactDecimal(30).has_value());
    // Rings in packs of ten for 4.75: each 0.475, seven are 3.325.
    QCOMPARE(Rational("4.75"_dec, Decimal(10)).times(Decimal(7)).exactDecimal(3).value().text(),
             std::string("3.325"));
    // OpenStax, Principles of Accounting 1, ch. 10.2: moving average 6705/255 = 447/17.
    const Rational average(Decimal(6705), Decimal(255));
    QVERIFY(average.numerator() == Decimal(447) && average.denominator() == Decimal(17));
    QCOMPARE(average.times(Decimal(180))
                 .plus(Rational(Decimal(2520)))
                 .toDecimal(2, Rounding::HalfEven)
                 .text(),
             std::string("7252.94"));
}

QTEST_APPLESS_MAIN(MoneyTest)
#include "tst_shares_add_up.moc"
