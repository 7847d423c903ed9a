// SPDX-License-Identifier: MIT
//
// Closing a joint: which pieces, in which order, for each preference. What a fitter would take is
// worked out by hand; tst_ways_equal_brute_force has the outside check.

#include "tests/joints/joint_parts.h"
#include "tests/parts/suppliers.h"

#include <QTest>

using namespace flarestock;

class JointClosingTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void closesThePumpForEveryLine_data();
    void closesThePumpForEveryLine();
    void isOpenWhereNothingLeadsThere();
    void prefersTheShelf();
    void makesNoLongChainToSaveAPurchase();
    void prefersTheWayWithoutACaution();
    void throttlesNoLineToSaveAPurchase();
    void pushesNoTightHoseOverABarb();
    void judgesAPickAsItIs();
    void joinsNoTwoPiecesByATubeThatIsNotThere();
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
    const auto catalogue = Catalogue::of(parts, {tests::supplierOf("S", "S", 0)},
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

/// Everything but the short way's adapter is here. One piece more saves a purchase; two more would
/// be two more places to leak.
void JointClosingTest::makesNoLongChainToSaveAPurchase()
{
    std::vector<Part> parts{body("P", "ORB -8 female"),
                            body("H", "HOSE PT -10"),
                            ring("AS568-908"),
                            piece("ONE", Kind::Adapter, "ORB -8 male", "AN -10 male"),
                            piece("A-12", Kind::Adapter, "ORB -8 male", "AN -12 male"),
                            piece("B-16", Kind::Adapter, "AN -12 female swivel", "AN -16 male"),
                            piece("C-10", Kind::Adapter, "AN -16 female swivel", "AN -10 male"),
                            hoseEnd("HE", 10, "AN -10 female swivel")};
    const FreeLeft here = [](const Part &part) { return Decimal(part.number == "ONE" ? 0 : 1); };
    JointRequest request;
    request.from = Port::parse("ORB -8 female").value();
    request.to = Port::parse("HOSE PT -10").value();
    const auto catalogue = Catalogue::of(parts, {}, {}).value();
    QCOMPARE(keys(JointCloser(catalogue).ways(request, {}, here)),
             std::vector<std::string>{"ONE + HE"}); // two pieces, one of them to buy
    parts.push_back(piece("B-10", Kind::Adapter, "AN -12 female swivel", "AN -10 male"));
    const auto more = Catalogue::of(parts, {}, {}).value();
    QCOMPARE(keys(JointCloser(more).ways(request, {}, here)),
             (std::vector<std::string>{"A-12 + B-10 + HE", "ONE + HE"}));
    // Where no shorter way is there at all, a long one is taken.
    parts.erase(parts.begin() + 3);
    parts.pop_back();
    const auto fewer = Catalogue::of(parts, {}, {}).value();
    QCOMPARE(keys(JointCloser(fewer).ways(request, {}, here)),
             std::vector<std::string>{"A-12 + B-16 + C-10 + HE"});
}

/// AN on JIC fits with a caution (SAE AS4395 and SAE J514; a thread-gauge maker's note on UNJ
/// against UN threads), so that it stands behind what is made for it where the preference sees no
/// difference.
void JointClosingTest::prefersTheWayWithoutACaution()
{
    const auto catalogue =
        Catalogue::of({body("P", "ORB -6 female"), body("H", "HOSE PT -6"), ring("AS568-906"),
                       hoseEnd("HE", 6, "AN -6 female swivel"),
                       piece("CLEAN", Kind::Adapter, "ORB -6 male", "AN -6 male"),
                       piece("OTHER", Kind::Adapter, "ORB -6 male", "JIC -6 male")},
                      {tests::supplierOf("S", "S", 0)},
                      {offer("CLEAN", 3), offer("OTHER", 2), offer("HE", 5), offer("AS568-906", 1)})
            .value();
    const JointCloser closer(catalogue);
    JointRequest request;
    request.from = Port::parse("ORB -6 female").value();
    request.to = Port::parse("HOSE PT -6").value();
    const std::vector<std::string> cleanFirst{"CLEAN + HE", "OTHER + HE"};
    const std::vector<std::string> otherFirst{"OTHER + HE", "CLEAN + HE"};
    for (const auto preference : {Preference::Shelf, Preference::Joints}) {
        request.preference = preference;
        const auto ways = closer.ways(request, {}, NothingLeft);
        QCOMPARE(keys(ways), cleanFirst);
        QCOMPARE(ways[0].cautions(), 0);
        QCOMPARE(ways[1].cautions(), 1);
    }
    // What the preference is about comes before cautions.
    const FreeLeft here = [](const Part &part) { return Decimal(part.number == "OTHER" ? 1 : 0); };
    request.preference = Preference::Shelf;
    QCOMPARE(keys(closer.ways(request, {}, here)), otherFirst);
    request.preference = Preference::Money;
    QCOMPARE(keys(closer.ways(request, {}, NothingLeft)), otherFirst);
    // At the same price, the clean one although the other is here: cautions come before that.
    const Shelf stock{{"OTHER", {{1, Unit::Each}, {1, Unit::Each}, 3, {}, {}, {}}}};
    QCOMPARE(keys(closer.ways(request, stock, here)), cleanFirst);
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

QTEST_APPLESS_MAIN(JointClosingTest)
#include "tst_joint_closes_as_a_fitter_would.moc"
