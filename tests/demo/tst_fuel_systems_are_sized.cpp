// SPDX-License-Identifier: MIT
//
// The demo's fuel systems, sized by their answers: over fluids, powers and pressures each is quiet
// of its flow, or says truthfully why not. The bounds are judgement (model/fluids/data).

#include "tests/demo/demo_shop.h"

#include <cmath>
#include <iostream>

using namespace flarestock;

namespace {

const std::vector<std::string> Sized = {
    "carburettor-return",   "carburettor-dead-head", "injection-frame-rail", "injection-in-tank",
    "injection-surge-tank", "alcohol-twin-pumps",    "gravity-feed"};

/// Fluid by power by pressure, of what the template asks; only answers within its bounds.
std::vector<Answers> sweepOf(const Template &form)
{
    std::vector<Answers> all;
    const Question *pressure = form.question("rail-pressure");
    pressure = pressure ? pressure : form.question("bowl-pressure");
    std::vector<std::string> pressures{""};
    if (pressure)
        pressures = {"4 psi", "7 psi", "9 psi", "12 psi", "36 psi", "43.5 psi", "60 psi", "75 psi"};
    for (const std::string &fluid : form.question("fluid")->choices)
        for (const char *power : {"60 hp", "200 hp", "300 hp", "450 hp", "600 hp", "700 hp",
                                  "900 hp", "1100 hp", "1500 hp", "2000 hp"})
            for (const std::string &typed : pressures) {
                Answers one{{"fluid", fluid}, {"power", power}};
                if (pressure)
                    one[pressure->id] = typed;
                if (completed(form, one))
                    all.push_back(std::move(one));
            }
    return all;
}

std::string said(const std::string &id, const Answers &answers)
{
    std::string all = id;
    for (const auto &[question, answer] : answers)
        all += " " + answer;
    return all;
}

/// What of the build tells that it cannot be as it is asked for; empty where nothing does.
std::string toldBy(const Expansion &build)
{
    for (const PlacedStation &station : build.stations)
        if (!station.part)
            return station.id + ": " + station.why;
    for (const PlacedRun &run : build.runs)
        if (!run.line && !run.wanted.empty())
            return run.id + ": no " + run.wanted;
    for (const PlacedJoint &joint : build.joints)
        if (!joint.way)
            return joint.id + ": open";
    for (const WorkedAnswer &one : build.workedOut)
        if (!one.why.empty())
            return one.question + ": " + one.why;
    return {};
}

} // namespace

class FuelSystemsAreSized : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void sweepIsQuietOrSaysWhy_data();
    void sweepIsQuietOrSaysWhy();
    void moreIsNeverThinner();
    void ownSizeIsNamedWithItsCost();
    void everyQuestionIsWorkedOut();
};

void FuelSystemsAreSized::sweepIsQuietOrSaysWhy_data()
{
    QTest::addColumn<QString>("id");
    QTest::addColumn<int>("atLeast");
    const std::vector<int> quiet = {60, 9, 80, 20, 40, 40, 2}; // As Sized.
    for (std::size_t at = 0; at < Sized.size(); ++at)
        QTest::newRow(Sized[at].c_str()) << QString::fromStdString(Sized[at]) << quiet[at];
}

void FuelSystemsAreSized::sweepIsQuietOrSaysWhy()
{
    QFETCH(QString, id);
    const DemoShop &shop = DemoShop::it();
    const Template &form = *shop.book->at(id.toStdString());
    int quiet = 0;
    int told = 0;
    int loud = 0;
    for (const Answers &answers : sweepOf(form)) {
        ExpandRequest asked = shop.request(form.id);
        asked.answers = answers;
        const Expansion build = shop.expanded(asked);
        std::string flow;
        for (const Finding &finding : check(build, shop.catalogue, shop.shelf))
            if (finding.matter == Matter::Flow && finding.severity != Severity::Note)
                flow += "\n    " + finding.about + " " + finding.text;
        if (const std::string why = toldBy(build); !why.empty()) {
            ++told;
            std::cerr << said(form.id, answers) << " | " << why << '\n';
        } else if (flow.empty())
            ++quiet;
        else {
            ++loud;
            std::cerr << said(form.id, answers) << flow << '\n';
        }
    }
    qInfo("%s: %d quiet, %d told, %d loud", form.id.c_str(), quiet, told, loud);
    QCOMPARE(loud, 0);
    QFETCH(int, atLeast); // Else the sweep would be all excuses.
    QVERIFY2(quiet >= atLeast, std::to_string(quiet).c_str());
}

void FuelSystemsAreSized::moreIsNeverThinner()
{
    const DemoShop &shop = DemoShop::it();
    ExpandRequest asked = shop.request("injection-frame-rail");
    std::map<std::string, int> last;
    int grown = 0;
    for (const char *power : {"200 hp", "450 hp", "600 hp", "900 hp", "1100 hp"}) {
        asked.answers = {{"fluid", "E85"}, {"power", power}};
        const Expansion build = shop.expanded(asked);
        for (const char *run : {"supply", "pressure", "return"}) {
            const int dash = build.run(run)->dash;
            QVERIFY2(dash >= last[run], power);
            grown += dash > last[run] ? 1 : 0;
            last[run] = dash;
        }
    }
    QVERIFY(grown > 3); // Three from nothing.
}

/// The same run as the flow over the actual bill has it, in both sizes: the difference is what is
/// named, but for the ends, which are counted by usage beforehand, and rather too much.
void FuelSystemsAreSized::ownSizeIsNamedWithItsCost()
{
    const DemoShop &shop = DemoShop::it();
    ExpandRequest asked = shop.request("injection-in-tank");
    asked.answers = {{"return-size", "-6"}};
    const Expansion own = shop.expanded(asked);
    const auto found =
        std::find_if(own.workedOut.begin(), own.workedOut.end(),
                     [](const WorkedAnswer &one) { return one.question == "return-size"; });
    QVERIFY(found->own && found->worked == "-8" && found->answer == "-6");
    QCOMPARE(own.run("return")->dash, 6);
    asked.answers.clear();
    const Expansion worked = shop.expanded(asked);
    QCOMPARE(worked.run("return")->dash, 8);
    const auto drop = [](const Expansion &build) {
        return systemFlow(build, conditionsOf(build)).run("return")->loss.dropPa;
    };
    const double more = drop(own) - drop(worked);
    const double named = found->sizes->overWorkedPa(*found->sizes->of(6));
    QVERIFY2(std::abs(named - more) < 0.35 * more,
             (std::to_string(named) + " for " + std::to_string(more)).c_str());
}

void FuelSystemsAreSized::everyQuestionIsWorkedOut()
{
    const DemoShop &shop = DemoShop::it();
    for (const std::string &id : Sized) {
        const Expansion build = shop.expanded(shop.request(id));
        QVERIFY2(build.workedOut.size() >= 2, id.c_str());
        for (const WorkedAnswer &one : build.workedOut)
            QVERIFY2(one.why.empty() && !one.own, (id + ": " + one.question + one.why).c_str());
    }
}

QTEST_APPLESS_MAIN(FuelSystemsAreSized)
#include "tst_fuel_systems_are_sized.moc"
