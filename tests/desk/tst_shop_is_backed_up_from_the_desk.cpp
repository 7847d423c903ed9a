// SPDX-License-Identifier: MIT
//
// The top strip says whether the shop has a backup, and makes one at the press of a button.

#include "desk_on_demo.h"
#include "model/storage/upkeep/kept_backups.h"

#include <QDateTime>
#include <QFile>

using namespace flarestock;

class BackedUp : public QObject, protected DeskOnDemo {
    Q_OBJECT
private Q_SLOTS:
    void init();
    void oneIsMadeAndProvedWhole();
    void whereNoneCanBeWrittenItIsSaid();
    void anOldOneIsDueAgain_data();
    void anOldOneIsDueAgain();
    void aShopWithoutAFileHasNone();
};

void BackedUp::init()
{
    QLocale::setDefault(QLocale::c());
    renew();
}

void BackedUp::oneIsMadeAndProvedWhole()
{
    BackingUp &backups = *m_desk->backups();
    QCOMPARE(backups.newest(), QStringLiteral("no backup yet"));
    QVERIFY(backups.isDue());
    backups.now();
    QVERIFY(backups.isBusy()); // It came back before the copy was made.
    QTRY_VERIFY_WITH_TIMEOUT(!backups.isBusy(), 30000);
    QVERIFY2(backups.newest().startsWith(QStringLiteral("backed up today ")),
             qPrintable(backups.newest()));
    QVERIFY(!backups.isDue());
    QVERIFY(m_desk->build()->lastStep().startsWith(QStringLiteral("Backed up")));
    const auto kept = keptBackups(m_file.toStdString());
    QCOMPARE(kept.size(), std::size_t{1});
    const auto proof = ShopFile::verify(kept.front().path);
    QVERIFY(proof && proof->whole);
    QVERIFY(m_desk->openShopFile(m_file)); // And it is found again.
    QVERIFY(m_desk->backups()->newest().startsWith(QStringLiteral("backed up today ")));
}

void BackedUp::whereNoneCanBeWrittenItIsSaid()
{
    QFile inTheWay(QString(m_file + QStringLiteral(".backups")));
    QVERIFY(inTheWay.open(QIODevice::WriteOnly));
    inTheWay.close();
    m_desk->backups()->now();
    QTRY_VERIFY_WITH_TIMEOUT(!m_desk->backups()->isBusy(), 30000);
    QCOMPARE(m_desk->backups()->newest(), QStringLiteral("no backup yet"));
    QVERIFY2(m_desk->build()->lastStep().startsWith(QStringLiteral("Not backed up: ")),
             qPrintable(m_desk->build()->lastStep()));
}

void BackedUp::anOldOneIsDueAgain_data()
{
    QTest::addColumn<int>("hoursAgo");
    QTest::addColumn<bool>("due");
    QTest::newRow("an hour ago") << 1 << false;
    QTest::newRow("25 hours ago") << 25 << true;
    QTest::newRow("tomorrow: a clock was wrong") << -24 << true;
}

void BackedUp::anOldOneIsDueAgain()
{
    QFETCH(int, hoursAgo);
    QFETCH(bool, due);
    const auto at = QDateTime::currentDateTime().addSecs(-3600 * hoursAgo);
    auto shop = openShopFile(m_file.toStdString()).value();
    shop.backups.newest = [at] { return std::optional<std::int64_t>(at.toMSecsSinceEpoch()); };
    m_desk->show(std::move(shop));
    QCOMPARE(m_desk->backups()->isDue(), due);
    if (at.date() != QDate::currentDate())
        QVERIFY2(m_desk->backups()->newest().contains(at.toString(QStringLiteral("yyyy"))),
                 qPrintable(m_desk->backups()->newest()));
}

void BackedUp::aShopWithoutAFileHasNone()
{
    auto shop = openShopFile(m_file.toStdString()).value();
    shop.backups = {};
    m_desk->show(std::move(shop));
    QVERIFY(!m_desk->backups()->isPossible());
    QCOMPARE(m_desk->backups()->newest(), QString());
    m_desk->backups()->now();
    QVERIFY(!m_desk->backups()->isBusy());
}

QTEST_MAIN(BackedUp)
#include "tst_shop_is_backed_up_from_the_desk.moc"
