// SPDX-License-Identifier: MIT
//
// What is promised to a build is free to no other; what it gets counts against its promise; nobody
// is promised what is not there. Common practice of a stockroom, no source.

#include "tests/journal/few_places.h"

#include <QTest>

#include <random>

using namespace flarestock;
using namespace flarestock::tests;

namespace {

Promise promised(const std::string &build, std::int64_t quantity)
{
    Promise promise;
    promise.id = idNumber(900);
    promise.build = build;
    promise.part = "AD-8-10";
    promise.quantity = quantity;
    return promise;
}

Movement issued(std::uint32_t number, std::int64_t quantity, const std::string &build)
{
    Movement movement = moved(number, quantity, "A1", "car-1");
    movement.deed = Deed::Issue;
    movement.document = build;
    return movement;
}

Ledger tenInBin()
{
    Ledger ledger(fewPlaces());
    Movement opening = moved(1, 10, "opening", "A1", 100'000'000);
    if (carriedOut(ledger, opening))
        qFatal("the opening was refused");
    return ledger;
}

} // namespace

class PromisesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void nobodyIsPromisedWhatIsNotFree();
    void whatIsIssuedCountsAgainstThePromise();
    void whatIsGivenBackIsOutstandingAgain();
    void aMovementThatTakesPromisedStockIsKnown();
    void onlyNewAndGoodPiecesArePromised();
    void theirSumNeverExceedsWhatIsThere();
};

void PromisesTest::nobodyIsPromisedWhatIsNotFree()
{
    Ledger ledger = tenInBin();
    QVERIFY(!ledger.apply(promised("coupe", 7)));
    QVERIFY(ledger.apply(promised("roadster", 4)) == Refusal::NotFree);
    QVERIFY(!ledger.apply(promised("roadster", 3)));
    QVERIFY(ledger.apply(promised("roadster", -4)) == Refusal::NotFree); // It has three.
    QVERIFY(!ledger.apply(promised("coupe", -2)));
    QVERIFY(!ledger.apply(promised("roadster", 2)));
    QVERIFY(ledger.apply(promised("", 1)) == Refusal::NoBuild);
    QVERIFY(ledger.apply(promised("coupe", 0)) == Refusal::NotMoreThanZero);
}

void PromisesTest::whatIsIssuedCountsAgainstThePromise()
{
    Ledger ledger = tenInBin();
    QVERIFY(!ledger.apply(promised("coupe", 6)));
    Movement four = issued(2, 4, "coupe");
    QVERIFY(!carriedOut(ledger, four));
    QCOMPARE(ledger.claim({"AD-8-10", "coupe"}).outstanding(), 2);
    QCOMPARE(ledger.usable("AD-8-10"), 6);
    QVERIFY(ledger.apply(promised("roadster", 5)) == Refusal::NotFree);
    QVERIFY(!ledger.apply(promised("roadster", 4)));
    Movement none = issued(3, 1, "");
    QVERIFY(carriedOut(ledger, none) == Refusal::NoBuild);
}

void PromisesTest::whatIsGivenBackIsOutstandingAgain()
{
    Ledger ledger = tenInBin();
    QVERIFY(!ledger.apply(promised("coupe", 3)));
    Movement out = issued(2, 3, "coupe");
    QVERIFY(!carriedOut(ledger, out));
    Movement back = moved(3, 1, "car-1", "A1");
    back.deed = Deed::Return;
    back.document = "coupe";
    QVERIFY(!carriedOut(ledger, back));
    QCOMPARE(ledger.claim({"AD-8-10", "coupe"}).issued, 2);
    QCOMPARE(ledger.claim({"AD-8-10", "coupe"}).outstanding(), 1);
}

void PromisesTest::aMovementThatTakesPromisedStockIsKnown()
{
    Ledger ledger = tenInBin();
    QVERIFY(!ledger.apply(promised("coupe", 8)));
    QCOMPARE(ledger.takesPromised(moved(2, 2, "A1", "scrap"), {}), 0);
    QCOMPARE(ledger.takesPromised(moved(2, 5, "A1", "scrap"), {}), 3);
    QCOMPARE(ledger.takesPromised(moved(2, 10, "A1", "trailer-2"), {}), 0); // It stays in the shop.
    QCOMPARE(ledger.takesPromised(issued(2, 8, "coupe"), {}), 0);           // Its own.
    QCOMPARE(ledger.takesPromised(issued(2, 8, "roadster"), {}), 6);
    Movement judged = moved(2, 10, "A1", "trailer-2");
    judged.newCondition = PieceCondition::ToBeChecked; // Not free any more.
    QCOMPARE(ledger.takesPromised(judged, {}), 8);
}

void PromisesTest::onlyNewAndGoodPiecesArePromised()
{
    Ledger ledger = tenInBin();
    Movement judged = moved(2, 4, "A1", "A1");
    judged.deed = Deed::Judge;
    judged.newCondition = PieceCondition::ToBeChecked;
    QVERIFY(!carriedOut(ledger, judged));
    QCOMPARE(ledger.usable("AD-8-10"), 6);
    QVERIFY(ledger.apply(promised("coupe", 7)) == Refusal::NotFree);
    QCOMPARE(ledger.balance({"AD-8-10", "A1", "", PieceCondition::ToBeChecked}).value, 40'000'000);
    Movement nothing = moved(3, 1, "A1", "A1");
    QVERIFY(carriedOut(ledger, nothing) == Refusal::SamePlace);
}

void PromisesTest::theirSumNeverExceedsWhatIsThere()
{
    std::mt19937 random(static_cast<unsigned>(qEnvironmentVariableIntValue("FLARESTOCK_SEED") + 3));
    Ledger ledger = tenInBin();
    int refused = 0;
    for (std::uint32_t number = 2; number < 20'000; ++number) {
        const std::string build = random() % 2 ? "coupe" : "roadster";
        const auto quantity = static_cast<std::int64_t>(random() % 4 + 1);
        bool no = false;
        if (random() % 3 == 0) {
            no = ledger.apply(promised(build, random() % 2 ? quantity : -quantity)).has_value();
        } else {
            Movement movement = issued(number, quantity, build);
            if (random() % 2) {
                std::swap(movement.from, movement.to);
                movement.deed = Deed::Return;
            }
            // As a shop file does where promises stay.
            no = ledger.takesPromised(movement, {}) > 0 ||
                 (movement.deed == Deed::Return &&
                  quantity > ledger.claim({"AD-8-10", build}).issued) ||
                 carriedOut(ledger, movement).has_value();
        }
        refused += no ? 1 : 0;
        QVERIFY(ledger.outstanding("AD-8-10") <= ledger.usable("AD-8-10"));
        QVERIFY(ledger.outstanding("AD-8-10", "coupe") <= ledger.outstanding("AD-8-10"));
    }
    QVERIFY(refused > 1'000 && refused < 19'000);
}

QTEST_APPLESS_MAIN(PromisesTest)
#include "tst_promises_keep_stock_for_their_build.moc"
