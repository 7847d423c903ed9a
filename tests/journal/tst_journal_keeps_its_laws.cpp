// SPDX-License-Identifier: MIT
//
// Laws of the journal over random histories (RapidCheck prints its seed; another is given by
// RC_PARAMS="seed=…"): what leaves one place comes to another, what is taken back is as it was, the
// value of an issue is its share and the last unit takes the rest.

#include "tests/journal/few_places.h"

#include <rapidcheck.h>

#include <QTest>

#include <numeric>

using namespace flarestock;
using namespace flarestock::tests;

namespace {

__extension__ using Wide = __int128;

/// A movement of a small world, sensible more often than not.
rc::Gen<Movement> anyMovement()
{
    const auto text = [](std::vector<std::string> texts) {
        return rc::gen::elementOf(std::move(texts));
    };
    return rc::gen::map(
        rc::gen::tuple(rc::gen::inRange<std::int64_t>(1, 9),
                       rc::gen::inRange<std::int64_t>(0, 100'000'000),
                       text({"supplier", "opening", "A1", "A1", "trailer-2", "SH-1", "car-1"}),
                       text({"A1", "A1", "trailer-2", "SH-1", "car-1", "scrap", "supplier"}),
                       text({"", "", "H-1"}),
                       rc::gen::element(PieceCondition::New, PieceCondition::New,
                                        PieceCondition::ToBeChecked)),
        [](const auto &drawn) {
            Movement movement =
                moved(0, std::get<0>(drawn), std::get<2>(drawn), std::get<3>(drawn));
            movement.value = std::get<1>(drawn);
            movement.lot = std::get<4>(drawn);
            movement.condition = std::get<5>(drawn);
            return movement;
        });
}

/// A ledger behind a random history; `journal` holds what was not refused.
Ledger anyLedger(std::vector<Movement> &journal)
{
    Ledger ledger(fewPlaces());
    const auto history = *rc::gen::container<std::vector<Movement>>(anyMovement());
    for (Movement movement : history) {
        movement.id = idNumber(static_cast<std::uint32_t>(journal.size() + 1));
        if (!carriedOut(ledger, movement))
            journal.push_back(movement);
    }
    return ledger;
}

/// Quantity and value over all places, by part, lot and condition; those that are nothing left out.
Balances sums(const Ledger &ledger)
{
    Balances all;
    for (const auto &[key, held] : ledger.balances()) {
        Balance &sum = all[{key.part, "", key.lot, key.condition}];
        sum.quantity += held.quantity;
        sum.value += held.value;
    }
    std::erase_if(all, [](const auto &entry) { return entry.second.isNothing(); });
    return all;
}

template <class Law>
void holds(const char *law, const Law &checked)
{
    QVERIFY2(rc::check(law, checked), law);
}

} // namespace

class JournalKeepsItsLaws : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyMovementsPostingsSumToZero();
    void refusedMovementsChangeNothing();
    void theOrderOfTwoPartsDoesNotMatter();
    void takingBackRestoresQuantityAndValue();
    void takingBackLaterRestoresTheQuantity();
    void anIssueTakesItsShareHalfEven();
    void theLastUnitTakesTheRest();
    void stockNeverHasValueWithoutPieces();
    void aFurtherFoldNeedsOnlyWhatItTouches();
};

void JournalKeepsItsLaws::everyMovementsPostingsSumToZero()
{
    int kept = 0;
    holds("over all places quantity and value are zero", [&kept] {
        std::vector<Movement> journal;
        const Ledger ledger = anyLedger(journal);
        RC_ASSERT(sums(ledger).empty());
        for (const auto &[key, held] : ledger.balances())
            RC_ASSERT(!held.isNothing());
        kept += static_cast<int>(journal.size());
    });
    QVERIFY(kept > 500); // The law was asked of something.
}

void JournalKeepsItsLaws::refusedMovementsChangeNothing()
{
    int refusals = 0;
    holds("a refused movement changes nothing, and asking before says the same", [&refusals] {
        std::vector<Movement> journal;
        Ledger ledger = anyLedger(journal);
        Movement movement = *anyMovement();
        movement.id = idNumber(9999);
        movement.value = ledger.valueOf(movement);
        const Balances before = ledger.balances();
        const auto asked = ledger.refusal(movement);
        RC_ASSERT(ledger.balances() == before);
        RC_ASSERT(ledger.apply(movement) == asked);
        RC_ASSERT(asked.has_value() == (ledger.balances() == before));
        refusals += asked ? 1 : 0;
    });
    QVERIFY(refusals > 5);
}

void JournalKeepsItsLaws::theOrderOfTwoPartsDoesNotMatter()
{
    holds("movements of one part never touch another", [] {
        std::vector<Movement> adapters;
        const Ledger first = anyLedger(adapters);
        std::vector<Movement> hoses;
        const Ledger second = anyLedger(hoses);
        for (Movement &hose : hoses)
            hose.part = "HS-8";
        Ledger both(fewPlaces());
        for (std::size_t i = 0; i < std::max(adapters.size(), hoses.size()); ++i)
            for (const auto *journal : {&adapters, &hoses})
                if (i < journal->size())
                    RC_ASSERT(!both.apply((*journal)[i]));
        RC_ASSERT(both.balances().size() == first.balances().size() + second.balances().size());
        for (const auto &[key, held] : first.balances())
            RC_ASSERT(both.balance(key) == held);
        for (const auto &[key, held] : second.balances())
            RC_ASSERT(both.balance({"HS-8", key.place, key.lot, key.condition}) == held);
    });
}

void JournalKeepsItsLaws::takingBackRestoresQuantityAndValue()
{
    int taken = 0;
    holds("a movement that is taken back at once leaves all as it was", [&taken] {
        std::vector<Movement> journal;
        Ledger ledger = anyLedger(journal);
        const Balances before = ledger.balances();
        Movement movement = *anyMovement();
        movement.id = idNumber(5000);
        if (carriedOut(ledger, movement))
            return;
        Movement back = takenBack(movement, 5001);
        RC_ASSERT(!carriedOut(ledger, back));
        RC_ASSERT(back.value == movement.value);
        RC_ASSERT(ledger.balances() == before);
        Movement again = takenBack(movement, 5002);
        RC_ASSERT(carriedOut(ledger, again).has_value());
        RC_ASSERT(ledger.balances() == before);
        // The taking back may itself be taken back: then it is as after the movement.
        Movement forth = takenBack(back, 5003);
        RC_ASSERT(!carriedOut(ledger, forth));
        RC_ASSERT(forth.value == movement.value);
        ++taken;
    });
    QVERIFY(taken > 20);
}

void JournalKeepsItsLaws::takingBackLaterRestoresTheQuantity()
{
    int taken = 0;
    holds("taken back later, the pieces are back and nothing is lost", [&taken] {
        std::vector<Movement> journal;
        Ledger ledger = anyLedger(journal);
        if (journal.empty())
            return;
        const Movement movement = *rc::gen::elementOf(journal);
        const Balance from = ledger.balance(source(movement));
        const Balance to = ledger.balance(target(movement));
        Movement back = takenBack(movement, 6000);
        if (const auto refused = carriedOut(ledger, back)) {
            RC_ASSERT(*refused == Refusal::NotEnough); // They have been moved on.
            return;
        }
        RC_ASSERT(ledger.balance(source(movement)).quantity == from.quantity + movement.quantity);
        RC_ASSERT(ledger.balance(target(movement)).quantity == to.quantity - movement.quantity);
        RC_ASSERT(sums(ledger).empty());
        ++taken;
    });
    QVERIFY(taken > 20);
}

void JournalKeepsItsLaws::anIssueTakesItsShareHalfEven()
{
    int ties = 0;
    holds("2 · |v·Q − V·q| ≤ Q, and where they are equal v is even", [&ties] {
        const auto held = *rc::gen::oneOf(rc::gen::inRange<std::int64_t>(2, 40),
                                          rc::gen::inRange<std::int64_t>(2, INT64_MAX));
        const auto value = *rc::gen::oneOf(rc::gen::inRange<std::int64_t>(0, 200),
                                           rc::gen::inRange<std::int64_t>(0, INT64_MAX));
        const auto quantity = *rc::gen::inRange<std::int64_t>(1, held);
        const Ledger ledger(fewPlaces(), {{adaptersAt("A1"), {held, value}}});
        const std::int64_t share = ledger.valueOf(adaptersAt("A1"), quantity);
        // Divided by Q first, so that twice the difference fits: it is within one of Q anyway.
        const Wide off = Wide{share} * held - Wide{value} * quantity;
        const Wide size = off < 0 ? -off : off;
        RC_ASSERT(size <= held - size);
        RC_ASSERT(size != held - size || share % 2 == 0);
        ties += size == held - size ? 1 : 0;
        RC_ASSERT(ledger.valueOf(adaptersAt("A1"), held) == value);
        RC_ASSERT(ledger.valueOf(adaptersAt("trailer-2"), quantity) == 0);
    });
    QVERIFY(ties > 0);
    // By hand: half of 5 is 2.5, of 7 is 3.5; the even ones are 2 and 4.
    const Ledger two(fewPlaces(), {{adaptersAt("A1"), {2, 5}}, {adaptersAt("SH-1"), {2, 7}}});
    QCOMPARE(two.valueOf(adaptersAt("A1"), 1), 2);
    QCOMPARE(two.valueOf(adaptersAt("SH-1"), 1), 4);
}

void JournalKeepsItsLaws::theLastUnitTakesTheRest()
{
    holds("issues add up to what was carried, whatever their sizes", [] {
        const auto value = *rc::gen::inRange<std::int64_t>(0, 1'000'000'000);
        const auto sizes = *rc::gen::nonEmpty(
            rc::gen::container<std::vector<std::int64_t>>(rc::gen::inRange<std::int64_t>(1, 12)));
        const auto all = std::accumulate(sizes.begin(), sizes.end(), std::int64_t{0});
        Ledger ledger(fewPlaces());
        Movement receipt = moved(1, all, "supplier", "A1", value);
        RC_ASSERT(!carriedOut(ledger, receipt));
        std::uint32_t number = 1;
        std::int64_t issued = 0;
        for (const std::int64_t size : sizes) {
            const std::int64_t carried = value - issued;
            Movement issue = moved(++number, size, "A1", "car-1");
            RC_ASSERT(!carriedOut(ledger, issue));
            RC_ASSERT(issue.value >= 0 && issue.value <= carried);
            issued += issue.value;
        }
        RC_ASSERT(issued == value);
        RC_ASSERT(ledger.balance(adaptersAt("A1")).isNothing());
        RC_ASSERT(ledger.balance(adaptersAt("car-1")) == (Balance{all, value}));
        Movement more = moved(++number, 1, "A1", "car-1");
        RC_ASSERT(carriedOut(ledger, more) == Refusal::NotEnough);
    });
}

void JournalKeepsItsLaws::stockNeverHasValueWithoutPieces()
{
    holds("in stock: pieces, and value only with them", [] {
        std::vector<Movement> journal;
        Ledger ledger = anyLedger(journal);
        // Also what another hand wrote, with values that are not the ledger's.
        for (Movement odd : *rc::gen::container<std::vector<Movement>>(anyMovement())) {
            odd.id = idNumber(7000);
            static_cast<void>(ledger.apply(odd));
        }
        for (const auto &[key, held] : ledger.balances())
            if (isStock(ledger.place(key.place)->kind))
                RC_ASSERT(held.quantity > 0 && held.value >= 0);
        RC_ASSERT(sums(ledger).empty());
    });
}

void JournalKeepsItsLaws::aFurtherFoldNeedsOnlyWhatItTouches()
{
    holds("a ledger of two balances judges as the whole one does", [] {
        std::vector<Movement> journal;
        Ledger whole = anyLedger(journal);
        Movement movement = *anyMovement();
        if (!journal.empty() && *rc::gen::arbitrary<bool>())
            movement = takenBack(*rc::gen::elementOf(journal), 0);
        movement.id = idNumber(8000);
        Ledger part(fewPlaces());
        for (const auto &key : {source(movement), target(movement)})
            part.carryOver(key, whole.balance(key));
        for (const Movement &past : journal)
            if (movement.reverses == past.id)
                part.know(past, false);
        RC_ASSERT(part.valueOf(movement) == whole.valueOf(movement));
        RC_ASSERT(carriedOut(part, movement) == carriedOut(whole, movement));
        for (const auto &key : {source(movement), target(movement)})
            RC_ASSERT(part.balance(key) == whole.balance(key));
    });
}

QTEST_APPLESS_MAIN(JournalKeepsItsLaws)
#include "tst_journal_keeps_its_laws.moc"
