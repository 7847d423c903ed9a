// SPDX-License-Identifier: MIT
//
// Joints that share a shelf, against brute force: every choice of one way a joint, counted part by
// part by hand, for all six orders of what a builder wants.

#include "tests/joints/sharing_by_hand.h"
#include "tests/parts/suppliers.h"

#include <QTest>

#include <random>

using namespace flarestock;

class SharingTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theLastFittingGoesWhereItSavesMost();
    void theEarlierBuildComesFirst();
    void threeOrdersAreThePreferences();
    void equalsBruteForce();
};

void SharingTest::theLastFittingGoesWhereItSavesMost()
{
    const std::vector<Part> parts{piece("X", Kind::Adapter, "AN -8 male", "AN -8 male"),
                                  piece("Y", Kind::Adapter, "AN -8 male", "AN -8 male"),
                                  piece("Z", Kind::Adapter, "AN -8 male", "AN -8 male")};
    const auto catalogue =
        Catalogue::of(parts, {tests::supplierOf("S", "S", 0)}, {offer("X", 5)}).value();
    Shelf shelf;
    for (const char *number : {"X", "Y", "Z"})
        shelf[number] = {{1, Unit::Each}, {1, Unit::Each}, 3, {}, {}, {}};
    const Part *x = catalogue.find("X");
    SharedJoint either;
    either.from = either.to = Port::parse("AN -8 female swivel").value();
    either.ways = {wayOf({x}), wayOf({catalogue.find("Y"), catalogue.find("Z")})};
    SharedJoint only = either;
    only.ways = {wayOf({x})};
    ShareRequest request{
        catalogue, shelf, allOf(shelf), wantOrder(Preference::Shelf), {either, only, {}}};
    // From the shelf: the first joint takes two that lie there and leaves X to the second one.
    const Shared shelfFirst = share(request);
    QVERIFY(!shelfFirst.bound);
    QCOMPARE(shelfFirst.chosen, (Chosen{1, 0, std::nullopt}));
    QCOMPARE(shelfFirst.ranks.back().toBuy, 0);
    QCOMPARE(shelfFirst.ranks.back().pieces, 3);
    // Fewest pieces: both take X, and one of them is bought.
    request.order = wantOrder(Preference::Joints);
    const Shared fewest = share(request);
    QCOMPARE(fewest.chosen, (Chosen{0, 0, std::nullopt}));
    QCOMPARE(fewest.ranks.back().toBuy, 1);
    // Money: 3 + 5 for X twice is less than three times 3.
    request.order = wantOrder(Preference::Money);
    QCOMPARE(share(request).ranks.back().costMicro, std::int64_t{8'000'000});
}

void SharingTest::theEarlierBuildComesFirst()
{
    // X is here, Y is here; the earlier build could take either, the later one only X.
    const std::vector<Part> parts{piece("X", Kind::Adapter, "AN -8 male", "AN -8 male"),
                                  piece("Y", Kind::Adapter, "AN -8 male", "AN -8 male")};
    const auto catalogue =
        Catalogue::of(parts, {tests::supplierOf("S", "S", 0)}, {offer("X", 5), offer("Y", 5)})
            .value();
    Shelf shelf;
    for (const char *number : {"X", "Y"})
        shelf[number] = {{1, Unit::Each}, {1, Unit::Each}, 3, {}, {}, {}};
    SharedJoint early;
    early.ways = {wayOf({catalogue.find("X")}), wayOf({catalogue.find("Y")})};
    SharedJoint late;
    late.ways = {wayOf({catalogue.find("X")})};
    late.build = 1;
    ShareRequest request{
        catalogue, shelf, allOf(shelf), wantOrder(Preference::Shelf), {early, late}};
    const Shared both = share(request);
    QCOMPARE(both.chosen, (Chosen{1, 0})); // As good for the earlier one, and better for the later.
    QCOMPARE(both.ranks.size(), std::size_t{2});
    QCOMPARE(both.ranks.back().toBuy, 0);
    // Where only X would do for it, the earlier one takes it.
    request.joints[0].ways.pop_back();
    const Shared either = share(request);
    QCOMPARE(either.ranks.front().toBuy, 0);
    QCOMPARE(either.ranks.back().toBuy, 1);
}

void SharingTest::threeOrdersAreThePreferences()
{
    std::mt19937 random(5);
    const auto pick = [&random](unsigned below) { return static_cast<int>(random() % below); };
    for (int round = 0; round < 500; ++round) {
        std::array<WayRank, 2> ranks;
        for (WayRank &rank : ranks)
            rank = {pick(2), pick(2), pick(2), pick(2), pick(2), pick(2), pick(2)};
        for (const auto preference : {Preference::Shelf, Preference::Joints, Preference::Money}) {
            const WantOrder order = wantOrder(preference);
            QVERIFY((inOrder(ranks[0], order) <=> inOrder(ranks[1], order)) ==
                    compare(ranks[0], ranks[1], preference));
        }
    }
}

void SharingTest::equalsBruteForce()
{
    const auto given = qEnvironmentVariableIntValue("FLARESTOCK_SEED");
    const unsigned seed = given != 0 ? static_cast<unsigned>(given) : 815u;
    qInfo("seed %u", seed);
    std::mt19937 random(seed);
    const auto pick = [&random](int below) {
        return static_cast<int>(random() % static_cast<unsigned>(below));
    };
    int better = 0;
    for (int round = 0; round < 25; ++round) {
        const Catalogue catalogue = drawn(pick);
        const Shelf shelf = stocked(catalogue, pick);
        const JointCloser closer(catalogue);
        JointShelf known = closer.jointShelf(shelf);
        ShareRequest request{catalogue, shelf, allOf(shelf), {}, {}};
        for (int joint = round % 6 == 0 ? 6 : 1 + pick(5); joint > 0; --joint) {
            JointRequest asked = anyJoint(pick);
            asked.preference = static_cast<Preference>(pick(3));
            const std::size_t build = round % 2 == 0 ? 0 : static_cast<std::size_t>(pick(3));
            request.joints.push_back({asked.from, asked.to, closer.ways(asked, known), build});
        }
        Chosen firsts;
        for (const SharedJoint &joint : request.joints)
            firsts.push_back(joint.ways.empty() ? std::nullopt : std::optional<std::size_t>(0));
        for (const WantOrder &order : allOrders()) {
            request.order = order;
            const Shared shared = share(request);
            const auto lowest = byBruteForce(request);
            QVERIFY(!shared.bound);
            QCOMPARE(inOrder(shared.ranks, order), lowest);
            QCOMPARE(inOrder(request, shared.chosen), lowest);
            better += inOrder(request, firsts) > lowest ? 1 : 0;
        }
    }
    QVERIFY(better > 20); // Else nothing was shared.
}

QTEST_APPLESS_MAIN(SharingTest)
#include "tst_joints_share_the_shelf.moc"
