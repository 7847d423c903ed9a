// SPDX-License-Identifier: MIT
//
// Whose a lot is and until when it may be used holds of every piece of it, and of what may be taken
// from a build. Common practice of a stockroom, no source; the demo shop is invented.

#include "tests/command/changed_shop.h"

#include <QTest>

using namespace flarestock::tests;

class LotsSay : public QObject {
    Q_OBJECT

private:
    ChangedShop m_shop;
    [[nodiscard]] Ran run(const Words &words) const { return m_shop.run(words); }
    [[nodiscard]] Ran json(const Words &words) const { return m_shop.json(words); }
    void receive(Words words) const
    {
        words.insert(words.begin(), "receive");
        words.insert(words.end(), {"--from", "supplier-TCF", "--cost", "12"});
        const Ran ran = run(words);
        QVERIFY2(ran.status == 0, ran.err.c_str());
    }
    [[nodiscard]] QJsonObject lot(const char *name, const Words &more = {}) const
    {
        return objectWith(m_shop.stock(more), "lot", name);
    }

private Q_SLOTS:
    void init() { m_shop.renew(); }
    void aCutPieceIsWhoseItsHoseWas();
    void nobodyCutsAnotherCarsHose();
    void whatOnlyOneBuildMayUseIsLeftToIt();
    void whatABoxInTheCarHeldTheBuildHasGot();
};

void LotsSay::aCutPieceIsWhoseItsHoseWas()
{
    receive({"GR-8", "30 in", "--to", "SH-4", "--lot", "END-1", "--for-car", "car-2", "--use-by",
             "2027-03-31"});
    const auto cut = json({"cut", "GR-8", "7 in", "8 in", "--to", "SH-4", "--lot", "END-1"});
    QVERIFY2(cut.status == 0, cut.err.c_str());
    for (const char *piece : {"END-1", "END-1/1", "END-1/2"}) {
        QCOMPARE(textOf(lot(piece), "forCar"), std::string("car-2"));
        QCOMPARE(textOf(lot(piece), "free"), std::string("0"));
        const auto late = lot(piece, {"--on", "2027-04-01"});
        QVERIFY2(textOf(late, "notFree").find("past its day 2027-03-31") != std::string::npos,
                 piece);
    }
    // Cut again, it is still its own; taken back, the name is not given to another piece.
    const auto again = json({"cut", "GR-8", "2 in", "--to", "SH-4", "--lot", "END-1/2"});
    QCOMPARE(textOf(lot("END-1/3"), "forCar"), std::string("car-2"));
    QCOMPARE(run({"take-back", textOf(again.json(), "movement")}).status, 0);
    QCOMPARE(run({"cut", "GR-8", "2 in", "--to", "SH-4", "--lot", "END-1/2"}).status, 0);
    QCOMPARE(textOf(lot("END-1/4"), "forCar"), std::string("car-2"));
    QVERIFY(m_shop.isWhole());
}

void LotsSay::nobodyCutsAnotherCarsHose()
{
    receive({"GR-8", "9 in", "--to", "SH-4", "--lot", "END-1", "--for-car", "car-2"});
    receive({"GR-8", "9 in", "--to", "SH-4", "--lot", "END-2", "--use-by", "2020-01-31"});
    const auto from = [this](const char *car) {
        return textOf(arrayOf(json({"cut", "GR-8", "8 in", "--to", car}), "movements").at(0),
                      "lot");
    };
    const std::string other = from("car-1"); // The shortest that gives it, but of those two.
    QVERIFY(other != "END-1" && other != "END-2");
    QCOMPARE(from("car-2"), std::string("END-1"));
    QCOMPARE(run({"cut", "GR-8", "8 in", "--to", "car-1", "--lot", "END-2"}).status, 0); // Named.
    QVERIFY(m_shop.isWhole());
}

void LotsSay::whatOnlyOneBuildMayUseIsLeftToIt()
{
    receive({"AD-8-8", "2", "--to", "A3", "--lot", "SN 7", "--for-car", "car-2"});
    QCOMPARE(run({"reserve", "roadster-fuel", "AD-8-8", "5"}).status, 0); // All that it may use.
    const auto scrap = [this](const Words &more) {
        Words words{"scrap", "AD-8-8", "1", "--from", "A3", "--why", "bent"};
        words.insert(words.end(), more.begin(), more.end());
        return run(words);
    };
    const Ran refused = scrap({});
    QVERIFY(refused.refusesInOneLine());
    QVERIFY2(refused.err.find("promised to roadster-fuel") != std::string::npos,
             refused.err.c_str());
    QCOMPARE(scrap({"--lot", "SN 7"}).status, 0); // Nothing to the roadster.
    QCOMPARE(scrap({"--despite-promise"}).status, 0);
    QVERIFY(m_shop.isWhole());
}

void LotsSay::whatABoxInTheCarHeldTheBuildHasGot()
{
    const auto shortOf = [this] {
        std::map<std::string, std::string> lacking;
        for (const auto &line : arrayOf(json({"bill", "--build", "coupe-fuel"}), "lines"))
            if (textOf(line, "short") != "0")
                lacking[textOf(line, "part")] = textOf(line, "short");
        return lacking;
    };
    QCOMPARE(run({"reserve", "coupe-fuel"}).status, 0);
    QCOMPARE(run({"issue", "coupe-fuel"}).status, 0);
    const auto before = shortOf();
    const auto opened = json({"open", "EP-460", "--from", "car-2"});
    QVERIFY2(opened.status == 0, opened.err.c_str());
    QCOMPARE(shortOf(), before);
    // Nor does it ask for others out of the stock.
    QCOMPARE(arrayOf(json({"reserve", "coupe-fuel"}), "promises").size(), 0);
    QCOMPARE(run({"take-back", textOf(opened.json(), "movement")}).status, 0);
    QCOMPARE(shortOf(), before);
    // Left over, they go to the bin: then the build has them no more and asks for them.
    QCOMPARE(run({"open", "EP-460", "--from", "car-2", "--to", "K8"}).status, 0);
    QCOMPARE(textOf(arrayOf(json({"reserve", "coupe-fuel"}), "promises").at(0), "part"),
             std::string("CL-T60"));
    QVERIFY(run({"open", "EP-255", "--from", "H5", "--lot", "SN 2203", "--to", "car-1", "--build",
                 "coupe-fuel"})
                .refusesInOneLine());
    QVERIFY(m_shop.isWhole());
}

QTEST_GUILESS_MAIN(LotsSay)
#include "tst_pieces_keep_what_their_lot_says.moc"
