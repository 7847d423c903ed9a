// SPDX-License-Identifier: MIT
//
// One answer, pick or step back reaches all that is shown; a refused one changes nothing, says why.

#include "app/desk/build/build_desk.h"
#include "app/desk/rows/pace.h"
#include "bench_shop.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <QTest>

using namespace flarestock;

namespace {

QString cell(const Rows *rows, const char *key, const char *name)
{
    return rows->cell(rows->rowOf(QString::fromLatin1(key)), QString::fromLatin1(name)).toString();
}

} // namespace

class OneChangeRedrawsAll : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init();
    void everyListKeepsTheRulesOfAModel();
    void anAnswerReachesBillMapAndFindings();
    void whatIsShownInTurnsIsTheLastChange();
    void aRefusedAnswerChangesNothingAndSaysWhy_data();
    void aRefusedAnswerChangesNothingAndSaysWhy();
    void aBareNumberTakesTheUnitBesideIt();
    void aPickStaysUntilItIsLetGo();
    void whatIsBetterCanBeTakenAtThePlace();
    void aRunOpensWithItsOtherLines();
    void anotherLineIsWeighedAndPicked();
    void whatIsOpenIsWeighedOnlyWhileItIsOpen();
    void platesSayTheirFactsInThePersonsUnits();
    void aFindingsButtonMendsIt();
    void stepsAreTakenBackOneByOne();
    void anImpossiblePickIsSaidAndNotTaken();
    void figuresAreExactAndTheTotalIsTheirSum();
    void everyGroupOfTheBillHasOneHead();
    void findingLooksForAllWordsInAnyOrder_data();
    void findingLooksForAllWordsInAnyOrder();

private:
    std::unique_ptr<BuildDesk> m_desk;
};

void OneChangeRedrawsAll::init()
{
    QLocale::setDefault(QLocale::c());
    Pace::instance().setInSteps(false);
    m_desk = std::make_unique<BuildDesk>();
    QVERIFY(openBench(*m_desk));
}

void OneChangeRedrawsAll::everyListKeepsTheRulesOfAModel()
{
    const std::vector<Rows *> all = {m_desk->answers(),          m_desk->bill(),
                                     m_desk->findings(),         m_desk->found(),
                                     m_desk->map()->plates(),    m_desk->map()->marks(),
                                     m_desk->map()->runs(),      m_desk->map()->bands(),
                                     m_desk->opened()->pieces(), m_desk->opened()->ways()};
    std::vector<std::unique_ptr<QAbstractItemModelTester>> testers;
    testers.reserve(all.size());
    for (Rows *rows : all)
        testers.push_back(std::make_unique<QAbstractItemModelTester>(
            rows, QAbstractItemModelTester::FailureReportingMode::QtTest));
    QVERIFY(m_desk->answer(QStringLiteral("power"), QStringLiteral("520 hp")));
    m_desk->find(QStringLiteral("-6"));
    QVERIFY(m_desk->found()->count() > 0);
    m_desk->setByKind(true);
    QString spot = m_desk->map()->step({}, LineMap::First);
    int spots = 0;
    for (QString next; next != spot; ++spots) {
        m_desk->openSpot(spot);
        next = spot;
        spot = m_desk->map()->step(spot, LineMap::On);
    }
    QCOMPARE(spots, 6 + 13 + 6); // Stations, joints and runs of the bench build.
    m_desk->map()->setWidth(540);
    QCoreApplication::processEvents(); // It is laid out once width and room have come.
    m_desk->takeBack();
    m_desk->close();
    for (Rows *rows : {m_desk->answers(), m_desk->bill(), m_desk->findings()})
        QCOMPARE(rows->count(), 0);
}

void OneChangeRedrawsAll::anAnswerReachesBillMapAndFindings()
{
    QSignalSpy changed(m_desk.get(), &BuildDesk::changed);
    QCOMPARE(cell(m_desk->map()->runs(), "suction", "dash"), QStringLiteral("-8"));
    QVERIFY(m_desk->bill()->rowOf(QStringLiteral("HO-8")) >= 0);
    QVERIFY(m_desk->answer(QStringLiteral("power"), QStringLiteral("520 hp")));
    QCOMPARE(changed.count(), 1);
    QCOMPARE(cell(m_desk->answers(), "power", "answer"), QStringLiteral("520 hp"));
    QCOMPARE(cell(m_desk->map()->runs(), "suction", "dash"), QStringLiteral("-10"));
    QCOMPARE(m_desk->bill()->rowOf(QStringLiteral("HO-8")), -1);
    QVERIFY(m_desk->lastStep().startsWith(QStringLiteral("Power from 450 hp to 520 hp: ")));
    QVERIFY2(m_desk->lastStep().contains(QStringLiteral("lines changed, total ")),
             qPrintable(m_desk->lastStep()));
}

void OneChangeRedrawsAll::whatIsShownInTurnsIsTheLastChange()
{
    const auto lists = [this] {
        return std::vector{m_desk->answers()->rows(), m_desk->findings()->rows(),
                           m_desk->bill()->rows(), m_desk->opened()->pieces()->rows()};
    };
    const auto changed = [&](const char *power) {
        (void)m_desk->answer(QStringLiteral("power"), QString::fromLatin1(power));
        return lists();
    };
    const auto atOnce = changed("520 hp");
    init();
    Pace::instance().setInSteps(true);
    (void)changed("700 hp");
    const auto soon = changed("520 hp"); // Fields and findings are acted on by their place.
    QVERIFY(soon[0] == atOnce[0] && soon[1] == atOnce[1] && soon[2] != atOnce[2]);
    QTRY_VERIFY(!Pace::instance().isBusy());
    QCOMPARE(lists(), atOnce);
}

void OneChangeRedrawsAll::aRefusedAnswerChangesNothingAndSaysWhy_data()
{
    QTest::addColumn<QString>("question");
    QTest::addColumn<QString>("typed");
    QTest::newRow("words for a power") << "power"
                                       << "plenty";
    QTest::newRow("a pressure for a power") << "power"
                                            << "43 psi";
    QTest::newRow("an unknown unit") << "supply"
                                     << "5 cubits";
    QTest::newRow("less than the least") << "power"
                                         << "10 hp";
    QTest::newRow("more than the most") << "power"
                                        << "9000 hp";
    QTest::newRow("a bare number where feet and inches stand") << "supply"
                                                               << "6";
    QTest::newRow("nothing") << "power"
                             << "";
}

void OneChangeRedrawsAll::aRefusedAnswerChangesNothingAndSaysWhy()
{
    QFETCH(QString, question);
    QFETCH(QString, typed);
    const QString total = m_desk->total();
    const Answers before = m_desk->plan().answers;
    QVERIFY(!m_desk->answer(question, typed));
    QVERIFY(m_desk->plan().answers == before);
    QCOMPARE(m_desk->total(), total);
    QVERIFY(!m_desk->canTakeBack());
    QCOMPARE(cell(m_desk->answers(), question.toLatin1().constData(), "answer"), typed);
    QVERIFY(m_desk->answerProblem().size() > 12);
    QCOMPARE(cell(m_desk->answers(), question.toLatin1().constData(), "problem"),
             m_desk->answerProblem());
    m_desk->giveUp(question);
    QCOMPARE(m_desk->answerProblem(), QString());
}

void OneChangeRedrawsAll::aBareNumberTakesTheUnitBesideIt()
{
    QVERIFY(m_desk->answer(QStringLiteral("power"), QStringLiteral("520")));
    QCOMPARE(m_desk->plan().answers.at("power"), std::string("520 hp"));
    QLocale::setDefault(QLocale(QLocale::German));
    QVERIFY(m_desk->answer(QStringLiteral("rail-pressure"), QStringLiteral("58,5 psi")));
    QCOMPARE(m_desk->plan().answers.at("rail-pressure"), std::string("58.5 psi"));
    QCOMPARE(cell(m_desk->answers(), "rail-pressure", "answer"), QStringLiteral("58,5 psi"));
}

void OneChangeRedrawsAll::aPickStaysUntilItIsLetGo()
{
    m_desk->openAt(QStringLiteral("suction.end"));
    QVERIFY(!m_desk->opened()->picked());
    QCOMPARE(m_desk->opened()->ways()->count(), 2);
    QVERIFY(m_desk->pick(QStringLiteral("suction.end"), QStringLiteral("AD-810 + HE-10")));
    QVERIFY(m_desk->opened()->picked());
    QCOMPARE(m_desk->opened()->better(),
             QStringLiteral("Your pick stays. AD-88 + HE-8 would now be taken: 15.00 USD, "
                            "nothing to buy."));
    QCOMPARE(cell(m_desk->map()->marks(), "suction.end", "outdone"), QStringLiteral("true"));
    QVERIFY(m_desk->answer(QStringLiteral("fluid"), QStringLiteral("E85")));
    QVERIFY(m_desk->opened()->picked());
    QVERIFY(m_desk->bill()->rowOf(QStringLiteral("AD-810")) >= 0);
    QVERIFY(m_desk->letGo(QStringLiteral("suction.end")));
    QVERIFY(!m_desk->opened()->picked());
    QCOMPARE(m_desk->bill()->rowOf(QStringLiteral("AD-810")), -1);
    QVERIFY(!m_desk->letGo(QStringLiteral("suction.end")));
}

void OneChangeRedrawsAll::whatIsBetterCanBeTakenAtThePlace()
{
    QVERIFY(m_desk->pick(QStringLiteral("suction.end"), QStringLiteral("AD-88 + HE-8")));
    m_desk->openAt(QStringLiteral("suction.end"));
    QVERIFY(m_desk->opened()->picked());
    QCOMPARE(m_desk->opened()->better(), QString()); // The program would take it as well.
    QVERIFY(m_desk->pick(QStringLiteral("suction.end"), QStringLiteral("AD-810 + HE-10")));
    QCOMPARE(m_desk->opened()->betterPick(), QStringLiteral("AD-88 + HE-8"));
    QVERIFY(m_desk->pick(m_desk->opened()->slotName(), m_desk->opened()->betterPick()));
    QCOMPARE(m_desk->opened()->betterPick(), QString());
    QCOMPARE(cell(m_desk->map()->marks(), "suction.end", "outdone"), QStringLiteral("false"));
    QVERIFY(m_desk->bill()->rowOf(QStringLiteral("AD-88")) >= 0);
}

void OneChangeRedrawsAll::aRunOpensWithItsOtherLines()
{
    m_desk->openAt(QStringLiteral("suction"));
    const Opened &opened = *m_desk->opened();
    QCOMPARE(opened.spot(), QStringLiteral("run|suction"));
    QCOMPARE(opened.title(), QStringLiteral("line, pre-filter to pump"));
    QCOMPARE(m_desk->opened()->pieces()->count(), 3); // An end, the hose, an end.
    QCOMPARE(cell(m_desk->opened()->pieces(), "line", "title"), QStringLiteral("HO-8"));
    QCOMPARE(m_desk->opened()->ways()->cell(0, QStringLiteral("pick")).toString(),
             QStringLiteral("HO-8"));
    QVERIFY(m_desk->opened()->ways()->cell(0, QStringLiteral("inUse")).toBool());
    QCOMPARE(m_desk->opened()->ways()->count(), 3);
    // 5 ft 6 in of a coil that cost 80.36 for 140 in: 66 × 0.574 = 37.884.
    QCOMPARE(cell(m_desk->opened()->ways(), "HO-10", "cost"), QStringLiteral("37.88 USD"));
}

void OneChangeRedrawsAll::anotherLineIsWeighedAndPicked()
{
    const QString before = m_desk->total();
    m_desk->openAt(QStringLiteral("suction"));
    // Now 66 in of HO-8 at 0.50 are 33.00 and as much of HO-10 at 0.574 is 37.88; then 132 in of
    // HO-10 are 75.77.
    QTRY_VERIFY(cell(m_desk->opened()->ways(), "HO-10", "detail")
                    .contains(QStringLiteral("; total +4.89 USD")));
    QVERIFY(!cell(m_desk->opened()->ways(), "HO-8", "detail").contains(QStringLiteral("total")));
    QTRY_VERIFY(
        cell(m_desk->opened()->ways(), "HO-6", "detail").contains(QStringLiteral("; total ")));
    QVERIFY(m_desk->pick(QStringLiteral("suction"), QStringLiteral("HO-10")));
    QVERIFY2(m_desk->lastStep().startsWith(QStringLiteral("Line, pre-filter to pump: HO-10")),
             qPrintable(m_desk->lastStep()));
    QVERIFY(m_desk->opened()->picked());
    QCOMPARE(m_desk->opened()->betterPick(), QStringLiteral("HO-8"));
    QCOMPARE(cell(m_desk->map()->runs(), "suction", "dash"), QStringLiteral("-10"));
    QCOMPARE(cell(m_desk->map()->runs(), "suction", "outdone"), QStringLiteral("true"));
    QVERIFY(m_desk->answer(QStringLiteral("fluid"), QStringLiteral("E85")));
    QCOMPARE(cell(m_desk->map()->runs(), "suction", "picked"), QStringLiteral("true"));
    QVERIFY(m_desk->letGo(QStringLiteral("suction")));
    QCOMPARE(cell(m_desk->map()->runs(), "suction", "picked"), QStringLiteral("false"));
    QCOMPARE(m_desk->total(), before);
}

void OneChangeRedrawsAll::whatIsOpenIsWeighedOnlyWhileItIsOpen()
{
    m_desk->openAt(QStringLiteral("suction"));
    m_desk->openAt(QStringLiteral("suction.end"));
    QTest::qWait(3 * Weighing::RestMs);
    for (int row = 0; row < m_desk->opened()->ways()->count(); ++row)
        QVERIFY(!m_desk->opened()
                     ->ways()
                     ->cell(row, QStringLiteral("detail"))
                     .toString()
                     .contains(QStringLiteral("total")));
    m_desk->openAt(QStringLiteral("prefilter"));
    m_desk->close();
    QTest::qWait(2 * Weighing::RestMs);
    QCOMPARE(m_desk->opened()->ways()->count(), 0);
}

/// NIST SP 811, appendix B: 1 gal (US) = 3.785 412 L, 1 psi = 6.894 757 kPa. The pump of the bench
/// gives 460 L/h at 300 kPa, its regulator goes from 200 kPa to 500 kPa, its cell holds 60 L.
void OneChangeRedrawsAll::platesSayTheirFactsInThePersonsUnits()
{
    const auto fact = [this](const char *station) {
        return cell(m_desk->map()->plates(), station, "fact");
    };
    QCOMPARE(fact("pump"), QStringLiteral("460 L/h, 3 bar"));
    QCOMPARE(fact("regulator"), QStringLiteral("2–5 bar"));
    QCOMPARE(fact("cell"), QStringLiteral("60 L"));
    m_desk->openAt(QStringLiteral("pump"));
    m_desk->setInInches(true);
    QCOMPARE(fact("pump"), QStringLiteral("122 gph, 43.5 psi"));
    QCOMPARE(fact("regulator"), QStringLiteral("29–72.5 psi"));
    QCOMPARE(fact("cell"), QStringLiteral("15.9 gal"));
    QCOMPARE(fact("prefilter"), QStringLiteral("100 µm nominal"));
    QVERIFY(m_desk->opened()->standing().startsWith(QStringLiteral("122 gph, 43.5 psi")));
    QCOMPARE(unitsOf(QLocale(QStringLiteral("en_US"))), Units::Inch);
    QCOMPARE(unitsOf(QLocale(QStringLiteral("en_GB"))), Units::Metric);
    QCOMPARE(unitsOf(QLocale(QStringLiteral("de_DE"))), Units::Metric);
}

void OneChangeRedrawsAll::aFindingsButtonMendsIt()
{
    QCOMPARE(m_desk->anythingStopped(), QStringLiteral("1 stop, 1 caution"));
    QCOMPARE(m_desk->findings()->cell(0, QStringLiteral("mend")).toString(),
             QStringLiteral("use AD-66 + HE-6"));
    QVERIFY(m_desk->mend(0));
    QCOMPARE(m_desk->anythingStopped(), QStringLiteral("no stop, 1 caution"));
    QVERIFY(!m_desk->mend(0)); // The caution has no button.
    QVERIFY(!m_desk->mend(99));
}

void OneChangeRedrawsAll::stepsAreTakenBackOneByOne()
{
    const QString total = m_desk->total();
    QVERIFY(m_desk->answer(QStringLiteral("power"), QStringLiteral("520 hp")));
    QVERIFY(m_desk->pick(QStringLiteral("prefilter"), QStringLiteral("MF-10")));
    QVERIFY(m_desk->choose(QStringLiteral("what the builder prefers"), 2));
    QCOMPARE(m_desk->plan().preference, std::string("money"));
    m_desk->takeBack();
    QCOMPARE(m_desk->plan().preference, std::string("shelf"));
    m_desk->takeBack();
    QVERIFY(m_desk->plan().picks.empty());
    m_desk->takeBack();
    QCOMPARE(m_desk->total(), total);
    QVERIFY(!m_desk->canTakeBack());
    QVERIFY(m_desk->lastStep().startsWith(QStringLiteral("Taken back: power from")));
    m_desk->takeBack();
    QCOMPARE(m_desk->total(), total);
}

void OneChangeRedrawsAll::anImpossiblePickIsSaidAndNotTaken()
{
    QVERIFY(!m_desk->pick(QStringLiteral("prefilter"), QStringLiteral("ZZ-1")));
    QVERIFY(m_desk->plan().picks.empty());
    QCOMPARE(m_desk->lastStep(),
             QStringLiteral("Not done: ZZ-1: is no part of this shop. Pick another."));
    QVERIFY(!m_desk->canTakeBack());
}

/// Added up here from the texts that the screen shows, in whole cents.
void OneChangeRedrawsAll::figuresAreExactAndTheTotalIsTheirSum()
{
    long long cents = 0;
    int priced = 0;
    for (int row = 0; row < m_desk->bill()->count(); ++row) {
        QString cost = m_desk->bill()->cell(row, QStringLiteral("cost")).toString();
        if (cost == QStringLiteral("no price"))
            continue;
        cost.remove(u',').remove(u'.');
        cents += cost.toLongLong();
        ++priced;
    }
    QVERIFY(priced > 10);
    QString total = m_desk->total();
    QVERIFY(total.endsWith(QStringLiteral(" USD")));
    total.remove(u',').remove(u'.').remove(QStringLiteral(" USD"));
    QCOMPARE(cents, total.toLongLong());
}

void OneChangeRedrawsAll::everyGroupOfTheBillHasOneHead()
{
    const auto headedOnce = [this] {
        QStringList all;
        for (int row = 0; row < m_desk->bill()->count(); ++row)
            all.append(m_desk->bill()->cell(row, QStringLiteral("head")).toString());
        const bool begins = !all.first().isEmpty();
        all.removeAll(QString());
        return begins && all.size() > 2 && all.removeDuplicates() == 0;
    };
    QVERIFY(headedOnce());
    QCOMPARE(cell(m_desk->bill(), "CL-60", "head"), QStringLiteral("cell"));
    QCOMPARE(cell(m_desk->bill(), "HO-10", "head"), QString());
    m_desk->setByKind(true);
    QVERIFY(headedOnce());
    QCOMPARE(cell(m_desk->bill(), "CL-60", "head"), QStringLiteral("tank"));
    m_desk->setByKind(false);
    QVERIFY(m_desk->pick(QStringLiteral("suction"), QStringLiteral("HO-6")));
    QCOMPARE(cell(m_desk->bill(), "CL-60", "head"), QStringLiteral("cell"));
}

void OneChangeRedrawsAll::findingLooksForAllWordsInAnyOrder_data()
{
    QTest::addColumn<QString>("typed");
    QTest::addColumn<QString>("target");
    QTest::newRow("a part number") << "pu-460"
                                   << "pump";
    QTest::newRow("size before family") << "-8 orb"
                                        << "pump";
    QTest::newRow("micron in words") << "10 micron post"
                                     << "";
    QTest::newRow("a joint by its place") << "rail in"
                                          << "rail";
    QTest::newRow("a piece in the hand") << "ad-810"
                                         << "suction.end";
    QTest::newRow("nothing at all") << "   "
                                    << "";
}

void OneChangeRedrawsAll::findingLooksForAllWordsInAnyOrder()
{
    QFETCH(QString, typed);
    QFETCH(QString, target);
    m_desk->find(typed);
    if (target.isEmpty())
        QCOMPARE(m_desk->found()->count(), 0);
    else
        QCOMPARE(m_desk->found()->cell(0, QStringLiteral("target")).toString(), target);
}

QTEST_MAIN(OneChangeRedrawsAll)
#include "tst_one_change_redraws_all.moc"
