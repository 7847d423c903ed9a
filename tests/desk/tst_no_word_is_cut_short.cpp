// SPDX-License-Identifier: MIT
//
// Pictures of the screens, light and dark, at every size that is promised; no word is cut short in
// any of them.

#include "app/desk/launch/open_shop.h"
#include "app/desk/launch/picture.h"
#include "app/desk/launch/screens.h"
#include "app/desk/shop/desk.h"
#include "app/desk/shop/look.h"
#include "seen.h"

#include <QDir>
#include <QElapsedTimer>
#include <QFontDatabase>
#include <QSet>
#include <QTemporaryDir>
#include <QTest>

using namespace flarestock;

class Pictures : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void fontsAreThere();
    void areWrittenLightAndDark_data();
    void areWrittenLightAndDark();
    void showEveryDemoBuildsWholeMap();
    void cutNoWordsShort_data();
    void cutNoWordsShort();
    void showARunWithItsOtherLines();
    void showWhatOpens_data();
    void showWhatOpens();

private:
    QTemporaryDir m_folder;
    std::unique_ptr<Look> m_look;
    std::unique_ptr<Desk> m_desk;
    std::unique_ptr<Screens> m_screens;
};

void Pictures::initTestCase()
{
    prepareScreens();
    m_look = std::make_unique<Look>(nullptr);
    m_desk = std::make_unique<Desk>(nullptr);
    auto shop = makeDemoFile(m_folder.filePath(QStringLiteral("demo.flarestock")).toStdString());
    QVERIFY2(shop, shop ? "" : shop.error().sentence().c_str());
    m_desk->show(std::move(*shop));
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-fuel")));
    m_screens = std::make_unique<Screens>();
    QVERIFY(m_screens->load());
    m_screens->follow(*m_look, *m_desk);
}

void Pictures::fontsAreThere()
{
    QVERIFY(QFontDatabase::families().contains(QStringLiteral("DejaVu Sans")));
}

void Pictures::areWrittenLightAndDark_data()
{
    QTest::addColumn<bool>("dark");
    QTest::addColumn<QSize>("size");
    QTest::newRow("light") << false << QSize(1440, 900);
    QTest::newRow("dark") << true << QSize(1440, 900);
    QTest::newRow("light-middling") << false << QSize(1280, 800);
    QTest::newRow("light-small") << false << QSize(1024, 640);
    QTest::newRow("dark-small") << true << QSize(1024, 640);
}

/// A picture is more than a ground: text and strokes give it many shades, and the ground is the
/// theme's.
void Pictures::areWrittenLightAndDark()
{
    QFETCH(bool, dark);
    QFETCH(QSize, size);
    m_look->setDark(dark);
    const QImage image = pictureOf(*m_screens->window(), size);
    QCOMPARE(image.deviceIndependentSize().toSize(), size);
    QSet<QRgb> shades;
    for (int y = 0; y < image.height(); y += 2) {
        for (int x = 0; x < image.width(); x += 2)
            shades.insert(image.pixel(x, y));
    }
    QVERIFY2(shades.size() > 150, "hardly anything is painted");
    const QColor ground = image.pixelColor(image.width() / 2, image.height() - 3);
    QCOMPARE(ground.lightness() < 100, dark);
    QDir().mkpath(QStringLiteral(FLARESTOCK_BINARY_DIR "/pictures"));
    const QString file = QStringLiteral(FLARESTOCK_BINARY_DIR "/pictures/builds-%1.png")
                             .arg(QString::fromLatin1(QTest::currentDataTag()));
    QVERIFY(image.save(file));
    QCOMPARE(m_screens->warnings(), QStringList());
}

/// At 1440 by 900 no map of the demo shop scrolls; the longest only with the bill folded away.
void Pictures::showEveryDemoBuildsWholeMap()
{
    QQuickWindow &window = *m_screens->window();
    int builds = 0;
    QStringList folded;
    for (int row = 0; row < m_desk->builds()->count(); ++row) {
        const QString key = m_desk->builds()->cell(row, QStringLiteral("key")).toString();
        if (key.startsWith(QStringLiteral("template|")))
            continue;
        QVERIFY(m_desk->openBuild(key));
        (void)pictureOf(window, QSize(1440, 900));
        const QQuickItem *map = seen(window, "lineMap");
        const double wanted = m_desk->build()->map()->height();
        if (wanted > map->height()) {
            folded.append(key);
            QVERIFY(QMetaObject::invokeMethod(seen(window, "foldBill"), "clicked"));
            const QImage image = pictureOf(window, QSize(1440, 900));
            QVERIFY(image.save(QStringLiteral(FLARESTOCK_BINARY_DIR "/pictures/longest.png")));
            QVERIFY2(wanted <= map->height(), qPrintable(key));
            QVERIFY(QMetaObject::invokeMethod(seen(window, "foldBill"), "clicked"));
        }
        ++builds;
    }
    QVERIFY(builds > 8);
    QCOMPARE(folded, QStringList{QStringLiteral("single-seater-fuel")});
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-fuel")));
}

void Pictures::cutNoWordsShort_data()
{
    QTest::addColumn<QSize>("size");
    QTest::addColumn<QString>("language");
    for (const QSize size : {QSize(1024, 640), QSize(1280, 720), QSize(1440, 900)}) {
        for (const QString &language : {QStringLiteral("de"), QStringLiteral("en")})
            QTest::addRow("%d-%s", size.width(), qPrintable(language)) << size << language;
    }
}

/// Whatever the build and what is open on it. In the bill only the row in hand is shown whole, on
/// a plate the station's title may be longer than the plate, and a finding's sources show whole
/// once it is in hand.
void Pictures::cutNoWordsShort()
{
    QFETCH(QSize, size);
    QFETCH(QString, language);
    m_look->setLanguage(language);
    QCOMPARE(m_look->language(), language);
    QQuickWindow &window = *m_screens->window();
    QStringList cut;
    int texts = 0;
    for (int row = 0; row < m_desk->builds()->count(); ++row) {
        QVERIFY(m_desk->openBuild(m_desk->builds()->cell(row, QStringLiteral("key")).toString()));
        (void)pictureOf(window, size);
        for (const QQuickItem *item : allSeen(window)) {
            bool listed = false;
            for (const QQuickItem *above = item; above != nullptr; above = above->parentItem())
                listed = listed || above->objectName() == QStringLiteral("billList") ||
                         above->objectName() == QStringLiteral("findingList") ||
                         above->objectName() == QStringLiteral("lineMap");
            if (listed || !item->property("truncated").isValid())
                continue;
            ++texts;
            if (item->property("truncated").toBool())
                cut.append(item->property("text").toString());
        }
    }
    QVERIFY(texts > 500);
    cut.removeDuplicates();
    QVERIFY2(cut.isEmpty(), qPrintable(cut.join(u'\n')));
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-fuel")));
}

void Pictures::showARunWithItsOtherLines()
{
    m_look->setDark(false);
    QQuickWindow &window = *m_screens->window();
    const QImage before = pictureOf(window, QSize(1440, 900));
    m_desk->build()->openAt(QStringLiteral("supply"));
    const Rows *ways = m_desk->build()->opened()->ways();
    QVERIFY(ways->count() > 2);
    QElapsedTimer since;
    since.start();
    QTRY_VERIFY_WITH_TIMEOUT(ways->cell(ways->count() - 1, QStringLiteral("detail"))
                                 .toString()
                                 .contains(QStringLiteral("total ")),
                             60000);
    qInfo("weighed %d in %lld ms", ways->count() - 1, since.elapsed());
    const QImage image = pictureOf(window, QSize(1440, 900));
    QVERIFY(image != before);
    QVERIFY(image.save(QStringLiteral(FLARESTOCK_BINARY_DIR "/pictures/run.png")));
    QCOMPARE(m_screens->warnings(), QStringList());
}

/// What opens over the screen: the builds, what was found, all answers.
void Pictures::showWhatOpens_data()
{
    QTest::addColumn<int>("key");
    QTest::addColumn<QString>("typed");
    QTest::newRow("other-builds") << static_cast<int>(Qt::Key_B) << QString();
    QTest::newRow("found") << static_cast<int>(Qt::Key_F) << QStringLiteral("orb -8");
}

void Pictures::showWhatOpens()
{
    QFETCH(int, key);
    QFETCH(QString, typed);
    m_look->setDark(false);
    QQuickWindow *window = m_screens->window();
    window->requestActivate();
    QVERIFY(QTest::qWaitForWindowActive(window));
    const QImage before = pictureOf(*window, QSize(1440, 900));
    QTest::keyClick(window, static_cast<Qt::Key>(key), Qt::ControlModifier);
    for (const QChar letter : typed)
        QTest::keyClick(window, letter.toLatin1());
    const QImage image = pictureOf(*window, QSize(1440, 900));
    QVERIFY(image != before);
    const QString file = QStringLiteral(FLARESTOCK_BINARY_DIR "/pictures/%1.png")
                             .arg(QString::fromLatin1(QTest::currentDataTag()));
    QVERIFY(image.save(file));
    QTest::keyClick(window, Qt::Key_Escape);
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(Pictures)
#include "tst_no_word_is_cut_short.moc"
