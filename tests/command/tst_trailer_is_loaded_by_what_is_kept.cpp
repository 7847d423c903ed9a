// SPDX-License-Identifier: MIT
//
// The trailer's drawers: what they are to hold against what they do, what to bring from which bin
// and what to take out; what nobody has is short. How many spares that is comes from the shop's own
// history, or from numbers; wrong words are answered.

#include "tests/command/changed_shop.h"

#include <QDate>
#include <QTest>

using namespace flarestock::tests;

class TrailerTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { m_shop.renew(); }
    void drawersAreFilledFromBins();
    void whatIsPromisedStays();
    void whatDoesNotBelongIsTakenOut();
    void carriesByItsOwnHistory();
    void carriesWearAndCrashesApart();
    void wearCountsFromWhatWasFitted();
    void keepsWhatWasFound();
    void usesFromTheDrawerCount();
    void wrongWordsAreAnswered_data();
    void wrongWordsAreAnswered();

private:
    [[nodiscard]] QJsonObject lineOf(const std::string &part, Words more = {}) const
    {
        more.insert(more.begin(), {"load", "list", part});
        const auto drawers = arrayOf(m_shop.json(more), "drawers");
        return drawers.isEmpty()
                   ? QJsonObject()
                   : objectWith(drawers.at(0).toObject().value(QStringLiteral("lines")).toArray(),
                                "part", part);
    }
    ChangedShop m_shop;
};

static const Words KeepFour = {"keep", "EG-10-S", "--place", "trailer-1", "--min", "4"};

void TrailerTest::drawersAreFilledFromBins()
{
    QCOMPARE(m_shop.run(KeepFour).status, 0);
    // Two lie there, one in bin H4: one to bring and one to buy.
    const QJsonObject line = lineOf("EG-10-S");
    QCOMPARE(textOf(line, "has"), std::string("2"));
    QCOMPARE(textOf(line, "lacks"), std::string("2"));
    QCOMPARE(textOf(line, "buy"), std::string("1"));
    const auto bring = line.value(QStringLiteral("bring")).toArray();
    QCOMPARE(bring.size(), 1);
    QCOMPARE(textOf(bring.at(0), "from"), std::string("H4"));
    QCOMPARE(textOf(bring.at(0), "quantity"), std::string("1"));
    QVERIFY(m_shop.json({"short"}).out.find("trailer-1") != std::string::npos);
    const Words bringIt = {"load", "do", "EG-10-S", "--id", "01900000-0000-7000-8000-0000000000a1"};
    const auto done = m_shop.json(bringIt);
    QCOMPARE(done.json().value(QStringLiteral("moved")).toInt(), 1);
    QVERIFY(m_shop.stockOf("EG-10-S", "onHand").find("trailer-1=1") != std::string::npos);
    QCOMPARE(m_shop.json(bringIt).json().value(QStringLiteral("already")).toBool(), true);
    QCOMPARE(m_shop.json({"load", "do", "EG-10-S"}).json().value(QStringLiteral("moved")).toInt(),
             0);
    QCOMPARE(m_shop.run({"take-back", "01900000-0000-7000-8000-0000000000a1"}).status, 0);
    QCOMPARE(textOf(lineOf("EG-10-S"), "lacks"), std::string("2"));
    QVERIFY(m_shop.isWhole());
}

void TrailerTest::whatIsPromisedStays()
{
    QCOMPARE(m_shop.run(KeepFour).status, 0);
    QCOMPARE(m_shop.run({"keep", "EG-10-S", "--place", "H4", "--min", "1"}).status, 0);
    const QJsonObject line = lineOf("EG-10-S"); // The bin has no more than its own minimum.
    QCOMPARE(line.value(QStringLiteral("bring")).toArray().size(), 0);
    QCOMPARE(textOf(line, "buy"), std::string("2"));
}

void TrailerTest::whatDoesNotBelongIsTakenOut()
{
    const auto unload = arrayOf(m_shop.json({"load", "back"}), "unload");
    QCOMPARE(textOf(objectWith(unload, "part", "FP-10-6"), "why"), std::string("to be checked"));
    QCOMPARE(textOf(objectWith(unload, "part", "UN-8"), "why"),
             std::string("does not belong here"));
    QVERIFY(objectWith(unload, "part", "EG-10-S").isEmpty());
    QCOMPARE(m_shop.run({"keep", "EG-10-S", "--place", "trailer-1", "--min", "1"}).status, 0);
    const auto surplus = arrayOf(m_shop.json({"load", "back", "EG-10-S"}), "unload");
    QCOMPARE(textOf(surplus.at(0), "why"), std::string("more than it is to hold"));
    QCOMPARE(textOf(surplus.at(0), "quantity"), std::string("1"));
    QCOMPARE(textOf(surplus.at(0), "to"), std::string("H4"));
    QCOMPARE(m_shop.run({"load", "back", "EG-10-S", "--do"}).status, 0);
    QCOMPARE(arrayOf(m_shop.json({"load", "back", "EG-10-S"}), "unload").size(), 0);
    QVERIFY(m_shop.isWhole());
}

void TrailerTest::carriesByItsOwnHistory()
{
    // used.csv tells of nine events, at which twenty pieces ran in all and eight were used up.
    // Three events come at which seven run: NB(9, 20/27) covers 0.932547 with six and 0.966563 with
    // seven, summed with fractions by another program.
    const auto said =
        m_shop.json({"carry", "EG-10-S", "--events", "3", "--on", "2026-11-28"}).json();
    const QJsonValue part = said.value(QStringLiteral("parts")).toArray().at(0);
    QCOMPARE(textOf(part, "uses"), std::string("8"));
    QCOMPARE(textOf(part, "seen"), std::string("20"));
    QCOMPARE(textOf(part, "coming"), std::string("7"));
    QCOMPARE(textOf(part, "model"), std::string("predictive"));
    QCOMPARE(textOf(part, "mean"), std::string("3.15"));
    QCOMPARE(said.value(QStringLiteral("carry")).toInt(), 7);
    QCOMPARE(textOf(said, "covered"), std::string("0.966563"));
    // Of runs more is known: RG-906 was used 28 times.
    const auto rings =
        m_shop.json({"carry", "RG-906", "--events", "1", "--on", "2026-11-28"}).json();
    const QJsonValue ring = rings.value(QStringLiteral("parts")).toArray().at(0);
    QCOMPARE(textOf(ring, "model"), std::string("Poisson"));
    QCOMPARE(textOf(ring, "per"), std::string("run"));
}

void TrailerTest::carriesWearAndCrashesApart()
{
    // EP-255 lasts 40 h, and the one in car 1 has 38; to come are 0.5 + 3 + 7.5.
    const auto pump =
        m_shop.json({"carry", "EP-255", "--until", "2027-04-17", "--on", "2026-11-28"}).json();
    QCOMPARE(pump.value(QStringLiteral("carry")).toInt(), 1);
    const QJsonValue part = pump.value(QStringLiteral("parts")).toArray().at(0);
    QCOMPARE(textOf(part, "spentBy"), std::string("wear"));
    // What it has run and what is to come are added.
    const auto wear = runFlarestock({"carry", "--lasts", "60", "--per", "hour", "--used", "38.00",
                                     "--events", "1", "--hours", "3.5"});
    QVERIFY2(wear.out.find("run so far 38, + 1 event") != std::string::npos, wear.out.c_str());
    QVERIFY(pump.value(QStringLiteral("covered")).isNull());
    const auto clamps = m_shop.json({"carry", "CL-38", "--events", "2"}).json();
    QCOMPARE(clamps.value(QStringLiteral("carry")).toInt(), 4); // One set, a judgement.
    const auto ends = m_shop
                          .json({"carry", "HE-6-90", "--event", "quarry-hill", "--on", "2026-11-28",
                                 "--certainty", "95"})
                          .json();
    // 0.05 crashes of a car, two cars: P(0) = 0.904837, P(1) = 0.995321, and two ends a crash.
    QCOMPARE(ends.value(QStringLiteral("carry")).toInt(), 2);
    QCOMPARE(textOf(ends, "covered"), std::string("0.995321"));
}

/// Of a pump that lasts 40 h the car has run 29.5 since it was fitted, and it had 8.5 before: 38.
/// The next four events of its car are a sprint of 0.5 h, two test days of 3 h and six hours of 7.5
/// h.
void TrailerTest::wearCountsFromWhatWasFitted()
{
    const auto carried = [this](const char *event) {
        return m_shop.json({"carry", "EP-255", "--until", event, "--on", "2026-11-28"})
            .json()
            .value(QStringLiteral("carry"))
            .toInt();
    };
    QCOMPARE(carried("2026-12-31"), 0); // 38.5 h of 40.
    QCOMPARE(carried("2027-03-01"), 1); // 41.5 h.
    QCOMPARE(m_shop
                 .run({"service", "car-1", "replace", "fuel pump", "--lot", "SN 2203", "--from",
                       "H5", "--tag", "old", "--day", "2026-11-20"})
                 .status,
             0);
    QCOMPARE(carried("2027-03-01"), 0); // Another is in since, with 3.5 h by then.
}

void TrailerTest::keepsWhatWasFound()
{
    const auto kept = m_shop.json(
        {"carry", "EG-10-S", "--events", "3", "--on", "2026-11-28", "--keep", "trailer-1"});
    QCOMPARE(kept.status, 0);
    QCOMPARE(textOf(lineOf("EG-10-S"), "min"), std::string("7"));
    QCOMPARE(m_shop.run({"carry", "EG-10-S", "--keep", "H4"}).status, 2);
}

void TrailerTest::usesFromTheDrawerCount()
{
    const std::string files = m_shop.path() + ".files";
    QCOMPARE(m_shop.run({"export", "--to", files}).status, 0);
    const auto day = [](int from) {
        return QDate::currentDate().addDays(from).toString(Qt::ISODate).toStdString();
    };
    writeBytes(files + "/season.csv",
               QByteArray::fromStdString("event,first day,last day,cars\nlast," + day(-8) + "," +
                                         day(-7) + ",car-1\nnext," + day(30) + ",,car-1\n"));
    writeBytes(files + "/used.csv", "event,part,pieces\nlast,EC-100-S,1\n");
    QCOMPARE(m_shop.run({"import", "--from", files}).status, 0);
    const auto uses = [&] {
        return textOf(arrayOf(m_shop.json({"carry", "EC-100-S"}), "parts").at(0), "uses");
    };
    QCOMPARE(uses(), std::string("1"));
    // Out of a drawer after the last event: it was used there, and nobody had noted it.
    QCOMPARE(m_shop
                 .run({"move", "EC-100-S", "1", "--from", "trailer-1", "--to", "used-up", "--id",
                       "01900000-0000-7000-8000-0000000000b2"})
                 .status,
             0);
    QCOMPARE(uses(), std::string("2"));
    // From a bin on a day without an event it was used at home.
    QCOMPARE(m_shop.run({"move", "EC-100-S", "1", "--from", "H4", "--to", "used-up"}).status, 0);
    QCOMPARE(uses(), std::string("2"));
    QCOMPARE(m_shop.run({"take-back", "01900000-0000-7000-8000-0000000000b2"}).status, 0);
    QCOMPARE(uses(), std::string("1"));
}

void TrailerTest::wrongWordsAreAnswered_data()
{
    QTest::addColumn<QString>("words");
    QTest::addColumn<QString>("answer");
    const auto row = [](const char *words, const char *answer) {
        QTest::newRow(words) << QString::fromLatin1(words) << QString::fromLatin1(answer);
    };
    row("--rate -1 --events 6", "below zero");
    row("--rate x --events 6", "is no rate");
    row("--rate 1/0 --events 6", "is no rate");
    row("--rate 0.35 --events 6 --confidence 100%", "cannot be had");
    row("--rate 0.35 --events 6 --confidence 0", "asks for nothing");
    row("--rate 0.35 --events 6 --confidence 100", "cannot be had");
    row("--rate 0.35 --events 6 --confidence much", "is no certainty");
    row("--rate 0.35 --events -2", "below zero");
    row("--rate 0.35", "for how many events");
    row("--rate 0.35 --per run --events 2", "how many runs");
    row("--rate 0.35 --per lap --events 2", "nothing that is counted");
    row("--events 6", "how often something is used");
    row("--rate 1 --failures 2 --in-events 3 --events 6", "not both");
    row("--failures 2 --events 6", "in how much");
    row("--failures 2 --in-events 0 --events 6", "no history");
    row("--failures 1.5 --in-events 3 --events 6", "no whole number");
    row("--rate 1000000 --events 6", "more than anybody");
    row("--lasts 0 --events 6", "no interval");
    row("--lasts 5 --used 1,2 --events 6", "more than the 1");
    row("--crash 2", "for how many to carry");
    row("EG-10-S", "Add --shop");
    row("--kit nothing-there.csv", "cannot be read");
}

void TrailerTest::wrongWordsAreAnswered()
{
    QFETCH(QString, words);
    QFETCH(QString, answer);
    Words all = {"carry"};
    for (const QString &word : words.split(QChar::fromLatin1(' ')))
        all.push_back(word.toStdString());
    const Ran ran = runFlarestock(all);
    QVERIFY2(ran.refusesInOneLine(), ran.err.c_str());
    QVERIFY2(ran.err.find(answer.toStdString()) != std::string::npos, ran.err.c_str());
}

QTEST_GUILESS_MAIN(TrailerTest)
#include "tst_trailer_is_loaded_by_what_is_kept.moc"
