// SPDX-License-Identifier: MIT
//
// Where a line's pieces lie: what is allotted is what was got, what is here and what is in the
// trailer, no more than lies there, and nothing of it is counted twice.
// Checked against counts by hand and, over random shops, against sums over the balances.

#include "model/netting/lying.h"
#include "tests/journal/few_places.h"
#include "tests/netting/small_shop.h"

#include <QTest>

#include <random>

using namespace flarestock;
using namespace flarestock::tests;

namespace {

constexpr std::int64_t Inch = 203'200; // Of 125 nm.

std::vector<Place> placesWithTransit()
{
    auto places = fewPlaces();
    places.push_back({"in-transit", "on its way", PlaceKind::InTransit});
    return places;
}

/// A shop of one part with what lies where, and a line of a build that wants some of it.
struct OneLine {
    Ledger ledger{placesWithTransit()};
    Catalogue catalogue;
    Expansion expansion;
    Shelf shelf;
    std::uint32_t moves = 0;
    const char *build = "coupe";

    OneLine(const char *number, Unit unit, const char *need,
            const std::vector<std::string> &cuts = {}, Kind kind = Kind::Adapter)
    {
        SmallShop shop;
        shop.part(number, unit, kind);
        catalogue = shop.catalogue();
        expansion.lines.push_back(needOf(catalogue, number, need, cuts));
    }

    void lies(const char *place, std::int64_t quantity, const std::string &lot = {})
    {
        Movement movement = moved(++moves, quantity, "opening", place, 0);
        movement.part = expansion.lines.front().part->number;
        movement.lot = lot;
        QVERIFY(!ledger.apply(movement));
    }
    void issue(const char *from, std::int64_t quantity)
    {
        Movement movement = moved(++moves, quantity, from, "car-1");
        movement.part = expansion.lines.front().part->number;
        movement.deed = Deed::Issue;
        movement.document = build;
        QVERIFY(!carriedOut(ledger, movement));
    }
    void promise(const char *to, std::int64_t quantity)
    {
        Promise promise;
        promise.id = idNumber(++moves);
        promise.build = to;
        promise.part = expansion.lines.front().part->number;
        promise.quantity = quantity;
        QVERIFY(!ledger.apply(promise));
    }

    PricedLine priced()
    {
        const Part &part = *expansion.lines.front().part;
        shelf = ledger.shelf(catalogue, {build, nullptr});
        const auto got = Quantity::ofSmallest(ledger.claim({part.number, build}).issued, part.unit);
        FreeStock &stock = shelf[part.number];
        stock.onHand = {stock.onHand.amount + got.amount, part.unit};
        stock.free = {stock.free.amount + got.amount, part.unit};
        if (isLength(part.unit) && got.amount.sign() > 0)
            stock.pieces.push_back(got);
        return price(expansion, catalogue, shelf, *Currency::parse("USD")).lines.front();
    }
    Lying lying() { return lyingOf(priced(), ledger, {build, nullptr}); }
};

Lying figures(const char *got, const char *here, const char *inTrailer, const char *onTheWay)
{
    return {*Decimal::parse(got), *Decimal::parse(here), *Decimal::parse(inTrailer),
            *Decimal::parse(onTheWay)};
}

} // namespace

class LineSaysWhereItsPiecesLie : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void theShopComesBeforeTheTrailer();
    void whatWasGotIsInTheCar();
    void whatOthersArePromisedIsNotCounted();
    void onlyWhatIsShortIsOnTheWay();
    void hoseIsCountedInWholeCuts();
    void aToolOfAnotherBuildStillCounts();
    void sumsHoldOverRandomShops();
};

void LineSaysWhereItsPiecesLie::theShopComesBeforeTheTrailer()
{
    OneLine line("AD-8", Unit::Each, "5");
    line.lies("trailer-2", 4);
    line.lies("A1", 2);
    line.lies("SH-1", 1);
    QCOMPARE(line.lying(), figures("0", "3", "2", "0"));
    line.lies("A1", 7);
    QCOMPARE(line.lying(), figures("0", "5", "0", "0"));
}

void LineSaysWhereItsPiecesLie::whatWasGotIsInTheCar()
{
    OneLine line("AD-8", Unit::Each, "5");
    line.lies("A1", 2);
    line.lies("trailer-2", 2);
    line.promise("coupe", 4);
    line.issue("A1", 1);
    QCOMPARE(line.lying(), figures("1", "1", "2", "0"));
    line.issue("A1", 1);
    line.issue("trailer-2", 2);
    QCOMPARE(line.lying(), figures("4", "0", "0", "0"));
}

void LineSaysWhereItsPiecesLie::whatOthersArePromisedIsNotCounted()
{
    OneLine line("AD-8", Unit::Each, "5");
    line.lies("A1", 3);
    line.lies("trailer-2", 3);
    line.promise("roadster", 4); // Three of the bin, the nearest, and one of the drawer.
    QCOMPARE(line.lying(), figures("0", "0", "2", "0"));
}

void LineSaysWhereItsPiecesLie::onlyWhatIsShortIsOnTheWay()
{
    OneLine line("AD-8", Unit::Each, "5");
    line.lies("in-transit", 4);
    line.lies("A1", 2);
    QCOMPARE(line.lying(), figures("0", "2", "0", "3"));
    QCOMPARE(line.priced().shortBy, Decimal(3)); // On its way is not here yet.
    line.lies("A1", 3);
    QCOMPARE(line.lying(), figures("0", "5", "0", "0"));
}

/// Cuts of 60, 40 and 30 in. The 50 in in the shop give 40 in, the 100 in of the trailer the
/// others.
void LineSaysWhereItsPiecesLie::hoseIsCountedInWholeCuts()
{
    OneLine line("HO-8", Unit::Inch, "130", {"60", "40", "30"}, Kind::Hose);
    line.lies("SH-1", 50 * Inch, "coil 1");
    QCOMPARE(line.lying(), figures("0", "40", "0", "0"));
    line.lies("trailer-2", 100 * Inch, "coil 2");
    QCOMPARE(line.lying(), figures("0", "40", "90", "0"));
    line.lies("in-transit", 20 * Inch, "coil 3");
    QCOMPARE(line.lying(), figures("0", "40", "90", "0"));
}

void LineSaysWhereItsPiecesLie::aToolOfAnotherBuildStillCounts()
{
    OneLine line("TL-37", Unit::Each, "1", {}, Kind::Tool);
    line.lies("trailer-2", 1);
    line.promise("roadster", 1);
    QCOMPARE(line.lying(), figures("0", "0", "1", "0"));
}

void LineSaysWhereItsPiecesLie::sumsHoldOverRandomShops()
{
    const auto seed = qEnvironmentVariableIsSet("FLARESTOCK_SEED")
                          ? qEnvironmentVariable("FLARESTOCK_SEED").toULongLong()
                          : std::random_device()();
    qInfo("FLARESTOCK_SEED=%llu", static_cast<unsigned long long>(seed));
    std::mt19937_64 random(seed);
    const auto upTo = [&random](std::int64_t most) {
        return static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(most + 1));
    };
    for (int round = 0; round < 400; ++round) {
        OneLine line("AD-8", Unit::Each, std::to_string(1 + upTo(9)).c_str());
        std::map<std::string, std::int64_t> held;
        for (const char *place : {"A1", "SH-1", "trailer-2", "in-transit"}) {
            held[place] = upTo(4);
            if (held[place] > 0)
                line.lies(place, held[place]);
        }
        const std::int64_t usable = held["A1"] + held["SH-1"] + held["trailer-2"];
        const std::int64_t others = upTo(usable);
        if (others > 0)
            line.promise("roadster", others);
        const PricedLine priced = line.priced();
        const Lying lying = lyingOf(priced, line.ledger, {line.build, nullptr});
        QCOMPARE(lying.got + lying.here + lying.inTrailer, priced.free);
        QVERIFY(lying.here <= Decimal(held["A1"] + held["SH-1"]));
        QVERIFY(lying.inTrailer <= Decimal(held["trailer-2"]));
        const std::int64_t missing = priced.shortBy.toInt64().value();
        QCOMPARE(lying.onTheWay, Decimal(std::min(held["in-transit"], missing)));
        // The trailer only gives what the shop has not.
        if (lying.inTrailer.sign() > 0)
            QCOMPARE(lying.here,
                     Decimal(std::max<std::int64_t>(0, held["A1"] + held["SH-1"] - others)));
    }
}

QTEST_APPLESS_MAIN(LineSaysWhereItsPiecesLie)
#include "tst_line_says_where_its_pieces_lie.moc"
