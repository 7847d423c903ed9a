// SPDX-License-Identifier: MIT
//
// What the money of a build goes into: whichever way the bars are grouped, they add up to the
// bill's total to the last cent; what is chosen is shown in the bill.

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

} // namespace

class CostIsSeen : public QObject, protected PicturesOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase() { open(); }
    void everyGroupingAddsUpToTheBill();
    void whatIsToBuyIsPricedAsTheBillDid();
    void theBarInHandIsShownInTheBill();
    void aPickRedrawsIt();
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
            QCOMPARE(linesOf(bars), static_cast<int>(worked.bill->lines.size()));
            for (const CostBar &bar : bars)
                QVERIFY(bar.here.sign() >= 0 && bar.toBuy.sign() >= 0);
        }
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

void CostIsSeen::allBuildsAreSummedUpAndOneIsOpened()
{
    look("coupe-fuel", BuildPictures::Cost);
    plot().setView(3);
    QTRY_VERIFY_WITH_TIMEOUT(plot().isThere(), 30000);
    const auto shop =
        Workshop::open(m_folder.filePath(QStringLiteral("demo.flarestock")).toStdString()).value();
    Decimal all;
    for (const BuildPlan &plan : shop->builds)
        all += workBuild(*shop, plan, shop->shelfFor(plan)).value().bill.total.amount;
    QVERIFY2(plot().says().startsWith(saidNumber(all)), qPrintable(plot().says()));
    QCOMPARE(plot().points()->count(), static_cast<int>(shop->builds.size()));
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
