// SPDX-License-Identifier: MIT
//
// What is done at the trailer's screen is done alike on a shop in a file and on one at a server:
// the drawers are filled and taken back, a copy goes along, is used, and brings that home.

#include "app/desk/launch/open_shop.h"
#include "app/desk/shop/desk.h"
#include "app/stockroom/byhand/moving.h"
#include "app/workshop/clock.h"
#include "app/workshop/demo_shop.h"
#include "tests/storage/shop_somewhere.h"

#include <QTest>

using namespace flarestock;

class TrailerSomewhere : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase_data() { tests::bothPlaces(); }
    void init();
    void cleanup();
    void drawersAreFilledAndTakenBack();
    void aCopyGoesAlongAndComesBack();

private:
    [[nodiscard]] TrailerDesk &trailer() const { return *m_desk->trailer(); }
    [[nodiscard]] CopiesDesk &copies() const { return *trailer().copies(); }
    [[nodiscard]] std::int64_t all(const char *part, const char *place) const
    {
        const auto shop = Workshop::open(m_somewhere->path()).value();
        std::int64_t sum = 0;
        for (const auto &[key, held] : shop->ledger.balancesOf(part))
            sum += key.place == place ? held.quantity : 0;
        return sum;
    }
    void await() const
    {
        QTRY_VERIFY_WITH_TIMEOUT(!m_desk->pen()->isBusy() && !copies().isBusy(), 30000);
        QTRY_VERIFY_WITH_TIMEOUT(!trailer().isLoading(), 30000);
    }

    std::unique_ptr<tests::Somewhere> m_somewhere;
    std::unique_ptr<Desk> m_desk;
};

void TrailerSomewhere::init()
{
    QFETCH_GLOBAL(bool, onServer);
    m_somewhere = std::make_unique<tests::Somewhere>(onServer);
    const auto shop = newShopOf(demoDocuments(), nowMilliseconds());
    QVERIFY(shop);
    const auto made = m_somewhere->make(*shop);
    QVERIFY2(made, made ? "" : made.error().sentence().c_str());
    m_desk = std::make_unique<Desk>(nullptr);
    m_desk->setDeeds({openShopFile, makeDemoFile});
    const QString path = QString::fromStdString(m_somewhere->path().string());
    QVERIFY2(m_desk->openShopFile(path), qPrintable(m_desk->problem()));
    m_desk->setWho(QStringLiteral("Kim"));
    trailer().setLooking(true);
    QTRY_VERIFY_WITH_TIMEOUT(trailer().load()->rows()->count() > 0, 30000);
}

void TrailerSomewhere::cleanup()
{
    m_desk.reset();
    m_somewhere.reset();
}

void TrailerSomewhere::drawersAreFilledAndTakenBack()
{
    const auto before = all("EC-100-S", "trailer-1");
    QVERIFY(trailer().load()->scan(QStringLiteral("ec-100-s")));
    trailer().load()->finish(-1);
    await();
    QVERIFY2(m_desk->pen()->problem().isEmpty(), qPrintable(m_desk->pen()->problem()));
    QCOMPARE(all("EC-100-S", "trailer-1"), before + 1);
    m_desk->takeBack();
    await();
    QCOMPARE(all("EC-100-S", "trailer-1"), before);
}

void TrailerSomewhere::aCopyGoesAlongAndComesBack()
{
    const QString copy =
        QString::fromStdString(m_somewhere->folder().file("along.flarestock").string());
    copies().take({{QStringLiteral("file"), copy}, {QStringLiteral("places"), copies().places()}});
    await();
    QVERIFY2(copies().problem().isEmpty(), qPrintable(copies().problem()));
    QTRY_COMPARE_WITH_TIMEOUT(copies().awayCount(), 1, 30000);
    {
        auto file = ShopFile::open(copy.toStdString(), OpenMode::ReadWrite).value();
        const auto shop = Workshop::read(file).value();
        const auto used =
            moved({"EG-10-S", "2", "trailer-1", "car-1", "", "", "", ""}, *shop, nowMilliseconds());
        QVERIFY2(used, used ? "" : used.error().sentence().c_str());
        const auto done =
            file.append(numbered({*used}, {"the pit crew", {}, nowMilliseconds(), freshId()}));
        QVERIFY2(done, done ? "" : done.error().sentence().c_str());
    }
    const auto before = all("EG-10-S", "trailer-1");
    copies().look(copy);
    await();
    QCOMPARE(copies().came()->count(), 1);
    QCOMPARE(copies().openCount(), 0);
    QCOMPARE(all("EG-10-S", "trailer-1"), before);
    copies().bring(false);
    await();
    QVERIFY2(copies().problem().isEmpty(), qPrintable(copies().problem()));
    QCOMPARE(all("EG-10-S", "trailer-1"), before - 2);
    QTRY_COMPARE_WITH_TIMEOUT(copies().awayCount(), 0, 30000);
    copies().look(copy);
    await();
    QVERIFY(!copies().canBring()); // A second time nothing is new.
}

QTEST_MAIN(TrailerSomewhere)
#include "tst_trailer_is_the_same_on_a_server.moc"
