// SPDX-License-Identifier: MIT
//
// What did not come is not among what came, nobody pays back more than the order cost, and of a
// supplier whom the shop has never had one can receive at once. The figures are worked out by hand;
// the shop is invented.

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

private Q_SLOTS:
    void init()
    {
        m_shop.renew();
        place(orderTo("2026-0001", {orderLine("AD-6-6", 10, 6)}), m_shop.path());
    }
    void isNotAmongWhatCame();
    void isNotPaidBack();
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

/// Ten at 6.00 come to 60.00.
void WhatCannotHaveCome::isNotPaidBack()
{
    QCOMPARE(
        run({"receive", "--order", "2026-0001", "--line", "AD-6-6", "8", "--short", "AD-6-6", "2"})
            .status,
        0);
    const Ran refused = run({"claim", "settle", "C-1", "--credit", "60.01"});
    QVERIFY2(refused.refusesInOneLine(), refused.err.c_str());
    QVERIFY2(refused.err.find("more than the whole order cost: 60") != std::string::npos,
             refused.err.c_str());
    QCOMPARE(run({"claim", "settle", "C-1", "--credit", "60.00"}).status, 0);
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
