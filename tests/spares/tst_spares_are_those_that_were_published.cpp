// SPDX-License-Identifier: MIT
//
// How many spares are carried: against published problems and their answers, a wrong published
// answer as a negative control, and the trailer's table. Figures with six decimals were reckoned
// with 60 digits by another program.

#include "model/spares/carry/spare_demand.h"
#include "model/spares/carry/wearing_out.h"

#include <QTest>

using namespace flarestock;

class PublishedSparesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void agreesWithPublishedAnswers_data();
    void agreesWithPublishedAnswers();
    void coversWhatWasPublished();
    void refutesAWrongSheet();
    void tellsFillRateApart();
    void fillsTheTrailersTable_data();
    void fillsTheTrailersTable();
    void isNotTooBraveWithThinHistory();
    void coversExactly();
    void countsWhatWearsOut_data();
    void countsWhatWearsOut();
};

static bool isNear(double is, double said, double within = 5e-7)
{
    return std::abs(is - said) <= within;
}

void PublishedSparesTest::agreesWithPublishedAnswers_data()
{
    QTest::addColumn<double>("mean");
    QTest::addColumn<double>("certainty");
    QTest::addColumn<int>("carry");
    QTest::addColumn<double>("oneLess");
    QTest::addColumn<double>("covered");
    // A statistics forum's published answer.
    QTest::newRow("S1: 400 h at 0.003534") << 400 * 0.003534 << 0.95 << 4 << 0.944729 << 0.985203;
    // A logistics-engineering problem solved by nomograph: 30 parts, 2160 h, one in 10,000 h.
    QTest::newRow("S2: 30 parts") << 30 * 2160.0 / 10'000 << 0.95 << 11 << 0.934271 << 0.966775;
    // The same family with 20 parts, from memory.
    QTest::newRow("S3: 20 parts") << 4.32 << 0.95 << 8 << 0.927496 << 0.967508;
    // A base-stock question, 12 a year and a month to wait; computed.
    QTest::newRow("S5: one in the lead time") << 1.0 << 0.99 << 4 << 0.981012 << 0.996340;
}

void PublishedSparesTest::agreesWithPublishedAnswers()
{
    QFETCH(double, mean);
    QFETCH(double, certainty);
    QFETCH(int, carry);
    QFETCH(double, oneLess);
    QFETCH(double, covered);
    const auto demand = SpareDemand::poisson(mean);
    QCOMPARE(demand.fewest(certainty), std::int64_t{carry});
    QVERIFY(isNear(demand.covered(carry - 1), oneLess));
    QVERIFY(isNear(demand.covered(carry), covered));
}

void PublishedSparesTest::coversWhatWasPublished()
{
    // S4: a reliability tutorial, 0.001 a hour for 500 h: P(X ≤ 2) is published as 0.986.
    const double covered = SpareDemand::poisson(0.5).covered(2);
    QVERIFY(isNear(covered, 0.986, 5e-4));
    QVERIFY(isNear(covered, 0.985612));
}

void PublishedSparesTest::refutesAWrongSheet()
{
    // S6: a homework sheet, 1 a week for 2 weeks at 95 %: it says 4, which does not cover so much.
    const auto demand = SpareDemand::poisson(2);
    QVERIFY(isNear(demand.covered(4), 0.947347));
    QVERIFY(demand.covered(4) < 0.95);
    QCOMPARE(demand.fewest(0.95), std::int64_t{5});
}

void PublishedSparesTest::tellsFillRateApart()
{
    // S5 asks for the fill rate, which is another measure: E[min(X, k)] / E[X], summed here.
    const auto demand = SpareDemand::poisson(1);
    double wanted = 0;
    double probability = std::exp(-1.0);
    for (int used = 1; used < 60; ++used) {
        probability /= used;
        wanted += std::min(used, 4) * probability;
    }
    QVERIFY(isNear(demand.met(4), wanted, 1e-12));
    QVERIFY(std::abs(demand.met(4) - demand.covered(4)) > 1e-4);
}

void PublishedSparesTest::fillsTheTrailersTable_data()
{
    QTest::addColumn<double>("mean");
    QTest::addColumn<QList<int>>("carry"); // At 80, 90, 95 and 99 %.
    const auto row = [](double mean, const QList<int> &carry) {
        QTest::addRow("%g", mean) << mean << carry;
    };
    row(0.1, {0, 0, 1, 1});
    row(0.2, {0, 1, 1, 2});
    row(0.5, {1, 1, 2, 3});
    row(1, {2, 2, 3, 4});
    row(2, {3, 4, 5, 6});
    row(3, {4, 5, 6, 8});
    row(4, {6, 7, 8, 9});
    row(5, {7, 8, 9, 11});
    row(6, {8, 9, 10, 12});
    row(8, {10, 12, 13, 15});
    row(10, {13, 14, 15, 18});
}

void PublishedSparesTest::fillsTheTrailersTable()
{
    QFETCH(double, mean);
    QFETCH(QList<int>, carry);
    const std::array<double, 4> certainties = {0.8, 0.9, 0.95, 0.99};
    for (int i = 0; i < 4; ++i)
        QCOMPARE(SpareDemand::poisson(mean).fewest(certainties[static_cast<std::size_t>(i)]),
                 std::int64_t{carry[i]});
}

void PublishedSparesTest::isNotTooBraveWithThinHistory()
{
    // 1 failure in 10 events, the next 5 at 95 %: the plain mean of 0.5 says 2, the predictive 3.
    // P(X ≤ 2) = 8/9, P(X ≤ 3) = 232/243 by NB(2, 2/3).
    const UsesSeen history{1, 10, 5};
    QCOMPARE(SpareDemand::poisson(0.5).fewest(0.95), std::int64_t{2});
    const auto predictive = SpareDemand::predictive(history);
    QCOMPARE(predictive.fewest(0.95), std::int64_t{3});
    QVERIFY(isNear(predictive.covered(2), 8.0 / 9, 1e-14));
    QVERIFY(isNear(predictive.covered(3), 232.0 / 243, 1e-14));
    QVERIFY(isNear(predictive.mean(), 1.0, 1e-14));
    QCOMPARE(SpareDemand::of(history).form(), SpareDemand::Form::Predictive);
    QCOMPARE(SpareDemand::of({25, 50, 5}).form(), SpareDemand::Form::Poisson);
    QCOMPARE(SpareDemand::of({24, 50, 5}).form(), SpareDemand::Form::Predictive);
}

void PublishedSparesTest::coversExactly()
{
    // Nothing seen in 5 events, 5 to come: NB(1, 1/2) covers 1/2, 3/4, 7/8 and no binary fraction
    // may make one more of it.
    const auto demand = SpareDemand::predictive({0, 5, 5});
    QCOMPARE(demand.fewest(0.5), std::int64_t{0});
    QCOMPARE(demand.fewest(0.75), std::int64_t{1});
    QCOMPARE(demand.fewest(0.875), std::int64_t{2});
    QCOMPARE(SpareDemand::poisson(0).fewest(0.999), std::int64_t{0});
}

void PublishedSparesTest::countsWhatWearsOut_data()
{
    QTest::addColumn<QStringList>("used");
    QTest::addColumn<QString>("lasts");
    QTest::addColumn<QString>("coming");
    QTest::addColumn<int>("during");
    QTest::addColumn<int>("after");
    // Counted by hand: 4 of 10 run, so replaced after 6 and 16 of 20.
    const auto row = [](const char *name, const char *used, const char *lasts, const char *coming,
                        std::pair<int, int> due) {
        QTest::newRow(name) << QString::fromLatin1(used).split(QChar::fromLatin1(','))
                            << QString::fromLatin1(lasts) << QString::fromLatin1(coming)
                            << due.first << due.second;
    };
    row("twice", "4", "10", "20", {2, 0});
    row("just not", "0", "10", "10", {0, 1});
    row("three cars", "0,5,9.5", "10", "6", {2, 0});
    row("past its life", "35", "10", "1", {1, 0});
    row("no running", "35", "10", "0", {0, 0});
    row("hours", "0.3", "0.5", "1.1", {2, 0});
}

void PublishedSparesTest::countsWhatWearsOut()
{
    QFETCH(QStringList, used);
    QFETCH(QString, lasts);
    QFETCH(QString, coming);
    QFETCH(int, during);
    QFETCH(int, after);
    WearingOut wear;
    wear.lasts = Decimal::parse(lasts.toStdString()).value();
    wear.coming = Decimal::parse(coming.toStdString()).value();
    for (const QString &one : used)
        wear.used.push_back(Decimal::parse(one.toStdString()).value());
    const DuePieces due = replacementsDue(wear);
    QCOMPARE(due.during, std::int64_t{during});
    QCOMPARE(due.after, std::int64_t{after});
}

QTEST_APPLESS_MAIN(PublishedSparesTest)
#include "tst_spares_are_those_that_were_published.moc"
