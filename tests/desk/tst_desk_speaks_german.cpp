// SPDX-License-Identifier: MIT
//
// The desk speaks another language at once, screens and what the desk says, dates too; and back.

#include "app/desk/launch/open_shop.h"
#include "app/desk/launch/screens.h"
#include "app/desk/shop/desk.h"
#include "app/desk/shop/look.h"
#include "seen.h"

#include <QQuickWindow>
#include <QTemporaryDir>
#include <QTest>

using namespace flarestock;

class SpeaksGerman : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void theButtonChangesAllAtOnce();
    void aLanguageThatThereIsNotChangesNothing();
    void englishIsBackAsItWas();

private:
    [[nodiscard]] QString text(const char *name) const
    {
        return seen(*m_screens->window(), name)->property("text").toString();
    }
    [[nodiscard]] QStringList texts() const
    {
        QStringList all;
        for (const QQuickItem *item : allSeen(*m_screens->window()))
            all.append(item->property("text").toString());
        all.removeAll(QString());
        return all;
    }
    void press()
    {
        QVERIFY(QMetaObject::invokeMethod(seen(*m_screens->window(), "languageButton"), "clicked"));
        QCoreApplication::processEvents();
    }

    QTemporaryDir m_folder;
    std::unique_ptr<Look> m_look;
    std::unique_ptr<Desk> m_desk;
    std::unique_ptr<Screens> m_screens;
    QStringList m_english;
    QString m_lastStep;
};

void SpeaksGerman::initTestCase()
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
    QVERIFY(QTest::qWaitForWindowExposed(m_screens->window()));
    m_english = texts();
    QVERIFY(m_english.count() > 50);
    m_lastStep = m_desk->build()->lastStep();
}

void SpeaksGerman::theButtonChangesAllAtOnce()
{
    QCOMPARE(text("area-1"), QStringLiteral("Builds"));
    press();
    QCOMPARE(m_look->language(), QStringLiteral("de"));
    QCOMPARE(text("area-1"), QStringLiteral("Aufbauten")); // What a screen says,
    QCOMPARE(text("otherBuild"), QStringLiteral("Anderer…"));
    QVERIFY(m_desk->build()->about().contains(QStringLiteral("12. Dez"))); // what the desk says,
    QVERIFY(m_desk->build()->everythingHere().contains(QStringLiteral("fehlen")));
    for (const char *step : {"step-reserve", "step-pick", "step-give", "step-done"})
        QVERIFY2(!m_english.contains(text(step)), step);
    QVERIFY(QLocale().decimalPoint() == QStringLiteral(",")); // figures
    QVERIFY(m_desk->build()->total().contains(u','));
    QCOMPARE(m_screens->warnings(), QStringList());
}

void SpeaksGerman::aLanguageThatThereIsNotChangesNothing()
{
    m_look->setLanguage(QStringLiteral("xx"));
    QCOMPARE(m_look->language(), QStringLiteral("de"));
    QCOMPARE(text("area-1"), QStringLiteral("Aufbauten"));
}

void SpeaksGerman::englishIsBackAsItWas()
{
    press();
    QCOMPARE(m_look->language(), QStringLiteral("en"));
    QStringList said = m_english;
    said.removeAll(m_lastStep); // That was before; all else is said again.
    QCOMPARE(texts(), said);
}

QTEST_MAIN(SpeaksGerman)
#include "tst_desk_speaks_german.moc"
