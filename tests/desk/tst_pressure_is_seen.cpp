// SPDX-License-Identifier: MIT
//
// The pressure along the line, in the real window: chosen by keys, walked by arrows, it opens what
// stands there, and it follows every answer.

#include "pictures_on_screen.h"

using namespace flarestock;

class PressureIsSeen : public QObject, protected PicturesOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase() { open(); }
    void theAnswerStandsFirst();
    void arrowsWalkTheLineAndOpenWhatStandsThere();
    void anAnswerRedrawsIt();
    void theUnitsAreThePersons();
    void tabReachesIt();
    void itStaysWhenTheBuildChanges();
    void whatCannotBeDrawnSaysWhy();
    void picturesOfTheDemoBuilds();
    void nothingIsWarnedAbout();

private:
    [[nodiscard]] Plot &plot() const { return *m_desk->pictures()->pressure(); }
};

void PressureIsSeen::theAnswerStandsFirst()
{
    look("coupe-fuel", BuildPictures::Pressure);
    QVERIFY(item("lineMap") == nullptr);
    QCOMPARE(words("plotSays"), plot().says());
    QVERIFY2(plot().says().startsWith(QStringLiteral("43.5 psi at the regulator")),
             qPrintable(plot().says()));
    auto *node = QAccessible::queryAccessibleInterface(item("plot"));
    QCOMPARE(node->text(QAccessible::Name), plot().says());
}

void PressureIsSeen::arrowsWalkTheLineAndOpenWhatStandsThere()
{
    look("coupe-fuel", BuildPictures::Pressure);
    item("plot")->forceActiveFocus();
    key(Qt::Key_Home);
    QCOMPARE(m_desk->build()->opened()->spot(), QStringLiteral("station|cell"));
    key(Qt::Key_Right);
    QCOMPARE(m_desk->build()->opened()->spot(), QStringLiteral("run|supply"));
    QVERIFY2(words("plotCurrent").contains(QStringLiteral("takes ")),
             qPrintable(words("plotCurrent")));
    key(Qt::Key_End);
    QCOMPARE(m_desk->build()->opened()->spot(), QStringLiteral("station|cell"));
    key(Qt::Key_Left);
    QCOMPARE(m_desk->build()->opened()->spot(), QStringLiteral("run|return"));
    key(Qt::Key_Return);
    QCOMPARE(focusName(*m_window), QStringLiteral("openedPanel"));
    // What the panel opens is in hand in the picture.
    m_desk->build()->openAt(QStringLiteral("pressure"));
    QTRY_COMPARE(plot().opens(), QStringLiteral("run|pressure"));
}

void PressureIsSeen::anAnswerRedrawsIt()
{
    look("coupe-fuel", BuildPictures::Pressure);
    const QString before = plot().says();
    QVERIFY(m_desk->build()->answer(QStringLiteral("pressure"), QStringLiteral("22 ft")));
    QTRY_VERIFY(plot().says() != before);
    key(Qt::Key_Z, Qt::ControlModifier);
    QTRY_COMPARE(plot().says(), before);
}

void PressureIsSeen::theUnitsAreThePersons()
{
    look("coupe-fuel", BuildPictures::Pressure);
    item("unitsButton")->forceActiveFocus();
    key(Qt::Key_Space);
    QVERIFY2(plot().says().startsWith(QStringLiteral("3 bar at the regulator")),
             qPrintable(plot().says()));
    key(Qt::Key_Space);
    QVERIFY(plot().says().startsWith(QStringLiteral("43.5 psi")));
}

void PressureIsSeen::tabReachesIt()
{
    look("coupe-fuel", BuildPictures::Pressure);
    item("findField")->forceActiveFocus();
    QStringList passed;
    for (int at = 0; at < 60; ++at) {
        key(Qt::Key_Tab);
        passed.append(focusName(*m_window));
        if (passed.back() == QStringLiteral("findField"))
            break;
    }
    for (const char *part : {"pictureLine", "picturePressure", "plot", "openedPanel", "billEntry"})
        QVERIFY2(passed.contains(QLatin1String(part)), part);
    int controls = 0;
    QStringList nameless;
    visit(QAccessible::queryAccessibleInterface(m_window), controls, nameless);
    QCOMPARE(nameless, QStringList());
}

void PressureIsSeen::itStaysWhenTheBuildChanges()
{
    look("coupe-fuel", BuildPictures::Pressure);
    QVERIFY(m_desk->openBuild(QStringLiteral("roadster-surge")));
    QTRY_COMPARE(plot().views().size(), 2);
    QVERIFY(item("plot") != nullptr);
    key(Qt::Key_1, Qt::ControlModifier);
    QTRY_VERIFY(item("lineMap") != nullptr);
    QVERIFY(item("plot") == nullptr);
}

void PressureIsSeen::whatCannotBeDrawnSaysWhy()
{
    look("coupe-brakes", BuildPictures::Pressure);
    QTRY_VERIFY(item("plotWhyNone") != nullptr);
    QVERIFY2(
        words("plotWhyNone").startsWith(QStringLiteral("Nothing flows in the lines of brakes")),
        qPrintable(words("plotWhyNone")));
    keepPictures("pressure-brakes");
    look("coupe-oil", BuildPictures::Pressure);
    QTRY_VERIFY(words("plotWhyNone").startsWith(QStringLiteral("Nobody states how much goes")));
}

void PressureIsSeen::picturesOfTheDemoBuilds()
{
    for (const char *build : {"coupe-fuel", "single-seater-fuel", "single-seater-return",
                              "roadster-fuel", "roadster-gearbox", "template|gravity-feed"}) {
        look(build, BuildPictures::Pressure);
        QTRY_VERIFY(plot().isThere());
        const QByteArray name = QByteArray(build).replace('|', '-').prepend("pressure-");
        keepPictures(name.constData());
    }
}

void PressureIsSeen::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(PressureIsSeen)
#include "tst_pressure_is_seen.moc"
