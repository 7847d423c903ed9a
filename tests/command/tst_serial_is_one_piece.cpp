// SPDX-License-Identifier: MIT
//
// Promise: a serial is one piece, which is in one place: what the book has here does not come in
// once more, neither by hand nor with an order; what has gone out may.
//
// SN 4417 lies in H5.

#include "tests/command/ordered_shop.h"

#include <QTest>

using namespace flarestock;
using namespace flarestock::tests;

class SerialIsOnePiece : public QObject {
    Q_OBJECT

private:
    ChangedShop m_shop;
    [[nodiscard]] Ran byHand(const char *serial, const char *pieces = "1") const
    {
        return m_shop.run({"receive", "EP-460", pieces, "--from", "supplier-TCF", "--to", "H5",
                           "--cost", "190", "--lot", serial});
    }
    [[nodiscard]] Ran ofOrder(const Words &serials) const
    {
        Words words = {"receive", "--order", "2026-0001",
                       "--line",  "EP-460",  std::to_string(serials.size())};
        for (const std::string &serial : serials)
            words.insert(words.end(), {"--serial", "EP-460=" + serial});
        return m_shop.json(words);
    }
    [[nodiscard]] int lie(const char *serial) const
    {
        int pieces = 0;
        for (const QJsonValue &one : arrayOf(m_shop.json({"stock", "--find", "EP-460"}), "stock")) {
            if (textOf(one.toObject(), "lot") == serial)
                pieces += std::stoi(textOf(one.toObject(), "onHand"));
        }
        return pieces;
    }

private Q_SLOTS:
    void init()
    {
        m_shop.renew();
        place(orderTo("2026-0001", {orderLine("EP-460", 2, 200)}), m_shop.path());
    }
    void whatIsHereDoesNotComeInOnceMore();
    void onePieceBearsIt();
    void whatWentOutMayComeInAgain();
};

void SerialIsOnePiece::whatIsHereDoesNotComeInOnceMore()
{
    for (const char *typed : {"SN 4417", "sn 4417"}) {
        for (const Ran &ran : {byHand(typed), ofOrder({typed})}) {
            QVERIFY2(ran.refusesInOneLine(), ran.err.c_str());
            QVERIFY2(ran.err.find("H5") != std::string::npos, ran.err.c_str());
        }
    }
    QCOMPARE(lie("SN 4417"), 1);
    // In a car it is here as well.
    QCOMPARE(
        m_shop.run({"move", "EP-460", "1", "--from", "H5", "--to", "car-1", "--lot", "SN 4417"})
            .status,
        0);
    QVERIFY(byHand("SN 4417").refusesInOneLine());
}

void SerialIsOnePiece::onePieceBearsIt()
{
    QVERIFY(byHand("S9", "2").refusesInOneLine());
    QVERIFY(ofOrder({"S9", "s9"}).refusesInOneLine());
    QCOMPARE(byHand("S9").status, 0);
    QCOMPARE(lie("S9"), 1);
    QCOMPARE(ofOrder({"S10", "S11"}).status, 0);
    // A batch is of many.
    const auto batch = [this] {
        return m_shop.run({"receive", "EC-100-S", "2", "--from", "supplier-TCF", "--to", "H4",
                           "--cost", "40", "--lot", "B7"});
    };
    QCOMPARE(batch().status, 0);
    QCOMPARE(batch().status, 0);
}

void SerialIsOnePiece::whatWentOutMayComeInAgain()
{
    const Ran counted = m_shop.run({"count", "EP-460", "0", "--place", "H5", "--lot", "SN 4417"});
    QVERIFY2(counted.status == 0, counted.err.c_str());
    const Ran again = byHand("SN 4417");
    QVERIFY2(again.status == 0, again.err.c_str());
    QCOMPARE(lie("SN 4417"), 1);
}

QTEST_APPLESS_MAIN(SerialIsOnePiece)
#include "tst_serial_is_one_piece.moc"
