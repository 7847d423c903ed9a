// SPDX-License-Identifier: MIT
//
// The search for ways against brute force: every row of pieces of a small random catalogue, each
// turned both ways, judged link by link. It must find the same best rows in the same order for
// every preference, and again once a first joint has taken its pieces from the shelf.

#include "tests/joints/joint_parts.h"
#include "tests/parts/suppliers.h"

#include <QTest>

#include <algorithm>
#include <random>

using namespace flarestock;

namespace {

int portsBelow(const Way &way, int size)
{
    int count = 0;
    for (const Piece &piece : way.pieces)
        for (const PartPort &port : piece.part->ports)
            count += dash(port.port) > 0 && dash(port.port) < size ? 1 : 0;
    return count;
}

int linksWithCaution(const Way &way)
{
    int count = 0;
    for (const Link &link : way.links)
        count += link.mating.verdict == Verdict::FitsWithCaution ? 1 : 0;
    return count;
}

using RankedRow = std::pair<WayRank, std::string>;

/// All rows of at most piecesMax pieces that close the joint, by the rules of the header.
std::vector<RankedRow> everyRow(const Catalogue &catalogue, const JointRequest &request,
                                const JointCloser &closer, const Shelf &shelf)
{
    std::vector<RankedRow> rows;
    std::vector<const Part *> pool;
    for (const auto &part : catalogue.parts())
        if (part.ports.size() == 2)
            pool.push_back(&part);
    std::vector<std::string> row;
    const std::function<void()> grow = [&] {
        const auto way = closer.judged(request, row, shelf, [&shelf](const Part &part) {
            const auto on = shelf.find(part.number);
            return on == shelf.end() ? Decimal() : on->second.free.amount;
        });
        if (way->verdict() >= Verdict::FitsWithCaution) {
            std::vector<Port> stood{request.to};
            bool twice = false;
            for (auto it = way->links.rbegin(); it + 1 != way->links.rend(); ++it) {
                const auto &port = (it + 1)->b; // the port by which a piece faces the component
                twice = twice || std::find(stood.begin(), stood.end(), port) != stood.end();
                stood.push_back(port);
            }
            const bool open = std::any_of(way->aids.begin(), way->aids.end(),
                                          [](const WayAid &aid) { return aid.part == nullptr; });
            if (!twice && !open)
                rows.push_back({{.toBuy = way->toBuy,
                                 .pieces = static_cast<int>(row.size()),
                                 .cautions = linksWithCaution(*way),
                                 .costMicro = (way->cost * Decimal(1'000'000)).toInt64().value(),
                                 .narrow = portsBelow(*way, 8)},
                                way->key()});
        }
        if (row.size() == request.piecesMax)
            return;
        for (const auto *part : pool) {
            row.push_back(part->number);
            grow();
            row.pop_back();
        }
    };
    grow();
    return rows;
}

/// The keys of the best of the rows, best first.
std::vector<std::string> byBruteForce(std::vector<RankedRow> rows, const JointRequest &request)
{
    const auto sortBy = [&rows](Preference preference) {
        std::sort(rows.begin(), rows.end(), [&](const auto &a, const auto &b) {
            const auto order = compare(a.first, b.first, preference);
            return order != 0 ? order < 0 : a.second < b.second;
        });
    };
    if (request.preference == Preference::Shelf && !rows.empty()) {
        sortBy(Preference::Joints);
        const int most = rows.front().first.pieces + 1; // ShelfPiecesMore
        rows.erase(std::remove_if(rows.begin(), rows.end(),
                                  [most](const auto &row) { return row.first.pieces > most; }),
                   rows.end());
    }
    sortBy(request.preference);
    std::vector<std::string> said;
    for (const auto &[rank, key] : rows)
        if (said.size() < request.best)
            said.push_back(key);
    return said;
}

void take(const Way &way, Shelf &shelf, JointShelf &left)
{
    std::vector<const Part *> parts;
    for (const Piece &piece : way.pieces)
        parts.push_back(piece.part);
    for (const WayAid &aid : way.aids)
        parts.push_back(aid.part);
    for (const Part *part : parts) {
        const auto on = shelf.find(part->number);
        if (on == shelf.end() || on->second.free.amount.sign() == 0)
            continue;
        on->second.free.amount -= Decimal(1); // What is on hand, and so what each cost, stays.
        left.setLeft(*part, on->second.free.amount);
    }
}

/// Adapters and a hose end of random sizes and prices, from a boss or a flare to a hose.
Catalogue drawn(const std::function<int(int)> &pick)
{
    std::vector<Part> parts{body("P", "ORB -8 female"), body("Q", "AN -8 male"),
                            body("H", "HOSE PT -8"), ring("AS568-908")};
    std::vector<Offer> offers{offer("AS568-908", 1)};
    for (int i = 0; i < 7; ++i) {
        const auto number = "A" + std::to_string(i);
        const auto dash = [&] { return std::to_string(6 + 2 * pick(2)); };
        const auto a = i < 2 ? std::string("ORB -8 male") : "AN -" + dash() + " female swivel";
        const auto b = (pick(3) == 0 ? "JIC -" : "AN -") + dash() + " male";
        parts.push_back(i == 6 ? hoseEnd(number, 8, ("AN -" + dash() + " female swivel").c_str())
                               : piece(number, Kind::Adapter, a.c_str(), b.c_str()));
        offers.push_back(offer(number, 1 + pick(9)));
    }
    return Catalogue::of(parts, {tests::supplierOf("S", "S", 0)}, offers).value();
}

} // namespace

class BruteForceTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void findsTheSameWaysInTheSameOrder();
};

void BruteForceTest::findsTheSameWaysInTheSameOrder()
{
    const auto given = qEnvironmentVariableIntValue("FLARESTOCK_SEED");
    const unsigned seed = given != 0 ? static_cast<unsigned>(given) : 4711u;
    qInfo("seed %u", seed);
    std::mt19937 random(seed);
    const auto pick = [&random](int below) {
        return static_cast<int>(random() % static_cast<unsigned>(below));
    };
    int closed = 0;
    int cautions = 0;
    for (int round = 0; round < 30; ++round) {
        const Catalogue catalogue = drawn(pick);
        const JointCloser closer(catalogue);
        Shelf shelf;
        for (const Part &part : catalogue.parts()) {
            if (const int free = pick(3); free > 0)
                shelf[part.number] = {
                    {free, Unit::Each}, {free, Unit::Each}, 1 + pick(9), {}, {}, {}};
        }
        JointRequest request;
        request.from = Port::parse(round % 2 == 0 ? "ORB -8 female" : "AN -8 male").value();
        request.to = Port::parse("HOSE PT -8").value();
        request.piecesMax = 3;
        request.best = static_cast<std::size_t>(1 + pick(4));
        JointShelf left = closer.jointShelf(shelf);
        for (int joint = 0; joint < 2; ++joint) { // The second has what the first one left.
            const auto rows = everyRow(catalogue, request, closer, shelf);
            std::vector<Way> ways;
            for (const auto preference :
                 {Preference::Shelf, Preference::Joints, Preference::Money}) {
                request.preference = preference;
                ways = closer.ways(request, left);
                QCOMPARE(keys(ways), byBruteForce(rows, request));
                closed += static_cast<int>(ways.size());
                for (const Way &way : ways)
                    cautions += way.cautions();
            }
            if (!ways.empty())
                take(ways.front(), shelf, left);
        }
    }
    QVERIFY(closed > 60);
    QVERIFY(cautions > 20);
}

QTEST_APPLESS_MAIN(BruteForceTest)
#include "tst_ways_equal_brute_force.moc"
