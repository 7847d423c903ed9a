// SPDX-License-Identifier: MIT
//
// Of a movement that only gave pieces another cost, its words are told apart from the mark by which
// the journal knows it, so that nobody reads it as a way to the bench.

#include "app/buyer/costing/still_here.h"

#include <QTest>

using namespace flarestock;

class AnotherCostTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void itsWordsAreToldApart()
    {
        const auto id = MovementId::parse("01234567-89ab-7def-8123-456789abcdef").value();
        const std::string words = "OC-12, freight, layer of bricks";
        QCOMPARE(onlyCostIsAnother(worthAnew(words)).value_or("none"), words);
        QCOMPARE(onlyCostIsAnother(ofLayer(words, id)).value_or("none"), words);
        QVERIFY(!onlyCostIsAnother(words));
        QVERIFY(!onlyCostIsAnother(""));
    }
};

QTEST_APPLESS_MAIN(AnotherCostTest)
#include "tst_another_cost_is_no_move.moc"
