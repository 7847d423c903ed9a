// SPDX-License-Identifier: MIT
//
// Receipts, supplier claims and late costs come back as they were written, and a claim stands as
// its steps and receipts say. Common practice, no source: on what is merely claimed nobody counts.

#include "model/buying/bought.h"

#include <QTest>

using namespace flarestock;

namespace {

MovementId idNumber(std::uint8_t n)
{
    std::array<std::uint8_t, 16> bytes{};
    bytes[15] = n;
    return MovementId::ofBytes(bytes);
}

SupplierClaim claimOf(std::uint8_t n, std::uint8_t first, ClaimState state)
{
    SupplierClaim claim;
    claim.id = idNumber(n);
    claim.claim = idNumber(first);
    claim.number = "C-" + std::to_string(first);
    claim.order = "2026-0007";
    claim.supplier = "OXS";
    claim.part = "BK-460";
    claim.quantity = 2;
    claim.boxOf = "EP-460";
    claim.boxLot = "SN 4417";
    claim.state = state;
    claim.note = "one\ttab, one\nline";
    claim.who = "hand";
    claim.at = 1234;
    if (state == ClaimState::Promised)
        claim.day = "2026-12-01";
    if (state == ClaimState::Credited)
        claim.credit = 12'500'000;
    return claim;
}

Receipt receiptFor(const SupplierClaim &claim, std::int64_t quantity)
{
    return {idNumber(99), claim.order,        claim.part, quantity, 0,      "",  "note",
            false,        claim.claim.text(), true,       "action", "hand", 1234};
}

} // namespace

class WhatCameIsWrittenDown : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void recordsComeBackWhole();
    void aRecordThatIsNoneIsRefused();
    void onlyAPromiseByADayCovers();
    void aClaimWithoutItsRaisingIsNone();
    void aClaimsStepsAreTakenBackOneByOne();
    void aClaimIsFoundByNumberOrId();
    void aLateCostFallsOnWhatIsHere();
};

void WhatCameIsWrittenDown::recordsComeBackWhole()
{
    for (const ClaimState state : {ClaimState::Raised, ClaimState::Promised, ClaimState::PieceCame,
                                   ClaimState::Credited, ClaimState::GivenUp}) {
        const SupplierClaim claim = claimOf(3, 2, state);
        QCOMPARE(SupplierClaim::read(claim.asRecord()).value(), claim);
    }
    Receipt receipt = receiptFor(claimOf(3, 2, ClaimState::Raised), 1);
    QCOMPARE(Receipt::read(receipt.asRecord()).value(), receipt);
    receipt.wrongPart = true;
    receipt.claim.clear();
    receipt.inPlace = false;
    receipt.value = 41'250'001;
    QCOMPARE(Receipt::read(receipt.asRecord()).value(), receipt);
    const LateCost cost{idNumber(5),
                        "2026-0007",
                        LateKind::Credit,
                        -5'000'001,
                        "weight",
                        {{"EP-460", "SN 4417", 1, 1, -3'000'001, -3'000'001},
                         {"OX-6", "", 10, 4, -2'000'000, -800'000}},
                        idNumber(2).text(),
                        "CN-17",
                        idNumber(4).text(),
                        "hand",
                        1234};
    QCOMPARE(LateCost::read(cost.asRecord()).value(), cost);
}

void WhatCameIsWrittenDown::aRecordThatIsNoneIsRefused()
{
    Record receipt = receiptFor(claimOf(3, 2, ClaimState::Raised), 1).asRecord();
    receipt.fields["quantity"] = "one";
    QVERIFY(!Receipt::read(receipt));
    Record claim = claimOf(3, 2, ClaimState::Raised).asRecord();
    claim.fields["state"] = "hoped for";
    QVERIFY(!SupplierClaim::read(claim));
    Record late;
    late.kind = RecordKind::LateCost;
    late.subject = "2026-0007";
    late.fields = {{"kind", "freight"}, {"amount", "5"}, {"shares", "EP-460\t\t1\t1\t5"}};
    QVERIFY(!LateCost::read(late)); // A number short.
    late.fields["shares"] += "\t5";
    QVERIFY(LateCost::read(late).has_value());
}

void WhatCameIsWrittenDown::onlyAPromiseByADayCovers()
{
    const SupplierClaim first = claimOf(2, 2, ClaimState::Raised);
    ClaimBook book = ClaimBook::of({first}, {});
    QCOMPARE(book.claims.front().owed(), 2);
    QVERIFY(!book.claims.front().coversFrom());
    const SupplierClaim promised = claimOf(3, 2, ClaimState::Promised);
    book = ClaimBook::of({first, promised}, {receiptFor(first, 1)});
    QCOMPARE(book.claims.front().owed(), 1);
    QCOMPARE(book.claims.front().coversFrom(), std::optional<std::string>("2026-12-01"));
    book = ClaimBook::of({first, promised}, {receiptFor(first, 2)});
    QVERIFY(!book.claims.front().coversFrom());
    book = ClaimBook::of({first, promised, claimOf(4, 2, ClaimState::GivenUp)}, {});
    QCOMPARE(book.claims.front().owed(), 0);
    QVERIFY(!book.claims.front().coversFrom());
    QCOMPARE(book.claims.front().steps.size(), std::size_t{3});
}

void WhatCameIsWrittenDown::aClaimWithoutItsRaisingIsNone()
{
    const ClaimBook book = ClaimBook::of({claimOf(3, 2, ClaimState::Promised)}, {});
    QVERIFY(book.claims.empty());
}

void WhatCameIsWrittenDown::aClaimsStepsAreTakenBackOneByOne()
{
    std::vector<SupplierClaim> steps{claimOf(1, 1, ClaimState::Raised),
                                     claimOf(2, 1, ClaimState::Promised),
                                     claimOf(3, 1, ClaimState::GivenUp)};
    const auto takeBack = [&](std::size_t step, std::uint8_t id) {
        auto back = stepBack(ClaimBook::of(steps, {}).claims.front(), steps[step].id);
        if (!back)
            return std::string("has gone on since");
        back->id = claimOf(id, 1, ClaimState::Raised).id;
        steps.push_back(*back);
        return std::string(text(back->state));
    };
    QCOMPARE(takeBack(1, 9), std::string("has gone on since"));
    QCOMPARE(takeBack(2, 4), std::string("promised"));
    QCOMPARE(takeBack(1, 5), std::string("raised"));
    QCOMPARE(takeBack(0, 6), std::string("given up"));
    QCOMPARE(takeBack(5, 7), std::string("raised")); // The taking back itself.
}

void WhatCameIsWrittenDown::aClaimIsFoundByNumberOrId()
{
    const SupplierClaim two = claimOf(2, 2, ClaimState::Raised);
    SupplierClaim four = claimOf(4, 4, ClaimState::Raised);
    ClaimBook book = ClaimBook::of({two, four}, {});
    QCOMPARE(book.find("c-4").value()->now.id, four.id);
    QCOMPARE(book.find(two.claim.text()).value()->now.id, two.id);
    QVERIFY(!book.find("C-3"));
    QCOMPARE(book.nextNumber(), std::string("C-5"));
    book.giveNumber("C-7"); // It was taken back since.
    QCOMPARE(book.nextNumber(), std::string("C-8"));
    four.number = "C-2"; // As two seats may have numbered them in the same moment.
    book = ClaimBook::of({two, four}, {});
    QVERIFY(!book.find("C-2"));
    QCOMPARE(book.find(four.claim.text()).value()->now.id, four.id);
}

void WhatCameIsWrittenDown::aLateCostFallsOnWhatIsHere()
{
    // 5.00 on ten of which four are gone: 3.00 and 2.00.
    QCOMPARE(stockPart(5'000'000, 6, 10), 3'000'000);
    QCOMPARE(stockPart(-5'000'000, 6, 10), -3'000'000);
    QCOMPARE(stockPart(5, 0, 10), 0);
    QCOMPARE(stockPart(5, 10, 10), 5);
    QCOMPARE(stockPart(5, 5, 10), 2); // 2.5: to the even one.
    QCOMPARE(stockPart(10, 1, 3), 3);
}

QTEST_APPLESS_MAIN(WhatCameIsWrittenDown)
#include "tst_what_came_is_written_down.moc"
