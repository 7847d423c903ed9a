// SPDX-License-Identifier: MIT
//
// What is free, why the rest is not, what lies below its minimum, what nobody counts, and what is
// away: as a shell asks it. Common practice of a stockroom, no source; the demo shop is invented.

#include "tests/command/changed_shop.h"

#include <QTest>

using namespace flarestock::tests;

class FreeAndLacking : public QObject {
    Q_OBJECT

private:
    ChangedShop m_shop;
    [[nodiscard]] Ran run(const Words &words) const { return m_shop.run(words); }
    [[nodiscard]] Ran json(const Words &words) const { return m_shop.json(words); }
    void receive(const char *lot, const Words &more) const
    {
        Words words{"receive", "AD-8-8", "2",     "--from", "supplier-TCF", "--to", "A3",
                    "--cost",  "12.00",  "--lot", lot};
        words.insert(words.end(), more.begin(), more.end());
        const Ran ran = run(words);
        QVERIFY2(ran.status == 0, ran.err.c_str());
    }

private Q_SLOTS:
    void init() { m_shop.renew(); }
    void whatIsNotFreeSaysWhy();
    void nobodyIsPromisedAnotherCarsLot();
    void whatIsBelowItsMinimumIsFilledFromWhereItIs();
    void whatNobodyCountsHasALevel();
    void whatIsAwayComesBackByAMove();
    void whatWasSaidOfAPlaceIsTakenBack();
};

void FreeAndLacking::whatIsNotFreeSaysWhy()
{
    receive("SN 7", {"--for-car", "car-2"});
    receive("batch 3", {"--use-by", "2027-03-31"});
    QCOMPARE(run({"reserve", "coupe-fuel", "AD-8-8", "2"}).status, 0);
    const auto line = [this](const Words &words, const char *lot) {
        return objectWith(m_shop.stock(words), "lot", lot);
    };
    const auto own = line({"--find", "AD-8-8"}, "SN 7");
    QCOMPARE(textOf(own, "free"), std::string("0"));
    QCOMPARE(textOf(own, "forCar"), std::string("car-2"));
    QVERIFY(textOf(own, "notFree").starts_with("car-2's"));
    // On its last day it may still be used, on the next not any more.
    const auto last = line({"--find", "AD-8-8", "--on", "2027-03-31"}, "batch 3");
    const auto after = line({"--find", "AD-8-8", "--on", "2027-04-01"}, "batch 3");
    QCOMPARE(textOf(last, "free"), std::string("2"));
    QCOMPARE(textOf(after, "free"), std::string("0"));
    QCOMPARE(textOf(after, "notFree"), std::string("past its day 2027-03-31"));
    const Ran table = run({"stock", "--find", "AD-8-8"});
    QVERIFY2(table.out.find("2 promised to coupe-fuel") != std::string::npos, table.out.c_str());
    QVERIFY(run({"stock", "--on", "2027-02-30"}).refusesInOneLine());
}

void FreeAndLacking::nobodyIsPromisedAnotherCarsLot()
{
    receive("SN 7", {"--for-car", "car-2"});        // Of the demo's five, five are the shop's.
    receive("batch 3", {"--use-by", "2026-12-15"}); // Past its day when the roadster is due.
    const Ran refused = run({"reserve", "roadster-fuel", "AD-8-8", "6"});
    QVERIFY2(refused.refusesInOneLine(), refused.err.c_str());
    QVERIFY2(refused.err.find("another car's, or past its day") != std::string::npos,
             refused.err.c_str());
    QCOMPARE(run({"reserve", "roadster-fuel", "AD-8-8", "5"}).status, 0);
    // The coupe is due before that day, and the lot is its own.
    QCOMPARE(run({"reserve", "coupe-fuel", "AD-8-8", "4"}).status, 0);
    QVERIFY(run({"reserve", "coupe-fuel", "AD-8-8", "1"}).refusesInOneLine());
    QVERIFY(m_shop.isWhole());
}

void FreeAndLacking::whatIsBelowItsMinimumIsFilledFromWhereItIs()
{
    const auto below = [this] { // Of that part: the demo's own drawers lack others.
        QJsonArray lines;
        for (const QJsonValue &line : arrayOf(json({"stock", "--below"}), "below"))
            if (textOf(line, "part") == "AD-8-8")
                lines.append(line);
        return lines;
    };
    QCOMPARE(below().size(), 0);
    QCOMPARE(run({"keep", "AD-8-8", "--place", "trailer-2", "--min", "3", "--max", "8"}).status, 0);
    QCOMPARE(run({"keep", "AD-8-8", "--place", "A3", "--min", "1"}).status, 0);
    const auto line = below().at(0).toObject(); // One lies there, four in A3, one of them stays.
    QCOMPARE(textOf(line, "has"), std::string("1"));
    QCOMPARE(textOf(line, "fillUp"), std::string("7"));
    QCOMPARE(textOf(line, "buy"), std::string("4"));
    const auto from = line.value(QStringLiteral("from")).toArray();
    QCOMPARE(from.size(), 1);
    QCOMPARE(textOf(from.at(0), "place") + " " + textOf(from.at(0), "take"), std::string("A3 3"));
    QCOMPARE(run({"move", "AD-8-8", "2", "--from", "A3", "--to", "trailer-2"}).status, 0);
    QCOMPARE(below().size(), 0);
    QCOMPARE(run({"reserve", "coupe-fuel", "AD-8-8", "4"}).status, 0); // What is promised is gone.
    QCOMPARE(below().size(), 2);
    QCOMPARE(run({"keep", "AD-8-8", "--place", "trailer-2", "--min", "0"}).status, 0);
    QCOMPARE(below().size(), 1);
    QVERIFY(run({"keep", "AD-8-8", "--place", "A3", "--min", "3", "--max", "2"}).status == 2);
    QVERIFY(run({"keep", "AD-8-8", "--place", "car-2", "--min", "3"}).refusesInOneLine());
    QVERIFY(m_shop.isWhole());
}

void FreeAndLacking::whatNobodyCountsHasALevel()
{
    const auto billed = [this] {
        return arrayOf(json({"bill", "--build", "coupe-fuel"}), "lines");
    };
    const auto findings = [this] {
        return json({"bill", "--build", "coupe-fuel"}).out.find("little is left") !=
               std::string::npos;
    };
    const auto line = objectWith(billed(), "free", "0"); // Something of which none lies counted.
    const std::string part = textOf(line, "part");
    QVERIFY2(textOf(line, "short") == "1", "the demo's bill lacks one of something");
    const auto seen = [&](const char *level) {
        return run({"level", part, "--place", "K4", "--is", level}).status;
    };
    QCOMPARE(seen("plenty"), 0);
    QCOMPARE(textOf(objectWith(billed(), "part", part), "short"), std::string("0"));
    QVERIFY(!findings());
    QCOMPARE(seen("low"), 0);
    QCOMPARE(textOf(objectWith(billed(), "part", part), "short"), std::string("0"));
    QVERIFY(findings());
    QCOMPARE(seen("out"), 0);
    QCOMPARE(textOf(objectWith(billed(), "part", part), "short"), std::string("1"));
    QVERIFY(!findings());
    const auto levels = arrayOf(json({"stock"}), "levels");
    QCOMPARE(textOf(objectWith(levels, "part", part), "level"), std::string("out"));
    QVERIFY(run({"level", "tin 4", "--place", "K4", "--is", "low"}).refusesInOneLine());
    QCOMPARE(run({"level", "tin 4", "--place", "K4", "--is", "low", "--holds", "M5 to M8"}).status,
             0);
    QCOMPARE(arrayOf(json({"stock", "--find", "m8"}), "levels").size(), 1);
    QCOMPARE(arrayOf(json({"stock", "--below"}), "levels").size(), 2);
    QVERIFY(run({"level", "PT-8", "--place", "K4", "--is", "low"}).refusesInOneLine());
    QVERIFY(run({"level", part, "--place", "K4", "--is", "some"}).refusesInOneLine());
    // Once it is counted its level says no more.
    QCOMPARE(
        run({"receive", part, "2", "--from", "supplier-TCF", "--to", "K4", "--cost", "3"}).status,
        0);
    QCOMPARE(textOf(objectWith(billed(), "part", part), "short"), std::string("0"));
    QVERIFY(run({"level", part, "--place", "K4", "--is", "plenty"}).refusesInOneLine());
    QVERIFY(m_shop.isWhole());
}

void FreeAndLacking::whatIsAwayComesBackByAMove()
{
    const auto away = [this](const char *as) {
        std::string said;
        for (const QJsonValue &one :
             arrayOf(json({"stock", "--away", "--on", "2126-12-11"}), "away")) {
            if (textOf(one, "as") == as)
                said += textOf(one, "part") + " " + textOf(one, "quantity") + " " +
                        textOf(one, "from") + ">" + textOf(one, "at") +
                        (one.toObject().value(QStringLiteral("overdue")).toBool() ? " late;" : ";");
        }
        return said;
    };
    QCOMPARE(run({"move", "TL-TQ", "1", "--from", "SH-3", "--to", "lent", "--until", "2126-12-10"})
                 .status,
             0);
    QCOMPARE(run({"move", "AD-8-8", "2", "--from", "A3", "--to", "lent", "--until", "2126-12-11"})
                 .status,
             0);
    QCOMPARE(away("lent"), std::string("TL-TQ 1 SH-3>lent late;AD-8-8 2 A3>lent;"));
    QCOMPARE(run({"move", "AD-8-8", "1", "--from", "lent", "--to", "trailer-2"}).status, 0);
    QCOMPARE(away("lent"), std::string("TL-TQ 1 SH-3>lent late;AD-8-8 1 A3>lent;"));
    QCOMPARE(run({"move", "AD-8-8", "1", "--from", "A3", "--to", "car-1"}).status, 0);
    QCOMPARE(run({"move", "AD-8-8", "1", "--from", "car-1", "--to", "car-2"}).status, 0);
    QCOMPARE(away("borrowed"), std::string("AD-8-8 1 car-1>car-2;"));
    QCOMPARE(run({"move", "AD-8-8", "1", "--from", "car-2", "--to", "car-1"}).status, 0);
    QCOMPARE(away("borrowed"), std::string());
    // One of the neighbours': it comes out of their place, and goes back there from another.
    QCOMPARE(
        run({"move", "CK-8", "1", "--from", "lent", "--to", "H8", "--until", "2126-12-09"}).status,
        0);
    QCOMPARE(away("borrowed"), std::string("CK-8 1 lent>H8 late;"));
    QCOMPARE(run({"move", "CK-8", "1", "--from", "H8", "--to", "lent"}).status, 0);
    QCOMPARE(away("borrowed"), std::string());
    const auto sent = json(
        {"move", "BR-7", "1", "--from", "H7", "--to", "repair", "--condition", "to be checked"});
    QCOMPARE(away("out for repair"), std::string("BR-7 1 H7>repair;"));
    QCOMPARE(run({"take-back", textOf(sent.json(), "movement")}).status, 0);
    QCOMPARE(away("out for repair"), std::string());
    QVERIFY(run({"move", "AD-8-8", "1", "--from", "A3", "--to", "A4", "--until", "2126-12-09"})
                .refusesInOneLine());
    QVERIFY(m_shop.isWhole());
}

/// What a place is to hold, and what was seen there, is as it was said before.
void FreeAndLacking::whatWasSaidOfAPlaceIsTakenBack()
{
    const auto keep = [this](const char *least) {
        return textOf(json({"keep", "AD-8-8", "--place", "A3", "--min", least}).json(), "record");
    };
    const auto least = [this] {
        return textOf(objectWith(arrayOf(json({"stock", "--below"}), "below"), "place", "A3"),
                      "min");
    };
    const std::string first = keep("50");
    QCOMPARE(least(), std::string("50"));
    const std::string second = keep("60");
    QVERIFY(run({"take-back", first}).refusesInOneLine()); // It was said anew since.
    QCOMPARE(least(), std::string("60"));
    QCOMPARE(run({"take-back", second}).status, 0);
    QCOMPARE(least(), std::string("50"));
    QVERIFY(m_shop.isWhole());
}

QTEST_GUILESS_MAIN(FreeAndLacking)
#include "tst_stock_says_what_is_free_and_lacking.moc"
