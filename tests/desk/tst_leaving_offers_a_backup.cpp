// SPDX-License-Identifier: MIT
//
// Closing the window of a shop that has no backup of today offers one, which may be refused; with
// one there is nothing to ask.

#include "app/desk/launch/picture.h"
#include "app/desk/launch/screens.h"
#include "app/desk/shop/look.h"
#include "desk_on_demo.h"
#include "model/storage/upkeep/kept_backups.h"
#include "seen.h"
#include "sheet_pictures.h"

#include <QFile>

using namespace flarestock;

class LeavingOffersABackup : public QObject, protected DeskOnDemo {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase() { prepareScreens(); }
    void init();
    void itIsMadeAndTheDeskGoes();
    void itIsRefused();
    void oneStays();
    void whereItCannotBeMadeItIsSaid();
    void withABackupOfTodayNothingIsAsked();
    void whatIsNotKeptIsSaidAndWaits();
    void withoutAShopNothingIsAsked();
    void anotherShopIsOpenedFromHere();

private:
    [[nodiscard]] QQuickItem *item(const char *name) const { return seen(*m_window, name); }
    void press(const char *name)
    {
        QTRY_VERIFY2(item(name) != nullptr && item(name)->isEnabled(), name);
        item(name)->forceActiveFocus(Qt::TabFocusReason);
        QTest::keyClick(m_window, Qt::Key_Return);
    }
    [[nodiscard]] std::size_t kept() const { return keptBackups(m_file.toStdString()).size(); }

    std::unique_ptr<Look> m_look;
    std::unique_ptr<Screens> m_screens;
    QQuickWindow *m_window = nullptr;
};

void LeavingOffersABackup::init()
{
    m_screens.reset();
    m_desk.reset();
    m_look.reset();
    m_look = std::make_unique<Look>(nullptr);
    renew();
    m_screens = std::make_unique<Screens>();
    QVERIFY(m_screens->load());
    m_window = m_screens->window();
    m_window->requestActivate();
    QVERIFY(QTest::qWaitForWindowActive(m_window));
    (void)pictureOf(*m_window, QSize(1440, 900));
}

void LeavingOffersABackup::itIsMadeAndTheDeskGoes()
{
    m_window->close();
    QVERIFY(m_window->isVisible());
    press("backUpAndLeave");
    QTRY_VERIFY_WITH_TIMEOUT(!m_window->isVisible(), 60'000);
    QCOMPARE(kept(), std::size_t{1});
    QCOMPARE(m_screens->warnings(), QStringList());
}

void LeavingOffersABackup::itIsRefused()
{
    m_window->close();
    press("leaveAsItIs");
    QTRY_VERIFY(!m_window->isVisible());
    QCOMPARE(kept(), std::size_t{0});
}

void LeavingOffersABackup::oneStays()
{
    m_window->close();
    QTRY_VERIFY(item("backUpAndLeave") != nullptr && item("backUpAndLeave")->hasActiveFocus());
    pictureOfSheet(*m_window, *m_look, "leaving");
    QTest::keyClick(m_window, Qt::Key_Escape);
    QTRY_VERIFY(item("backUpAndLeave") == nullptr);
    QVERIFY(m_window->isVisible());
    m_desk->backups()->now(); // A backup made later does not close what was not left.
    QTRY_VERIFY_WITH_TIMEOUT(kept() == 1 && !m_desk->backups()->isBusy(), 60'000);
    QVERIFY(m_window->isVisible());
}

void LeavingOffersABackup::whereItCannotBeMadeItIsSaid()
{
    QFile inTheWay(QString(m_file + QStringLiteral(".backups")));
    QVERIFY(inTheWay.open(QIODevice::WriteOnly));
    inTheWay.close();
    m_window->close();
    press("backUpAndLeave");
    QTRY_VERIFY_WITH_TIMEOUT(item("sheetProblem") != nullptr, 60'000);
    QVERIFY(
        item("sheetProblem")->property("text").toString().startsWith(QStringLiteral("Not backed")));
    QVERIFY(m_window->isVisible());
    press("leaveAsItIs");
    QTRY_VERIFY(!m_window->isVisible());
}

void LeavingOffersABackup::withABackupOfTodayNothingIsAsked()
{
    m_desk->backups()->now();
    QTRY_VERIFY_WITH_TIMEOUT(!m_desk->backups()->isBusy(), 60'000);
    m_window->close();
    QVERIFY(!m_window->isVisible());
}

void LeavingOffersABackup::whatIsNotKeptIsSaidAndWaits()
{
    m_desk->backups()->now();
    QTRY_VERIFY_WITH_TIMEOUT(!m_desk->backups()->isBusy(), 60'000);
    auto shop = openShopFile(m_file.toStdString()).value();
    shop.keep = [](const ChangedPlan &) -> Result<void> {
        return problem("the disk", "is full", "Make room.");
    };
    m_desk->show(std::move(shop));
    m_desk->pen()->unwritten().setShop(m_file, {});
    QString left;
    connect(&m_desk->pen()->unwritten(), &Unwritten::kept, m_window,
            [&left](const QString &, const QString &text) { left = text; });
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-fuel")));
    QVERIFY(m_desk->build()->answer(QStringLiteral("power"), QStringLiteral("610 hp")));
    const auto words = [this](const char *name) { return item(name)->property("text").toString(); };
    m_window->close(); // Tries once more.
    QTRY_VERIFY(item("leaveAsItIs") != nullptr && item("leaveAsItIs")->hasActiveFocus());
    QVERIFY(m_window->isVisible());
    QVERIFY(item("backUpAndLeave") == nullptr);
    const QString said = QStringLiteral("not kept: the disk: is full. Make room.");
    QCOMPARE(words("shopFile"), QString(QStringLiteral("! ") + said));
    QVERIFY2(words("sheetAbout").contains(said), qPrintable(words("sheetAbout")));
    pictureOfSheet(*m_window, *m_look, "leaving-unkept");
    QTRY_VERIFY(left.contains(QStringLiteral("610 hp"))); // For the next start.
    press("leaveAsItIs");
    QTRY_VERIFY(!m_window->isVisible());
}

void LeavingOffersABackup::withoutAShopNothingIsAsked()
{
    m_screens.reset();
    m_desk.reset();
    m_desk = std::make_unique<Desk>(nullptr);
    m_screens = std::make_unique<Screens>();
    QVERIFY(m_screens->load());
    QVERIFY(m_screens->window()->isVisible());
    m_screens->window()->close();
    QVERIFY(!m_screens->window()->isVisible());
}

void LeavingOffersABackup::anotherShopIsOpenedFromHere()
{
    QTest::keyClick(m_window, Qt::Key_O, Qt::ControlModifier);
    QTRY_VERIFY(item("otherFile") != nullptr && item("otherFile")->hasActiveFocus());
    pictureOfSheet(*m_window, *m_look, "other-shop");
    press("otherServer");
    QTRY_VERIFY(item("serverAddress") != nullptr && item("otherFile") == nullptr);
    QTest::keyClick(m_window, Qt::Key_Escape);
    QTRY_VERIFY(item("serverAddress") == nullptr);
    QCOMPARE(m_desk->shopPath(), m_file);
}

QTEST_MAIN(LeavingOffersABackup)
#include "tst_leaving_offers_a_backup.moc"
