// SPDX-License-Identifier: MIT
//
// Netting over time gives the plans that textbooks and their lectures print, to the last piece.

#include "model/netting/over_time/calendar_day.h"
#include "model/netting/over_time/low_level.h"
#include "tests/netting/published_plan.h"

#include <QTest>

using namespace flarestock;
using namespace flarestock::tests;

class PlansAreThoseOfTextbooks : public QObject {
    Q_OBJECT

private:
    static NettedPlan plan(const WantedOverTime &wanted)
    {
        auto netted = nettedOverTime(wanted);
        if (!netted)
            qFatal("%s", netted.error().text().c_str());
        return *netted;
    }

private Q_SLOTS:
    void chairs();
    void shuttersLotForLot();
    void shuttersInLots();
    void fixedLots();
    void partOfSeveralLevels();
    void leastOrder();
    void deepTree();
    void minimumStays();
    void tenWeeks();
    void codesOfADiamond();
    void circlesAreNamed();
    void pastDueIsSaid();
    void calendarDaysAreAlike();
};

// N1: lecture example with published answers, a chair of a seat, a back and four legs. Answers read
// for weeks 1 to 4; lead times of the parts inferred from them.
void PlansAreThoseOfTextbooks::chairs()
{
    const auto chairs = plan({{item("chair", 2, 260, {{"seat", 1}, {"back", 1}, {"legs", 4}}),
                               item("seat", 2, 60), item("back", 2, 40), item("legs", 2, 80)},
                              everyPeriod("chair", {150, 0, 70, 0, 175, 0, 90, 60}),
                              {{"seat", 1, 50, "seats"}, {"back", 1, 10, "backs"}}});
    QCOMPARE(releases(chairs, "chair"), "135@3 90@5 60@6");
    QCOMPARE(releases(chairs, "seat"), "25@1 90@3 60@4");
    QCOMPARE(releases(chairs, "back"), "85@1 90@3 60@4");
    QCOMPARE(releases(chairs, "legs"), "460@1 360@3 240@4");
}

namespace {

WantedOverTime shutters(int frameLot, int woodLot)
{
    return {{item("shutter", 1, 0, {{"frame", 2}, {"wood", 4}}), inLots(item("frame", 2), frameLot),
             inLots(item("wood", 1), woodLot)},
            everyPeriod("shutter", {0, 0, 0, 100, 0, 0, 0, 150}),
            {{"wood", 1, 70, "sections"}}};
}

} // namespace

// N2: Operations Management (textbook), shutters of two frames and four wood sections. The problem
// and its first steps are published; the later rows were computed by two other programs.
void PlansAreThoseOfTextbooks::shuttersLotForLot()
{
    const auto made = plan(shutters(0, 0));
    QCOMPARE(releases(made, "shutter"), "100@3 150@7");
    QCOMPARE(releases(made, "frame"), "200@1 300@5");
    QCOMPARE(releases(made, "wood"), "330@2 600@6");
}

// N2 in lots of 320 frames and packs of 70 sections.
void PlansAreThoseOfTextbooks::shuttersInLots()
{
    const auto made = plan(shutters(320, 70));
    QCOMPARE(releases(made, "frame"), "320@1 320@5");
    QCOMPARE(made.item("frame")->balanceAt(3), Decimal(120));
    QCOMPARE(made.item("frame")->balanceAt(7), Decimal(140));
    QCOMPARE(releases(made, "wood"), "350@2 630@6");
    QCOMPARE(made.item("wood")->balanceAt(3), Decimal(20));
    QCOMPARE(made.item("wood")->balanceAt(7), Decimal(50));
}

// N3: slides of Operations Management: Processes and Supply Chains, fixed lots of 230. The question
// is published, the answer was computed.
void PlansAreThoseOfTextbooks::fixedLots()
{
    const auto seats = plan({{inLots(item("seat", 2, 37), 230)},
                             everyPeriod("seat", {150, 0, 0, 120, 0, 150, 120, 0}),
                             {{"seat", 1, 230, "first"}}});
    QCOMPARE(balances(seats, "seat", 8), "117 117 117 227 227 77 187 187");
    QCOMPARE(releases(seats, "seat"), "230@2 230@5");
}

// N4: Operations and Supply Chain Management, 14th edition, problem of chapter 21; answer computed.
// D stands below A itself, and has to be netted last.
void PlansAreThoseOfTextbooks::partOfSeveralLevels()
{
    const auto made = plan(
        {{item("A", 1, 0, {{"B", 2}, {"C", 3}, {"D", 2}}), item("B", 2, 0, {{"E", 1}, {"F", 2}}),
          item("C", 1, 15, {{"F", 2}, {"D", 1}}), item("D", 1, 50),
          inLots(item("E", 2, 0, {{"D", 2}}), 50), inLots(item("F", 1), 180)},
         {{"A", 8, 20, "sales"}},
         {{"E", 2, 20, "first"}}});
    const std::vector<std::pair<std::string, int>> codes{{"A", 0}, {"B", 1}, {"C", 1},
                                                         {"D", 3}, {"E", 2}, {"F", 2}};
    for (const auto &[id, code] : codes)
        QCOMPARE(made.item(id)->lowLevel, code);
    QCOMPARE(releases(made, "A"), "20@7");
    QCOMPARE(releases(made, "B"), "40@5");
    QCOMPARE(releases(made, "C"), "45@6");
    QCOMPARE(releases(made, "E"), "50@3");
    QCOMPARE(releases(made, "F"), "180@4");
    QCOMPARE(releases(made, "D"), "50@2 45@5 40@6");
}

// N5: a textbook problem with a least order; answer computed. (Lead times of C and D inferred.)
void PlansAreThoseOfTextbooks::leastOrder()
{
    auto c = item("C", 1, 100);
    c.least = 500;
    const auto made =
        plan({{item("X", 2, 15, {{"A", 3}, {"B", 2}}), item("A", 2, 10, {{"C", 4}, {"D", 2}}),
               item("B", 2, 20, {{"D", 2}}), c, item("D", 1, 20)},
              {{"X", 8, 95, "sales"}},
              {{"A", 3, 25, "first"}, {"B", 4, 15, "second"}}});
    QCOMPARE(releases(made, "X"), "80@6");
    QCOMPARE(releases(made, "A"), "205@4");
    QCOMPARE(releases(made, "B"), "125@4");
    QCOMPARE(releases(made, "C"), "720@3");
    QCOMPARE(releases(made, "D"), "640@3");
}

namespace {

/// Of S, T, U, V, W, X, Y, Z.
WantedOverTime deepTreeWith(const std::array<int, 8> &onHand)
{
    return {{item("S", 2, onHand[0], {{"T", 1}, {"U", 2}}),
             item("T", 1, onHand[1], {{"V", 1}, {"W", 2}, {"X", 1}}),
             item("U", 2, onHand[2], {{"Y", 2}, {"Z", 3}}), item("V", 2, onHand[3]),
             item("W", 3, onHand[4]), item("X", 1, onHand[5]), item("Y", 2, onHand[6]),
             item("Z", 1, onHand[7])},
            {{"S", 7, 100, "sales"}},
            {}};
}

} // namespace

// N6: textbook problems 14.3 to 14.5, 100 S in week 7 with and without stock; answers computed.
void PlansAreThoseOfTextbooks::deepTree()
{
    const std::array<const char *, 8> ids{"S", "T", "U", "V", "W", "X", "Y", "Z"};
    const auto bare = plan(deepTreeWith({}));
    const std::array<const char *, 8> wanted{"100@5", "100@4", "200@3", "100@2",
                                             "200@1", "100@3", "400@1", "600@2"};
    const auto stocked = plan(deepTreeWith({20, 20, 40, 30, 30, 25, 240, 40}));
    const std::array<const char *, 8> less{"80@5", "60@4", "120@3", "30@2",
                                           "90@1", "35@3", "",      "320@2"};
    for (std::size_t i = 0; i < ids.size(); ++i) {
        QCOMPARE(releases(bare, ids[i]), wanted[i]);
        QCOMPARE(releases(stocked, ids[i]), less[i]);
    }
}

// N7: a published question, net requirements with a minimum; answer computed.
void PlansAreThoseOfTextbooks::minimumStays()
{
    auto part = item("part", 0, 100);
    part.minimum = 100;
    QCOMPARE(releases(plan({{part}, {{"part", 1, 250, ""}}, {{"part", 1, 100, ""}}}), "part"),
             "150@1");
    part.minimum = 0;
    QCOMPARE(releases(plan({{part}, {{"part", 1, 250, ""}}, {{"part", 1, 200, ""}}}), "part"), "");
    // Where stock is over what is wanted, the minimum is not ordered besides.
    part.minimum = 20;
    QCOMPARE(releases(plan({{part}, {{"part", 1, 80, ""}}, {}}), "part"), "");
}

// N8: a published question of ten weeks; answer computed.
void PlansAreThoseOfTextbooks::tenWeeks()
{
    const auto made =
        plan({{item("A", 2, 120)}, everyPeriod("A", {41, 44, 84, 42, 84, 86, 7, 18, 49, 30}), {}});
    QCOMPARE(releases(made, "A"), "49@1 42@2 84@3 86@4 7@5 18@6 49@7 30@8");
}

void PlansAreThoseOfTextbooks::codesOfADiamond()
{
    const auto codes =
        lowLevelCodes({item("A", 0, 0, {{"B", 1}, {"C", 1}}), item("B", 0, 0, {{"D", 1}}),
                       item("C", 0, 0, {{"B", 1}}), item("D", 0)});
    QVERIFY(codes);
    QCOMPARE((std::vector<int>{codes->at("A"), codes->at("B"), codes->at("C"), codes->at("D")}),
             (std::vector<int>{0, 2, 1, 3}));
}

void PlansAreThoseOfTextbooks::circlesAreNamed()
{
    const auto three = lowLevelCodes({item("A", 0, 0, {{"B", 1}}), item("B", 0, 0, {{"C", 1}}),
                                      item("C", 0, 0, {{"A", 1}}), item("D", 0, 0, {{"A", 1}})});
    QVERIFY(!three);
    QVERIFY(three.error().wrong.ends_with("goes in a circle: A > B > C > A"));
    const auto one = lowLevelCodes({item("A", 0, 0, {{"A", 1}})});
    QVERIFY(!one);
    QVERIFY(one.error().wrong.ends_with(": A > A"));
    const auto behind =
        lowLevelCodes({item("A", 0, 0, {{"B", 1}}), item("B", 0, 0, {{"D", 1}, {"C", 1}}),
                       item("C", 0, 0, {{"B", 1}}), item("D", 0)});
    QVERIFY(!behind);
    QVERIFY(behind.error().wrong.ends_with(": B > C > B"));
    const auto unknown = lowLevelCodes({item("A", 0, 0, {{"B", 1}})});
    QVERIFY(!unknown);
    const auto twice = lowLevelCodes({item("A", 0), item("A", 0)});
    QVERIFY(!twice);
}

// From memory: an order that should have been given before the first period is shown there.
void PlansAreThoseOfTextbooks::pastDueIsSaid()
{
    const auto made = plan({{item("A", 3, 5, {{"B", 2}}), item("B", 1, 4)},
                            {{"A", 2, 7, "car"}, {"A", 5, 1, "car"}},
                            {}});
    const auto &orders = made.item("A")->orders;
    QCOMPARE(releases(made, "A"), "2@-1 1@2");
    QVERIFY(orders[0].isPastDue);
    QVERIFY(!orders[1].isPastDue);
    // B is wanted by what is begun: as early as can be, which is now.
    QCOMPARE(releases(made, "B"), "2@1");
    QCOMPARE(made.item("B")->wants[0].want.day, DayNumber(1));
    QCOMPARE(made.item("B")->wants[0].covered(), Decimal(4));
    QCOMPARE(*made.item("A")->wants[0].orderBy(), DayNumber(-1));
}

// N8 again, its weeks as days of the calendar over the end of a leap February.
void PlansAreThoseOfTextbooks::calendarDaysAreAlike()
{
    const DayNumber before = *dayNumber("2028-02-24");
    WantedOverTime wanted{{item("A", 2, 120)},
                          everyPeriod("A", {41, 44, 84, 42, 84, 86, 7, 18, 49, 30}),
                          {},
                          before + 1};
    for (WantedItem &one : wanted.wanted)
        one.day += before;
    const auto made = plan(wanted);
    const auto &orders = made.item("A")->orders;
    QCOMPARE(orders.size(), std::size_t(8));
    QCOMPARE(calendarDay(orders.front().release), "2028-02-25");
    QCOMPARE(calendarDay(orders[5].release), "2028-03-01");
    QVERIFY(!dayNumber("2027-02-29") && !dayNumber("2027-2-9"));
}

QTEST_APPLESS_MAIN(PlansAreThoseOfTextbooks)
#include "tst_plans_are_those_of_textbooks.moc"
