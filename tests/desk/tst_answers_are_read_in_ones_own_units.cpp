// SPDX-License-Identifier: MIT
//
// An answer stays as it was given, and is said in the units that the person reads where it stands
// in others. An inch is 25.4 mm exactly; 1 psi is 6.894757 kPa (NIST SP 811).

#include "app/desk/build/other_units.h"
#include "desk_on_demo.h"

using namespace flarestock;

class AnswersAreReadInOnesOwnUnits : public QObject, protected DeskOnDemo {
    Q_OBJECT
private Q_SLOTS:
    void saysWhatOneReads_data();
    void saysWhatOneReads();
    void besideEachAnswer();
};

void AnswersAreReadInOnesOwnUnits::saysWhatOneReads_data()
{
    QTest::addColumn<QString>("answer");
    QTest::addColumn<int>("dimension");
    QTest::addColumn<bool>("inches");
    QTest::addColumn<QString>("said");
    const auto row = [](const char *answer, Dimension dimension, bool inches, const char *said) {
        QTest::addRow("%s in %s", answer, inches ? "inches" : "mm")
            << QString::fromLatin1(answer) << static_cast<int>(dimension) << inches
            << QString::fromUtf8(said);
    };
    row("30 in", Dimension::Length, false, "762 mm");
    row("30 in", Dimension::Length, true, "");
    row("5 ft 6 in", Dimension::Length, false, "1,676.4 mm");
    row("762 mm", Dimension::Length, true, "2 ft 6 in");
    row("762 mm", Dimension::Length, false, "");
    row("2 m", Dimension::Length, true, "≈ 6 ft 6 3/4 in"); // 78.740 in
    row("43.5 psi", Dimension::Pressure, false, "3 bar");   // 2.9992 bar
    row("3 bar", Dimension::Pressure, true, "43.5 psi");    // 43.511 psi
    row("450 hp", Dimension::Power, false, "");
    row("soon", Dimension::Length, false, "");
}

void AnswersAreReadInOnesOwnUnits::saysWhatOneReads()
{
    QFETCH(QString, answer);
    QFETCH(int, dimension);
    QFETCH(bool, inches);
    QFETCH(QString, said);
    const Units units = inches ? Units::Inch : Units::Metric;
    QCOMPARE(saidInUnits(answer.toStdString(), static_cast<Dimension>(dimension), units), said);
}

void AnswersAreReadInOnesOwnUnits::besideEachAnswer()
{
    renew("coupe-brakes");
    Rows &answers = *m_desk->build()->answers();
    const auto otherwise = [&answers] {
        QStringList all;
        for (int row = 0; row < answers.count(); ++row)
            all.append(answers.cell(row, QStringLiteral("otherwise")).toString());
        all.removeAll(QString());
        return all;
    };
    m_desk->build()->setInInches(false);
    QVERIFY2(otherwise().contains(QStringLiteral("762 mm")), qPrintable(otherwise().join(u'|')));
    QVERIFY(otherwise().size() >= 4);
    m_desk->build()->setInInches(true);
    QCOMPARE(otherwise(), QStringList());
}

QTEST_MAIN(AnswersAreReadInOnesOwnUnits)
#include "tst_answers_are_read_in_ones_own_units.moc"
