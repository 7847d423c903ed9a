// SPDX-License-Identifier: MIT
//
// The demo shop is whole: its files go through the readers of a real shop's files, it has a part of
// every kind and every port family, and every template gives a bill that can be built as its
// questions stand. The numbers of parts, suppliers and templates are those that the demo promises.

#include "tests/demo/demo_shop.h"

#include <map>
#include <set>

using namespace flarestock;

namespace {

/// On purpose without a price in the shop's currency: engines and the gearbox are the car's own,
/// nobody sells the one hose end, and one adapter is sold in another currency only.
bool isUnpricedOnPurpose(const Part &part)
{
    return part.kind == Kind::Engine || part.number == "HE-6-FS" || part.number == "JD-14-6";
}

bool nobodyUsesItAlone(const Template &form)
{
    return form.id == "filters-around-pump" || form.id == "strained-pump" ||
           form.id == "brake-axle";
}

std::string sayJoint(const Expansion &build, const PlacedJoint &joint)
{
    return build.templateId + ", " + joint.id + ": " + joint.from.text() + " to " + joint.to.text();
}

/// Every combination of the choices of a template; the one answer that is meant to leave a joint
/// open is left out.
std::vector<Answers> combinationsOf(const Template &form)
{
    std::vector<Answers> all{{}};
    for (const Question &question : form.questions) {
        auto choices = question.choices;
        if (question.form == Question::Form::YesNo)
            choices = {"yes", "no"};
        std::erase(choices, "heat exchanger");
        if (choices.empty() || question.workedOut) // What another size leaves open is told.
            continue;
        std::vector<Answers> more;
        for (const Answers &answers : all)
            for (const std::string &choice : choices) {
                more.push_back(answers);
                more.back()[question.id] = choice;
            }
        all = std::move(more);
    }
    return all;
}

void verifyBuildable(const Expansion &build)
{
    for (const PlacedStation &station : build.stations)
        QVERIFY2(station.part, (build.templateId + ", " + station.id + ": " + station.why).c_str());
    for (const PlacedRun &run : build.runs)
        QVERIFY2(run.line || run.wanted.empty(),
                 (build.templateId + ", " + run.id + ": no " + run.wanted).c_str());
    for (const PlacedJoint &joint : build.joints) {
        QVERIFY2(joint.way, sayJoint(build, joint).c_str());
        QVERIFY2(fits(joint.way->verdict()), sayJoint(build, joint).c_str());
        for (const WayAid &aid : joint.way->aids)
            QVERIFY2(aid.part, (sayJoint(build, joint) + " needs " + aid.need.text()).c_str());
    }
    QVERIFY2(build.notes.empty(), build.notes.empty() ? "" : build.notes.front().c_str());
}

/// Of its flow a well-built fuel system says nothing at all; where nobody states a flow, or of oil
/// what a filter takes, it says that.
bool isOnlyNotKnown(const Finding &finding, const Expansion &build)
{
    return finding.about == "Flow could not be judged" ||
           (build.system != "fuel" && finding.severity == Severity::Note);
}

void verifyNothingStops(const Expansion &build, const DemoShop &shop)
{
    for (const Finding &finding : check(build, shop.catalogue, shop.shelf))
        QVERIFY2(finding.severity != Severity::Stop &&
                     (finding.matter != Matter::Flow || isOnlyNotKnown(finding, build)),
                 (build.templateId + ": " + finding.about + " " + finding.text).c_str());
}

/// What flows in a system whose pump is known is worked out to its last line.
void verifyFlow(const Expansion &build)
{
    const auto flow = systemFlow(build, conditionsOf(build), 20);
    QVERIFY2(!flow.deliveries.empty(), build.templateId.c_str());
    for (const Delivery &delivery : flow.deliveries) {
        QVERIFY2(delivery.reach == CurveReach::Within && delivery.picture &&
                     !delivery.pressures.empty(),
                 (build.templateId + " to " + delivery.to).c_str());
        for (const PumpAtWork &pump : delivery.pumps)
            QVERIFY2(pump.inlet, (build.templateId + ", " + pump.station).c_str());
    }
    for (const PlacedRun &run : build.runs)
        QVERIFY2(flow.run(run.id) || run.joints.size() < 2,
                 (build.templateId + ", " + run.id).c_str());
}

} // namespace

class DemoShopTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void holdsAtLeast450Parts();
    void hasAPartOfEveryKind();
    void hasEveryPortFamily();
    void buysFromSixSuppliers();
    void pricesEverythingButWhatIsUnpricedOnPurpose();
    void keepsStockInBinsShelvesAndTheTrailer();
    void cutsHoseFromPiecesWithALot();
    void hasTwelveTemplatesAndThreeCars();
    void everyTemplateIsBuildableAsItsQuestionsStand_data();
    void everyTemplateIsBuildableAsItsQuestionsStand();
    void everyCombinationOfChoicesIsBuildable_data();
    void everyCombinationOfChoicesIsBuildable();
    void morePowerMakesTheLinesThicker();
    void aPumpOfTwoSizesJoinsEverySupplyAndPressureLine();
};

void DemoShopTest::holdsAtLeast450Parts()
{
    QVERIFY(DemoShop::it().catalogue.parts().size() >= 450);
}

void DemoShopTest::hasAPartOfEveryKind()
{
    for (std::size_t i = 0; i < KindCount; ++i) {
        const auto kind = static_cast<Kind>(i);
        QVERIFY2(!DemoShop::it().catalogue.ofKind(kind).empty(), std::string(text(kind)).c_str());
    }
}

void DemoShopTest::hasEveryPortFamily()
{
    std::set<Family> seen;
    for (const Part &part : DemoShop::it().catalogue.parts())
        for (const PartPort &port : part.ports)
            seen.insert(port.port.family);
    for (std::size_t i = 0; i < FamilyCount; ++i) {
        const auto family = static_cast<Family>(i);
        QVERIFY2(seen.contains(family), std::string(text(family)).c_str());
    }
}

void DemoShopTest::buysFromSixSuppliers()
{
    const Catalogue &catalogue = DemoShop::it().catalogue;
    std::set<std::string> selling;
    std::set<std::pair<std::string, std::string>> offers;
    for (const Part &part : catalogue.parts())
        for (const Offer &offer : catalogue.offers(part)) {
            selling.insert(offer.supplier);
            QVERIFY2(offers.emplace(offer.part, offer.supplier).second,
                     (offer.supplier + " offers " + offer.part + " twice").c_str());
        }
    QCOMPARE(catalogue.suppliers().size(), std::size_t{6});
    QCOMPARE(selling.size(), std::size_t{6});
}

void DemoShopTest::pricesEverythingButWhatIsUnpricedOnPurpose()
{
    const Catalogue &catalogue = DemoShop::it().catalogue;
    for (const Part &part : catalogue.parts()) {
        const auto offers = catalogue.offers(part);
        const bool priced = std::any_of(offers.begin(), offers.end(), [](const Offer &offer) {
            return offer.currency.code() == "USD";
        });
        QVERIFY2(priced != isUnpricedOnPurpose(part), part.number.c_str());
        QVERIFY2(offers.size() <= 4, part.number.c_str());
    }
}

void DemoShopTest::keepsStockInBinsShelvesAndTheTrailer()
{
    const DemoShop &shop = DemoShop::it();
    QVERIFY(shop.stock.size() >= 250);
    std::set<PlaceKind> kinds;
    for (const OpeningStock &row : shop.stock)
        for (const Place &place : shop.shop.places)
            if (place.id == row.place)
                kinds.insert(place.kind);
    QCOMPARE(kinds, (std::set<PlaceKind>{PlaceKind::Shelf, PlaceKind::Bin, PlaceKind::Drawer}));
}

void DemoShopTest::cutsHoseFromPiecesWithALot()
{
    const DemoShop &shop = DemoShop::it();
    int cut = 0;
    for (const auto &[number, stock] : shop.shelf) {
        const Part *part = shop.catalogue.find(number);
        if (!isLength(part->unit))
            continue;
        ++cut;
        QVERIFY2(!stock.pieces.empty(), number.c_str());
    }
    QVERIFY(cut >= 12);
    QVERIFY(shop.shelf.find("PT-6")->second.pieces.size() >= 3);
}

void DemoShopTest::hasTwelveTemplatesAndThreeCars()
{
    const DemoShop &shop = DemoShop::it();
    const auto whole = std::count_if(shop.book->begin(), shop.book->end(), [](const auto &entry) {
        return !nobodyUsesItAlone(*entry.second);
    });
    QCOMPARE(whole, std::ptrdiff_t{12});
    const auto &places = shop.shop.places;
    const auto cars = std::count_if(places.begin(), places.end(), [](const Place &place) {
        return place.kind == PlaceKind::Car;
    });
    QCOMPARE(cars, std::ptrdiff_t{3});
}

void DemoShopTest::everyTemplateIsBuildableAsItsQuestionsStand_data()
{
    QTest::addColumn<QString>("id");
    for (const auto &[id, form] : *DemoShop::it().book)
        QTest::newRow(form->title.c_str()) << QString::fromStdString(id);
    QVERIFY(DemoShop::it().book->size() >= 12);
}

void DemoShopTest::everyTemplateIsBuildableAsItsQuestionsStand()
{
    QFETCH(QString, id);
    const DemoShop &shop = DemoShop::it();
    const Template &form = *shop.book->at(id.toStdString());
    const Expansion build = shop.expanded(shop.request(form.id));
    verifyBuildable(build);
    for (const PlacedJoint &joint : build.joints)
        QVERIFY2(joint.way->verdict() == Verdict::Fits, sayJoint(build, joint).c_str());
    // An adapter and a hose end, no chain of them; from the shelf it may be one piece longer.
    ExpandRequest fewest = shop.request(form.id);
    fewest.preference = Preference::Joints;
    const Expansion bought = shop.expanded(fewest);
    for (const PlacedJoint &joint : bought.joints)
        QVERIFY2(joint.way && joint.way->pieces.size() <= 2, sayJoint(bought, joint).c_str());
    if (nobodyUsesItAlone(form))
        return;
    verifyNothingStops(build, shop);
    if (form.system == "fuel" && form.id != "gravity-feed")
        verifyFlow(build);
}

void DemoShopTest::everyCombinationOfChoicesIsBuildable_data()
{
    everyTemplateIsBuildableAsItsQuestionsStand_data();
}

void DemoShopTest::everyCombinationOfChoicesIsBuildable()
{
    QFETCH(QString, id);
    const DemoShop &shop = DemoShop::it();
    const auto all = combinationsOf(*shop.book->at(id.toStdString()));
    QVERIFY(!all.empty());
    for (const Answers &answers : all) {
        ExpandRequest asked = shop.request(id.toStdString());
        asked.answers = answers;
        verifyBuildable(shop.expanded(asked));
        if (QTest::currentTestFailed())
            return;
    }
}

/// At 1 m/s (judgement) 10.4 mm carry 307 L/h: enough for the pump of 255, not for that of 460.
void DemoShopTest::morePowerMakesTheLinesThicker()
{
    const DemoShop &shop = DemoShop::it();
    ExpandRequest asked = shop.request("injection-frame-rail");
    const std::map<std::string, int> supplies{{"300 hp", 8}, {"520 hp", 12}};
    for (const auto &[power, dash] : supplies) {
        asked.answers["power"] = power;
        QCOMPARE(shop.expanded(asked).run("supply")->dash, dash);
    }
}

/// The pump of the demo takes O-ring boss -8 and gives -6; no one has to choose an adapter.
void DemoShopTest::aPumpOfTwoSizesJoinsEverySupplyAndPressureLine()
{
    const DemoShop &shop = DemoShop::it();
    const Part *pump = shop.catalogue.find("EP-460");
    QVERIFY(pump);
    const auto closed = [&](std::string_view port, const std::string &hose) {
        JointRequest asked;
        asked.from = pump->port(port)->port;
        asked.to = readOrEnd(Port::parse(hose));
        asked.fluid = Fluid::E85;
        const auto ways = shop.closer.ways(asked, shop.shelf, [&](const Part &part) {
            const auto on = shop.shelf.find(part.number);
            return on == shop.shelf.end() ? Decimal() : on->second.free.amount;
        });
        return !ways.empty() && ways.front().pieces.size() <= 2;
    };
    for (const char *hose : {"HOSE PT -6", "HOSE PT -8", "HOSE PT -10"})
        QVERIFY2(closed("in", hose), hose);
    for (const char *hose : {"HOSE PT -6", "HOSE PT -8"})
        QVERIFY2(closed("out", hose), hose);
}

QTEST_APPLESS_MAIN(DemoShopTest)
#include "tst_demo_shop_is_whole.moc"
