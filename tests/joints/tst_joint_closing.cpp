// SPDX-License-Identifier: MIT
//
// Closing a joint. The outside check is brute force: every row of pieces of a small random
// catalogue, each turned both ways, judged link by link; the search must find the same best rows in
// the same order for every preference.

#include "model/joints/closing.h"
#include "model/joints/meeting.h"

#include <QTest>

#include <algorithm>
#include <cstdlib>
#include <random>

using namespace flarestock;

namespace {

Part piece(const std::string &number, Kind kind, const char *a, const char *b)
{
    Part part;
    part.number = number;
    part.kind = kind;
    part.ports = {{"a", Port::parse(a).value(), PortRole::Either},
                  {"b", Port::parse(b).value(), PortRole::Either}};
    return part;
}

Part hoseEnd(const std::string &number, int dash, const char *end)
{
    const auto hose = "HOSE PT -" + std::to_string(dash);
    Part part = piece(number, Kind::HoseEnd, hose.c_str(), end);
    part.facts = HoseEndFacts{{"PT"}, dash, 0, {}, {}};
    return part;
}

Part ring(const std::string &designation)
{
    Part part;
    part.number = designation;
    part.kind = Kind::Ring;
    part.facts = RingFacts{designation};
    return part;
}

/// A part that stands for the component, so that the catalogue knows its port.
Part body(const std::string &number, const char *port)
{
    Part part;
    part.number = number;
    part.kind = Kind::Pump;
    part.ports = {{"p", Port::parse(port).value(), PortRole::Either}};
    return part;
}

Offer offer(const std::string &part, const Decimal &price)
{
    return {part, "S", {}, 1, 1, Currency::parse("USD").value(), {{1, price}}, 0};
}

const FreeLeft NothingLeft = [](const Part &) { return Decimal(0); };

std::vector<std::string> keys(const std::vector<Way> &ways)
{
    std::vector<std::string> said;
    for (const auto &way : ways)
        said.push_back(way.key());
    return said;
}

} // namespace

class JointClosingTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void closesThePumpForEveryLine_data();
    void closesThePumpForEveryLine();
    void isOpenWhereNothingLeadsThere();
    void prefersTheShelf();
    void throttlesNoLineToSaveAPurchase();
    void pushesNoTightHoseOverABarb();
    void judgesAPickAsItIs();
    void joinsNoTwoPiecesByATubeThatIsNotThere();
    void equalsBruteForce();
};

namespace {

/// Boss adapters of neighbouring sizes, hose ends, rings: what a drawer holds.
Catalogue drawer()
{
    std::vector<Part> parts{body("PUMP-IN", "ORB -8 female"), body("PUMP-OUT", "ORB -6 female"),
                            body("RAIL", "DIN24S 10 male")};
    for (const int dash : {6, 8, 10}) {
        const auto size = std::to_string(dash);
        parts.push_back(hoseEnd("HE-" + size, dash, ("AN -" + size + " female swivel").c_str()));
        parts.push_back(ring("AS568-9" + std::string(dash < 10 ? "0" : "") + size));
        for (const int flare : {6, 8, 10})
            parts.push_back(piece("AD-" + size + "-" + std::to_string(flare), Kind::Adapter,
                                  ("ORB -" + size + " male").c_str(),
                                  ("AN -" + std::to_string(flare) + " male").c_str()));
        Part hose = body("PT-" + size, ("HOSE PT -" + size).c_str());
        parts.push_back(hose);
    }
    return Catalogue::of(parts, {}, {}).value();
}

} // namespace

void JointClosingTest::closesThePumpForEveryLine_data()
{
    QTest::addColumn<QString>("port");
    QTest::addColumn<int>("line");
    QTest::addColumn<QString>("key");
    for (const int line : {6, 8, 10})
        QTest::addRow("inlet to -%d", line)
            << "ORB -8 female" << line << QStringLiteral("AD-8-%1 + HE-%1").arg(line);
    for (const int line : {6, 8})
        QTest::addRow("outlet to -%d", line)
            << "ORB -6 female" << line << QStringLiteral("AD-6-%1 + HE-%1").arg(line);
}

void JointClosingTest::closesThePumpForEveryLine()
{
    QFETCH(QString, port);
    QFETCH(int, line);
    QFETCH(QString, key);
    const auto catalogue = drawer();
    const JointCloser closer(catalogue);
    JointRequest request;
    request.from = Port::parse(port.toStdString()).value();
    request.to = Port::parse("HOSE PT -" + std::to_string(line)).value();
    for (const auto preference : {Preference::Shelf, Preference::Joints, Preference::Money}) {
        request.preference = preference;
        const auto ways = closer.ways(request, {}, NothingLeft);
        QVERIFY(!ways.empty());
        QCOMPARE(QString::fromStdString(ways[0].key()), key);
        QVERIFY(ways[0].verdict() == Verdict::Fits);
        QCOMPARE(ways[0].links.size(), std::size_t{3});
        QCOMPARE(ways[0].aids.size(), std::size_t{1}); // the boss ring, of the port's size
        QVERIFY(ways[0].aids[0].part != nullptr);
        QCOMPARE(QString::fromStdString(ways[0].pieces[0].in), QStringLiteral("a"));
    }
}

void JointClosingTest::isOpenWhereNothingLeadsThere()
{
    const auto catalogue = drawer();
    const JointCloser closer(catalogue);
    JointRequest request;
    request.from = Port::parse("DIN24S 10 male").value();
    request.to = Port::parse("HOSE PT -8").value();
    QVERIFY(closer.ways(request, {}, NothingLeft).empty());
}

void JointClosingTest::prefersTheShelf()
{
    std::vector<Part> parts{body("P", "ORB -8 female"),
                            body("H", "HOSE PT -10"),
                            ring("AS568-908"),
                            piece("ONE", Kind::Adapter, "ORB -8 male", "AN -10 male"),
                            piece("TWO-A", Kind::Adapter, "ORB -8 male", "AN -8 male"),
                            piece("TWO-B", Kind::Adapter, "AN -8 female swivel", "AN -10 male"),
                            hoseEnd("HE", 10, "AN -10 female swivel")};
    const auto catalogue = Catalogue::of(parts, {{"S", "S", 0}},
                                         {offer("ONE", 20), offer("TWO-A", 2), offer("TWO-B", 3),
                                          offer("HE", 5), offer("AS568-908", 1)})
                               .value();
    const JointCloser closer(catalogue);
    JointRequest request;
    request.from = Port::parse("ORB -8 female").value();
    request.to = Port::parse("HOSE PT -10").value();
    const FreeLeft here = [](const Part &part) { return Decimal(part.number == "ONE" ? 0 : 1); };
    request.preference = Preference::Shelf;
    QCOMPARE(closer.ways(request, {}, here)[0].key(), std::string("TWO-A + TWO-B + HE"));
    QCOMPARE(closer.ways(request, {}, here)[0].toBuy, 0);
    request.preference = Preference::Joints;
    QCOMPARE(closer.ways(request, {}, here)[0].key(), std::string("ONE + HE"));
    request.preference = Preference::Money;
    const auto cheapest = closer.ways(request, {}, NothingLeft)[0];
    QCOMPARE(cheapest.key(), std::string("TWO-A + TWO-B + HE"));
    QVERIFY(cheapest.cost == Decimal(11)); // 2 + 3 + 5 + 1 by hand
}

void JointClosingTest::throttlesNoLineToSaveAPurchase()
{
    const auto catalogue =
        Catalogue::of({body("P", "AN -6 male"), body("H", "HOSE PT -6"),
                       hoseEnd("HE-6", 6, "AN -6 female swivel"),
                       hoseEnd("HE-6-4", 6, "AN -4 female swivel"),
                       piece("RS-6-4", Kind::Adapter, "AN -6 female swivel", "AN -4 male")},
                      {}, {})
            .value();
    const JointCloser closer(catalogue);
    JointRequest request;
    request.from = Port::parse("AN -6 male").value();
    request.to = Port::parse("HOSE PT -6").value();
    const FreeLeft here = [](const Part &part) { return Decimal(part.number == "HE-6" ? 0 : 1); };
    const auto ways = closer.ways(request, {}, here);
    QCOMPARE(keys(ways), (std::vector<std::string>{"HE-6", "RS-6-4 + HE-6-4"}));
    request.from = Port::parse("AN -4 male").value(); // Here -4 is what the port has.
    QCOMPARE(closer.ways(request, {}, here)[0].key(), std::string("HE-6-4"));
}

void JointClosingTest::pushesNoTightHoseOverABarb()
{
    const auto hose = [](const char *number, const char *cut, double boreMm,
                         std::optional<bool> clamped = {}) {
        Part part = body(number, cut);
        part.kind = Kind::Hose;
        part.facts = HoseFacts{"X", 6, boreMm, {}, {}, false, clamped};
        return part;
    };
    Part clamp = body("CLAMP", "BARB 3/8");
    clamp.kind = Kind::Clamp;
    clamp.ports.clear();
    clamp.words = {"BARB 3/8"};
    const auto catalogue =
        Catalogue::of({body("P", "BARB 3/8"), clamp, hose("BRAIDED", "HOSE PT -6", 7.94),
                       hose("MADE-FOR-IT", "HOSE GR -6", 9.525, true),
                       hose("CRIMPED", "HOSE CR -6", 9.525, false),
                       hose("NOT-SAID", "HOSE NS -6", 9.525)},
                      {}, {})
            .value();
    const JointCloser closer(catalogue);
    JointRequest request;
    request.from = Port::parse("BARB 3/8").value();
    request.to = Port::parse("HOSE GR -6").value();
    const auto clamped = closer.ways(request, {}, NothingLeft);
    QCOMPARE(clamped.size(), std::size_t{1});
    QVERIFY(clamped[0].verdict() == Verdict::Fits);
    request.to = Port::parse("HOSE NS -6").value(); // the maker does not say: a word of caution
    QVERIFY(closer.ways(request, {}, NothingLeft)[0].verdict() == Verdict::FitsWithCaution);
    request.to = Port::parse("HOSE CR -6").value(); // the maker says no
    QVERIFY(closer.ways(request, {}, NothingLeft).empty());
    request.to = Port::parse("HOSE PT -6").value(); // AC 43.13-1B numbers it by tube: bore 5/16 in
    QVERIFY(closer.ways(request, {}, NothingLeft).empty());
}

void JointClosingTest::judgesAPickAsItIs()
{
    const auto catalogue = drawer();
    const JointCloser closer(catalogue);
    JointRequest request;
    request.from = Port::parse("ORB -6 female").value();
    request.to = Port::parse("HOSE PT -6").value();
    const auto good = closer.judged(request, {"AD-6-6", "HE-6"}, {}, NothingLeft);
    QVERIFY(good && good->verdict() == Verdict::Fits);
    QCOMPARE(good->aids.size(), std::size_t{1});
    QVERIFY(!closer.judged(request, {"NO-SUCH"}, {}, NothingLeft));
    request.from = Port::parse("ORB -8 female").value();
    const auto bad = closer.judged(request, {"HE-6"}, {}, NothingLeft);
    QVERIFY(bad && bad->verdict() < Verdict::FitsWithCaution);
}

namespace {

int portsBelow(const Way &way, int size)
{
    int count = 0;
    for (const Piece &piece : way.pieces)
        for (const PartPort &port : piece.part->ports)
            count += dash(port.port) > 0 && dash(port.port) < size ? 1 : 0;
    return count;
}

/// All rows of at most `most` pieces, by the rules of the header, best first.
std::vector<std::string> byBruteForce(const Catalogue &catalogue, const JointRequest &request,
                                      const JointCloser &closer, const FreeLeft &left)
{
    std::vector<std::pair<WayRank, std::string>> rows;
    std::vector<const Part *> pool;
    for (const auto &part : catalogue.parts())
        if (part.ports.size() == 2)
            pool.push_back(&part);
    std::vector<std::string> row;
    const std::function<void()> grow = [&] {
        const auto way = closer.judged(request, row, {}, left);
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
                rows.push_back(
                    {{0, way->toBuy, static_cast<int>(row.size()), 0,
                      (way->cost * Decimal(1'000'000)).toInt64().value(), portsBelow(*way, 8)},
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
    std::sort(rows.begin(), rows.end(), [&](const auto &a, const auto &b) {
        const auto order = compare(a.first, b.first, request.preference);
        return order != 0 ? order < 0 : a.second < b.second;
    });
    std::vector<std::string> said;
    for (const auto &[rank, key] : rows)
        if (said.size() < request.best)
            said.push_back(key);
    return said;
}

} // namespace

void JointClosingTest::joinsNoTwoPiecesByATubeThatIsNotThere()
{
    const auto catalogue =
        Catalogue::of({body("A", "AN -6 male"), body("B", "AN -6 male"), body("T", "TUBE 3/8"),
                       body("W", "WELD -8"),
                       piece("NUT", Kind::TubeNut, "TUBE 3/8", "AN -6 female swivel"),
                       piece("BUNG", Kind::Adapter, "WELD -8", "AN -6 female swivel")},
                      {}, {})
            .value();
    const JointCloser closer(catalogue);
    const Port flare = Port::parse("AN -6 male").value();
    QVERIFY(closer.ways({flare, flare, {}, {}}, {}, NothingLeft).empty());
    // At the end of a way they are what they are for.
    for (const auto &[end, piece] : {std::pair("TUBE 3/8", "NUT"), std::pair("WELD -8", "BUNG")}) {
        const auto ways = closer.ways({flare, Port::parse(end).value(), {}, {}}, {}, NothingLeft);
        QCOMPARE(keys(ways), std::vector<std::string>{piece});
    }
}

void JointClosingTest::equalsBruteForce()
{
    const auto given = qEnvironmentVariableIntValue("FLARESTOCK_SEED");
    const unsigned seed = given != 0 ? static_cast<unsigned>(given) : 4711u;
    qInfo("seed %u", seed);
    std::mt19937 random(seed);
    const auto pick = [&random](int below) {
        return static_cast<int>(random() % static_cast<unsigned>(below));
    };
    int closed = 0;
    for (int round = 0; round < 60; ++round) {
        std::vector<Part> parts{body("P", "ORB -8 female"), body("H", "HOSE PT -8"),
                                ring("AS568-908")};
        std::vector<Offer> offers{offer("AS568-908", 1)};
        for (int i = 0; i < 7; ++i) {
            const auto number = "A" + std::to_string(i);
            const auto dash = [&] { return std::to_string(6 + 2 * pick(2)); };
            const auto a = i < 2 ? std::string("ORB -8 male") : "AN -" + dash() + " female swivel";
            const auto b = "AN -" + dash() + " male";
            parts.push_back(i == 6
                                ? hoseEnd(number, 8, ("AN -" + dash() + " female swivel").c_str())
                                : piece(number, Kind::Adapter, a.c_str(), b.c_str()));
            offers.push_back(offer(number, 1 + pick(9)));
        }
        const auto catalogue = Catalogue::of(parts, {{"S", "S", 0}}, offers).value();
        const JointCloser closer(catalogue);
        std::vector<int> free;
        for (std::size_t i = 0; i < catalogue.parts().size(); ++i)
            free.push_back(pick(3));
        const FreeLeft left = [&](const Part &part) {
            return Decimal(free[catalogue.index(part)]);
        };
        JointRequest request;
        request.from = Port::parse("ORB -8 female").value();
        request.to = Port::parse("HOSE PT -8").value();
        request.piecesMax = 3;
        request.best = static_cast<std::size_t>(1 + pick(4));
        for (const auto preference : {Preference::Shelf, Preference::Joints, Preference::Money}) {
            request.preference = preference;
            const auto ours = keys(closer.ways(request, {}, left));
            QCOMPARE(ours, byBruteForce(catalogue, request, closer, left));
            closed += static_cast<int>(ours.size());
        }
    }
    QVERIFY(closed > 60);
}

QTEST_APPLESS_MAIN(JointClosingTest)
#include "tst_joint_closing.moc"
