// SPDX-License-Identifier: MIT
//
// What an unmarked fitting can be. The sweep measures every thread of the tables as a caliper would
// and asks whether the true one is among the candidates.

#include "model/ports/identify.h"
#include "model/ports/seat.h"

#include <QTest>

#include <algorithm>

using namespace flarestock;

namespace {

bool hasThread(const Identification &said, const std::string &thread)
{
    return std::any_of(said.candidates.begin(), said.candidates.end(),
                       [&](const Candidate &candidate) { return candidate.thread == thread; });
}

} // namespace

class IdentifyTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void asksForPitchThenSeat();
    void saysWhatItIs_data();
    void saysWhatItIs();
    void theTrueThreadIsAmongTheCandidates();
    void saysSoWhereNothingIsNear();
};

void IdentifyTest::asksForPitchThenSeat()
{
    // 7/8-14 (22.225 mm) and M22x1.5 are a known trap (a hydraulic reference table names the pair).
    Caliper caliper{Gender::Male, 22.1, {}, {}};
    auto said = identify(caliper);
    QCOMPARE(text(said.ask), std::string_view("pitch"));
    QVERIFY(hasThread(said, "7/8-14") && hasThread(said, "M22x1.5"));

    caliper.pitchMm = 25.4 / 14;
    said = identify(caliper);
    QCOMPARE(text(said.ask), std::string_view("seat"));
    QVERIFY(hasThread(said, "7/8-14") && !hasThread(said, "M22x1.5"));

    caliper.seatDegrees = 37;
    said = identify(caliper);
    QCOMPARE(text(said.ask), std::string_view("none"));
    QCOMPARE(said.candidates.size(), std::size_t{1});
    for (const auto &port : said.candidates[0].ports)
        QVERIFY(port.family == Family::An || port.family == Family::Jic);
}

void IdentifyTest::saysWhatItIs_data()
{
    QTest::addColumn<bool>("male");
    QTest::addColumn<double>("diameter");
    QTest::addColumn<double>("pitch");
    QTest::addColumn<double>("seat");
    QTest::addColumn<QString>("port");
    // Diameters a little under nominal, as crests are (class 2A major limits, ASME B1.1).
    QTest::newRow("9/16 with 37 degrees") << true << 14.15 << 25.4 / 18 << 37.0 << "AN -6 male";
    QTest::newRow("5/8-18 with 45 degrees")
        << true << 15.75 << 25.4 / 18 << 45.0 << "SAE45 -6 male";
    QTest::newRow("M14x1.5 with 24 degrees") << true << 13.9 << 1.5 << 24.0 << "DIN24L 8 male";
    QTest::newRow("G1/4 with 60 degrees")
        << true << 13.05 << 25.4 / 19 << 60.0 << "BSPP60 1/4 male";
    QTest::newRow("female 3/4-16, minor") << false << 17.5 << 25.4 / 16 << 37.0 << "AN -8 female";
}

void IdentifyTest::saysWhatItIs()
{
    QFETCH(bool, male);
    QFETCH(double, diameter);
    QFETCH(double, pitch);
    QFETCH(double, seat);
    QFETCH(QString, port);
    const auto said = identify({male ? Gender::Male : Gender::Female, diameter, pitch, seat});
    QVERIFY(!said.candidates.empty());
    QStringList ports;
    for (const auto &each : said.candidates.front().ports)
        ports << QString::fromStdString(each.text());
    QVERIFY2(ports.contains(port), qPrintable(ports.join(u'|')));
}

void IdentifyTest::theTrueThreadIsAmongTheCandidates()
{
    int swept = 0;
    for (const auto &row : sizeRows()) {
        if (!row.thread)
            continue;
        const auto limits = limitsOf(*row.thread);
        const double male = row.thread->tapered
                                ? row.thread->maleMajorMm()
                                : (limits.externalMajorLeast + limits.externalMajorMost) / 2;
        const double female = (limits.internalMinorLeast + limits.internalMinorMost) / 2;
        for (const double off : {-0.1, 0.0, 0.1}) {
            const auto asMale = identify({Gender::Male, male + off, row.thread->pitchMm, {}});
            QVERIFY2(hasThread(asMale, row.thread->name), row.thread->name.c_str());
            if (row.family == Family::Banjo)
                continue;
            const auto asFemale = identify({Gender::Female, female + off, {}, {}});
            QVERIFY2(hasThread(asFemale, row.thread->name), row.thread->name.c_str());
            ++swept;
        }
    }
    QVERIFY(swept > 400);
}

void IdentifyTest::saysSoWhereNothingIsNear()
{
    const auto said = identify({Gender::Male, 300, {}, {}});
    QVERIFY(said.candidates.empty());
    QCOMPARE(text(said.ask), std::string_view("none"));
    QVERIFY(!said.why.empty());
}

QTEST_APPLESS_MAIN(IdentifyTest)
#include "tst_unmarked_fitting_is_among_its_candidates.moc"
