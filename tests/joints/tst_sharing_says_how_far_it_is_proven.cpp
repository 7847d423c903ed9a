// SPDX-License-Identifier: MIT
//
// What sharing says of its own choice holds: where it was given few of the ways, against brute
// force over all of them; where there is too much for the time, against what it has reached.

#include "tests/joints/sharing_by_hand.h"
#include "tests/parts/suppliers.h"

#include <QTest>

#include <random>

using namespace flarestock;

class SharingProof : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void allowsForWaysThatAreNotGiven();
    void largeBuildIsNoWorseThanFirstWays();
};

void SharingProof::allowsForWaysThatAreNotGiven()
{
    const auto given = qEnvironmentVariableIntValue("FLARESTOCK_SEED");
    const unsigned seed = given != 0 ? static_cast<unsigned>(given) : 77u;
    qInfo("seed %u", seed);
    std::mt19937 random(seed);
    const auto pick = [&random](int below) {
        return static_cast<int>(random() % static_cast<unsigned>(below));
    };
    int proven = 0;
    int open = 0;
    for (int round = 0; round < 300; ++round) {
        const Catalogue catalogue = drawn(pick);
        const Shelf shelf = stocked(catalogue, pick);
        const JointCloser closer(catalogue);
        JointShelf known = closer.jointShelf(shelf);
        const auto preference = static_cast<Preference>(pick(3));
        ShareRequest all{catalogue, shelf, allOf(shelf), wantOrder(preference), {}};
        all.pricesFallTo = closer.pricesFallTo();
        ShareRequest few = all;
        for (int joint = 1 + pick(3); joint > 0; --joint) {
            JointRequest asked = anyJoint(pick);
            asked.preference = preference;
            asked.best = 12;
            all.joints.push_back({asked.from, asked.to, closer.ways(asked, known)});
            few.joints.push_back(all.joints.back());
            auto &ways = few.joints.back().ways;
            const auto most = static_cast<std::size_t>(1 + pick(4));
            if (ways.size() <= most)
                continue;
            ways.resize(most);
            few.joints.back().last = most - 1;
        }
        const Shared shared = share(few);
        const auto lowest = byBruteForce(all);
        const auto reached = inOrder(few, shared.chosen);
        std::size_t at = 0;
        const auto order = criteria(all.order);
        while (at < order.size() && (!shared.bound || order[at] != shared.bound->of)) {
            QCOMPARE(reached[at], lowest[at]); // Whatever is said to be proven is.
            ++at;
        }
        if (shared.bound)
            QVERIFY(shared.bound->atLeast <= lowest[at]);
        ++(shared.bound ? open : proven);
    }
    qInfo("%d proven, %d open", proven, open);
    QVERIFY(proven > 50 && open > 50);
}

void SharingProof::largeBuildIsNoWorseThanFirstWays()
{
    std::mt19937 random(11);
    const auto pick = [&random](int below) {
        return static_cast<int>(random() % static_cast<unsigned>(below));
    };
    std::vector<Part> parts;
    std::vector<Offer> offers;
    for (int i = 0; i < 40; ++i) {
        parts.push_back(piece("L" + std::to_string(i), Kind::Adapter, "AN -8 male", "AN -8 male"));
        offers.push_back(offer(parts.back().number, 1 + pick(30)));
    }
    const auto catalogue = Catalogue::of(parts, {tests::supplierOf("S", "S", 0)}, offers).value();
    const Shelf shelf = stocked(catalogue, pick);
    ShareRequest request{catalogue, shelf, allOf(shelf), {}, {}};
    for (int joint = 0; joint < 60; ++joint) {
        auto &ways = request.joints.emplace_back().ways;
        for (int way = 0; way < 4; ++way) {
            std::vector<const Part *> pieces;
            for (int piece = 1 + pick(3); piece > 0; --piece)
                pieces.push_back(&catalogue.parts()[static_cast<std::size_t>(pick(40))]);
            ways.push_back(wayOf(pieces));
        }
    }
    for (const WantOrder &order : allOrders()) {
        request.order = order;
        const Shared shared = share(request, std::chrono::seconds(2));
        const auto reached = inOrder(request, shared.chosen);
        QVERIFY(reached <= inOrder(request, Chosen(60, 0)));
        QCOMPARE(inOrder(shared.ranks, order), reached);
        if (!shared.bound)
            continue;
        const auto all = criteria(order);
        const auto at = std::find(all.begin(), all.end(), shared.bound->of) - all.begin();
        QVERIFY(shared.bound->atLeast <= reached[static_cast<std::size_t>(at)]);
        qInfo("not proven: %lld of at least %lld",
              static_cast<long long>(reached[static_cast<std::size_t>(at)]),
              static_cast<long long>(shared.bound->atLeast));
    }
}

QTEST_APPLESS_MAIN(SharingProof)
#include "tst_sharing_says_how_far_it_is_proven.moc"
