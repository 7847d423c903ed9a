// SPDX-License-Identifier: MIT
//
// What the money of a build goes into: whichever way the bars are grouped, they add up to the
// bill's total to the last cent; what is chosen is shown in the bill.

#include "app/buyer/needs.h"
#include "app/desk/plot/cost/all_builds.h"
#include "app/desk/words/spoken.h"
#include "app/workshop/worked_build.h"
#include "pictures_on_screen.h"

using namespace flarestock;

namespace {

Decimal sumOf(const std::vector<CostBar> &bars)
{
    Decimal sum;
    for (const CostBar &bar : bars)
        sum += bar.here + bar.toBuy;
    return sum;
}

int linesOf(const std::vector<CostBar> &bars)
{
    int lines = 0;
    for (const CostBar &bar : bars)
        lines += bar.lines;
    return lines;
}

/// What each place takes comes to what the bill needs; of what comes back, or is used by measure,
/// it may be more. A hose lies in its runs.
void usesAddUp(const WorkedOut &worked)
{
    for (const BillLine &line : worked.expansion->lines) {
        Decimal sum;
        for (const BillLine::Use &use : line.uses)
            sum += use.amount;
        if (line.consumed && !isUsedByMeasure(line.part->kind))
            QCOMPARE(sum.stripped().text(), line.need.amount.stripped().text());
        else
            QVERIFY(sum >= line.need.amount);
        for (const PlacedRun &run : worked.expansion->runs) {
            const auto in = std::find_if(line.uses.begin(), line.uses.end(),
                                         [&run](const auto &use) { return use.run == run.id; });
            if (run.line == line.part)
                QVERIFY(in != line.uses.end() && in->amount >= run.length.amount);
        }
    }
}

} // namespace

class CostIsSeen : public QObject, protected PicturesOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase() { open(); }
    void everyGroupingAddsUpToTheBill();
    void eachPlaceBearsWhatItTakes();
    void whatIsToBuyIsPricedAsTheBillDid();
    void theBarInHandIsShownInTheBill();
    void aPickRedrawsIt();
    void noPieceIsHereForTwoBuilds();
    void allBuildsAreSummedUpAndOneIsOpened();
    void picturesOfTheDemoBuilds();
    void nothingIsWarnedAbout();

private:
    [[nodiscard]] Plot &plot() const { return *m_desk->pictures()->cost(); }
};

void CostIsSeen::everyGroupingAddsUpToTheBill()
{
    int builds = 0;
    for (int row = 0; row < m_desk->builds()->count(); ++row) {
        QVERIFY(m_desk->openBuild(m_desk->builds()->cell(row, QStringLiteral("key")).toString()));
        const WorkedOut &worked = m_desk->build()->worked();
        // Added up here, out of what stands on the bill's lines.
        Decimal total;
        for (const PricedLine &line : worked.bill->lines)
            if (line.cost)
                total += line.cost->amount;
        QCOMPARE(total.text(), worked.bill->total.amount.text());
        for (const auto &bars : {costBySide(worked), costBy(worked, Grouping::Station),
                                 costBy(worked, Grouping::Kind)}) {
            QCOMPARE(sumOf(bars).text(), total.text());
            QVERIFY(linesOf(bars) >= static_cast<int>(worked.bill->lines.size()));
            for (const CostBar &bar : bars)
                QVERIFY(bar.here.sign() >= 0 && bar.toBuy.sign() >= 0);
        }
        QCOMPARE(linesOf(costBy(worked, Grouping::Kind)),
                 static_cast<int>(worked.bill->lines.size()));
        usesAddUp(worked);
        // In the order of the flow.
        QStringList sides;
        for (const CostBar &bar : costBySide(worked))
            sides.append(bar.name);
        QStringList order{QStringLiteral("suction"), QStringLiteral("pressure"),
                          QStringLiteral("return"), QStringLiteral("the whole build")};
        order.removeIf([&sides](const QString &side) { return !sides.contains(side); });
        QCOMPARE(sides, order);
        ++builds;
    }
    QVERIFY(builds > 20);
}

/// A hose of 100 in for 10.00: 60 in of it on the pressure side, 40 in lead back; three ends at
/// 3.35 each … and 10.00 that three places share evenly: 3.34, 3.33 and 3.33.
void CostIsSeen::eachPlaceBearsWhatItTakes()
{
    Part hose;
    Part ends;
    Station cell;
    cell.title = "cell";
    cell.level = Level::Suction;
    Station rail;
    rail.title = "rail";
    Run feed;
    Run back;
    back.level = Level::Return;
    Expansion expansion;
    expansion.stations.resize(2);
    expansion.stations[0].id = "cell";
    expansion.stations[0].station = &cell;
    expansion.stations[1].id = "rail";
    expansion.stations[1].station = &rail;
    expansion.runs.resize(2);
    expansion.runs[0].id = "feed";
    expansion.runs[0].run = &feed;
    expansion.runs[1].id = "back";
    expansion.runs[1].run = &back;
    expansion.lines.resize(2);
    expansion.lines[0].part = &hose;
    expansion.lines[0].uses = {{"cell", "feed", 60}, {"rail", "back", 40}};
    expansion.lines[1].part = &ends;
    expansion.lines[1].uses = {{"rail", "feed", 1}, {"cell", "back", 1}, {"cell", "", 1}};
    PricedBill bill{{}, {*Decimal::parse("20.00"), Currency::parse("USD").value()}, {}, true};
    bill.lines.resize(2);
    for (std::size_t at = 0; at < 2; ++at) {
        bill.lines[at].line = &expansion.lines[at];
        bill.lines[at].cost = Money{*Decimal::parse("10.00"), bill.total.currency};
    }
    WorkedOut worked;
    worked.expansion = &expansion;
    worked.bill = &bill;
    const auto says = [](const std::vector<CostBar> &bars) {
        QStringList all;
        for (const CostBar &bar : bars)
            all.append(bar.name + u' ' + said(bar.all().text()));
        return all;
    };
    QCOMPARE(says(costBySide(worked)),
             QStringList({QStringLiteral("suction 3.33"), QStringLiteral("pressure 9.34"),
                          QStringLiteral("return 7.33")}));
    QCOMPARE(says(costBy(worked, Grouping::Station)),
             QStringList({QStringLiteral("cell 12.67"), QStringLiteral("rail 7.33")}));
}

/// Nothing short: nothing to buy. All short: all of its cost.
void CostIsSeen::whatIsToBuyIsPricedAsTheBillDid()
{
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-fuel")));
    int here = 0;
    int bought = 0;
    for (const PricedLine &line : m_desk->build()->worked().bill->lines) {
        const CostOfLine cost = costOf(line);
        if (!line.cost)
            continue;
        QCOMPARE((cost.here + cost.toBuy).text(), line.cost->amount.text());
        if (line.shortBy.isZero()) {
            QVERIFY(cost.toBuy.isZero());
            ++here;
        } else if (line.free.isZero()) {
            QCOMPARE(cost.toBuy.text(), line.cost->amount.text());
            ++bought;
        }
    }
    QVERIFY(here > 5 && bought > 0);
}

void CostIsSeen::theBarInHandIsShownInTheBill()
{
    look("coupe-fuel", BuildPictures::Cost);
    QVERIFY2(words("plotSays").startsWith(QStringLiteral("2,318.13 USD: ")),
             qPrintable(words("plotSays")));
    plot().setView(2); // By kind.
    QCOMPARE(plot().views().value(2), QStringLiteral("by kind"));
    item("plot")->forceActiveFocus();
    key(Qt::Key_Home);
    key(Qt::Key_Right);
    QVERIFY(m_desk->build()->byKind());
    const QString part = plot().opens().section(u'|', 1);
    const QQuickItem *list = item("billList");
    QCOMPARE(list->property("currentIndex").toInt(), m_desk->build()->bill()->rowOf(part));
    // The group begins there, under its head.
    const int row = m_desk->build()->bill()->rowOf(part);
    QVERIFY(!m_desk->build()->bill()->cell(row, QStringLiteral("head")).toString().isEmpty());
    QCOMPARE(focusName(*m_window), QStringLiteral("plot"));
    key(Qt::Key_Return);
    QCOMPARE(focusName(*m_window), QStringLiteral("billEntry"));
}

void CostIsSeen::aPickRedrawsIt()
{
    look("coupe-fuel", BuildPictures::Cost);
    const QString before = plot().says();
    QVERIFY(m_desk->build()->answer(QStringLiteral("pressure"), QStringLiteral("30 ft")));
    QVERIFY(plot().says() != before);
    QVERIFY2(plot().says().startsWith(saidMoney(m_desk->build()->worked().bill->total)),
             qPrintable(plot().says()));
    m_desk->build()->takeBack();
    QCOMPARE(plot().says(), before);
}

/// What each has to buy is what its lines lack by date, at the price of that much.
void CostIsSeen::noPieceIsHereForTwoBuilds()
{
    look("coupe-fuel", BuildPictures::Cost);
    const WorkedOut &worked = m_desk->build()->worked();
    const Currency &currency = worked.bill->total.currency;
    const auto needs = needsOf(*worked.workshop, {"2026-01-01"}).value();
    std::map<std::string, Decimal> toBuy;
    for (const NeedLine &line : needs.lines) {
        Decimal lacks = line.shortBy;
        for (const NeedLine::Coming &coming : line.coming)
            lacks += coming.quantity;
        const Offer *offer = worked.catalogue->bestOffer(*line.part, lacks, currency);
        if (!line.isPlace && line.work.empty() && lacks.sign() > 0 && offer != nullptr)
            toBuy[line.whom] += (offer->priceEach(lacks) * lacks).rescaled(2, Rounding::HalfEven);
    }
    int lack = 0;
    for (const CostedBuild &build : costOfBuilds(worked, *worked.workshop->build("coupe-fuel"))) {
        const std::string id = build.bar.opens.section(u'|', 1).toStdString();
        const Decimal apart = build.bar.toBuy - toBuy[id];
        // A part bought for a line that has some already is rounded with it, to the cent.
        QVERIFY2(apart.sign() == 0 || (apart * apart) < Decimal(1), id.c_str());
        lack += toBuy[id].sign() > 0 ? 1 : 0;
    }
    QVERIFY(lack > 10);
}

void CostIsSeen::allBuildsAreSummedUpAndOneIsOpened()
{
    look("coupe-fuel", BuildPictures::Cost);
    plot().setView(3);
    QTRY_VERIFY_WITH_TIMEOUT(plot().isThere(), 30000);
    const auto shop =
        Workshop::open(m_folder.filePath(QStringLiteral("demo.flarestock")).toStdString()).value();
    const auto open = buildsByDate(*shop, {});
    QCOMPARE(plot().points()->count(), static_cast<int>(open.size()));
    keepPictures("cost-all-builds");
    item("plot")->forceActiveFocus();
    key(Qt::Key_End);
    QCOMPARE(m_desk->build()->id(), QStringLiteral("coupe-fuel")); // An arrow opens none …
    const QString other = plot().opens().section(u'|', 1);
    key(Qt::Key_Return);
    QTRY_COMPARE(m_desk->build()->id(), other); // … Enter does.
}

void CostIsSeen::picturesOfTheDemoBuilds()
{
    look("coupe-fuel", BuildPictures::Cost);
    for (int view = 0; view < 3; ++view) {
        plot().setView(view);
        keepPictures(QByteArray::number(view).prepend("cost-").constData());
    }
}

void CostIsSeen::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(CostIsSeen)
#include "tst_cost_is_seen.moc"
