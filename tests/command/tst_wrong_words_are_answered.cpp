// SPDX-License-Identifier: MIT
//
// What is typed wrong is refused in one line that names it and says what to do; counts are said as
// people say them. The demo shop is invented.

#include "tests/command/changed_shop.h"

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
    QVERIFY(run({"build-done", "coupe-fuel"}).out.starts_with("coupe-fuel is done, record "));
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
