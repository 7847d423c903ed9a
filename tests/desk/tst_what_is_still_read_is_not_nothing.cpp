// SPDX-License-Identifier: MIT
//
// While the stock of a shop is still looked through, the screen says that, and not that nothing
// lies there.

#include "desk_on_demo.h"

using namespace flarestock;

class StillRead : public QObject, protected DeskOnDemo {
    Q_OBJECT
private Q_SLOTS:
    void theStockIsNotEmptyMeanwhile();
};

void StillRead::theStockIsNotEmptyMeanwhile()
{
    renew();
    StockDesk &stock = *m_desk->stock();
    QStringList meanwhile;
    connect(&stock, &StockDesk::changed, this, [&] {
        if (stock.rows()->count() == 0)
            meanwhile.append(stock.nothing() + u'|' + stock.about());
    });
    stock.setLooking(true);
    QTRY_VERIFY_WITH_TIMEOUT(stock.rows()->count() > 50, 20000);
    QVERIFY(meanwhile.size() > 1);
    for (const QString &said : meanwhile)
        QCOMPARE(said, QStringLiteral("Looking through the shop …|"));
    QTRY_VERIFY(stock.about().contains(QStringLiteral("parts")));
    QVERIFY(stock.nothing().isEmpty());
}

QTEST_MAIN(StillRead)
#include "tst_what_is_still_read_is_not_nothing.moc"
