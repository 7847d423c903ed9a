// SPDX-License-Identifier: MIT
//
// Which joint wants the piece in the hand: by caliper and pitch gauge, typed as a hand says it.

#include "app/desk/build/build_desk.h"
#include "app/desk/build/caliper_rows.h"
#include "bench_shop.h"

#include <QTest>

using namespace flarestock;

class PieceInTheHand : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init();
    void aCaliperIsReadAsItIsSaid_data();
    void aCaliperIsReadAsItIsSaid();
    void otherWordsAreNoCaliper_data();
    void otherWordsAreNoCaliper();
    void theJointsThatWantItAreListedAndMarked();
    void itSaysWhatToMeasureNext();
    void whatNoThreadComesNearIsSaid();

private:
    [[nodiscard]] QString cell(int row, const char *name) const
    {
        return m_desk->found()->cell(row, QString::fromLatin1(name)).toString();
    }
    [[nodiscard]] QStringList marked() const
    {
        QStringList joints;
        const Rows *marks = m_desk->map()->marks();
        for (int row = 0; row < marks->count(); ++row) {
            if (marks->cell(row, QStringLiteral("found")).toBool())
                joints.append(marks->cell(row, QStringLiteral("key")).toString());
        }
        return joints;
    }

    std::unique_ptr<BuildDesk> m_desk;
};

void PieceInTheHand::init()
{
    QLocale::setDefault(QLocale::c());
    m_desk = std::make_unique<BuildDesk>();
    QVERIFY(openBench(*m_desk));
}

/// 1 in = 25.4 mm exactly (NIST SP 811, appendix B); so 14 threads an inch are 25.4/14 mm.
void PieceInTheHand::aCaliperIsReadAsItIsSaid_data()
{
    QTest::addColumn<QString>("typed");
    QTest::addColumn<bool>("male");
    QTest::addColumn<double>("diameter");
    QTest::addColumn<double>("pitch"); // 0 where none.
    QTest::addColumn<double>("seat");  // 0 where none.
    QTest::newRow("millimetres") << "od 22.1 mm" << true << 22.1 << 0. << 0.;
    QTest::newRow("with a pitch") << "od 22.1 mm 14 tpi" << true << 22.1 << 25.4 / 14 << 0.;
    QTest::newRow("decimal inches") << "OD 0.87 in" << true << 22.098 << 0. << 0.;
    QTest::newRow("a fraction") << "male 7/8 in 37 deg" << true << 22.225 << 0. << 37.;
    QTest::newRow("whole and fraction") << "od 1 5/16\"" << true << 33.3375 << 0. << 0.;
    QTest::newRow("a metric pitch") << "bore 20.3mm 1.5mm" << false << 20.3 << 1.5 << 0.;
    QTest::newRow("a female") << "id 17.5 mm, 16 tpi, 37°" << false << 17.5 << 25.4 / 16 << 37.;
}

void PieceInTheHand::aCaliperIsReadAsItIsSaid()
{
    QFETCH(QString, typed);
    QFETCH(bool, male);
    QFETCH(double, diameter);
    QFETCH(double, pitch);
    QFETCH(double, seat);
    const auto caliper = caliperTyped(typed);
    QVERIFY(caliper);
    QCOMPARE(caliper->gender == Gender::Male, male);
    QCOMPARE(caliper->diameterMm, diameter);
    QCOMPARE(caliper->pitchMm.value_or(0), pitch);
    QCOMPARE(caliper->seatDegrees.value_or(0), seat);
    QVERIFY(!caliper->flatSeat && !caliper->tapered);
    QVERIFY(caliperTyped(QString(typed + QStringLiteral(" flat")))->flatSeat);
    QLocale::setDefault(QLocale(QLocale::German));
    QCOMPARE(caliperTyped(QStringLiteral("od 22,1 mm"))->diameterMm, 22.1);
}

void PieceInTheHand::otherWordsAreNoCaliper_data()
{
    QTest::addColumn<QString>("typed");
    for (const char *typed : {"", "od", "od twenty mm", "odd 22 mm", "22.1 mm", "pump in",
                              "od 0 mm", "od 1/0 in", "od 14 tpi", "bore 20 mm 3 in"})
        QTest::newRow(typed) << typed;
}

void PieceInTheHand::otherWordsAreNoCaliper()
{
    QFETCH(QString, typed);
    QVERIFY(!caliperTyped(typed));
}

/// SAE J514: the thread of the -6 flare is 9/16-18, 14.29 mm over its crests.
void PieceInTheHand::theJointsThatWantItAreListedAndMarked()
{
    m_desk->find(QStringLiteral("od 14.2 mm 18 tpi"));
    QCOMPARE(cell(0, "kind"), QStringLiteral("measure"));
    QVERIFY2(cell(0, "title").contains(QStringLiteral("9/16-18")), qPrintable(cell(0, "title")));
    QStringList joints;
    QStringList kinds;
    for (int row = 1; row < m_desk->found()->count(); ++row) {
        kinds.append(cell(row, "kind"));
        if (kinds.last() == QStringLiteral("joint"))
            joints.append(cell(row, "target"));
    }
    QVERIFY(joints.contains(QStringLiteral("pressure.start"))); // Made with AD-66.
    QVERIFY(joints.contains(QStringLiteral("feed.end")));       // Could be made with it.
    QVERIFY(!joints.contains(QStringLiteral("supply.end")));    // All of it is -10.
    QStringList found = marked();
    found.sort();
    joints.sort();
    QCOMPARE(found, joints);
    m_desk->find(QString());
    QVERIFY(marked().isEmpty());
    QCOMPARE(m_desk->found()->count(), 0);
}

/// 7/8-14 and M22x1.5 are a known trap: both measure about 22.1 mm over the crests.
void PieceInTheHand::itSaysWhatToMeasureNext()
{
    m_desk->find(QStringLiteral("od 22.1 mm"));
    QVERIFY2(cell(0, "detail").contains(QStringLiteral("pitch gauge")),
             qPrintable(cell(0, "detail")));
    m_desk->find(QStringLiteral("od 22.1 mm 14 tpi"));
    QVERIFY2(cell(0, "detail").contains(QStringLiteral("seat")), qPrintable(cell(0, "detail")));
    QCOMPARE(cell(0, "target"), QString()); // It leads nowhere; one types on.
}

void PieceInTheHand::whatNoThreadComesNearIsSaid()
{
    m_desk->find(QStringLiteral("od 400 mm"));
    QCOMPARE(m_desk->found()->count(), 1);
    QCOMPARE(cell(0, "title"), QStringLiteral("no thread"));
    QVERIFY(cell(0, "detail").contains(QStringLiteral("measure again")));
}

QTEST_MAIN(PieceInTheHand)
#include "tst_piece_in_the_hand_is_found.moc"
