// SPDX-License-Identifier: MIT
//
// What must be bought and from whom: whole packs, minimum, and price breaks where more costs less.
// Outside check: brute force over every quantity that can be bought, and a worked example.

#include "model/parts/catalogue.h"
#include "tests/parts/suppliers.h"

#include <QTest>

#include <cstdlib>
#include <random>

using namespace flarestock;

class CheapestPurchaseTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void followsTheWorkedExample_data();
    void followsTheWorkedExample();
    void isNeverBeatenByAnyOtherQuantity();
    void takesTheCheaperSupplierForWhatMustBeBought();
    void breaksTiesByLeadThenSupplier();
    void comparesOnlyOneCurrency();
    void takesTheMainCurrencyWhereNoneIsSaid();
};

static Offer offerOf(std::string supplier, std::vector<Offer::Break> breaks, Decimal pack = 1,
                     Decimal minimum = 1)
{
    return Offer{.part = "AD-66",
                 .supplier = std::move(supplier),
                 .supplierNumber = "",
                 .pack = std::move(pack),
                 .minimum = std::move(minimum),
                 .currency = Currency::parse("USD").value(),
                 .breaks = std::move(breaks),
                 .leadDays = 3};
}

static Catalogue catalogueOf(std::vector<Offer> offers)
{
    Part part;
    part.number = "AD-66";
    std::vector<Part> parts;
    parts.push_back(std::move(part));
    auto made = Catalogue::of(std::move(parts),
                              {tests::supplierOf("A", "A", 3), tests::supplierOf("B", "B", 3),
                               tests::supplierOf("C", "C", 3)},
                              std::move(offers));
    return std::move(made.value());
}

static const std::vector<Offer::Break> FourPrices = {
    {1, "4.20"_dec}, {10, "3.85"_dec}, {50, "3.30"_dec}, {100, "3.10"_dec}};

void CheapestPurchaseTest::followsTheWorkedExample_data()
{
    QTest::addColumn<int>("need");
    QTest::addColumn<int>("quantity");
    QTest::addColumn<QString>("cost");
    // 4.20 / 3.85 (10+) / 3.30 (50+) / 3.10 (100+), worked by hand.
    QTest::newRow("1 at 4.20") << 1 << 1 << "4.20";
    QTest::newRow("9 at 4.20 are 37.80, 10 at 3.85 are 38.50") << 9 << 9 << "37.80";
    QTest::newRow("10 at 3.85") << 10 << 10 << "38.50";
    QTest::newRow("42 at 3.85 are 161.70, 50 at 3.30 are 165.00") << 42 << 42 << "161.70";
    QTest::newRow("43 at 3.85 are 165.55, 50 at 3.30 are 165.00") << 43 << 50 << "165.00";
    QTest::newRow("93 at 3.30 are 306.90, 100 at 3.10 are 310.00") << 93 << 93 << "306.90";
    QTest::newRow("94 at 3.30 are 310.20, 100 at 3.10 are 310.00") << 94 << 100 << "310.00";
    QTest::newRow("250 at 3.10") << 250 << 250 << "775.00";
    QTest::newRow("nothing needed: the least that can be bought") << 0 << 1 << "4.20";
}

void CheapestPurchaseTest::followsTheWorkedExample()
{
    QFETCH(int, need);
    QFETCH(int, quantity);
    QFETCH(QString, cost);
    const Offer offer = offerOf("A", FourPrices);
    const Purchase bought = cheapestPurchase(offer, need);
    QCOMPARE(bought.quantity, Decimal(quantity));
    QCOMPARE(bought.cost, Decimal::parse(cost.toStdString()).value());
}

/// Against every multiple of the pack from the minimum up to far beyond the last break.
void CheapestPurchaseTest::isNeverBeatenByAnyOtherQuantity()
{
    const char *given = std::getenv("FLARESTOCK_SEED");
    const auto seed = given ? std::strtoul(given, nullptr, 10) : std::random_device{}();
    qDebug("FLARESTOCK_SEED=%lu", static_cast<unsigned long>(seed));
    std::mt19937_64 random(seed);
    const auto upTo = [&random](int most) {
        return 1 + static_cast<int>(random() % static_cast<unsigned>(most));
    };
    int swept = 0;
    for (int round = 0; round < 400; ++round) {
        const int pack = upTo(12);
        const int minimum = upTo(20);
        std::vector<Offer::Break> breaks = {{1, Decimal::scaled(upTo(900), 2)}};
        for (int more = upTo(4); more > 1; --more)
            breaks.push_back(
                {breaks.back().from + Decimal(upTo(30)), Decimal::scaled(upTo(900), 2)});
        const Offer offer = offerOf("A", breaks, pack, minimum);
        const int need = upTo(120);
        const Purchase bought = cheapestPurchase(offer, need);
        std::optional<Decimal> least;
        for (int quantity = pack; quantity < 400; quantity += pack) {
            if (quantity < need || quantity < minimum)
                continue;
            const Decimal cost = Decimal(quantity) * offer.priceEach(quantity);
            least = least ? std::min(*least, cost) : cost;
            ++swept;
        }
        QVERIFY(least.has_value());
        QCOMPARE(bought.cost, *least);
        QVERIFY(bought.quantity >= Decimal(std::max(need, minimum)));
        QVERIFY(remainder(bought.quantity, pack).isZero());
        QCOMPARE(bought.cost, bought.quantity * offer.priceEach(bought.quantity));
    }
    QVERIFY(swept > 10'000);
}

void CheapestPurchaseTest::takesTheCheaperSupplierForWhatMustBeBought()
{
    // 3 needed. A: 3 × 2.00 = 6.00. B: a pack of 10 at 0.50 = 5.00. C: a minimum of 4 at 1.40
    // = 5.60.
    const Catalogue catalogue =
        catalogueOf({offerOf("A", {{1, "2.00"_dec}}), offerOf("B", {{1, "0.50"_dec}}, 10),
                     offerOf("C", {{1, "1.40"_dec}}, 1, 4)});
    const Part &part = *catalogue.find("ad-66");
    QCOMPARE(catalogue.bestOffer(part, 3)->supplier, std::string("B"));
    QCOMPARE(catalogue.bestPurchase(part, 3)->quantity, Decimal(10));
    QCOMPARE(catalogue.bestOffer(part, 2)->supplier, std::string("A"));  // 4.00, 5.00, 5.60
    QCOMPARE(catalogue.bestOffer(part, 11)->supplier, std::string("B")); // 22.00, 10.00, 15.40
    QCOMPARE(catalogue.offers(part).size(), std::size_t{3});
}

void CheapestPurchaseTest::breaksTiesByLeadThenSupplier()
{
    Offer late = offerOf("A", {{1, "2.00"_dec}});
    late.leadDays = 9;
    const Catalogue catalogue =
        catalogueOf({late, offerOf("C", {{1, "2.00"_dec}}), offerOf("B", {{1, "2.0"_dec}})});
    QCOMPARE(catalogue.bestOffer(*catalogue.find("AD-66"), 5)->supplier, std::string("B"));
}

void CheapestPurchaseTest::comparesOnlyOneCurrency()
{
    Offer yen = offerOf("A", {{1, "1.00"_dec}});
    yen.currency = Currency::parse("JPY").value();
    const Catalogue catalogue = catalogueOf({yen, offerOf("B", {{1, "2.00"_dec}})});
    const Part &part = *catalogue.find("AD-66");
    QCOMPARE(catalogue.bestOffer(part, 1, Currency::parse("USD").value())->supplier,
             std::string("B"));
    QCOMPARE(catalogue.bestOffer(part, 1, Currency::parse("JPY").value())->supplier,
             std::string("A"));
    QVERIFY(!catalogue.bestOffer(part, 1, Currency::parse("EUR").value()));
}

void CheapestPurchaseTest::takesTheMainCurrencyWhereNoneIsSaid()
{
    // 0.90 in EUR is a lower number than 1.00 in USD, and comes first by its code.
    Offer euros = offerOf("A", {{1, "0.90"_dec}});
    euros.currency = Currency::parse("EUR").value();
    const Catalogue catalogue =
        catalogueOf({euros, offerOf("B", {{1, "1.00"_dec}}), offerOf("C", {{1, "2.00"_dec}})});
    const Part &part = *catalogue.find("AD-66");
    QCOMPARE(catalogue.bestOffer(part, 1)->supplier, std::string("B"));
    const Catalogue alone = catalogueOf({euros});
    QCOMPARE(alone.bestOffer(*alone.find("AD-66"), 1)->supplier, std::string("A"));
}

QTEST_APPLESS_MAIN(CheapestPurchaseTest)
#include "tst_purchase_is_the_cheapest.moc"
