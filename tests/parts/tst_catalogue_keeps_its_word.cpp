// SPDX-License-Identifier: MIT
//
// The catalogue: found whatever the case, in order, references spelt right, and what it refuses.

#include "model/exact/nearest_word.h"
#include "model/parts/catalogue.h"
#include "model/parts/free_stock.h"
#include "tests/parts/suppliers.h"

#include <QTest>

#include <algorithm>

using namespace flarestock;

class CatalogueTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void findsAPartWhateverTheCase();
    void listsKindsByNumber();
    void findsWhatHasAPort();
    void spellsReferencesAsThePartIsSpelt();
    void refusesWhatDoesNotHoldTogether_data();
    void refusesWhatDoesNotHoldTogether();
    void readsEveryKindItPrints();
    void namesTheKindThatWasMeant();
    void saysARatingWithItsBasis();
};

static Part partOf(std::string number, Kind kind = Kind::Adapter)
{
    Part part;
    part.number = std::move(number);
    part.kind = kind;
    return part;
}

static Offer offerOf(std::string part, std::vector<Offer::Break> breaks = {{1, 2}})
{
    return Offer{.part = std::move(part),
                 .supplier = "q",
                 .supplierNumber = "",
                 .pack = 1,
                 .minimum = 1,
                 .currency = Currency::parse("USD").value(),
                 .breaks = std::move(breaks),
                 .leadDays = 0};
}

void CatalogueTest::findsAPartWhateverTheCase()
{
    const auto catalogue = Catalogue::of({partOf("Pf-100"), partOf("AD-66")}, {}, {});
    QVERIFY(catalogue.has_value());
    QCOMPARE(catalogue->find("PF-100")->number, std::string("Pf-100"));
    QCOMPARE(catalogue->find("ad-66")->number, std::string("AD-66"));
    QVERIFY(!catalogue->find("AD-6"));
    for (const Part &part : catalogue->parts())
        QCOMPARE(&catalogue->parts()[catalogue->index(part)], &part);
    QVERIFY(Catalogue().ofKind(Kind::Pump).empty());
    QVERIFY(!Catalogue().find("AD-66"));
}

void CatalogueTest::listsKindsByNumber()
{
    const auto catalogue = Catalogue::of(
        {partOf("B", Kind::Pump), partOf("C", Kind::Pump), partOf("A", Kind::Pump), partOf("D")},
        {}, {});
    QVERIFY(catalogue.has_value());
    std::string order;
    for (const Part *part : catalogue->ofKind(Kind::Pump))
        order += part->number;
    QCOMPARE(order, std::string("ABC"));
}

static Part withPorts(std::string number, const std::vector<std::string> &ports)
{
    Part part = partOf(std::move(number));
    for (const std::string &port : ports)
        part.ports.push_back({port, Port::parse(port).value()});
    return part;
}

void CatalogueTest::findsWhatHasAPort()
{
    const auto catalogue = Catalogue::of({withPorts("D", {"AN -6 male", "AN -6 male"}),
                                          withPorts("B", {"ORB -6 male", "AN -6 female swivel"}),
                                          withPorts("C", {"AN -6 female", "AN -8 male"}),
                                          withPorts("A", {"BARB 3/8"}), partOf("E")},
                                         {}, {});
    QVERIFY(catalogue.has_value());
    const auto numbers = [&](const std::vector<std::string> &ports) {
        const Part asked = withPorts("asked", ports);
        std::vector<Port> some;
        for (const PartPort &port : asked.ports)
            some.push_back(port.port);
        std::string found;
        for (const PartIndex at : catalogue->withAny(some))
            found += catalogue->parts()[at].number;
        return found;
    };
    QCOMPARE(numbers({"AN -6 male"}), std::string("D"));
    QCOMPARE(numbers({"AN -6 female"}), std::string("BC")); // However it turns.
    QCOMPARE(numbers({"AN -6 female swivel", "ORB -6 male", "AN -6 male"}), std::string("BCD"));
    QCOMPARE(numbers({"BARB 3/8"}), std::string("A"));
    QCOMPARE(numbers({"JIC -6 male"}), std::string()); // Another standard.
    QCOMPARE(numbers({"AN -8 female"}), std::string());
    QCOMPARE(numbers({}), std::string());
}

void CatalogueTest::spellsReferencesAsThePartIsSpelt()
{
    Part pump = partOf("EP-1", Kind::Pump);
    pump.box = {{"br-1", 2}};
    pump.fitting = {{"BR-1", 1}};
    pump.substitutes = {"ep-2"};
    Part filter = partOf("PF-1", Kind::Filter);
    filter.facts = FilterFacts{.rating = {},
                               .medium = "",
                               .element = "EC-1",
                               .flowLh = {},
                               .cleanLossKpa = {},
                               .bypassKpa = {}};
    const auto catalogue = Catalogue::of(
        {pump, filter, partOf("Br-1"), partOf("Ep-2", Kind::Pump), partOf("Ec-1", Kind::Element)},
        {tests::supplierOf("Q", "Quick", 2)}, {offerOf("ep-1")});
    QVERIFY2(catalogue.has_value(), catalogue ? "" : catalogue.error().sentence().c_str());
    const Part &read = *catalogue->find("EP-1");
    QCOMPARE(read.box[0].part, std::string("Br-1"));
    QCOMPARE(read.fitting[0].part, std::string("Br-1"));
    QCOMPARE(read.substitutes[0], std::string("Ep-2"));
    QCOMPARE(catalogue->find("PF-1")->as<FilterFacts>()->element, std::string("Ec-1"));
    QCOMPARE(catalogue->offers(read)[0].part, std::string("EP-1"));
    QCOMPARE(catalogue->offers(read)[0].supplier, std::string("Q"));
}

struct Broken {
    std::vector<Part> parts;
    std::vector<Offer> offers;
};
Q_DECLARE_METATYPE(Broken)

void CatalogueTest::refusesWhatDoesNotHoldTogether_data()
{
    QTest::addColumn<Broken>("broken");
    QTest::addColumn<QString>("words");
    const auto row = [](const char *words, const Broken &broken) {
        QTest::newRow(words) << broken << words;
    };
    const auto with = [](auto change) {
        Part part = partOf("A", Kind::Filter);
        change(part);
        return std::vector<Part>{part, partOf("B")};
    };
    row("has no number", {{partOf("")}, {}});
    row("stands twice", {{partOf("A"), partOf("a")}, {}});
    row("what lies in its box \"Z\"", {with([](Part &a) { a.box = {{"Z", 1}}; }), {}});
    row("what fitting it takes \"Z\"", {with([](Part &a) { a.fitting = {{"Z", 1}}; }), {}});
    row("its substitute \"Z\"", {with([](Part &a) { a.substitutes = {"Z"}; }), {}});
    row("its substitute is the part itself", {with([](Part &a) { a.substitutes = {"a"}; }), {}});
    row("its element \"Z\"", {with([](Part &a) {
                                  FilterFacts facts;
                                  facts.element = "Z";
                                  a.facts = facts;
                              }),
                              {}});
    row("not an element but: adapter", {with([](Part &a) {
                                            FilterFacts facts;
                                            facts.element = "B";
                                            a.facts = facts;
                                        }),
                                        {}});
    row("its part \"Z\"", {{partOf("A")}, {offerOf("Z")}});
    row("has no price", {{partOf("A")}, {offerOf("A", {})}});
    row("do not rise", {{partOf("A")}, {offerOf("A", {{1, 3}, {5, 2}, {5, 1}})}});
    row("a price is below zero", {{partOf("A")}, {offerOf("A", {{1, -3}})}});
    row("no price for the least", {{partOf("A")}, {offerOf("A", {{2, 3}})}});
    Offer noPack = offerOf("A");
    noPack.pack = 0;
    row("the pack of an offer", {{partOf("A")}, {noPack}});
    Offer stranger = offerOf("A");
    stranger.supplier = "R";
    row("its supplier \"R\"", {{partOf("A")}, {stranger}});
}

void CatalogueTest::refusesWhatDoesNotHoldTogether()
{
    QFETCH(Broken, broken);
    QFETCH(QString, words);
    const auto made =
        Catalogue::of(broken.parts, {tests::supplierOf("Q", "Quick", 2)}, broken.offers);
    QVERIFY(!made.has_value());
    QVERIFY2(made.error().sentence().find(words.toStdString()) != std::string::npos,
             made.error().sentence().c_str());
}

void CatalogueTest::readsEveryKindItPrints()
{
    std::vector<std::string_view> words;
    for (std::size_t i = 0; i < KindCount; ++i) {
        const Kind kind = static_cast<Kind>(i);
        QCOMPARE(parseKind(text(kind)).value(), kind);
        std::string other(text(kind));
        std::replace(other.begin(), other.end(), ' ', '_');
        other[0] = static_cast<char>(other[0] - 'a' + 'A');
        QCOMPARE(parseKind(other).value(), kind);
        words.push_back(text(kind));
    }
    std::sort(words.begin(), words.end());
    QVERIFY(std::adjacent_find(words.begin(), words.end()) == words.end());
    QCOMPARE(text(Kind::Tool), std::string_view("tool"));
    QCOMPARE(text(Kind::RolloverValve), std::string_view("rollover valve"));
    QCOMPARE(text(Kind::Engine), std::string_view("engine"));
}

void CatalogueTest::namesTheKindThatWasMeant()
{
    QCOMPARE(parseKind("fitler").error().remedy, std::string("Perhaps \"filter\" is meant."));
    QCOMPARE(parseKind("caliper").error().remedy, std::string("Perhaps \"calliper\" is meant."));
    QVERIFY(!parseKind("").has_value());
    // Distances as the optimal string alignment defines them, worked by hand.
    QCOMPARE(edits("filter", "filter", 3), std::size_t{0});
    QCOMPARE(edits("fitler", "filter", 3), std::size_t{1}); // neighbours swapped
    QCOMPARE(edits("kitten", "sitting", 5), std::size_t{3});
    QCOMPARE(edits("ca", "abc", 5),
             std::size_t{3}); // where this distance differs from the full one
    QCOMPARE(edits("", "abcdef", 3), std::size_t{4}); // more than the limit
}

void CatalogueTest::saysARatingWithItsBasis()
{
    using Basis = RatingBasis;
    QCOMPARE((MicronRating{10, Basis::Absolute, Decimal(75)}.text()),
             std::string("10 µm absolute, beta 75"));
    QCOMPARE((MicronRating{40, Basis::Nominal, {}}.text()), std::string("40 µm nominal"));
    QCOMPARE((MicronRating{100, Basis::Unstated, {}}.text()), std::string("100 µm"));
    FreeStock stock;
    QCOMPARE(stock.carriedUnitCost(), Rational());
    stock.onHand = {240, Unit::Inch};
    stock.value = "64.90"_dec;
    // 64.90 for 240 in, 37.5 in of it: 10.140625, half-even to the cent 10.14.
    QCOMPARE(stock.carriedUnitCost().times("37.5"_dec).toDecimal(2, Rounding::HalfEven),
             "10.14"_dec);
}

QTEST_APPLESS_MAIN(CatalogueTest)
#include "tst_catalogue_keeps_its_word.moc"
