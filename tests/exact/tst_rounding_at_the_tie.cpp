// SPDX-License-Identifier: MIT
//
// Ties in every mode and on both sides of zero, because the published vectors hold few of them, and
// the rounding that tax law asks for. Ties: worked by hand from the names of the modes.

#include "model/exact/money.h"

#include <QTest>

using namespace flarestock;

class RoundingTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void tieGoesWhereTheModeSays_data();
    void tieGoesWhereTheModeSays();
    void aHairBesideTheTieIsNoTie();
    void divisionRoundsTheSameWay();
    void salesTaxRoundsHalfUp();
    void fifteenByThreeIsFive();
};

void RoundingTest::tieGoesWhereTheModeSays_data()
{
    QTest::addColumn<QString>("number");
    QTest::addColumn<QStringList>("rounded"); ///< In the order of the modes below.
    struct Row {
        const char *number;
        const char *rounded[7]; // half even, half up, half down, down, up, floor, ceiling
    };
    static const Row Rows[] = {
        {"0.5", {"0", "1", "0", "0", "1", "0", "1"}},
        {"1.5", {"2", "2", "1", "1", "2", "1", "2"}},
        {"2.5", {"2", "3", "2", "2", "3", "2", "3"}},
        {"-0.5", {"0", "-1", "0", "0", "-1", "-1", "0"}},
        {"-1.5", {"-2", "-2", "-1", "-1", "-2", "-2", "-1"}},
        {"-2.5", {"-2", "-3", "-2", "-2", "-3", "-3", "-2"}},
        {"9.5", {"10", "10", "9", "9", "10", "9", "10"}},
        {"1.4", {"1", "1", "1", "1", "2", "1", "2"}},
        {"1.6", {"2", "2", "2", "1", "2", "1", "2"}},
        {"-1.4", {"-1", "-1", "-1", "-1", "-2", "-2", "-1"}},
        {"-1.6", {"-2", "-2", "-2", "-1", "-2", "-2", "-1"}},
        {"3.0", {"3", "3", "3", "3", "3", "3", "3"}},
        {"9223372036854775807.5",
         {"9223372036854775808", "9223372036854775808", "9223372036854775807",
          "9223372036854775807", "9223372036854775808", "9223372036854775807",
          "9223372036854775808"}},
        {"-100000000000000000000000000000000.5",
         {"-100000000000000000000000000000000", "-100000000000000000000000000000001",
          "-100000000000000000000000000000000", "-100000000000000000000000000000000",
          "-100000000000000000000000000000001", "-100000000000000000000000000000001",
          "-100000000000000000000000000000000"}},
    };
    for (const Row &row : Rows) {
        QStringList rounded;
        for (const char *each : row.rounded)
            rounded << QString::fromLatin1(each);
        QTest::newRow(row.number) << QString::fromLatin1(row.number) << rounded;
    }
}

void RoundingTest::tieGoesWhereTheModeSays()
{
    QFETCH(const QString, number);
    QFETCH(const QStringList, rounded);
    constexpr Rounding Modes[] = {Rounding::HalfEven, Rounding::HalfUp, Rounding::HalfDown,
                                  Rounding::Down,     Rounding::Up,     Rounding::Floor,
                                  Rounding::Ceiling};
    const Decimal exact = Decimal::parse(number.toStdString()).value();
    QCOMPARE(rounded.size(), qsizetype{7});
    for (qsizetype at = 0; at < rounded.size(); ++at) {
        const Rounding mode = Modes[at];
        QCOMPARE(QString::fromStdString(exact.rescaled(0, mode).text()), rounded[at]);
        // The same two places further down, and as a quotient.
        const Decimal hundredth = exact * "0.01"_dec;
        QVERIFY(hundredth.rescaled(2, mode) ==
                Decimal::parse(rounded[at].toStdString()).value() * "0.01"_dec);
        QVERIFY(divide(exact * Decimal(6), Decimal(6), 0, mode) == exact.rescaled(0, mode));
    }
}

void RoundingTest::aHairBesideTheTieIsNoTie()
{
    const Decimal below = Decimal::parse("2.4" + std::string(60, '9')).value();
    const Decimal above = Decimal::parse("2.5" + std::string(60, '0') + "1").value();
    QVERIFY(below.rescaled(0, Rounding::HalfUp) == Decimal(2));
    QVERIFY(above.rescaled(0, Rounding::HalfEven) == Decimal(3));
    QVERIFY(above.rescaled(0, Rounding::HalfDown) == Decimal(3));
}

void RoundingTest::divisionRoundsTheSameWay()
{
    QVERIFY(divide(Decimal(1), Decimal(8), 2, Rounding::HalfEven) == "0.12"_dec);
    QVERIFY(divide(Decimal(3), Decimal(8), 2, Rounding::HalfEven) == "0.38"_dec);
    QVERIFY(divide(Decimal(-1), Decimal(8), 2, Rounding::HalfUp) == "-0.13"_dec);
    QVERIFY(divide(Decimal(1), Decimal(-8), 2, Rounding::Floor) == "-0.13"_dec);
    QVERIFY(divide(Decimal(-1), Decimal(-8), 2, Rounding::Ceiling) == "0.13"_dec);
    QVERIFY(divide(Decimal(2), Decimal(3), 4, Rounding::HalfEven) == "0.6667"_dec);
    QCOMPARE(divide(Decimal(6705), Decimal(255), 4, Rounding::HalfEven).text(),
             std::string("26.2941"));
}

void RoundingTest::salesTaxRoundsHalfUp()
{
    // Streamlined Sales and Use Tax Agreement § 324 (as in North Dakota Century Code 57-39.4-25):
    // to the third decimal, up when it is greater than four; by item or by invoice, as the seller
    // chooses. The amounts are worked by hand.
    const auto cents = [](const Decimal &amount) { return amount.rescaled(2, Rounding::HalfUp); };
    const Decimal rate = "0.05"_dec;
    QVERIFY(cents("1.07"_dec * rate) * Decimal(4) == "0.20"_dec);
    QVERIFY(cents("4.28"_dec * rate) == "0.21"_dec);
    QVERIFY(cents("4.10"_dec * rate) == "0.21"_dec);
    QVERIFY(("4.10"_dec * rate).rescaled(2, Rounding::HalfEven) == "0.20"_dec);
    QVERIFY(cents("1.234"_dec) == "1.23"_dec);
    QVERIFY(cents("1.235"_dec) == "1.24"_dec);
    QVERIFY(cents("-0.205"_dec) == "-0.21"_dec); // a credit note
}

void RoundingTest::fifteenByThreeIsFive()
{
    // Exact quotients stay exact in every mode: how many packs is never one too many.
    int swept = 0;
    for (int packs = 1; packs <= 100; ++packs) {
        for (int holds = 1; holds <= 100; ++holds, ++swept) {
            const Decimal need = Decimal(packs) * Decimal::scaled(holds, 1);
            QVERIFY(divide(need, Decimal::scaled(holds, 1), 0, Rounding::Ceiling) ==
                    Decimal(packs));
            QVERIFY(divide(need, Decimal::scaled(holds, 1), 0, Rounding::Floor) == Decimal(packs));
        }
    }
    QCOMPARE(swept, 10000);
}

QTEST_APPLESS_MAIN(RoundingTest)
#include "tst_rounding_at_the_tie.moc"
