// SPDX-License-Identifier: MIT
//
// What comes of an order goes into stock with what it landed for, what lacks is claimed, and what
// is charged late falls on what is still here. Figures are worked out by hand beside each check;
// the demo shop is invented.

#include "tests/command/ordered_shop.h"

#include <QTest>

using namespace flarestock;
using namespace flarestock::tests;

namespace {

constexpr const char *Id = "0190b3c4-5d6e-7f80-9123-456789abcdef";

/// Goods 580.00 and freight 29.00: 63.00, 420.00 and 126.00 land on the lines.
Order firstOrder()
{
    Order order = orderTo("2026-0001", {orderLine("AD-6-6", 10, 6), orderLine("EP-460", 2, 200),
                                        orderLine("PT-6", 240, "0.50"_dec)});
    order.freight = 29;
    return order;
}

std::string valueAt(const ChangedShop &shop, const std::string &part, const std::string &lot)
{
    const auto file = ShopFile::open(shop.path(), OpenMode::ReadOnly);
    const Ledger ledger = file->ledger().value();
    std::int64_t value = 0;
    for (const auto &[key, held] : ledger.balancesOf(part)) {
        if (key.lot == lot && isStock(ledger.place(key.place)->kind))
            value += held.value;
    }
    return Decimal::scaled(value, 6).text();
}

} // namespace

class WhatCameOfAnOrder : public QObject {
    Q_OBJECT

private:
    ChangedShop m_shop;
    [[nodiscard]] Ran run(const Words &words) const { return m_shop.run(words); }
    [[nodiscard]] Ran json(const Words &words) const { return m_shop.json(words); }
    [[nodiscard]] Ran receive(Words words) const
    {
        words.insert(words.begin(), {"receive", "--order", "2026-0001"});
        return json(words);
    }
    /// All of the first order: the pumps SN31 and SN32, of which the second lacks its bracket.
    void receiveAll() const
    {
        const Ran came =
            receive({"--all", "--serial", "EP-460=SN31", "--serial", "EP-460=SN32", "--missing",
                     "EP-460=BK-460=SN32", "--lot", "PT-6=COIL-7", "--lot", "AD-6-6=B7"});
        QVERIFY2(came.status == 0, came.err.c_str());
    }

private Q_SLOTS:
    void init()
    {
        m_shop.renew();
        place(firstOrder(), m_shop.path());
    }
    void partsOfAnOrderCarryTheirShare();
    void aHoleInABoxIsClaimedAndSeen();
    void whatIsOverIsTakenOnlyWhenSaid();
    void aWrongPartIsWhatItIs();
    void whatIsKeptByItsMarkNeedsOne();
    void scannedCodesCountPieces();
    void anActionIsDoneOnceAndTakenBackWhole();
    void thePieceCompletesItsBox();
    void aShortPieceCarriesWhatWaitedForIt();
    void aCreditComesOffWhatWasPaid();
    void givenUpIsADifference();
    void lateFreightFallsOnWhatIsHere();
    void lateFreightFindsItsLayer();
    void aCreditGoesOverTheBench();
    void costIsToldFromOrderToOrder();
    void aBuildIsComparedWithItsBill();
    void whatIsWrongIsRefused();
};

void WhatCameOfAnOrder::partsOfAnOrderCarryTheirShare()
{
    const Ran some = receive({"--line", "AD-6-6", "4", "--lot", "AD-6-6=B7"});
    QVERIFY2(some.status == 0, some.err.c_str());
    QCOMPARE(textOf(arrayOf(some, "pieces").first(), "value"), std::string("25.200000"));
    QCOMPARE(textOf(arrayOf(some, "pieces").first(), "to"), std::string("A2")); // Where it lies.
    QCOMPARE(textOf(objectWith(arrayOf(some, "awaited"), "part", "AD-6-6"), "quantity"),
             std::string("6"));
    QVERIFY(!some.json().value(QStringLiteral("closed")).toBool());
    const Ran rest = receive({"--all", "--serial", "EP-460=SN31", "--serial", "EP-460=SN32",
                              "--lot", "PT-6=COIL-7=100 in", "--lot", "PT-6=COIL-8", "--lot",
                              "AD-6-6=B8", "--to", "H5", "--to", "PT-6=SH-1"});
    QVERIFY2(rest.status == 0, rest.err.c_str());
    QVERIFY(rest.json().value(QStringLiteral("closed")).toBool());
    const auto pieces = arrayOf(rest, "pieces");
    QCOMPARE(pieces.size(), 5);
    QCOMPARE(textOf(objectWith(pieces, "lot", "B8"), "value"), std::string("37.800000"));
    QCOMPARE(textOf(objectWith(pieces, "lot", "SN32"), "value"), std::string("210.000000"));
    QCOMPARE(textOf(objectWith(pieces, "lot", "COIL-7"), "value"), std::string("52.500000"));
    QCOMPARE(textOf(objectWith(pieces, "lot", "COIL-8"), "value"), std::string("73.500000"));
    QCOMPARE(textOf(objectWith(pieces, "lot", "COIL-8"), "to"), std::string("SH-1"));
    QVERIFY(receive({"--all"}).refusesInOneLine());
    QVERIFY(m_shop.isWhole());
}

void WhatCameOfAnOrder::aHoleInABoxIsClaimedAndSeen()
{
    receiveAll();
    const auto claims = arrayOf(json({"claim", "list"}), "claims");
    QCOMPARE(claims.size(), 1);
    QCOMPARE(textOf(claims.first(), "part"), std::string("BK-460"));
    QCOMPARE(textOf(claims.first(), "boxLot"), std::string("SN32"));
    QCOMPARE(textOf(claims.first(), "state"), std::string("raised"));
    QVERIFY(claims.first().toObject().value(QStringLiteral("coversFrom")).isNull());
    QCOMPARE(run({"claim", "list", "--strict"}).status, 1);
    const auto file = ShopFile::open(m_shop.path(), OpenMode::ReadOnly);
    const auto looks = file->boxChecks().value();
    QCOMPARE(looks.back().lot, std::string("SN32"));
    QCOMPARE(looks.back().missing, (std::vector<std::string>{"BK-460"}));
    const auto opened = json({"open", "EP-460", "--from", "H5", "--lot", "SN32"});
    QCOMPARE(arrayOf(opened, "missing"), (QJsonArray{QStringLiteral("BK-460")}));
    const Ran promised = json({"claim", "promise", "C-1", "--by", "2026-12-01"});
    QCOMPARE(textOf(promised.json(), "coversFrom"), std::string("2026-12-01"));
    QCOMPARE(arrayOf(json({"claim", "show", "C-1"}), "steps").size(), 2);
}

void WhatCameOfAnOrder::whatIsOverIsTakenOnlyWhenSaid()
{
    QVERIFY(receive({"--line", "AD-6-6", "12"}).refusesInOneLine());
    const Ran over = receive({"--line", "AD-6-6", "12", "--over", "--lot", "AD-6-6=B7"});
    QVERIFY2(over.status == 0, over.err.c_str());
    QCOMPARE(valueAt(m_shop, "AD-6-6", "B7"), std::string("63.000000")); // No more than it cost.
    const Ran more = receive({"--line", "AD-6-6", "1", "--over"});
    QCOMPARE(textOf(arrayOf(more, "pieces").first(), "value"), std::string("0.000000"));
}

void WhatCameOfAnOrder::aWrongPartIsWhatItIs()
{
    QVERIFY(receive({"--line", "AD-8-8", "1"}).refusesInOneLine());
    const Ran wrong =
        receive({"--line", "AD-6-6", "9", "--wrong", "AD-8-8", "1", "AD-6-6", "--to", "A2"});
    QVERIFY2(wrong.status == 0, wrong.err.c_str());
    const auto came = objectWith(arrayOf(wrong, "pieces"), "part", "AD-8-8");
    QCOMPARE(textOf(came, "insteadOf"), std::string("AD-6-6"));
    QCOMPARE(textOf(came, "value"), std::string("0.000000"));
    const auto claim = arrayOf(wrong, "claims").first();
    QCOMPARE(textOf(claim, "fault"), std::string("wrong part"));
    QCOMPARE(textOf(claim, "part"), std::string("AD-6-6"));
    QCOMPARE(textOf(objectWith(arrayOf(wrong, "awaited"), "part", "AD-6-6"), "quantity"),
             std::string("1"));
}

void WhatCameOfAnOrder::whatIsKeptByItsMarkNeedsOne()
{
    QVERIFY(receive({"--line", "EP-460", "1"}).refusesInOneLine());
    QVERIFY(receive({"--line", "PT-6", "20 in"}).refusesInOneLine());
    QVERIFY(receive({"--line", "PT-6", "20 in", "--unmarked", "PT-6"}).refusesInOneLine());
    QVERIFY(receive({"--line", "EP-460", "1", "--serial", "EP-460=A", "--serial", "EP-460=B"})
                .refusesInOneLine());
    // A hole is of one box: a piece that bears no mark gets a name for it.
    const Ran pumps = receive({"--line", "EP-460", "2", "--unmarked", "EP-460", "--missing",
                               "EP-460=CL-T60", "--missing", "EP-460=CL-T60"});
    QVERIFY2(pumps.status == 0, pumps.err.c_str());
    QCOMPARE(arrayOf(pumps, "pieces").size(), 2);
    QCOMPARE(textOf(arrayOf(pumps, "claims").first(), "quantity"), std::string("2"));
    m_shop.renew();
    place(firstOrder(), m_shop.path());
    QVERIFY(receive({"--line", "EP-460", "1", "--serial", "EP-460=A", "--missing", "EP-460=BK-460",
                     "--missing", "EP-460=BK-460"})
                .refusesInOneLine()); // One lies in the box.
}

void WhatCameOfAnOrder::scannedCodesCountPieces()
{
    const Ran scanned =
        receive({"--to", "A2", "--lot", "AD-6-6=B7", "--scan", "ad-6-6", "AD-6-6", "AD-6-6"});
    QVERIFY2(scanned.status == 0, scanned.err.c_str());
    QCOMPARE(textOf(arrayOf(scanned, "pieces").first(), "quantity"), std::string("3"));
    QVERIFY(receive({"--scan", "AD-8-8"}).refusesInOneLine());
    QVERIFY(receive({"--scan", "PT-6"}).refusesInOneLine()); // By length.
}

void WhatCameOfAnOrder::anActionIsDoneOnceAndTakenBackWhole()
{
    const Words words{"--line", "AD-6-6", "4", "--damaged", "AD-6-6", "1", "--id", Id};
    QVERIFY(!receive(words).json().value(QStringLiteral("already")).toBool());
    QVERIFY(receive(words).json().value(QStringLiteral("already")).toBool());
    QCOMPARE(arrayOf(json({"claim", "list"}), "claims").size(), 1);
    QCOMPARE(run({"take-back", Id}).status, 0);
    QCOMPARE(arrayOf(json({"claim", "list"}), "claims").size(), 0);
    const Ran again = receive({"--line", "AD-6-6", "10"});
    QVERIFY2(again.status == 0, again.err.c_str()); // All ten are awaited again.
    QCOMPARE(textOf(arrayOf(again, "pieces").first(), "value"), std::string("63.000000"));
    QVERIFY(m_shop.isWhole());
}

void WhatCameOfAnOrder::thePieceCompletesItsBox()
{
    receiveAll();
    const Ran settled = json({"claim", "settle", "C-1", "--came", "1", "--value", "4.00"});
    QVERIFY2(settled.status == 0, settled.err.c_str());
    QCOMPARE(textOf(settled.json(), "state"), std::string("piece came"));
    QCOMPARE(valueAt(m_shop, "EP-460", "SN32"), std::string("214.000000"));
    QCOMPARE(arrayOf(json({"open", "EP-460", "--from", "H5", "--lot", "SN32"}), "missing").size(),
             0);
    QVERIFY(run({"claim", "settle", "C-1", "--came", "1"}).refusesInOneLine());
    QVERIFY(m_shop.isWhole());
}

void WhatCameOfAnOrder::aShortPieceCarriesWhatWaitedForIt()
{
    QCOMPARE(
        receive({"--line", "AD-6-6", "8", "--short", "AD-6-6", "2", "--lot", "AD-6-6=B7"}).status,
        0);
    QCOMPARE(valueAt(m_shop, "AD-6-6", "B7"), std::string("50.400000"));
    const Ran one = json({"claim", "settle", "C-1", "--came", "1", "--to", "A2", "--lot", "B7"});
    QVERIFY2(one.status == 0, one.err.c_str());
    QCOMPARE(textOf(one.json(), "state"), std::string("raised")); // One is owed yet.
    QCOMPARE(valueAt(m_shop, "AD-6-6", "B7"), std::string("56.700000"));
    QCOMPARE(json({"claim", "settle", "C-1", "--came", "1", "--to", "A2", "--lot", "B7"}).status,
             0);
    QCOMPARE(valueAt(m_shop, "AD-6-6", "B7"), std::string("63.000000"));
    QCOMPARE(run({"claim", "list", "--strict"}).status, 0);
}

void WhatCameOfAnOrder::aCreditComesOffWhatWasPaid()
{
    // Two of ten did not come, 12.60 of 63.00 waits for them, and 10.00 comes back: the eight cost
    // 2.60 more. It falls on all that came of the order by value: 50.40 alone.
    QCOMPARE(
        receive({"--line", "AD-6-6", "8", "--short", "AD-6-6", "2", "--lot", "AD-6-6=B7"}).status,
        0);
    const Ran credited = json({"claim", "settle", "C-1", "--credit", "10.00"});
    QVERIFY2(credited.status == 0, credited.err.c_str());
    QCOMPARE(textOf(credited.json(), "costChange"), std::string("2.600000"));
    QCOMPARE(valueAt(m_shop, "AD-6-6", "B7"), std::string("53.000000"));
    m_shop.renew();
    place(firstOrder(), m_shop.path());
    receiveAll(); // And of a bracket that lacked, 5.00: off the pump in whose box it did.
    QCOMPARE(json({"claim", "settle", "C-1", "--credit", "5.00"}).status, 0);
    QCOMPARE(valueAt(m_shop, "EP-460", "SN32"), std::string("205.000000"));
    QCOMPARE(valueAt(m_shop, "EP-460", "SN31"), std::string("210.000000"));
    QVERIFY(m_shop.isWhole());
}

void WhatCameOfAnOrder::givenUpIsADifference()
{
    QCOMPARE(receive({"--line", "AD-6-6", "8", "--short", "AD-6-6", "2"}).status, 0);
    const Ran given = json({"claim", "settle", "C-1", "--given-up"});
    QVERIFY2(given.status == 0, given.err.c_str());
    const auto file = ShopFile::open(m_shop.path(), OpenMode::ReadOnly);
    const Ledger ledger = file->ledger().value();
    QCOMPARE(ledger.balance({"AD-6-6", "difference", "", PieceCondition::New}).value, 12'600'000);
    QCOMPARE(textOf(given.json(), "state"), std::string("given up"));
}

void WhatCameOfAnOrder::lateFreightFallsOnWhatIsHere()
{
    receiveAll();
    QCOMPARE(run({"move", "AD-6-6", "4", "--from", "A2", "--to", "car-1", "--lot", "B7"}).status,
             0);
    // Ten came for 63.00 and four are gone: 3.00 of 5.00 into stock.
    const Ran late = json({"cost", "late", "2026-0001", "5.00", "--part", "AD-6-6", "--id", Id});
    QVERIFY2(late.status == 0, late.err.c_str());
    QCOMPARE(textOf(late.json(), "intoStock"), std::string("3.000000"));
    QCOMPARE(textOf(late.json(), "difference"), std::string("2.000000"));
    QCOMPARE(valueAt(m_shop, "AD-6-6", "B7"), std::string("40.800000"));
    QVERIFY(json({"cost", "late", "2026-0001", "5.00", "--part", "AD-6-6", "--id", Id})
                .json()
                .value(QStringLiteral("already"))
                .toBool());
    // By weight: ten of 0.1 and two of 1.5 and 240 in of 0.01 are 1.0, 3.0 and 2.4 of 6.40.
    const Ran weighed = json({"cost", "late", "2026-0001", "6.40", "--kind", "duty", "--weight",
                              "AD-6-6=0.1", "--weight", "EP-460=1.5", "--weight", "PT-6=0.01"});
    const auto shares = arrayOf(weighed, "shares");
    QCOMPARE(textOf(objectWith(shares, "part", "AD-6-6"), "share"), std::string("1.000000"));
    QCOMPARE(textOf(objectWith(shares, "lot", "SN31"), "share"), std::string("1.500000"));
    QCOMPARE(textOf(objectWith(shares, "part", "PT-6"), "share"), std::string("2.400000"));
    QCOMPARE(run({"take-back", Id}).status, 0);
    QCOMPARE(valueAt(m_shop, "AD-6-6", "B7"), std::string("38.400000")); // 37.80 and 0.60.
    QVERIFY(m_shop.isWhole());
}

void WhatCameOfAnOrder::lateFreightFindsItsLayer()
{
    const QTemporaryDir folder;
    ChangedShop shop;
    shop.takeOver(firstInFirstOut(m_shop.path(), folder.path().toStdString()));
    place(orderTo("2026-0001", {orderLine("AD-6-6", 10, 1)}), shop.path());
    place(orderTo("2026-0002", {orderLine("AD-6-6", 10, 2)}), shop.path());
    const auto all = [&](const char *order) {
        return shop.run({"receive", "--order", order, "--all", "--to", "A2", "--lot", "AD-6-6=F"});
    };
    const Words gone{"move", "AD-6-6", "4", "--from", "A2", "--to", "car-1", "--lot", "F"};
    QCOMPARE(all("2026-0001").status, 0);
    QCOMPARE(shop.run(gone).status, 0);
    QCOMPARE(all("2026-0002").status, 0);
    // Six of the first ten are here: 3.00 of 5.00 go onto them, below the newer ten.
    const Ran late = shop.json({"cost", "late", "2026-0001", "5.00"});
    QVERIFY2(late.status == 0, late.err.c_str());
    QCOMPARE(textOf(late.json(), "intoStock"), std::string("3.000000"));
    QCOMPARE(valueAt(shop, "AD-6-6", "F"), std::string("29.000000"));
    // And once more: they are still known for what they are.
    const Ran again = shop.json({"cost", "late", "2026-0001", "0.50"});
    QCOMPARE(textOf(again.json(), "intoStock"), std::string("0.300000"));
    const Ran out =
        shop.json({"move", "AD-6-6", "6", "--from", "A2", "--to", "car-1", "--lot", "F"});
    QCOMPARE(out.status, 0);
    QCOMPARE(valueAt(shop, "AD-6-6", "F"), std::string("20.000000")); // The first six took 9.30.
    QVERIFY(shop.isWhole());
}

void WhatCameOfAnOrder::aCreditGoesOverTheBench()
{
    receiveAll();
    const Ran credit =
        json({"cost", "late", "2026-0001", "6.30", "--kind", "credit", "--part", "AD-6-6"});
    QVERIFY2(credit.status == 0, credit.err.c_str());
    QCOMPARE(textOf(credit.json(), "intoStock"), std::string("-6.300000"));
    QCOMPARE(valueAt(m_shop, "AD-6-6", "B7"), std::string("56.700000"));
    // More than they carry takes what they carry; the rest is a difference.
    const Ran more =
        json({"cost", "late", "2026-0001", "60.00", "--kind", "credit", "--part", "AD-6-6"});
    QCOMPARE(textOf(more.json(), "intoStock"), std::string("-56.700000"));
    QCOMPARE(textOf(more.json(), "difference"), std::string("-3.300000"));
    const std::string id = textOf(more.json(), "movement");
    QCOMPARE(run({"take-back", id}).status, 0);
    QCOMPARE(valueAt(m_shop, "AD-6-6", "B7"), std::string("56.700000"));
    QVERIFY(m_shop.isWhole());
}

void WhatCameOfAnOrder::costIsToldFromOrderToOrder()
{
    receiveAll();
    QCOMPARE(run({"cost", "late", "2026-0001", "5.00", "--part", "AD-6-6"}).status, 0);
    const auto steps = arrayOf(json({"cost", "history", "AD-6-6"}), "receipts");
    QCOMPARE(steps.size(), 1);
    QCOMPARE(textOf(steps.first(), "supplier"), std::string("TCF"));
    QCOMPARE(textOf(steps.first(), "priceEach"), std::string("6"));
    QCOMPARE(textOf(steps.first(), "landedEach"), std::string("6.800000")); // (63 + 5) / 10
}

void WhatCameOfAnOrder::aBuildIsComparedWithItsBill()
{
    QCOMPARE(run({"reserve", "roadster-fuel"}).status, 0);
    QCOMPARE(run({"issue", "roadster-fuel"}).status, 0);
    const Ran cost = json({"cost", "build", "roadster-fuel"});
    QVERIFY2(cost.status == 0, cost.err.c_str());
    const auto bill = json({"bill", "--build", "roadster-fuel"});
    QCOMPARE(textOf(cost.json(), "planned"), textOf(bill.json(), "total"));
    std::int64_t issued = 0; // To the cent a line, as the column adds up.
    for (const QJsonValue &line : arrayOf(cost, "lines"))
        issued += microsOf(textOf(line, "actual"));
    QCOMPARE(microsOf(textOf(cost.json(), "actual")), issued);
    std::int64_t moved = 0;
    for (const QJsonValue &one :
         arrayOf(json({"history", "--build", "roadster-fuel"}), "movements"))
        moved += microsOf(textOf(one, "value"));
    QVERIFY(std::abs(moved - issued) <= 5'000 * arrayOf(cost, "lines").size());
    for (const char *by : {"byStation", "byKind"}) {
        std::int64_t sum = 0;
        for (const QJsonValue &one : arrayOf(cost, by))
            sum += microsOf(textOf(one, "actual"));
        QCOMPARE(sum, issued);
    }
}

void WhatCameOfAnOrder::whatIsWrongIsRefused()
{
    for (const Words &words :
         {Words{"receive", "--order", "2026-9999", "--all"},
          Words{"receive", "AD-6-6", "1", "--order", "2026-0001", "--all"},
          Words{"receive", "--order", "2026-0001"},
          Words{"receive", "--order", "2026-0001", "--line", "AD-6-6", "0"},
          Words{"receive", "AD-6-6", "1", "--from", "supplier-TCF", "--to", "A2"},
          Words{"receive", "--order", "2026-0001", "--line", "AD-6-6", "1", "--lot", "B7"},
          Words{"receive", "--order", "2026-0001", "--line", "AD-6-6", "1", "--to", "nowhere"},
          Words{"claim", "show", "C-1"},
          Words{"claim", "raise", "AD-6-6", "1", "--fault", "late", "--order", "2026-0001"},
          Words{"claim", "raise", "AD-6-6", "1", "--fault", "damaged", "--supplier", "nobody"},
          Words{"cost", "late", "2026-0001", "5.00"}, // Nothing came yet.
          Words{"cost", "late", "2026-9999", "5.00"}, Words{"cost", "history", "nothing"},
          Words{"cost", "build", "nothing"}})
        QVERIFY2(run(words).refusesInOneLine(), words.back().c_str());
    QCOMPARE(
        run({"claim", "raise", "AD-6-6", "1", "--fault", "damaged", "--supplier", "tcf"}).status,
        0);
    const Ran settled = run({"claim", "settle", "C-1", "--credit", "2.00"});
    QVERIFY2(settled.out.find("credited with 2.00 USD") != std::string::npos, settled.out.c_str());
    QVERIFY(m_shop.isWhole());
}

QTEST_APPLESS_MAIN(WhatCameOfAnOrder)
#include "tst_what_came_of_an_order_is_taken_in.moc"
