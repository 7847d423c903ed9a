// SPDX-License-Identifier: MIT
//
// The sheets of handing out on the real screen: everything by keyboard, no words cut, no warning.

#include "app/desk/launch/open_shop.h"
#include "app/desk/launch/picture.h"
#include "app/desk/launch/screens.h"
#include "app/desk/shop/desk.h"
#include "app/desk/shop/look.h"
#include "seen.h"
#include "sheet_pictures.h"

#include <QTemporaryDir>
#include <QTest>

using namespace flarestock;

class HandingOutByKeyboard : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void stepsLieBesideWhatElseStandsThere();
    void aStepWithNothingToDoSaysWhy();
    void theFirstDeedAsksForAName();
    void theWalkIsTickedBySpaceAndScan();
    void whatIsLeftGoesBack();
    void theLeakTestEndsTheBuild();
    void ctrlZTakesItBackInTheShop();
    void targetsAreBigEnoughForGloves();
    void nothingIsWarnedAbout();

private:
    [[nodiscard]] QQuickItem *item(const char *name) const { return seen(*m_window, name); }
    [[nodiscard]] QString words(const char *name) const
    {
        const QQuickItem *found = item(name);
        return found == nullptr ? QString() : found->property("text").toString();
    }
    void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier)
    {
        QTest::keyClick(m_window, key, with);
    }
    void type(const QString &text)
    {
        for (const QChar letter : text)
            QTest::keyClick(m_window, letter.toLatin1());
    }
    /// Presses what has that name by keyboard.
    void press(const char *name)
    {
        QTRY_VERIFY2(item(name) != nullptr && item(name)->isEnabled(), name);
        item(name)->forceActiveFocus(Qt::TabFocusReason);
        key(Qt::Key_Return);
    }
    void write(const char *field, const char *text)
    {
        QTRY_VERIFY2(item(field) != nullptr, field);
        item(field)->forceActiveFocus(Qt::TabFocusReason);
        type(QString::fromLatin1(text));
    }
    void awaitWritten() { QTRY_VERIFY_WITH_TIMEOUT(!m_desk->handing()->isBusy(), 20000); }
    void picture(const char *name) { pictureOfSheet(*m_window, *m_look, name); }

    QTemporaryDir m_folder;
    std::unique_ptr<Look> m_look;
    std::unique_ptr<Desk> m_desk;
    std::unique_ptr<Screens> m_screens;
    QQuickWindow *m_window = nullptr;
};

void HandingOutByKeyboard::initTestCase()
{
    prepareScreens();
    m_look = std::make_unique<Look>(nullptr);
    m_look->setInInches(true);
    m_desk = std::make_unique<Desk>(nullptr);
    auto shop = makeDemoFile(m_folder.filePath(QStringLiteral("demo.flarestock")).toStdString());
    QVERIFY2(shop, shop ? "" : shop.error().sentence().c_str());
    m_desk->show(std::move(*shop));
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-fuel")));
    m_screens = std::make_unique<Screens>();
    QVERIFY(m_screens->load());
    m_window = m_screens->window();
    m_window->requestActivate();
    QVERIFY(QTest::qWaitForWindowActive(m_window));
    (void)pictureOf(*m_window, QSize(1440, 900));
}

void HandingOutByKeyboard::stepsLieBesideWhatElseStandsThere()
{
    for (const QSize size : {QSize(1440, 900), QSize(1230, 900), QSize(2560, 1440)}) {
        (void)pictureOf(*m_window, size);
        std::vector<std::pair<const char *, QRectF>> taken;
        for (const char *name : {"byStation", "byKind", "step-reserve", "step-pick", "step-give",
                                 "step-done", "foldBill"}) {
            const QQuickItem *one = item(name);
            QVERIFY2(one != nullptr, name);
            const QRectF box = one->mapRectToScene({0, 0, one->width(), one->height()});
            for (const auto &[other, there] : taken)
                QVERIFY2(!box.intersects(there), qPrintable(QString::fromLatin1(name)));
            QVERIFY2(
                box.right() <=
                    item("billList")->mapRectToScene({0, 0, item("billList")->width(), 1}).right(),
                name);
            taken.emplace_back(name, box);
        }
    }
    (void)pictureOf(*m_window, QSize(1440, 900));
}

void HandingOutByKeyboard::aStepWithNothingToDoSaysWhy()
{
    press("step-pick");
    QVERIFY(words("lastStep").contains(QStringLiteral("reserve first")));
    QVERIFY(item("pickList") == nullptr);
}

void HandingOutByKeyboard::theFirstDeedAsksForAName()
{
    press("step-reserve");
    QTRY_VERIFY(item("whoField") != nullptr);
    picture("who");
    key(Qt::Key_Escape); // Nobody: nothing is done.
    QTRY_VERIFY(item("whoField") == nullptr);
    QVERIFY(m_desk->handing()->picks()->count() == 0);
    press("step-reserve");
    QTRY_VERIFY(item("whoField") != nullptr && item("whoField")->hasActiveFocus());
    type(QStringLiteral("Kim"));
    key(Qt::Key_Return);
    QTRY_VERIFY(m_desk->handing()->picks()->count() > 0);
    QCOMPARE(m_desk->who(), QStringLiteral("Kim"));
    QVERIFY(words("who").contains(QStringLiteral("Kim")));
    QVERIFY(words("lastStep").contains(QStringLiteral("promised")));
}

void HandingOutByKeyboard::theWalkIsTickedBySpaceAndScan()
{
    Rows *picks = m_desk->handing()->picks();
    press("step-pick");
    QTRY_VERIFY(item("pickList") != nullptr && item("pickList")->hasActiveFocus());
    key(Qt::Key_Space);
    QCOMPARE(m_desk->handing()->tickedCount(), 1);
    key(Qt::Key_Space);
    QCOMPARE(m_desk->handing()->tickedCount(), 0);
    key(Qt::Key_Down);
    key(Qt::Key_Space);
    QVERIFY(picks->cell(1, QStringLiteral("ticked")).toBool());
    type(picks->cell(3, QStringLiteral("part")).toString());
    key(Qt::Key_Return);
    QCOMPARE(m_desk->handing()->tickedCount(), 2);
    QCOMPARE(item("pickList")->property("currentIndex").toInt(), 3); // It is in hand, and in sight.
    type(QStringLiteral("NO SUCH LOT")); // A blank is part of it, and ticks nothing.
    QCOMPARE(item("pickList")->property("typed").toString(), QStringLiteral("NO SUCH LOT"));
    QCOMPARE(m_desk->handing()->tickedCount(), 2);
    key(Qt::Key_Return);
    QTRY_VERIFY(words("sheetProblem").contains(QStringLiteral("NO SUCH LOT")));
    type(QStringLiteral("NO-SUCH"));
    key(Qt::Key_Return);
    QTRY_VERIFY(words("sheetProblem").contains(QStringLiteral("NO-SUCH")));
    picture("pick");
    const int before = picks->count();
    press("issueTicked");
    awaitWritten();
    QCOMPARE(picks->count(), before - 2);
    QVERIFY(item("pickList") != nullptr); // The walk goes on.
    key(Qt::Key_Z, Qt::ControlModifier);  // And it can be taken back without leaving it.
    awaitWritten();
    QTRY_COMPARE(picks->count(), before);
    key(Qt::Key_Home);
    key(Qt::Key_Space);
    key(Qt::Key_Down);
    key(Qt::Key_Space);
    press("issueTicked");
    awaitWritten();
    QTRY_COMPARE(picks->count(), before - 2);
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("pickList") == nullptr);
    QVERIFY(words("lastStep").contains(QStringLiteral("2 picks issued")));
}

void HandingOutByKeyboard::whatIsLeftGoesBack()
{
    const int before = m_desk->handing()->inCar()->count();
    QVERIFY(before > 0);
    press("step-give");
    QTRY_VERIFY(item("inCarList") != nullptr);
    picture("give-back");
    press("giveBack");
    awaitWritten();
    QCOMPARE(m_desk->handing()->inCar()->count(), before - 1);
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("inCarList") == nullptr);
    QVERIFY(words("lastStep").contains(QStringLiteral("given back to")));
}

void HandingOutByKeyboard::theLeakTestEndsTheBuild()
{
    press("step-done");
    write("testMedium", "air");
    write("testPressure", "60");
    write("testHeld", "10 min");
    QVERIFY2(words("speaksAgainst").contains(QStringLiteral("stop")),
             qPrintable(words("speaksAgainst")));
    key(Qt::Key_Return); // Nobody has said whether it held.
    QTRY_VERIFY(words("sheetProblem").contains(QStringLiteral("held or leaked")));
    QVERIFY(!m_desk->handing()->isDone());
    press("testPassed");
    press("writeTest");
    awaitWritten();
    QTRY_VERIFY(words("sheetProblem").contains(QStringLiteral("60"))); // A number without a unit.
    picture("done");
    write("testPressure", "60 psi");
    press("writeTest");
    awaitWritten();
    QTRY_VERIFY(item("testMedium") == nullptr);
    QVERIFY(m_desk->handing()->isDone());
    QVERIFY(words("lastStep").endsWith(QStringLiteral("is done.")));
    QVERIFY(words("step-done").contains(QStringLiteral("Open again")));
}

void HandingOutByKeyboard::ctrlZTakesItBackInTheShop()
{
    item("lineMap")->forceActiveFocus();
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitWritten();
    QTRY_VERIFY(!m_desk->handing()->isDone());
    QVERIFY(words("lastStep").startsWith(QStringLiteral("Taken back: ")));
    const int inCar = m_desk->handing()->inCar()->count();
    key(Qt::Key_Z, Qt::ControlModifier); // What was given back is in the car again.
    awaitWritten();
    QCOMPARE(m_desk->handing()->inCar()->count(), inCar + 1);
}

/// 40 px: common practice for a hand in a glove, no source.
void HandingOutByKeyboard::targetsAreBigEnoughForGloves()
{
    for (const char *name : {"step-reserve", "step-pick", "step-give", "step-done", "who"}) {
        QVERIFY2(item(name) != nullptr, name);
        QVERIFY2(item(name)->height() >= 40 && item(name)->width() >= 40, name);
    }
}

void HandingOutByKeyboard::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(HandingOutByKeyboard)
#include "tst_handing_out_by_keyboard.moc"
