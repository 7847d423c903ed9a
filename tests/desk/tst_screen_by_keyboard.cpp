// SPDX-License-Identifier: MIT
//
// Everything of the Builds screen by keyboard alone, and every control has a name for who cannot
// see.

#include "app/desk/launch/picture.h"
#include "app/desk/launch/screens.h"
#include "app/desk/shop/desk.h"
#include "app/desk/shop/look.h"
#include "bench_shop.h"
#include "named_controls.h"
#include "seen.h"

#include <QTest>

using namespace flarestock;

class ScreenByKeyboard : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void init();
    void everyControlHasAName();
    void tabReachesEveryPartAndComesRound_data();
    void tabReachesEveryPartAndComesRound();
    void arrowsWalkTheMapAndOpen();
    void enterGoesFromTheMapToAWay();
    void aHoseIsPickedAndGivenBackByKeyboard();
    void whatIsBetterIsTakenByKeyboard();
    void theBillFoldsForMoreOfTheMap();
    void unitsAreSwitchedAtTheColumn();
    void typingAnAnswerRedraws();
    void aRefusedAnswerIsSaidAndEscapeForgetsIt();
    void findOpensWhatIsFound();
    void ctrlZTakesBack();
    void altNumbersShowTheAreas();
    void touchFindsTheMarkNearIt();
    void nothingIsWarnedAbout();

private:
    [[nodiscard]] QQuickItem *item(const char *name) const;
    [[nodiscard]] QString focusName() const;
    void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier);
    void type(const char *text);

    std::unique_ptr<Look> m_look;
    std::unique_ptr<Desk> m_desk;
    std::unique_ptr<Screens> m_screens;
    QQuickWindow *m_window = nullptr;
};

void ScreenByKeyboard::initTestCase()
{
    listenAsAScreenReader();
    prepareScreens();
    m_look = std::make_unique<Look>(nullptr);
    m_desk = std::make_unique<Desk>(nullptr);
    m_desk->show(benchShop());
    m_screens = std::make_unique<Screens>();
    QVERIFY(m_screens->load());
    m_window = m_screens->window();
    m_window->requestActivate();
    QVERIFY(QTest::qWaitForWindowActive(m_window));
}

void ScreenByKeyboard::init()
{
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-fuel")));
    (void)pictureOf(*m_window, QSize(1440, 900));
    QVERIFY(item("findField") != nullptr);
    item("findField")->forceActiveFocus();
}

QQuickItem *ScreenByKeyboard::item(const char *name) const
{
    return seen(*m_window, name);
}

QString ScreenByKeyboard::focusName() const
{
    return flarestock::focusName(*m_window);
}

void ScreenByKeyboard::key(Qt::Key key, Qt::KeyboardModifiers with)
{
    QTest::keyClick(m_window, key, with);
}

void ScreenByKeyboard::type(const char *text)
{
    for (const char *letter = text; *letter != 0; ++letter)
        QTest::keyClick(m_window, *letter);
}

void ScreenByKeyboard::everyControlHasAName()
{
    int controls = 0;
    QStringList nameless;
    visit(QAccessible::queryAccessibleInterface(m_window), controls, nameless);
    QVERIFY2(controls > 50, qPrintable(QString::number(controls)));
    QCOMPARE(nameless, QStringList());
}

void ScreenByKeyboard::tabReachesEveryPartAndComesRound_data()
{
    QTest::addColumn<Qt::Key>("tab");
    QTest::newRow("forwards") << Qt::Key_Tab;
    QTest::newRow("backwards") << Qt::Key_Backtab;
}

void ScreenByKeyboard::tabReachesEveryPartAndComesRound()
{
    QFETCH(Qt::Key, tab);
    QStringList passed;
    const QQuickItem *first = m_window->activeFocusItem();
    for (int at = 0; at < 60; ++at) {
        key(tab);
        passed.append(focusName());
        if (m_window->activeFocusItem() == first)
            break;
    }
    QVERIFY2(m_window->activeFocusItem() == first, qPrintable(passed.join(u' ')));
    for (const char *part : {"otherBuild", "everythingHere", "anythingStopped", "measure", "choice",
                             "lineMap", "openedPanel", "way", "byStation", "billEntry", "mend"})
        QVERIFY2(passed.contains(QLatin1String(part)),
                 qPrintable(QString(QLatin1String(part) + QStringLiteral(" is not in ") +
                                    passed.join(u' '))));
}

void ScreenByKeyboard::arrowsWalkTheMapAndOpen()
{
    item("lineMap")->forceActiveFocus();
    key(Qt::Key_Home);
    QCOMPARE(m_desk->build()->opened()->spot(), QStringLiteral("station|cell"));
    key(Qt::Key_Right);
    QCOMPARE(m_desk->build()->opened()->spot(), QStringLiteral("joint|plug:cell.vent"));
    key(Qt::Key_Right);
    QCOMPARE(m_desk->build()->opened()->spot(), QStringLiteral("joint|supply.start"));
    key(Qt::Key_Right);
    QCOMPARE(m_desk->build()->opened()->spot(), QStringLiteral("run|supply"));
    key(Qt::Key_Right);
    QCOMPARE(m_desk->build()->opened()->spot(), QStringLiteral("joint|supply.end"));
    for (int back = 0; back < 4; ++back)
        key(Qt::Key_Left);
    QCOMPARE(m_desk->build()->opened()->spot(), QStringLiteral("station|cell"));
    key(Qt::Key_Down);
    QVERIFY(m_desk->build()->opened()->spot() != QStringLiteral("station|cell"));
    key(Qt::Key_End);
    QCOMPARE(m_desk->build()->opened()->spot(), QStringLiteral("joint|return.end"));
}

void ScreenByKeyboard::enterGoesFromTheMapToAWay()
{
    m_desk->build()->openAt(QStringLiteral("suction.end"));
    item("lineMap")->forceActiveFocus();
    key(Qt::Key_Return);
    QCOMPARE(focusName(), QStringLiteral("openedPanel"));
    key(Qt::Key_Tab);
    QCOMPARE(focusName(), QStringLiteral("way"));
    key(Qt::Key_Tab);
    key(Qt::Key_Space);
    QVERIFY(m_desk->build()->opened()->picked());
    QCOMPARE(m_desk->build()->plan().picks.at("suction.end"), std::string("AD-810 + HE-10"));
}

void ScreenByKeyboard::aHoseIsPickedAndGivenBackByKeyboard()
{
    m_desk->build()->openAt(QStringLiteral("suction"));
    item("lineMap")->forceActiveFocus();
    key(Qt::Key_Return);
    key(Qt::Key_Tab);
    key(Qt::Key_Tab);
    QCOMPARE(focusName(), QStringLiteral("way"));
    key(Qt::Key_Return);
    QCOMPARE(m_desk->build()->plan().picks.at("suction"), std::string("HO-6"));
    QCOMPARE(focusName(), QStringLiteral("openedPanel")); // From where Tab goes on.
    key(Qt::Key_Tab);
    QCOMPARE(focusName(), QStringLiteral("letGo"));
    key(Qt::Key_Space);
    QVERIFY(m_desk->build()->plan().picks.empty());
    QCOMPARE(focusName(), QStringLiteral("openedPanel"));
}

void ScreenByKeyboard::whatIsBetterIsTakenByKeyboard()
{
    QVERIFY(m_desk->build()->pick(QStringLiteral("suction"), QStringLiteral("HO-10")));
    m_desk->build()->openAt(QStringLiteral("suction"));
    QTRY_VERIFY(item("takeBetter") != nullptr);
    item("takeBetter")->forceActiveFocus();
    key(Qt::Key_Return);
    QCOMPARE(m_desk->build()->plan().picks.at("suction"), std::string("HO-8"));
    QTRY_VERIFY(item("takeBetter") == nullptr);
}

void ScreenByKeyboard::theBillFoldsForMoreOfTheMap()
{
    const double before = item("lineMap")->height();
    QVERIFY(item("billList") != nullptr);
    item("foldBill")->forceActiveFocus();
    key(Qt::Key_Space);
    QTRY_VERIFY(item("lineMap")->height() > before + 100);
    QVERIFY(item("billList") == nullptr);
    // Whoever asks for a line of the bill unfolds it.
    item("everythingHere")->forceActiveFocus();
    key(Qt::Key_Return);
    QTRY_VERIFY(item("billList") != nullptr);
    QTRY_COMPARE(item("lineMap")->height(), before);
}

void ScreenByKeyboard::unitsAreSwitchedAtTheColumn()
{
    const auto fact = [this] {
        const Rows *plates = m_desk->build()->map()->plates();
        return plates->cell(plates->rowOf(QStringLiteral("cell")), QStringLiteral("fact"))
            .toString();
    };
    QCOMPARE(fact(), QStringLiteral("60 L"));
    item("unitsButton")->forceActiveFocus();
    key(Qt::Key_Space);
    QCOMPARE(fact(), QStringLiteral("15.9 gal"));
    key(Qt::Key_Space);
    QCOMPARE(fact(), QStringLiteral("60 L"));
}

void ScreenByKeyboard::typingAnAnswerRedraws()
{
    const QString total = m_desk->build()->total();
    item("measure")->forceActiveFocus();
    QQuickItem *field = m_window->activeFocusItem();
    const QString question = QAccessible::queryAccessibleInterface(field)->text(QAccessible::Name);
    type(question == QStringLiteral("power") ? "520" : "6 ft");
    key(Qt::Key_Return);
    QVERIFY(m_desk->build()->canTakeBack());
    QVERIFY(m_desk->build()->lastStep().contains(question, Qt::CaseInsensitive));
    m_desk->build()->takeBack();
    QCOMPARE(m_desk->build()->total(), total);
}

void ScreenByKeyboard::aRefusedAnswerIsSaidAndEscapeForgetsIt()
{
    item("measure")->forceActiveFocus();
    type("a lot");
    key(Qt::Key_Return);
    QVERIFY(item("answerProblem") != nullptr);
    QVERIFY(!item("answerProblem")->property("text").toString().isEmpty());
    key(Qt::Key_Escape);
    QCOMPARE(m_desk->build()->answerProblem(), QString());
}

void ScreenByKeyboard::findOpensWhatIsFound()
{
    item("lineMap")->forceActiveFocus();
    key(Qt::Key_F, Qt::ControlModifier);
    QCOMPARE(focusName(), QStringLiteral("findField"));
    type("-8 orb");
    key(Qt::Key_Return);
    QCOMPARE(m_desk->build()->opened()->spot(), QStringLiteral("station|pump"));
    type("ho-6");
    key(Qt::Key_Return);
    QCOMPARE(focusName(), QStringLiteral("billEntry"));
}

void ScreenByKeyboard::ctrlZTakesBack()
{
    QVERIFY(m_desk->build()->choose(QStringLiteral("fluid"), 1));
    item("lineMap")->forceActiveFocus();
    key(Qt::Key_Z, Qt::ControlModifier);
    QVERIFY(m_desk->build()->plan().answers.empty());
    QVERIFY(!m_desk->build()->canTakeBack());
}

void ScreenByKeyboard::altNumbersShowTheAreas()
{
    for (int area = 2; area <= 6; ++area) {
        key(static_cast<Qt::Key>(Qt::Key_0 + area), Qt::AltModifier);
        QCOMPARE(m_window->property("area").toInt(), area - 1);
        QVERIFY(item("lineMap") == nullptr);
        QTRY_VERIFY(m_window->activeFocusItem() != nullptr);
    }
    key(Qt::Key_1, Qt::AltModifier);
    QTRY_VERIFY(item("lineMap") != nullptr);
    QCOMPARE(item("lastStep")->property("text").toString(), m_desk->build()->lastStep());
}

void ScreenByKeyboard::touchFindsTheMarkNearIt()
{
    const QRectF mark = m_desk->build()->map()->place(QStringLiteral("joint|bridge.start"));
    const QQuickItem *map = item("lineMap");
    const QPointF beside = map->mapToScene(mark.center() + QPointF(14, -14));
    QTest::mouseClick(m_window, Qt::LeftButton, Qt::NoModifier, beside.toPoint());
    QCOMPARE(m_desk->build()->opened()->spot(), QStringLiteral("joint|bridge.start"));
    const QRectF run = m_desk->build()->map()->place(QStringLiteral("run|bridge"));
    const QPointF under = map->mapToScene(run.center() + QPointF(-18, 16));
    QTest::mouseClick(m_window, Qt::LeftButton, Qt::NoModifier, under.toPoint());
    QCOMPARE(m_desk->build()->opened()->spot(), QStringLiteral("run|bridge"));
}

void ScreenByKeyboard::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(ScreenByKeyboard)
#include "tst_screen_by_keyboard.moc"
