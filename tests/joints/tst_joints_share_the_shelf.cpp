// SPDX-License-Identifier: MIT
//
// Joints that share a shelf, against brute force: every choice of one way a joint, counted part by
// part by hand, for all six orders of what a builder wants.

#include "model/joints/sharing/sharing.h"
#include "tests/joints/joint_parts.h"

#include <QTest>

#include <algorithm>
#include <random>
#include <set>

using namespace flarestock;

namespace {

using Chosen = std::vector<std::optional<std::size_t>>;

std::vector<WantOrder> allOrders()
{
    WantOrder order{Want::FewBought, Want::FewPieces, Want::LittleMoney};
    std::vector<WantOrder> all;
    do
        all.push_back(order);
    while (std::next_permutation(order.begin(), order.end()));
    return all;
}

FreeLeft allOf(const Shelf &shelf)
{
    return [&shelf](const Part &part) {
        const auto on = shelf.find(part.number);
        return on == shelf.end() ? Decimal() : on->second.free.amount;
    };
}

Way wayOf(const std::vector<const Part *> &parts)
{
    Way way;
    for (const Part *part : parts)
        way.pieces.push_back({part, "a", "b"});
    return way;
}

/// Counted from the ways of all builds up to this one: what is taken of each part, what of it is
/// free, what the rest costs.
WayRank counted(const ShareRequest &request, const Chosen &chosen, std::size_t build)
{
    WayRank rank;
    std::map<const Part *, int> taken;
    std::map<const Part *, std::set<std::size_t>> bottles; // For which builds.
    for (std::size_t joint = 0; joint < chosen.size(); ++joint) {
        if (!chosen[joint] || request.joints[joint].build > build)
            continue;
        const Way &way = request.joints[joint].ways[*chosen[joint]];
        rank.pieces += static_cast<int>(way.pieces.size());
        rank.cautions += way.cautions();
        for (const Piece &piece : way.pieces) {
            ++taken[piece.part];
            for (const PartPort &port : piece.part->ports)
                rank.narrow += dash(port.port) > 0 && dash(port.port) < 8 ? 1 : 0;
        }
        for (const WayAid &aid : way.aids) {
            if (!aid.part)
                ++rank.unanswered;
            else if (aid.part->kind == Kind::Sealant)
                bottles[aid.part].insert(request.joints[joint].build);
            else
                taken[aid.part] += aid.need.count;
        }
    }
    for (const auto &[part, builds] : bottles)
        taken[part] = static_cast<int>(builds.size());
    for (const auto &[part, count] : taken) {
        const auto on = request.shelf.find(part->number);
        const Decimal here = on == request.shelf.end()
                                 ? Decimal()
                                 : std::min(on->second.free.amount, Decimal(count));
        const Decimal toBuy = Decimal(count) - here;
        Decimal cost;
        if (here.sign() > 0)
            cost = on->second.carriedUnitCost().times(here).toDecimal(6, Rounding::HalfEven);
        rank.toBuy += static_cast<int>(toBuy.toInt64().value());
        if (const Offer *best = request.catalogue.bestOffer(*part, toBuy))
            cost += best->priceEach(toBuy) * toBuy;
        else
            rank.unpriced += static_cast<int>(toBuy.toInt64().value());
        rank.costMicro += (cost * Decimal(1'000'000)).toInt64().value();
    }
    return rank;
}

std::vector<std::int64_t> inOrder(const WayRank &rank, const WantOrder &order)
{
    std::vector<std::int64_t> values;
    for (const Criterion criterion : criteria(order))
        values.push_back(valueOf(rank, criterion));
    return values;
}

/// Build by build, the earliest first.
std::vector<std::int64_t> inOrder(const ShareRequest &request, const Chosen &chosen)
{
    std::size_t last = 0;
    for (const SharedJoint &joint : request.joints)
        last = std::max(last, joint.build);
    std::vector<std::int64_t> values;
    for (std::size_t build = 0; build <= last; ++build)
        for (const auto value : inOrder(counted(request, chosen, build), request.order))
            values.push_back(value);
    return values;
}

std::vector<std::int64_t> inOrder(const std::vector<WayRank> &ranks, const WantOrder &order)
{
    std::vector<std::int64_t> values;
    for (const WayRank &rank : ranks)
        for (const auto value : inOrder(rank, order))
            values.push_back(value);
    return values;
}

/// The lowest of all choices.
std::vector<std::int64_t> byBruteForce(const ShareRequest &request)
{
    std::optional<std::vector<std::int64_t>> best;
    Chosen chosen;
    const std::function<void()> choose = [&] {
        if (chosen.size() == request.joints.size()) {
            auto values = inOrder(request, chosen);
            if (!best || values < *best)
                best = std::move(values);
            return;
        }
        const auto &ways = request.joints[chosen.size()].ways;
        for (std::size_t way = 0; way < ways.size(); ++way) {
            chosen.push_back(way);
            choose();
            chosen.pop_back();
        }
        if (ways.empty()) {
            chosen.push_back(std::nullopt);
            choose();
            chosen.pop_back();
        }
    };
    choose();
    return *best;
}

/// Adapters between boss, flare and pipe, hose ends, a ring and sealant, of random prices.
Catalogue drawn(const std::function<int(int)> &pick)
{
    Part sealant;
    sealant.number = "SEAL";
    sealant.kind = Kind::Sealant;
    std::vector<Part> parts{body("P", "ORB -8 female"),  body("Q", "AN -8 male"),
                            body("R", "NPT 1/2 female"), body("H", "HOSE PT -8"),
                            ring("AS568-908"),           sealant};
    std::vector<Offer> offers{offer("AS568-908", 1), offer("SEAL", 7)};
    for (int i = 0; i < 9; ++i) {
        const auto number = "A" + std::to_string(i);
        const auto *a = i % 3 == 0   ? "ORB -8 male"
                        : i % 3 == 1 ? "NPT 1/2 male"
                                     : "AN -8 female swivel";
        const std::string b = (pick(3) == 0 ? "JIC -" : "AN -") + std::string(i == 8 ? "6" : "8");
        parts.push_back(piece(number, Kind::Adapter, a, (b + " male").c_str()));
        if (pick(5) == 0)
            continue; // Nobody sells it.
        offers.push_back(offer(number, 1 + pick(9)));
        if (pick(3) == 0) // Two or more are cheaper each.
            offers.back().breaks.push_back({2, Decimal::parse("0.5").value()});
    }
    for (int i = 0; i < 3; ++i) {
        const auto number = "HE" + std::to_string(i);
        parts.push_back(hoseEnd(number, 8, i == 2 ? "AN -6 female swivel" : "AN -8 female swivel"));
        offers.push_back(offer(number, 2 + pick(9)));
    }
    return Catalogue::of(parts, {{"S", "S", 0}}, offers).value();
}

Shelf stocked(const Catalogue &catalogue, const std::function<int(int)> &pick)
{
    Shelf shelf;
    for (const Part &part : catalogue.parts())
        if (const int free = pick(3); free > 0)
            shelf[part.number] = {{free, Unit::Each}, {free, Unit::Each}, 1 + pick(20), {}, {}, {}};
    return shelf;
}

} // namespace

class SharingTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theLastFittingGoesWhereItSavesMost();
    void theEarlierBuildComesFirst();
    void threeOrdersAreThePreferences();
    void equalsBruteForce();
    void largeBuildIsNoWorseThanFirstWays();
};

void SharingTest::theLastFittingGoesWhereItSavesMost()
{
    const std::vector<Part> parts{piece("X", Kind::Adapter, "AN -8 male", "AN -8 male"),
                                  piece("Y", Kind::Adapter, "AN -8 male", "AN -8 male"),
                                  piece("Z", Kind::Adapter, "AN -8 male", "AN -8 male")};
    const auto catalogue = Catalogue::of(parts, {{"S", "S", 0}}, {offer("X", 5)}).value();
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
        Catalogue::of(parts, {{"S", "S", 0}}, {offer("X", 5), offer("Y", 5)}).value();
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
        for (int joint = 1 + pick(5); joint > 0; --joint) {
            const std::array<const char *, 4> from{"ORB -8 female", "AN -8 male", "NPT 1/2 female",
                                                   "AN -10 male"};
            JointRequest asked;
            asked.from = Port::parse(from[static_cast<std::size_t>(pick(4))]).value();
            asked.to = Port::parse("HOSE PT -8").value();
            asked.piecesMax = 3;
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

void SharingTest::largeBuildIsNoWorseThanFirstWays()
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
    const auto catalogue = Catalogue::of(parts, {{"S", "S", 0}}, offers).value();
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

QTEST_APPLESS_MAIN(SharingTest)
#include "tst_joints_share_the_shelf.moc"
