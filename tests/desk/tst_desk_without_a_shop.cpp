// SPDX-License-Identifier: MIT
//
// The desk before it has a shop: it says what to do first, all of it by keyboard, and why a file is
// no shop.

#include "app/desk/launch/open_shop.h"
#include "app/desk/launch/picture.h"
#include "app/desk/launch/screens.h"
#include "app/desk/shop/desk.h"
#include "app/desk/shop/look.h"
#include "app/desk/words/standing.h"
#include "seen.h"

#include <QDir>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

using namespace flarestock;

class DeskWithoutAShop : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void init();
    void saysWhatToDoFirst();
    void nothingIsSaidToBeWell();
    void isReachedByTabBothWays_data();
    void isReachedByTabBothWays();
    void makesTheDemoShopByOneKey();
    void opensAShopByTheDialog();
    void saysWhyAFileIsNoShop();
    void warnsAboutNothing();

private:
    [[nodiscard]] QQuickItem *item(const char *name) const;
    [[nodiscard]] QString focusName() const;
    [[nodiscard]] QStringList wordsOnScreen() const;
    void chooseInDialog(const QString &file);
    [[nodiscard]] QStringList shopFiles() const;

    QTemporaryDir m_folder;
    std::unique_ptr<Look> m_look;
    std::unique_ptr<Desk> m_desk;
    std::unique_ptr<Screens> m_screens;
    QQuickWindow *m_window = nullptr;
    QStringList m_warnings;
};

void DeskWithoutAShop::initTestCase()
{
    QStandardPaths::setTestModeEnabled(true); // The demo shop goes into a folder for tests.
    QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation)).removeRecursively();
    prepareScreens();
}

void DeskWithoutAShop::init()
{
    if (m_screens)
        m_warnings += m_screens->warnings();
    m_screens.reset();
    m_desk.reset();
    m_look.reset();
    m_look = std::make_unique<Look>(nullptr);
    m_desk = std::make_unique<Desk>(nullptr);
    m_desk->setDeeds({openShopFile, makeDemoFile});
    m_screens = std::make_unique<Screens>();
    QVERIFY(m_screens->load());
    m_window = m_screens->window();
    m_window->requestActivate();
    QVERIFY(QTest::qWaitForWindowActive(m_window));
    (void)pictureOf(*m_window, QSize(1024, 640));
}

QQuickItem *DeskWithoutAShop::item(const char *name) const
{
    return seen(*m_window, name);
}

QString DeskWithoutAShop::focusName() const
{
    return flarestock::focusName(*m_window);
}

QStringList DeskWithoutAShop::wordsOnScreen() const
{
    QStringList words;
    for (const QQuickItem *one : allSeen(*m_window))
        words.append(one->property("text").toString());
    words.removeAll(QString());
    return words;
}

void DeskWithoutAShop::chooseInDialog(const QString &file)
{
    QVERIFY(item("openFile") != nullptr);
    item("openFile")->forceActiveFocus();
    QTest::keyClick(m_window, Qt::Key_Return);
    auto *dialog = m_window->findChild<QObject *>(QStringLiteral("fileDialog"));
    QVERIFY(dialog != nullptr);
    QTRY_VERIFY(dialog->property("visible").toBool());
    QVERIFY(dialog->setProperty("currentFolder", QUrl::fromLocalFile(m_folder.path())));
    // The files are listed by name.
    const auto row = shopFiles().indexOf(QFileInfo(file).fileName());
    const QByteArray entry = "fileDialogDelegate" + QByteArray::number(row);
    QTRY_VERIFY(item(entry.constData()) != nullptr);
    const QQuickItem *line = item(entry.constData());
    QTest::mouseClick(m_window, Qt::LeftButton, Qt::NoModifier,
                      line->mapToScene({line->width() / 2, line->height() / 2}).toPoint());
    QTRY_COMPARE(focusName(), QString::fromLatin1(entry));
    QTest::keyClick(m_window, Qt::Key_Return);
    QTRY_VERIFY(!dialog->property("visible").toBool());
}

QStringList DeskWithoutAShop::shopFiles() const
{
    return QDir(m_folder.path())
        .entryList({QStringLiteral("*.flarestock")}, QDir::Files, QDir::Name);
}

void DeskWithoutAShop::saysWhatToDoFirst()
{
    QVERIFY(!m_desk->hasShop());
    const QString words = wordsOnScreen().join(u'\n');
    QVERIFY2(words.contains(QStringLiteral("No shop is on the desk yet")), qPrintable(words));
    QVERIFY(item("makeDemo") != nullptr);
    QVERIFY(item("openFile") != nullptr);
    QVERIFY(item("lineMap") == nullptr);
    QVERIFY(item("billList") == nullptr);
    // Nothing of a build can be pressed where there is none.
    QVERIFY(!item("findField")->isEnabled());
    QVERIFY(!item("takeBack")->isEnabled());
    QTest::keyClick(m_window, Qt::Key_B, Qt::ControlModifier);
    QVERIFY(item("buildList") == nullptr);
}

/// While a shop is still read, neither.
void DeskWithoutAShop::nothingIsSaidToBeWell()
{
    QVERIFY(!m_desk->stock()->isKnown());
    QCOMPARE(m_desk->stock()->belowWords(), QStringLiteral("not known yet"));
    QVERIFY(!m_desk->buying()->isKnown());
    QCOMPARE(m_desk->trailer()->allThereMark(), static_cast<int>(Standing::Note));
    QCOMPARE(m_desk->service()->overdueMark(), static_cast<int>(Standing::Note));
}

void DeskWithoutAShop::isReachedByTabBothWays_data()
{
    QTest::addColumn<Qt::Key>("tab");
    QTest::newRow("forwards") << Qt::Key_Tab;
    QTest::newRow("backwards") << Qt::Key_Backtab;
}

void DeskWithoutAShop::isReachedByTabBothWays()
{
    QFETCH(Qt::Key, tab);
    item("makeDemo")->forceActiveFocus();
    QStringList passed;
    do {
        QTest::keyClick(m_window, tab);
        passed.append(focusName());
    } while (focusName() != QStringLiteral("makeDemo") && passed.size() < 20);
    QCOMPARE(passed.last(), QStringLiteral("makeDemo"));
    for (const char *button : {"openFile", "openServer", "lookButton", "unitsButton"})
        QVERIFY2(passed.contains(QLatin1String(button)), qPrintable(passed.join(u' ')));
}

void DeskWithoutAShop::makesTheDemoShopByOneKey()
{
    QCOMPARE(focusName(), QStringLiteral("makeDemo")); // The first thing to do has the focus.
    QTest::keyClick(m_window, Qt::Key_Return);
    QVERIFY(!m_desk->hasShop()); // It is made away from the window, which says so.
    QVERIFY2(wordsOnScreen().join(u'|').contains(QStringLiteral("Opening demo-shop.flarestock")),
             qPrintable(wordsOnScreen().join(u'|')));
    QTRY_VERIFY2(m_desk->hasShop(), qPrintable(m_desk->problem()));
    QCOMPARE(m_desk->opening(), QString());
    QVERIFY(m_desk->build()->isOpen());
    QTRY_VERIFY(item("lineMap") != nullptr);
    QVERIFY(item("makeDemo") == nullptr);
    QVERIFY(QFile::exists(m_desk->shopPath()));
}

void DeskWithoutAShop::opensAShopByTheDialog()
{
    const QString file = m_folder.filePath(QStringLiteral("other.flarestock"));
    QVERIFY(makeDemoFile(file.toStdString()));
    chooseInDialog(file);
    QTRY_VERIFY2(m_desk->hasShop(), qPrintable(m_desk->problem()));
    QCOMPARE(m_desk->shopPath(), file);
    QTRY_VERIFY(item("lineMap") != nullptr);
}

void DeskWithoutAShop::saysWhyAFileIsNoShop()
{
    const QString file = m_folder.filePath(QStringLiteral("letter.flarestock"));
    QFile letter(file);
    QVERIFY(letter.open(QIODevice::WriteOnly) && letter.write("Dear shop,\n") > 0);
    letter.close();
    chooseInDialog(file);
    QTRY_VERIFY(m_desk->problem().contains(QStringLiteral("letter.flarestock")));
    QVERIFY(!m_desk->hasShop());
    QVERIFY(item("makeDemo") != nullptr);
    QVERIFY2(wordsOnScreen().contains(m_desk->problem()), qPrintable(wordsOnScreen().join(u'\n')));
}

void DeskWithoutAShop::warnsAboutNothing()
{
    QCOMPARE(m_warnings, QStringList());
}

QTEST_MAIN(DeskWithoutAShop)
#include "tst_desk_without_a_shop.moc"
