// SPDX-License-Identifier: MIT
//
// What a way takes is counted piece by piece: two of a part need two free, a price break that the
// second one earns is seen, an angle or a fluid rules pieces out. Prices are sums done by hand.

#include "model/joints/closing.h"
#include "tests/parts/suppliers.h"

#include <QTest>

using namespace flarestock;

namespace {

Part piece(const std::string &number, const char *a, const char *b)
{
    Part part;
    part.number = number;
    part.ports = {{"a", Port::parse(a).value(), PortRole::Either},
                  {"b", Port::parse(b).value(), PortRole::Either}};
    return part;
}

Part hoseEnd(const std::string &number, int angle)
{
    Part part = piece(number, "HOSE PT -6", "AN -6 female swivel");
    part.kind = Kind::HoseEnd;
    part.facts = HoseEndFacts{{"PT", "RB"}, 6, angle, {}, {}};
    return part;
}

/// Stands for a component or a hose, so that the catalogue knows its port.
Part body(const std::string &number, const char *port)
{
    Part part;
    part.number = number;
    part.kind = Kind::Pump;
    part.ports = {{"p", Port::parse(port).value(), PortRole::Either}};
    return part;
}

Offer offer(const std::string &part, std::vector<Offer::Break> breaks)
{
    return {part, "S", {}, 1, 1, 1, Currency::parse("USD").value(), std::move(breaks), 0};
}

std::vector<std::string> keys(const std::vector<Way> &ways)
{
    std::vector<std::string> said;
    for (const auto &way : ways)
        said.push_back(way.key());
    return said;
}

const FreeLeft NothingLeft = [](const Part &) { return Decimal(0); };

/// From a -6 flare to another: one coupling, or out to -8 and back through two alike.
Catalogue couplings()
{
    return Catalogue::of(
               {body("P", "AN -6 male"),
                piece("LONG", "AN -8 female swivel", "AN -8 female swivel"),
                piece("OUT", "AN -6 female swivel", "AN -8 male"),
                piece("SHORT", "AN -6 female swivel", "AN -6 female swivel")},
               {tests::supplierOf("S", "S", 0)},
               {offer("LONG", {{1, 1}}), offer("OUT", {{1, 10}, {2, 1}}), offer("SHORT", {{1, 5}})})
        .value();
}

/// The same two ways in three pieces and in two, so that both may come from the shelf.
Catalogue couplingsAndReducers()
{
    return Catalogue::of({body("P", "AN -6 male"),
                          piece("LONG", "AN -8 female swivel", "AN -8 female swivel"),
                          piece("OUT", "AN -6 female swivel", "AN -8 male"),
                          piece("TO-10", "AN -6 female swivel", "AN -10 male"),
                          piece("FROM-10", "AN -10 female swivel", "AN -6 female swivel")},
                         {tests::supplierOf("S", "S", 0)},
                         {offer("LONG", {{1, 1}}), offer("OUT", {{1, 10}, {2, 1}}),
                          offer("TO-10", {{1, 5}}), offer("FROM-10", {{1, 5}})})
        .value();
}

JointRequest flareToFlare(Preference preference)
{
    JointRequest request;
    request.from = request.to = Port::parse("AN -6 male").value();
    request.preference = preference;
    return request;
}

} // namespace

class WayCountTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void seesAPriceBreakThatTheSecondPieceEarns()
    {
        const auto catalogue = couplings();
        const JointCloser closer(catalogue);
        auto request = flareToFlare(Preference::Money);
        for (const std::size_t best : {1u, 2u}) {
            request.best = best;
            const auto ways = closer.ways(request, {}, NothingLeft);
            QCOMPARE(ways.size(), best);
            // One OUT costs 10, two cost 2 together: 2 + 1 is less than the 5 of SHORT.
            QCOMPARE(ways[0].key(), std::string("OUT + LONG + OUT"));
            QVERIFY(ways[0].cost == Decimal(3));
            QCOMPARE(ways[0].toBuy, 3);
        }
    }

    void needsTwoFreeForTwoAlike()
    {
        const auto catalogue = couplingsAndReducers();
        const JointCloser closer(catalogue);
        const auto request = flareToFlare(Preference::Shelf);
        const Shelf shelf{{"OUT", {{2, Unit::Each}, {2, Unit::Each}, 7, {}, {}, {}}},
                          {"LONG", {{1, Unit::Each}, {1, Unit::Each}, 2, {}, {}, {}}}};
        const auto free = [](int out) {
            return FreeLeft([out](const Part &part) {
                return Decimal(part.number == "OUT" ? out : part.number == "LONG" ? 1 : 0);
            });
        };
        const auto two = closer.ways(request, shelf, free(2));
        QCOMPARE(keys(two), (std::vector<std::string>{"OUT + LONG + OUT", "FROM-10 + TO-10",
                                                      "TO-10 + FROM-10"}));
        QCOMPARE(two[0].toBuy, 0);
        QVERIFY(two[0].cost == Decimal(9)); // carried: 2 × 3.50 + 2
        // With one of them gone the long way must buy one.
        const auto one = closer.ways(request, shelf, free(1));
        QCOMPARE(keys(one), (std::vector<std::string>{"OUT + LONG + OUT", "FROM-10 + TO-10",
                                                      "TO-10 + FROM-10"}));
        QCOMPARE(one[0].toBuy, 1);
        QVERIFY(one[0].cost == "15.5"_dec); // carried 3.50 and 2, one bought at 10
    }

    void takesOneBottleOfSealantForAllThreads()
    {
        Part bottle;
        bottle.number = "SEALANT";
        bottle.kind = Kind::Sealant;
        const auto catalogue =
            Catalogue::of({body("P", "NPT 3/8 female"), bottle,
                           piece("NIPPLE", "NPT 3/8 male", "NPT 3/8 male")},
                          {tests::supplierOf("S", "S", 0)},
                          {offer("SEALANT", {{1, 4}}), offer("NIPPLE", {{1, 2}})})
                .value();
        const JointCloser closer(catalogue);
        JointRequest request;
        request.from = request.to = Port::parse("NPT 3/8 female").value();
        const auto ways = closer.ways(request, {}, NothingLeft);
        QCOMPARE(keys(ways), std::vector<std::string>{"NIPPLE"});
        QCOMPARE(ways[0].aids.size(), std::size_t{1});
        QCOMPARE(ways[0].toBuy, 2);
        QVERIFY(ways[0].cost == Decimal(6)); // 2 for the nipple, 4 for one bottle
    }

    void takesNoHoseEndOfAnotherAngle()
    {
        const auto catalogue = Catalogue::of({body("P", "AN -6 male"), body("H", "HOSE RB -6"),
                                              hoseEnd("HE-0", 0), hoseEnd("HE-90", 90)},
                                             {}, {})
                                   .value();
        const JointCloser closer(catalogue);
        auto request = flareToFlare(Preference::Shelf);
        request.to = Port::parse("HOSE RB -6").value(); // the second hose that its maker lists
        QCOMPARE(keys(closer.ways(request, {}, NothingLeft)), std::vector<std::string>{"HE-0"});
        request.angleDegrees = 90;
        QCOMPARE(keys(closer.ways(request, {}, NothingLeft)), std::vector<std::string>{"HE-90"});
        request.angleDegrees = 45;
        QVERIFY(closer.ways(request, {}, NothingLeft).empty());
    }

    void keepsOutWhatTheFluidRuins()
    {
        Part listed = piece("B-LISTED", "AN -6 female swivel", "AN -6 female swivel");
        listed.suits = {Fluid::Gasoline};
        Part sealed = piece("A-SEALED", "AN -6 female swivel", "AN -6 female swivel");
        sealed.seal = "EPDM"; // never in petroleum: an O-ring maker's design guide
        const auto catalogue = Catalogue::of({body("P", "AN -6 male"), listed, sealed}, {}, {});
        const JointCloser closer(*catalogue);
        auto request = flareToFlare(Preference::Shelf);
        QCOMPARE(keys(closer.ways(request, {}, NothingLeft)),
                 (std::vector<std::string>{"A-SEALED", "B-LISTED"}));
        request.fluid = Fluid::Gasoline;
        QCOMPARE(keys(closer.ways(request, {}, NothingLeft)), std::vector<std::string>{"B-LISTED"});
        request.fluid = Fluid::Dot4;
        QCOMPARE(keys(closer.ways(request, {}, NothingLeft)), std::vector<std::string>{"A-SEALED"});
    }
};

QTEST_APPLESS_MAIN(WayCountTest)
#include "tst_way_is_counted_exactly.moc"
