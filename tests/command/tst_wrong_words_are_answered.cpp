// SPDX-License-Identifier: MIT
//
// What is typed wrong is refused in one line that names it and says what to do; counts are said as
// people say them. The demo shop is invented.

#include "tests/command/changed_shop.h"

#include <QDateTime>
#include <QTest>

using namespace flarestock::tests;

class WrongWords : public QObject {
    Q_OBJECT

private:
    ChangedShop m_shop;
    [[nodiscard]] Ran run(const Words &words) const { return m_shop.run(words); }

private Q_SLOTS:
    void initTestCase() { m_shop.renew(); }
    void itIsNamedAndSaidWhatToDo_data();
    void itIsNamedAndSaidWhatToDo();
    void whatIsStillSensibleIsTaken();
    void oneIsNoPlural();
    void aBuildIsDoneOnce();
    void aShopThatMayNotBeWrittenIsSaid();
};

void WrongWords::itIsNamedAndSaidWhatToDo_data()
{
    QTest::addColumn<QStringList>("words");
    QTest::addColumn<QString>("said");
    const auto row = [](const char *words, const char *said) {
        QTest::newRow(words) << QString::fromUtf8(words).split(u'|') << QString::fromUtf8(said);
    };
    row("bill|--build|coupe-feul", "coupe-feul: is no build of this shop. Perhaps coupe-fuel is");
    row("move|AD-8-8|1|--from|A3|--to|everywhere", "Look them up: flarestock place.");
    row("history|--place|car-9", "car-9: is no place of this shop. Perhaps car-1 is meant.");
    row("history|--lot|SN 9999", "SN 9999: is no lot or serial of this shop. Look up how");
    row("history|--build|coupe-feul", "Perhaps coupe-fuel is meant.");
    row("cut|GR-8|7 in|--to|supplier-TCF", "supplier-TCF: takes no cut lengths. Name a car, shelf");
    row("cut|GR-8|7 in|--to|car-1|--lot|END-9", "GR-8: has no piece END-9 in stock. Look at what");
    row("receive|AD-8-8|2|--from|supplier-TCF|--to|A3|--cost|9|--lot|L1|--for-car|A3",
        "A3: is no car. Name the car");
    row("receive|AD-8-8|2|--from|supplier-TCF|--to|A3|--cost|9|--lot|L1|--for-car|car-8",
        "car-8: is no place of this shop. Perhaps car-1 is meant.");
    row("open|EP-460|--from|H5|--cost|BK-460=9", "BK-460: does not come out of this box");
    row("make-up|PT-6|9 in|--start|HE-6|--end|HE-6|--tag|L-1|--to|SH-4|--proof|passed",
        "the proof test: lacks its pressure. Say what it was held at: --proof-pressure");
    row("leak-test|coupe-fuel|--medium| |--pressure|60 psi|--held|9 min|--result|passed|--who|a",
        "a leak test: does not say what it was made with. Write it: air");
    row("give-back|coupe-fuel|AD-8-10|1|--to|A3", "AD-8-10: was not issued to coupe-fuel.");
    row("instead|coupe-fuel|AD-8-10|AD-8-8", "AD-8-10: was not issued to coupe-fuel.");
    row("open-joint|coupe-fuel|pomp inlet", "pomp inlet: is no joint of this build. Perhaps pump ");
    row("keep|AD-8-8|--place|car-1|--min|1", "car-1: is not where stock lies. Name a shelf, bin");
    row("count|AD-8-8|1|--place|car-1", "car-1: is not where stock lies. Name a shelf, bin");
    row("level|SL-C|--place|car-1|--is|low", "car-1: is not where stock lies. Name a shelf, bin");
    row("level|AD-6-6|--place|A2|--is|plenty", "AD-6-6: is counted: 3 on hand. Count it");
    row("cut|GR-8|7 in|--to|car-1|--kerf|40 in",
        "--kerf 40 in: is more than 1/2 in, and no blade takes so much. Write what the blade");
    row("cut|GR-8|7 in|--to|car-1|--kerf=-1 in", "--kerf -1 in: is below zero. Write what");
    row("cut|GR-8|7 in|--to|car-1|--kerf|some", "--kerf: \"some\" is not a number. Write digits");
    row("cut|GR-8|7 in|--to|car-1|--least|some", "--least: \"some\" is not a number.");
    row("cut|GR-8|some|--to|car-1", "the length: \"some\" is not a number.");
    row("cut|GR-8|0|--to|car-1", "the length 0: is nothing to cut. Write one above zero.");
    row("make-up|PT-6|9 in|--start|HE-6|--end|HE-6|--tag|L-1|--to|SH-4|--kerf|5/8 in",
        "--kerf 5/8 in: is more than 1/2 in");
    row("receive|AD-8-8|0|--from|supplier-TCF|--to|A3|--cost|9",
        "the quantity 0: is nothing that comes in, so that its cost would lie nowhere. Write how");
    row("receive|AD-8-8|some|--from|supplier-TCF|--to|A3|--cost|9",
        "the quantity: \"some\" is not a number.");
    row("receive|AD-8-8|1.5|--from|supplier-TCF|--to|A3|--cost|9",
        "the quantity 1.5 each: is not a whole number of pieces.");
    row("receive|AD-8-8|1|--from|supplier-TCF|--to|A3|--cost|some",
        "--cost: \"some\" is not a number.");
    row("receive|AD-8-8|1|--from|supplier-TCF|--to|A3|--cost=-2", "--cost -2: is below zero, too");
    row("open|EP-460|--from|H5|--cost|BK-460=some", "--cost BK-460: \"some\" is not a number.");
    row("keep|AD-8-8|--place|A3|--min|some", "--min: \"some\" is not a number.");
    row("keep|AD-8-8|--place|A3|--min|1|--max|some", "--max: \"some\" is not a number.");
    row("move|AD-8-8|1|--from|A3|--to|car-1|--until|2020-01-01",
        "--until 2020-01-01: is past, so that it would be overdue at once. Write the day by");
    row("move|AD-8-8|1|--from|A3|--to|car-1|--until|soon", "--until soon: is no day. Write it as");
    row("place|A\t9|--kind|bin", "place \"A 9\": has a tab or another control character in its");
    row("place|Z9|--kind|bin|--title|two\nlines", "place \"two lines\": has a tab or another");
}

void WrongWords::itIsNamedAndSaidWhatToDo()
{
    QFETCH(QStringList, words);
    QFETCH(QString, said);
    Words typed;
    for (const QString &word : words)
        typed.push_back(word.toStdString());
    const auto before = m_shop.stock();
    const Ran ran = run(typed);
    QVERIFY2(ran.refusesInOneLine(), (ran.out + ran.err).c_str());
    QVERIFY2(QString::fromStdString(ran.err).contains(said), ran.err.c_str());
    QCOMPARE(m_shop.stock(), before);
}

/// The last that is taken beside what is refused above. It is written into a shop of its own.
void WrongWords::whatIsStillSensibleIsTaken()
{
    ChangedShop shop;
    shop.renew();
    const Ran cut = shop.run({"cut", "GR-8", "7 in", "--to", "car-1", "--kerf", "1/2 in"});
    QVERIFY2(cut.status == 0 && cut.out.find("to scrap 1/2 in off") != std::string::npos,
             (cut.out + cut.err).c_str());
    QCOMPARE(shop.run({"place", "guest", "--kind", "borrower", "--title", "Gäste"}).status, 0);
    const auto today = QDateTime::currentDateTimeUtc().date().toString(Qt::ISODate).toStdString();
    const Words lent = {"move",
                        "AD-8-8",
                        "1",
                        "--from",
                        "A3",
                        "--to",
                        "guest",
                        "--until",
                        today,
                        "--id",
                        "01890000-0000-7000-8000-000000000001"};
    const Ran moved = shop.run(lent);
    QVERIFY2(moved.status == 0, moved.err.c_str());
    QVERIFY(shop.run(lent).out.starts_with("was moved already"));
}

void WrongWords::oneIsNoPlural()
{
    const auto last = [this](const Words &words) {
        const std::string out = run(words).out;
        const auto line = out.rfind('\n', out.size() - 2);
        return out.substr(line == std::string::npos ? 0 : line + 1);
    };
    QCOMPARE(last({"stock", "--find", "GR-8"}), std::string("1 line\n"));
    QCOMPARE(last({"stock", "--find", "AD-8-8"}), std::string("2 lines\n"));
    QCOMPARE(last({"stock", "--find", "nothing of this"}), std::string("0 lines\n"));
    QCOMPARE(last({"history", "GR-8"}), std::string("1 movement\n"));
    QVERIFY(run({"keep", "AD-8-8", "--place", "A3", "--min", "2"})
                .out.starts_with("AD-8-8 is kept at A3: 2, record "));
}

void WrongWords::aBuildIsDoneOnce()
{
    QCOMPARE(run({"build-done", "coupe-fuel", "--open"}).out,
             std::string("coupe-fuel is open already\n"));
    QCOMPARE(run({"leak-test", "coupe-fuel", "--medium", "air", "--pressure", "60 psi", "--held",
                  "10 min", "--result", "passed", "--who", "fitter"})
                 .status,
             0);
    QVERIFY(run({"build-done", "coupe-fuel"}).out.starts_with("coupe-fuel is done, though "));
    QCOMPARE(run({"build-done", "coupe-fuel"}).out, std::string("coupe-fuel is done already\n"));
    QVERIFY(
        run({"build-done", "coupe-fuel", "--open"}).out.starts_with("coupe-fuel is open again"));
}

void WrongWords::aShopThatMayNotBeWrittenIsSaid()
{
    QVERIFY(runFlarestock({"count", "AD-8-8", "1", "--place", "A3", "--shop", "/nowhere/at.all"})
                .refusesInOneLine());
}

QTEST_GUILESS_MAIN(WrongWords)
#include "tst_wrong_words_are_answered.moc"
