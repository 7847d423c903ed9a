// SPDX-License-Identifier: MIT
//
// What did not come is not among what came, nobody pays back more than what was claimed has cost,
// what was paid back does not come any more, and of a supplier whom the shop has never had one can
// receive at once. The figures are worked out by hand; the shop is invented.

#include "app/workshop/workshop.h"
#include "tests/command/ordered_shop.h"

#include <QDir>
#include <QTest>

using namespace flarestock;
using namespace flarestock::tests;

class WhatCannotHaveCome : public QObject {
    Q_OBJECT

private:
    ChangedShop m_shop;
    [[nodiscard]] Ran run(const Words &words) const { return m_shop.run(words); }

    [[nodiscard]] BookedOrder order() const
    {
        return *Workshop::open(m_shop.path()).value()->bought.orders.order("2026-0001");
    }
    /// What the pieces of AD-6-6 carry, by what they are.
    [[nodiscard]] std::map<PieceCondition, std::int64_t> worth() const
    {
        std::map<PieceCondition, std::int64_t> sums;
        const auto shop = Workshop::open(m_shop.path()).value();
        for (const auto &[key, held] : shop->ledger.balancesOf("AD-6-6")) {
            if (isStock(shop->ledger.place(key.place)->kind))
                sums[key.condition] += held.value;
        }
        return sums;
    }

private Q_SLOTS:
    void init()
    {
        m_shop.renew();
        place(orderTo("2026-0001", {orderLine("AD-6-6", 10, 6)}), m_shop.path());
    }
    void isNotAmongWhatCame();
    void isNotPaidBack();
    void isPaidBackInTheOrdersCurrency();
    void whatIsPaidBackDoesNotCome();
    void theDamagedPieceAloneGetsCheaper();
    void anotherPartIsNobodysYet();
    void comesOfANewSupplierAtOnce();
};

void WhatCannotHaveCome::isNotAmongWhatCame()
{
    const Words all{"receive", "--order", "2026-0001", "--line", "AD-6-6", "10"};
    const auto with = [&all](const Words &more) {
        Words words = all;
        words.insert(words.end(), more.begin(), more.end());
        return words;
    };
    for (const Words &away : {Words{"--short", "AD-6-6", "2"},
                              Words{"--wrong", "AD-8-8", "2", "AD-6-6", "--to", "A2"}}) {
        const Ran refused = run(with(away));
        QVERIFY2(refused.refusesInOneLine(), refused.err.c_str());
        QVERIFY2(refused.err.find("10 of it came and 2 is said") != std::string::npos,
                 refused.err.c_str());
    }
    const Words eight{"receive", "--order", "2026-0001", "--line", "AD-6-6",
                      "8",       "--short", "AD-6-6",    "2"};
    QCOMPARE(run(eight).status, 0);
}

/// Two at 6.00 come to 12.00.
void WhatCannotHaveCome::isNotPaidBack()
{
    QCOMPARE(
        run({"receive", "--order", "2026-0001", "--line", "AD-6-6", "8", "--short", "AD-6-6", "2"})
            .status,
        0);
    const Ran refused = run({"claim", "settle", "C-1", "--credit", "12.01"});
    QVERIFY2(refused.refusesInOneLine(), refused.err.c_str());
    QVERIFY2(refused.err.find("more than what is claimed has cost: 12") != std::string::npos,
             refused.err.c_str());
    QCOMPARE(run({"claim", "settle", "C-1", "--credit", "12.00"}).status, 0);
}

/// Two at 6.00 EUR and 1.0790 USD for one EUR: 12.95 USD.
void WhatCannotHaveCome::isPaidBackInTheOrdersCurrency()
{
    Order order = orderTo("2026-0002", {orderLine("AD-6-6", 10, 6)});
    order.currency = Currency::parse("EUR").value();
    order.rate = Decimal::parse("1.0790").value();
    place(order, m_shop.path());
    const Words short2{"receive", "--order", "2026-0002", "--line", "AD-6-6",
                       "8",       "--short", "AD-6-6",    "2"};
    QCOMPARE(run(short2).status, 0);
    const Ran refused = run({"claim", "settle", "C-1", "--credit", "12 CHF"});
    QVERIFY2(refused.refusesInOneLine(), refused.err.c_str());
    QVERIFY2(refused.err.find("that of the order: EUR") != std::string::npos, refused.err.c_str());
    QVERIFY(!run({"claim", "settle", "C-1", "--credit", "12.01 EUR"}).err.empty());
    const Ran settled = run({"claim", "settle", "C-1", "--credit", "12.00 eur"});
    QVERIFY2(settled.status == 0, settled.err.c_str());
    const auto shop = Workshop::open(m_shop.path()).value();
    QCOMPARE(shop->bought.claims.claims.front().now.credit, 12'948'000);
}

void WhatCannotHaveCome::whatIsPaidBackDoesNotCome()
{
    for (const Words &end : {Words{"--credit", "12.00"}, Words{"--given-up"}}) {
        init();
        const Words short2{"receive", "--order", "2026-0001", "--line", "AD-6-6",
                           "8",       "--short", "AD-6-6",    "2"};
        QCOMPARE(run(short2).status, 0);
        QVERIFY(order().isOnItsWay()); // They are owed.
        Words words{"claim", "settle", "C-1"};
        words.insert(words.end(), end.begin(), end.end());
        const Ran settled = run(words);
        QVERIFY2(settled.status == 0, settled.err.c_str());
        QVERIFY(!order().isOnItsWay());
        QCOMPARE(order().standing(), OrderStanding::Closed);
    }
}

/// Ten at 6.00, one of them damaged and paid back: nine at 6.00, one at nothing.
void WhatCannotHaveCome::theDamagedPieceAloneGetsCheaper()
{
    QCOMPARE(run({"receive", "--order", "2026-0001", "--line", "AD-6-6", "10", "--damaged",
                  "AD-6-6", "1"})
                 .status,
             0);
    const auto before = worth();
    QCOMPARE(before.at(PieceCondition::NotToBeUsed), 6'000'000);
    const Ran settled = run({"claim", "settle", "C-1", "--credit", "6.00"});
    QVERIFY2(settled.status == 0, settled.err.c_str());
    const auto after = worth();
    QCOMPARE(after.at(PieceCondition::NotToBeUsed), 0);
    QCOMPARE(after.at(PieceCondition::New), before.at(PieceCondition::New));
}

void WhatCannotHaveCome::anotherPartIsNobodysYet()
{
    const auto free = [this] {
        std::int64_t sum = 0;
        const auto shop = Workshop::open(m_shop.path()).value();
        for (const auto &[key, held] : shop->ledger.balancesOf("AD-8-8")) {
            if (isStock(shop->ledger.place(key.place)->kind) && isFree(key.condition))
                sum += held.quantity;
        }
        return sum;
    };
    const auto before = free();
    QCOMPARE(run({"receive", "--order", "2026-0001", "--line", "AD-6-6", "9", "--wrong", "AD-8-8",
                  "1", "AD-6-6", "--to", "A2"})
                 .status,
             0);
    QCOMPARE(free(), before);
}

void WhatCannotHaveCome::comesOfANewSupplierAtOnce()
{
    QTemporaryDir folder;
    const std::string files = folder.filePath(QStringLiteral("files")).toStdString();
    QCOMPARE(run({"export", "--to", files}).status, 0);
    const std::string suppliers = files + "/suppliers.csv";
    QByteArray rows = bytesOf(suppliers);
    rows += "RVL,Ravelin Lines,4,,,,,,,,\n";
    writeBytes(suppliers, rows);
    const Ran taken = run({"import", "--from", files});
    QVERIFY2(taken.status == 0, taken.err.c_str());
    Order order = orderTo("2026-0002", {orderLine("AD-6-6", 2, 6)});
    order.supplier = "RVL";
    place(order, m_shop.path());
    const Ran came = run({"receive", "--order", "2026-0002", "--all", "--to", "A2"});
    QVERIFY2(came.status == 0, came.err.c_str());
    QVERIFY(m_shop.isWhole());
    QCOMPARE(run({"import", "--from", files}).status, 0); // He has his place already.
}

QTEST_APPLESS_MAIN(WhatCannotHaveCome)
#include "tst_what_cannot_have_come_is_refused.moc"
