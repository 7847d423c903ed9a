// SPDX-License-Identifier: MIT
//
// One fuel feed worked out: every size of line against a pump whose ports are boss -8 in and -6
// out, and everything else that goes on a bill.
//
// SAE J1926-1 and AS568: an O-ring boss -6 takes ring 906, -8 ring 908, -10 ring 910.

#include "tests/systems/bench.h"

#include <QTest>

using namespace flarestock;

class TemplateBecomesABill : public QObject {
    Q_OBJECT

private:
    static Bench bench();
    static Template form();
    static std::string keyOf(const Expansion &build, std::string_view joint);

private Q_SLOTS:
    void joinsAPumpToEverySizeOfLine_data();
    void joinsAPumpToEverySizeOfLine();
    void givesEachLineItsReasonsInFlowOrder();
    void roundsALengthUpToTheTape();
    void takesWhatFittingNeedsAndTheBoxLacks();
    void countsClampsSparesAndTools();
    void plugsWhatNoRunUses();
    void joinsTwoPortsWithoutALine();
    void saysHowARunRises();
    void saysWhatIsOpen();
    void refusesWhatCannotBeCounted();
};

Bench TemplateBecomesABill::bench()
{
    Bench made;
    made.hose("PT");
    made.adapters();
    made.part("FC-1", Kind::Tank, "out: ORB -10 female");
    made.part("EP-460", Kind::Pump, "in: ORB -8 female; out: ORB -6 female");
    made.part("RG-1", Kind::Regulator, "in: ORB -6 female; gauge: ORB -6 female");
    made.part("PL-6", Kind::Plug, "end: ORB -6 male");
    made.part("PL-8", Kind::Plug, "end: ORB -8 male");
    for (const char *number : {"FC-1", "EP-460", "RG-1", "PL-6", "PL-8"})
        made.offer(number, "100.00");
    return made;
}

Template TemplateBecomesABill::form()
{
    Template made;
    made.id = "feed";
    made.questions = {choice("supply", {"-8", "-6", "-10"}), choice("pressure", {"-6", "-8"}),
                      measure("length", Dimension::Length, "5 ft 6 in")};
    made.stations = {station("cell", Kind::Tank), station("pump", Kind::Pump),
                     station("regulator", Kind::Regulator)};
    made.runs = {run("supply", "cell.out", "pump.in", "{supply}", "{length}"),
                 run("pressure", "pump.out", "regulator.in", "{pressure}", "4 ft")};
    return made;
}

std::string TemplateBecomesABill::keyOf(const Expansion &build, std::string_view id)
{
    const PlacedJoint *joint = build.joint(id);
    return joint && joint->way ? joint->way->key() : "open";
}

void TemplateBecomesABill::joinsAPumpToEverySizeOfLine_data()
{
    QTest::addColumn<QString>("supply");
    QTest::addColumn<QString>("pressure");
    QTest::addColumn<QString>("atInlet");
    QTest::addColumn<QString>("atOutlet");
    for (const int supply : {6, 8, 10})
        for (const int pressure : {6, 8}) {
            const QString in = QString::number(supply);
            const QString out = QString::number(pressure);
            QTest::addRow("supply -%d, pressure -%d", supply, pressure)
                << QStringLiteral("-") + in << QStringLiteral("-") + out
                << QStringLiteral("AD-8-%1 + HE-PT-%1").arg(in)
                << QStringLiteral("AD-6-%1 + HE-PT-%1").arg(out);
        }
}

void TemplateBecomesABill::joinsAPumpToEverySizeOfLine()
{
    QFETCH(QString, supply);
    QFETCH(QString, pressure);
    QFETCH(QString, atInlet);
    QFETCH(QString, atOutlet);
    Bench made = bench();
    made.add(form());
    for (const Preference preference : {Preference::Shelf, Preference::Joints, Preference::Money}) {
        auto request = made.request(
            "feed", {{"supply", supply.toStdString()}, {"pressure", pressure.toStdString()}});
        request.preference = preference;
        const auto built = expand(request);
        QVERIFY(built);
        QCOMPARE(keyOf(*built, "supply.end"), atInlet.toStdString());
        QCOMPARE(keyOf(*built, "pressure.start"), atOutlet.toStdString());
        for (const PlacedJoint &joint : built->joints) {
            QVERIFY(joint.way && fits(joint.way->verdict()));
            QVERIFY(joint.way->links.size() == joint.way->pieces.size() + 1);
        }
        // Boss -10 at the cell, -8 at the pump's inlet, -6 at its outlet and at the regulator.
        QCOMPARE(needOf(*built, "OR-910"), std::string("1"));
        QCOMPARE(needOf(*built, "OR-908"), std::string("1"));
        QCOMPARE(needOf(*built, "OR-906"), std::string("2"));
    }
}

void TemplateBecomesABill::givesEachLineItsReasonsInFlowOrder()
{
    Bench made = bench();
    made.add(form());
    const auto built = expand(made.request("feed"));
    QVERIFY(built);
    std::string numbers;
    for (const BillLine &line : built->lines) {
        QVERIFY(!line.why.empty());
        numbers += line.part->number + " ";
    }
    QCOMPARE(numbers, std::string("FC-1 AD-10-8 HE-PT-8 OR-910 PT-8 AD-8-8 OR-908 EP-460 AD-6-6 "
                                  "HE-PT-6 OR-906 PT-6 RG-1 "));
    QCOMPARE(lineOf(*built, "HE-PT-8")->why,
             (std::vector<std::string>{"cell outlet", "pump inlet"}));
    QCOMPARE(lineOf(*built, "HE-PT-8")->stations, (std::vector<std::string>{"cell", "pump"}));
    QCOMPARE(lineOf(*built, "PT-8")->why.front(), std::string("cell to pump, 5 ft 6 in"));
    QCOMPARE(built->joint("supply.end")->at, std::string("pump inlet"));
    QCOMPARE(built->joint("supply.end")->to.text(), std::string("HOSE PT -8"));
}

void TemplateBecomesABill::roundsALengthUpToTheTape()
{
    Bench made = bench();
    made.add(form());
    // 1 m is 39.3700… in; the next sixteenth above is 39.375 in.
    const auto metre = expand(made.request("feed", {{"length", "1 m"}}));
    QVERIFY(metre);
    QCOMPARE(metre->run("supply")->length.amount, *Decimal::parse("39.375"));
    const auto centimetres = expand(made.request("feed", {{"length", "100 cm"}}));
    QVERIFY(centimetres);
    QCOMPARE(centimetres->run("supply")->length.amount, *Decimal::parse("39.375"));
    const auto feet = expand(made.request("feed"));
    QCOMPARE(feet->run("supply")->length.amount, Decimal(66));
    QCOMPARE(lineOf(*feet, "PT-8")->cuts.size(), std::size_t(1));
}

void TemplateBecomesABill::takesWhatFittingNeedsAndTheBoxLacks()
{
    Bench made = bench();
    made.part("BK-1", Kind::Bracket);
    made.part("CL-1", Kind::Clamp);
    for (Part &part : made.parts)
        if (part.number == "EP-460") {
            part.fitting = {{"BK-1", 1}, {"CL-1", 3}};
            part.box = {{"BK-1", 1}, {"CL-1", 1}};
        }
    made.add(form());
    const auto built = expand(made.request("feed"));
    QVERIFY(built);
    QCOMPARE(needOf(*built, "BK-1"), std::string("none")); // It lies in the box.
    QCOMPARE(needOf(*built, "CL-1"), std::string("2"));

    // One of the two on the shelf was opened and its bracket is missing: the other is used.
    made.stock("EP-460", 2);
    made.shelf["EP-460"].missing = {"BK-1"};
    QCOMPARE(needOf(*expand(made.request("feed")), "BK-1"), std::string("none"));
    made.stock("EP-460", 1);
    const auto lacking = expand(made.request("feed"));
    QCOMPARE(needOf(*lacking, "BK-1"), std::string("1"));
    QCOMPARE(lineOf(*lacking, "BK-1")->why.front(),
             std::string("missing from the box of EP-460, pump"));
}

void TemplateBecomesABill::countsClampsSparesAndTools()
{
    Bench made = bench();
    made.part("LC-8", Kind::Clamp).words = {"line", "-8"};
    made.part("LC-6", Kind::Clamp).words = {"line", "-6"};
    for (Part &part : made.parts)
        if (part.number == "LC-8")
            part.fitting = {{"LB-1", 1}};
    made.part("LB-1", Kind::Bracket);
    made.part("EC-10", Kind::Element).facts = ElementFacts{{Decimal(10), {}, {}}, "paper", false};
    FilterFacts filter;
    filter.element = "EC-10";
    made.part("FF-10", Kind::Filter, "in: AN -8 male; out: AN -8 male").facts = filter;
    made.part("TL-1", Kind::Tool);
    Template fuel = form();
    fuel.runs[0].clampsEach = 400;
    fuel.stations.push_back(station("filter", Kind::Filter));
    fuel.stations.back().spareElements = 2;
    Extra wrench;
    wrench.part = said("TL-1");
    wrench.why = "flare nuts without marks";
    fuel.extras = {wrench, wrench};
    made.add(fuel);
    auto request = made.request("feed");
    const auto built = expand(request);
    QVERIFY(built);
    QCOMPARE(needOf(*built, "LC-8"), std::string("5")); // 66 in are 1676.4 mm: 4.19 times 400 mm
    QCOMPARE(needOf(*built, "LB-1"), std::string("5"));
    QCOMPARE(needOf(*built, "LC-6"), std::string("none"));
    QCOMPARE(needOf(*built, "EC-10"), std::string("2"));
    QCOMPARE(needOf(*built, "TL-1"), std::string("1")); // It comes back, so one does.
    QVERIFY(!lineOf(*built, "TL-1")->consumed);
    request.copies = 3;
    QCOMPARE(needOf(*expand(request), "TL-1"), std::string("1"));
    QCOMPARE(needOf(*expand(request), "LC-8"), std::string("15"));
}

void TemplateBecomesABill::plugsWhatNoRunUses()
{
    Bench made = bench();
    Template fuel = form();
    fuel.stations[2].plugged = {"gauge"};
    made.add(fuel);
    const auto built = expand(made.request("feed"));
    QVERIFY(built);
    const PlacedJoint *plug = built->joint("plug:regulator.gauge");
    QVERIFY(plug && plug->way);
    QCOMPARE(plug->way->key(), std::string("PL-6"));
    QCOMPARE(plug->to.text(), std::string("ORB -6 male"));
    QCOMPARE(plug->way->links.size(), std::size_t(1));
    QCOMPARE(needOf(*built, "PL-6"), std::string("1"));
    QCOMPARE(needOf(*built, "OR-906"), std::string("3"));

    const auto picked = expand(made.request("feed", {}, {{"plug:regulator.gauge", "PL-8"}}));
    QVERIFY(picked);
    plug = picked->joint("plug:regulator.gauge");
    QVERIFY(plug->picked && plug->way);
    QVERIFY(!fits(plug->way->verdict()));
    QCOMPARE(needOf(*picked, "PL-6"), std::string("none"));
}

void TemplateBecomesABill::joinsTwoPortsWithoutALine()
{
    Bench made = bench();
    made.part("GA-1", Kind::Gauge, "in: ORB -6 male");
    Template fuel = form();
    fuel.stations.push_back(station("gauge", Kind::Gauge));
    fuel.runs.push_back(run("to-gauge", "regulator.gauge", "gauge.in"));
    made.add(fuel);
    const auto built = expand(made.request("feed"));
    QVERIFY(built);
    QCOMPARE(built->run("to-gauge")->joints, (std::vector<std::string>{"to-gauge.start"}));
    QVERIFY(!built->run("to-gauge")->line);
    const PlacedJoint *joint = built->joint("to-gauge.start");
    QVERIFY(joint && joint->way && joint->way->pieces.empty());
    QCOMPARE(joint->at, std::string("regulator gauge to gauge inlet"));
}

void TemplateBecomesABill::saysHowARunRises()
{
    Bench made = bench();
    Template asked = form();
    asked.runs.front().rise = said("-8 in");
    asked.runs.front().forward = said("1 m");
    made.add(asked);
    const auto built = expand(made.request("feed"));
    QVERIFY(built);
    QCOMPARE(built->runs.front().riseM, -0.2032);
    QCOMPARE(built->runs.front().forwardM, 1.0);
    QCOMPARE(built->runs.back().riseM, 0.0); // Not said.

    Bench wrong = bench();
    asked.runs.front().rise = said("8 psi");
    wrong.add(asked);
    const auto refused = expand(wrong.request("feed"));
    QVERIFY(!refused);
    QVERIFY(refused.error().thing.find("run supply") != std::string::npos);
}

void TemplateBecomesABill::saysWhatIsOpen()
{
    Bench made = bench();
    made.part("PX-1", Kind::Pump, "suction: ORB -8 female; out: NPT 1/4 female");
    made.add(form());
    const auto built = expand(made.request("feed", {}, {{"pump", "PX-1"}}));
    QVERIFY(built);
    QVERIFY(!built->joint("supply.end")->way); // It has no port "in".
    QVERIFY(built->joint("supply.end")->from.size.empty());
    QVERIFY(!built->joint("pressure.start")->way); // Nothing in the catalogue goes into 1/4 NPT.
    QCOMPARE(built->joint("pressure.start")->from.text(), std::string("NPT 1/4 female"));
    QVERIFY(built->joint("supply.start")->way);
    QCOMPARE(built->station("pump")->better->number, std::string("EP-460"));
    QVERIFY(saidBy(*built).find("has no port \"in\"") != std::string::npos);

    const auto noHose = expand(made.request("feed", {}, {{"supply", "PT-10"}}));
    QVERIFY(noHose);
    QCOMPARE(noHose->run("supply")->line->number, std::string("PT-10"));
    QCOMPARE(noHose->run("supply")->better->number, std::string("PT-8"));
    QCOMPARE(keyOf(*noHose, "supply.end"), std::string("AD-8-10 + HE-PT-10"));
}

void TemplateBecomesABill::refusesWhatCannotBeCounted()
{
    Bench made = bench();
    Template fuel = form();
    made.add(fuel);
    const auto refused = [&](const Answers &answers, const Picks &picks, std::string_view says) {
        const auto built = expand(made.request("feed", answers, picks));
        if (built)
            return false;
        const bool said = built.error().text().find(says) != std::string::npos;
        if (!said)
            qWarning("%s", built.error().text().c_str());
        return said;
    };
    QVERIFY(refused({{"length", "0 in"}}, {}, "no length"));
    QVERIFY(refused({{"length", "1000000000000000000 m"}}, {}, "PT-8"));
    QVERIFY(refused({}, {{"pump", "NO-SUCH"}}, "no part of the catalogue"));
    QVERIFY(refused({}, {{"turbine", "EP-460"}}, "no station, run or joint"));
    QVERIFY(refused({}, {{"supply", "EP-460"}}, "is a pump"));
    QVERIFY(refused({}, {{"supply.end", "AD-8-8 + NO-SUCH"}}, "NO-SUCH"));
    auto request = made.request("feed");
    for (const int copies : {0, -1, 1001}) {
        request.copies = copies;
        QVERIFY(!expand(request));
    }
    request.copies = 1;
    request.templateId = "none";
    QVERIFY(expand(request).error().text().find("Templates are: feed") != std::string::npos);
}

QTEST_APPLESS_MAIN(TemplateBecomesABill)
#include "tst_template_becomes_a_bill.moc"
