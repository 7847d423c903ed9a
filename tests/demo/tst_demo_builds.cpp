// SPDX-License-Identifier: MIT
//
// The builds that the demo shop has planned: each works out, and each shows on purpose what its row
// here says. Where the wanted finding comes from outside (a thread that jams, a fluid that a seal
// does not stand) its source is in the finding; here only that the demo shows it.

#include "tests/demo/demo_shop.h"

#include <set>

using namespace flarestock;

namespace {

std::vector<Finding> findingsOf(const std::string &id)
{
    const DemoShop &shop = DemoShop::it();
    for (const BuildPlan &plan : shop.builds)
        if (plan.id == id)
            return check(shop.expanded(plan), shop.catalogue, shop.shelf);
    return {};
}

bool shows(const std::vector<Finding> &findings, Severity severity, Matter matter,
           const std::string &word)
{
    return std::any_of(findings.begin(), findings.end(), [&](const Finding &finding) {
        const std::string said = finding.where + " " + finding.about + " " + finding.text;
        return finding.severity == severity && finding.matter == matter &&
               said.find(word) != std::string::npos;
    });
}

std::string listed(const std::vector<Finding> &findings)
{
    std::string lines;
    for (const Finding &finding : findings)
        lines += std::string(text(finding.severity)) + ", " + std::string(text(finding.matter)) +
                 ", " + finding.where + ": " + finding.about + "\n";
    return lines;
}

} // namespace

class DemoBuildsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyPlannedBuildWorksOut_data();
    void everyPlannedBuildWorksOut();
    void showsOnPurpose_data();
    void showsOnPurpose();
    void togetherTheyShowEveryMatter();
    void theMainBuildIsShortOfAFewThings();
    void onlyTheJointsMeantToBeAreOpen();
};

void DemoBuildsTest::everyPlannedBuildWorksOut_data()
{
    QTest::addColumn<QString>("id");
    for (const BuildPlan &plan : DemoShop::it().builds)
        QTest::newRow(plan.title.c_str()) << QString::fromStdString(plan.id);
    QVERIFY(DemoShop::it().builds.size() >= 6);
}

void DemoBuildsTest::everyPlannedBuildWorksOut()
{
    QFETCH(QString, id);
    for (const BuildPlan &plan : DemoShop::it().builds)
        if (plan.id == id.toStdString())
            QVERIFY(!DemoShop::it().expanded(plan).lines.empty());
}

void DemoBuildsTest::showsOnPurpose_data()
{
    QTest::addColumn<QString>("id");
    QTest::addColumn<int>("severity");
    QTest::addColumn<int>("matter");
    QTest::addColumn<QString>("word");
    const auto row = [](const char *says, const char *id, Severity severity, Matter matter,
                        const char *word) {
        QTest::newRow(says) << QString::fromUtf8(id) << static_cast<int>(severity)
                            << static_cast<int>(matter) << QString::fromUtf8(word);
    };
    using enum Severity;
    using enum Matter;
    row("flare in the rail's boss leaks", "coupe-fuel", Stop, Fit, "pressure.end");
    row("pump box without its bracket", "coupe-fuel", Caution, Stock, "BK-460");
    row("lines that are short", "coupe-fuel", Note, Stock, "short");
    row("a pick that something betters", "roadster-fuel", Note, Stock, "PF-75-8");
    row("sealed filter before a sealed pump", "roadster-fuel", Caution, DirectionAndFilters,
        "cannot be opened");
    row("no filter before the pump", "coupe-classic", Stop, DirectionAndFilters, "pump");
    row("too much pressure for the carburettor", "coupe-classic", Stop, Pressure, "carburettor");
    row("10 µm before a pump", "single-seater-fuel", Stop, DirectionAndFilters, "pump-1/prefilter");
    row("100 µm before the rails", "single-seater-fuel", Stop, DirectionAndFilters, "too coarse");
    row("nitrile hose in methanol", "single-seater-return", Stop, FluidAndMaterial, "NB-6");
    row("paper filter in E85", "roadster-in-tank", Stop, FluidAndMaterial, "FP-10-6");
    row("pump too small", "roadster-surge", Caution, Flow, "pump");
    row("inch boss in a metric cooler jams", "coupe-oil", Stop, Fit, "to-cooler.end");
    row("a filter head turned round", "coupe-oil", Stop, DirectionAndFilters, "backwards");
    row("nothing joins the heat exchanger", "roadster-gearbox", Stop, Fit, "nothing");
    row("fixed threads at both ends", "coupe-gearbox", Stop, Assembly, "to-cooler");
    row("mineral-oil calliper in DOT 4", "coupe-brakes", Stop, FluidAndMaterial, "KA-4M");
    row("inch banjo in a metric calliper", "coupe-brakes", Stop, Fit, "rear-axle/left-hose.end");
}

void DemoBuildsTest::showsOnPurpose()
{
    QFETCH(QString, id);
    QFETCH(int, severity);
    QFETCH(int, matter);
    QFETCH(QString, word);
    const auto findings = findingsOf(id.toStdString());
    QVERIFY2(shows(findings, static_cast<Severity>(severity), static_cast<Matter>(matter),
                   word.toStdString()),
             listed(findings).c_str());
}

void DemoBuildsTest::togetherTheyShowEveryMatter()
{
    std::set<Matter> seen;
    for (const BuildPlan &plan : DemoShop::it().builds)
        for (const Finding &finding : findingsOf(plan.id)) {
            seen.insert(finding.matter);
            QVERIFY2(!finding.source.empty(), finding.about.c_str());
        }
    for (const Matter matter :
         {Matter::FluidAndMaterial, Matter::Fit, Matter::Assembly, Matter::Pressure,
          Matter::DirectionAndFilters, Matter::Flow, Matter::Stock})
        QVERIFY2(seen.contains(matter), std::string(text(matter)).c_str());
}

void DemoBuildsTest::theMainBuildIsShortOfAFewThings()
{
    const DemoShop &shop = DemoShop::it();
    const Expansion build = shop.expanded(shop.builds.front());
    QCOMPARE(shop.builds.front().id, std::string("coupe-fuel"));
    QVERIFY(build.lines.size() >= 25);
    const auto isHere = [&](const BillLine &line) {
        const auto on = shop.shelf.find(line.part->number);
        return on != shop.shelf.end() && on->second.free.amount >= line.need.amount;
    };
    const auto here = std::count_if(build.lines.begin(), build.lines.end(), isHere);
    const auto missing = static_cast<std::ptrdiff_t>(build.lines.size()) - here;
    QVERIFY2(missing >= 2 && missing <= 10, std::to_string(missing).c_str());
}

void DemoBuildsTest::onlyTheJointsMeantToBeAreOpen()
{
    std::set<std::string> open;
    for (const BuildPlan &plan : DemoShop::it().builds) {
        const Expansion build = DemoShop::it().expanded(plan);
        for (const PlacedJoint &joint : build.joints)
            if (!joint.way)
                open.insert(plan.id + " " + joint.id);
    }
    const std::set<std::string> meant{"roadster-gearbox back.start",
                                      "roadster-gearbox to-cooler.end"};
    QCOMPARE(open, meant);
}

QTEST_APPLESS_MAIN(DemoBuildsTest)
#include "tst_demo_builds.moc"
