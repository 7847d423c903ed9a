// SPDX-License-Identifier: MIT
//
// From a promise to a build that is done, as a shell runs it: every step changes what it says and
// nothing else, a repeated step changes nothing, a step taken back leaves the stock as it was.
// The demo shop is invented; what is checked are laws, not its figures.

#include "tests/command/demo_copy.h"

#include <QTest>

#include <set>

using namespace flarestock::tests;

namespace {

constexpr const char *Id = "0190b3c4-5d6e-7f80-9123-456789abcdef";
constexpr const char *Build = "coupe-fuel";

QJsonArray arrayOf(const Ran &ran, const char *key)
{
    return ran.json().value(QString::fromLatin1(key)).toArray();
}

std::string textOf(const QJsonValue &object, const char *key)
{
    return object.toObject().value(QString::fromLatin1(key)).toString().toStdString();
}

} // namespace

class HandedOut : public QObject {
    Q_OBJECT

private:
    DemoCopy m_demo;
    std::string m_shop;

    [[nodiscard]] Ran run(Words words) const
    {
        words.insert(words.end(), {"--shop", m_shop});
        return runFlarestock(words);
    }
    [[nodiscard]] Ran json(Words words) const
    {
        words.emplace_back("--json");
        return run(words);
    }
    [[nodiscard]] QJsonArray stock() const { return arrayOf(json({"stock"}), "stock"); }
    [[nodiscard]] std::string stockOf(const char *part, const char *key) const
    {
        std::string said;
        for (const auto &line : stock()) {
            if (textOf(line, "part") == part)
                said += textOf(line, "place") + "=" + textOf(line, key) + " ";
        }
        return said;
    }
    [[nodiscard]] bool isWhole() const { return runFlarestock({"verify", m_shop}).status == 0; }
    void finishTest(const char *build) const
    {
        QCOMPARE(run({"leak-test", build, "--medium", "air", "--pressure", "60 psi", "--held",
                      "10 min", "--result", "passed", "--who", "fitter"})
                     .status,
                 0);
    }

private Q_SLOTS:
    void init() { m_shop = m_demo.copied(); }
    void aPromiseTakesFromWhatIsFreeToOthers();
    void theListGoesInTheOrderOfTheBins();
    void theBillStaysAsItIsWhileItsPartsGoToTheCar();
    void whatIsTakenBackLeavesTheStockAsItWas();
    void aRepeatedStepChangesNothing();
    void whatIsPromisedIsNotTakenUnasked();
    void aBuildIsDoneOnlyWithItsLeakTest();
    void piecesThatCameAfterTheTestWantAnother();
    void brakesNeedASecondName();
    void aCountFindsTheDifference();
    void whatCameInCostsWhatWasPaid();
    void cutsTakeTheirKerfAndLeaveNoUselessRest();
    void aLotIsFoundWhereverItWent();
};

void HandedOut::aPromiseTakesFromWhatIsFreeToOthers()
{
    const auto before = stockOf("AD-8-8", "free");
    const auto promised = json({"reserve", Build, "AD-8-8", "2"});
    QVERIFY2(promised.status == 0, promised.err.c_str());
    QCOMPARE(stockOf("AD-8-8", "onHand"), before); // All of it was free.
    QCOMPARE(stockOf("AD-8-8", "promised"), std::string("A3=2 trailer-2=0 "));
    QCOMPARE(stockOf("AD-8-8", "free"), std::string("A3=2 trailer-2=1 "));
    const auto tooMuch = run({"reserve", "roadster-fuel", "AD-8-8", "4"});
    QVERIFY2(tooMuch.refusesInOneLine(), tooMuch.err.c_str());
    QCOMPARE(run({"reserve", Build, "--let-go"}).status, 0);
    QCOMPARE(stockOf("AD-8-8", "free"), before);
    QVERIFY(isWhole());
}

void HandedOut::theListGoesInTheOrderOfTheBins()
{
    const auto promised = arrayOf(json({"reserve", Build}), "promises");
    QVERIFY(promised.size() > 5);
    const auto listed = json({"issue", Build, "--list"});
    const auto picks = arrayOf(listed, "picks");
    QVERIFY(picks.size() >= promised.size());
    QVERIFY(arrayOf(listed, "lacking").isEmpty());
    std::vector<std::string> places;
    for (const auto &pick : picks)
        places.push_back(textOf(pick, "place"));
    std::vector<std::string>
        bins; // The demo's bins stand in this order, then shelves, then trailer.
    for (const std::string &place : places) {
        if (place.size() == 2)
            bins.push_back(place);
    }
    QVERIFY(std::is_sorted(bins.begin(), bins.end()));
    QVERIFY(bins.size() > 3);
    QVERIFY(std::equal(bins.begin(), bins.end(), places.begin()));
}

void HandedOut::theBillStaysAsItIsWhileItsPartsGoToTheCar()
{
    const auto before = json({"bill", "--build", Build});
    QCOMPARE(before.status, 0);
    QCOMPARE(run({"reserve", Build}).status, 0);
    const auto reserved = json({"bill", "--build", Build});
    QCOMPARE(reserved.out, before.out);
    QCOMPARE(run({"issue", Build}).status, 0);
    QVERIFY(arrayOf(json({"issue", Build, "--list"}), "picks").isEmpty());
    const auto issued = arrayOf(json({"bill", "--build", Build}), "lines");
    const auto lines = arrayOf(before, "lines");
    QCOMPARE(issued.size(), lines.size());
    for (qsizetype i = 0; i < lines.size(); ++i) {
        for (const char *key : {"part", "need", "free", "short"})
            QCOMPARE(textOf(issued[i], key), textOf(lines[i], key));
    }
    QVERIFY(isWhole());
}

void HandedOut::whatIsTakenBackLeavesTheStockAsItWas()
{
    QCOMPARE(run({"reserve", Build}).status, 0);
    const auto before = stock();
    const auto issued = json({"issue", Build, "--id", Id});
    QCOMPARE(textOf(issued.json(), "movement"), std::string(Id));
    QVERIFY(stock() != before);
    const auto back = run({"take-back", Id, "--why", "the wrong car"});
    QVERIFY2(back.status == 0, back.err.c_str());
    QCOMPARE(stock(), before);
    QVERIFY(run({"take-back", Id}).refusesInOneLine());
    QVERIFY(isWhole());
}

void HandedOut::aRepeatedStepChangesNothing()
{
    const Words receive{"receive", "AD-8-8", "5",    "--from", "supplier-TCF", "--to", "A3",
                        "--cost",  "30.00",  "--id", Id};
    QCOMPARE(json(receive).json().value(QStringLiteral("already")).toBool(true), false);
    const auto once = stock();
    QCOMPARE(json(receive).json().value(QStringLiteral("already")).toBool(false), true);
    QCOMPARE(stock(), once);
    const Words count{
        "count", "AD-8-8", "8", "--place", "A3", "--id", "0190b3c4-5d6e-7f80-9123-456789abcd00"};
    const auto counted = json(count).json();
    const auto again = json(count).json();
    QCOMPARE(textOf(again, "expected"), textOf(counted, "expected"));
    QCOMPARE(again.value(QStringLiteral("already")).toBool(), true);
    QCOMPARE(stockOf("AD-8-8", "onHand"), std::string("A3=8 trailer-2=1 "));
    QVERIFY(isWhole());
}

void HandedOut::whatIsPromisedIsNotTakenUnasked()
{
    QCOMPARE(run({"reserve", Build, "AD-8-8", "4"}).status, 0);
    const Words scrap{"scrap", "AD-8-8", "2", "--from", "A3", "--why", "dropped"};
    const auto refused = run(scrap);
    QVERIFY(refused.refusesInOneLine());
    QVERIFY(refused.err.find(Build) != std::string::npos);
    Words despite = scrap;
    despite.emplace_back("--despite-promise");
    QCOMPARE(run(despite).status, 0);
    QCOMPARE(stockOf("AD-8-8", "onHand"), std::string("A3=2 trailer-2=1 "));
    QVERIFY(run({"scrap", "AD-8-8", "1", "--from", "A3"}).refusesInOneLine()); // No reason.
    QVERIFY(isWhole());
}

void HandedOut::aBuildIsDoneOnlyWithItsLeakTest()
{
    QVERIFY(run({"build-done", Build}).refusesInOneLine());
    QCOMPARE(run({"leak-test", Build, "--medium", "air", "--pressure", "60 psi", "--held", "10 min",
                  "--result", "failed", "--who", "fitter"})
                 .status,
             0);
    QVERIFY(run({"build-done", Build}).refusesInOneLine());
    finishTest(Build);
    QCOMPARE(run({"reserve", Build, "AD-8-8", "1"}).status, 0);
    const Ran done = run({"build-done", Build}); // The shop decides, and hears what against.
    QCOMPARE(done.status, 0);
    QVERIFY2(done.out.starts_with("coupe-fuel is done, though 1 finding stops it, "),
             done.out.c_str());
    QVERIFY2(done.out.find(", 1 is to be picked yet, record ") != std::string::npos,
             done.out.c_str());
    QCOMPARE(stockOf("AD-8-8", "promised"), std::string("A3=0 trailer-2=0 ")); // Free again.
    QCOMPARE(run({"leak-test", Build, "--medium", "air", "--pressure", "60", "--held", "10 min",
                  "--result", "passed", "--who", "fitter"})
                 .status,
             2); // A pressure without its unit.
    for (const auto &[pressure, held] : std::vector<std::pair<std::string, std::string>>{
             {"0 psi", "10 min"}, {"-5 psi", "10 min"}, {"60 psi", "a while"}, {"60 psi", "0 s"}})
        QVERIFY(run({"leak-test", Build, "--medium", "air", "--pressure", pressure, "--held", held,
                     "--result", "passed", "--who", "fitter"})
                    .refusesInOneLine());
}

void HandedOut::piecesThatCameAfterTheTestWantAnother()
{
    finishTest(Build);
    QCOMPARE(run({"build-done", Build}).status, 0);
    QCOMPARE(run({"reserve", Build, "AD-8-8", "1"}).status, 0);
    QCOMPARE(run({"issue", Build}).status, 0);
    QVERIFY(run({"build-done", Build}).refusesInOneLine());
    finishTest(Build);
    QCOMPARE(run({"build-done", Build}).status, 0);
    QCOMPARE(run({"give-back", Build, "AD-8-8", "1", "--to", "A3"}).status, 0);
    QVERIFY(run({"build-done", Build}).refusesInOneLine());
    finishTest(Build);
    QCOMPARE(run({"build-done", Build, "--open"}).status, 0);
    QCOMPARE(run({"build-done", Build}).status, 0); // The test that stands is of these pieces.
    QVERIFY(isWhole());
}

void HandedOut::brakesNeedASecondName()
{
    const char *brakes = "coupe-brakes";
    finishTest(brakes);
    QVERIFY(run({"build-done", brakes}).refusesInOneLine());
    QCOMPARE(run({"leak-test", brakes, "--medium", "brake fluid", "--pressure", "80 bar", "--held",
                  "5 min", "--result", "passed", "--who", "fitter", "--second", "foreman"})
                 .status,
             0);
    QCOMPARE(run({"build-done", brakes}).status, 0);
}

void HandedOut::aCountFindsTheDifference()
{
    const auto less = json({"count", "AD-8-8", "3", "--place", "A3"}).json();
    QCOMPARE(textOf(less, "expected"), std::string("4"));
    QCOMPARE(textOf(less, "difference"), std::string("-1"));
    const auto same = json({"count", "AD-8-8", "3", "--place", "A3"}).json();
    QVERIFY(same.value(QStringLiteral("movement")).isNull());
    const auto more = json({"count", "AD-8-8", "6", "--place", "A3"}).json();
    QCOMPARE(textOf(more, "difference"), std::string("3"));
    QCOMPARE(stockOf("AD-8-8", "onHand"), std::string("A3=6 trailer-2=1 "));
    QVERIFY(run({"count", "AD-8-8", "-1", "--place", "A3"}).status == 2);
    QVERIFY(run({"count", "AD-8-8", "1", "--place", "car-2"}).refusesInOneLine());
    QVERIFY(isWhole());
}

void HandedOut::whatCameInCostsWhatWasPaid()
{
    QCOMPARE(
        run({"receive", "UN-6", "3", "--from", "supplier-TCF", "--to", "K8", "--cost", "10.00"})
            .status,
        0);
    // Three for 10.00: a third of it, half of what is left (a tie, to the even digit), and the
    // rest.
    std::vector<std::string> values;
    for (int i = 0; i < 3; ++i) {
        const auto moved = json({"move", "UN-6", "1", "--from", "K8", "--to", "car-2"});
        QVERIFY2(moved.status == 0, moved.err.c_str());
    }
    for (const auto &one : arrayOf(json({"history", "UN-6", "--place", "K8"}), "movements")) {
        if (textOf(one, "to") == "car-2")
            values.push_back(textOf(one, "value"));
    }
    QCOMPARE(values, (std::vector<std::string>{"3.333333", "3.333334", "3.333333"}));
    QVERIFY(run({"receive", "UN-6", "3", "--from", "A1", "--to", "K8", "--cost", "1"})
                .refusesInOneLine());
}

void HandedOut::cutsTakeTheirKerfAndLeaveNoUselessRest()
{
    QCOMPARE(run({"receive", "GR-8", "20 in", "--from", "supplier-NHT", "--to", "SH-4", "--cost",
                  "8.00", "--lot", "END-1"})
                 .status,
             0);
    // 7 in and a kerf of 1/16 in, twice: 5.875 in are left, enough; then 3 in: 2.8125 in are not.
    const auto cut = json({"cut", "GR-8", "7 in", "7 in", "--to", "car-1", "--lot", "END-1"});
    QVERIFY2(cut.status == 0, cut.err.c_str());
    const auto held = [this] {
        std::string said;
        for (const auto &line : stock())
            said += textOf(line, "lot") == "END-1" ? textOf(line, "onHand") : "";
        return said;
    };
    QCOMPARE(held(), std::string("5.875"));
    QCOMPARE(run({"cut", "GR-8", "3 in", "--to", "car-1", "--lot", "END-1"}).status, 0);
    QCOMPARE(held(), std::string());
    QVERIFY(run({"cut", "GR-8", "900 ft", "--to", "car-1"}).refusesInOneLine());
    QVERIFY(run({"cut", "AD-8-8", "3 in", "--to", "car-1"}).refusesInOneLine());
    QVERIFY(isWhole());
}

void HandedOut::aLotIsFoundWhereverItWent()
{
    QCOMPARE(run({"receive", "EP-40", "4", "--from", "supplier-OXS", "--to", "A1", "--cost", "16",
                  "--lot", "4417", "--use-by", "2026-01-31"})
                 .status,
             0);
    QCOMPARE(run({"move", "EP-40", "1", "--from", "A1", "--to", "car-2", "--lot", "4417"}).status,
             0);
    const auto history = json({"history", "--lot", "4417"});
    QCOMPARE(arrayOf(history, "movements").size(), 2);
    std::set<std::string> now;
    for (const auto &one : arrayOf(history, "now"))
        now.insert(textOf(one, "place") + " " + textOf(one, "quantity"));
    QCOMPARE(now, (std::set<std::string>{"A1 3", "car-2 1"}));
    // What is said of the lot stands beside the movement, whose id it is that is said.
    const auto dated = json({"receive", "EP-40", "2", "--from", "supplier-OXS", "--to", "A1",
                             "--cost", "8", "--lot", "4419", "--use-by", "2027-01-31"});
    QCOMPARE(run({"take-back", textOf(dated.json(), "movement")}).status, 0);
    QVERIFY(run({"receive", "EP-40", "4", "--from", "supplier-OXS", "--to", "A1", "--cost", "16",
                 "--lot", "4418", "--use-by", "2026-02-30"})
                .refusesInOneLine());
}

QTEST_GUILESS_MAIN(HandedOut)
#include "tst_stock_is_handed_out_and_taken_back.moc"
