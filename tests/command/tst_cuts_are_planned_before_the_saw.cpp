// SPDX-License-Identifier: MIT
//
// Cuts are planned before the saw: remnants first and least waste side by side, and cut so. The
// demo shop is invented; it has PT-8 in pieces of 150, 52 and 31 in, and the end HE-8 takes up
// 3/4 in of a hose. The sums are a fitter's, done by hand.

#include "tests/command/changed_shop.h"

#include <QTest>

#include <set>

using namespace flarestock::tests;

class PlannedCuts : public QObject {
    Q_OBJECT

private:
    ChangedShop m_shop;
    [[nodiscard]] Ran run(const Words &words) const { return m_shop.run(words); }
    [[nodiscard]] Ran json(const Words &words) const { return m_shop.json(words); }
    /// "lot: cuts; rest | …"
    [[nodiscard]] static std::string said(const QJsonObject &plan)
    {
        std::string text;
        for (const QJsonValue &from : plan.value(QStringLiteral("from")).toArray()) {
            text += (text.empty() ? "" : " | ") + textOf(from, "lot") + ":";
            for (const QJsonValue &cut : from.toObject().value(QStringLiteral("cuts")).toArray())
                text += " " + cut.toString().toStdString();
            text += "; " + textOf(from, "rest");
        }
        return text;
    }

private Q_SLOTS:
    void init() { m_shop.renew(); }
    void bothPlansAreShown();
    void whatLacksIsSaid();
    void aCoilIsBought();
    void theSawFollowsThePlan();
    void wrongWordsAreRefused();
};

void PlannedCuts::bothPlansAreShown()
{
    const Words words{"cut-plan", "PT-8",  "40 in", "40 in",  "40 in", "--start",
                      "HE-8",     "--end", "HE-8",  "--kerf", "1/8 in"};
    const Ran ran = json(words);
    QVERIFY2(ran.status == 0, ran.err.c_str());
    const auto plans = arrayOf(ran, "plans");
    const auto remnants = objectWith(plans, "plan", "remnants");
    const auto waste = objectWith(plans, "plan", "waste");
    // 52 - 38 1/2 - 1/8; 150 - 2 × 38 5/8; 150 - 3 × 38 5/8.
    QCOMPARE(said(remnants), std::string("PT-8-A: 38.5 38.5; 72.75 | PT-8-B: 38.5; 13.375"));
    QCOMPARE(said(waste), std::string("PT-8-A: 38.5 38.5 38.5; 34.125"));
    for (const auto &plan : {remnants, waste}) {
        QCOMPARE(textOf(plan, "waste"), std::string("0.375"));
        QCOMPARE(textOf(plan, "toBuy"), std::string("0"));
        QVERIFY(plan.value(QStringLiteral("proven")).toBool());
    }
    const Ran people = run(words);
    QVERIFY(people.out.find("remnants first: 3/8 in of waste") != std::string::npos);
    QVERIFY(people.out.find("least waste: 3/8 in of waste") != std::string::npos);
}

void PlannedCuts::whatLacksIsSaid()
{
    const auto plans = arrayOf(json({"cut-plan", "PT-8", "140 in", "60 in", "55 in"}), "plans");
    const auto plan = objectWith(plans, "plan", "remnants");
    // The longest is cut off the 150 in; 60 + 1/16 + 55 is to be bought.
    QCOMPARE(textOf(plan, "toBuy"), std::string("115.0625"));
    QCOMPARE(plan.value(QStringLiteral("lacking")).toArray().size(), 2);
    const Ran people = run({"cut-plan", "PT-8", "140 in", "60 in", "55 in"});
    QVERIFY2(people.out.find("lacking: 5 ft, 4 ft 7 in; to be had from one piece of "
                             "9 ft 7 1/16 in") != std::string::npos,
             people.out.c_str());
}

void PlannedCuts::aCoilIsBought()
{
    const auto plans =
        arrayOf(json({"cut-plan", "PT-8", "140 in", "60 in", "55 in", "--coil", "20 ft"}), "plans");
    const auto plan = objectWith(plans, "plan", "waste");
    QCOMPARE(plan.value(QStringLiteral("coils")).toInt(), 1);
    QVERIFY(plan.value(QStringLiteral("lacking")).toArray().isEmpty());
}

void PlannedCuts::theSawFollowsThePlan()
{
    const auto lots = [this](const char *plan) {
        Words words{"cut", "PT-8", "38 1/2 in", "38 1/2 in", "--to", "car-1"};
        if (*plan != '\0')
            words.insert(words.end(), {"--plan", plan});
        const Ran ran = json(words);
        std::set<std::string> off;
        for (const QJsonValue &movement : arrayOf(ran, "movements"))
            off.insert(textOf(movement, "lot"));
        m_shop.renew();
        return off;
    };
    QCOMPARE(lots("waste"), (std::set<std::string>{"PT-8-A"}));
    QCOMPARE(lots("remnants"), (std::set<std::string>{"PT-8-A", "PT-8-B"}));
    QCOMPARE(lots(""), (std::set<std::string>{"PT-8-A", "PT-8-B"}));
    QCOMPARE(run({"cut", "PT-8", "38 1/2 in", "--to", "car-1", "--plan", "waste"}).status, 0);
    QVERIFY(m_shop.isWhole());
}

void PlannedCuts::wrongWordsAreRefused()
{
    for (const Words &words :
         {Words{"cut-plan", "AD-8-8", "3 in"}, Words{"cut-plan", "PT-8", "0 in"},
          Words{"cut-plan", "PT-8", "1 in", "--start", "HE-8", "--end", "HE-8"},
          Words{"cut-plan", "PT-8", "9 in", "--start", "HE-6", "--end", "HE-8"},
          Words{"cut-plan", "PT-8", "9 in", "--coil", "0 in"},
          Words{"cut-plan", "PT-8", "99999999999 in"},
          Words{"cut", "PT-8", "9 in", "--to", "car-1", "--plan", "luck"},
          Words{"cut", "PT-8", "140 in", "60 in", "--to", "car-1", "--plan", "waste"}}) {
        const Ran ran = run(words);
        QVERIFY2(ran.refusesInOneLine(), (words.at(1) + ": " + ran.err + ran.out).c_str());
    }
    QVERIFY(run({"cut-plan", "PT-8", "9 in", "--start", "HE-8"}).refusesInOneLine());
}

QTEST_APPLESS_MAIN(PlannedCuts)
#include "tst_cuts_are_planned_before_the_saw.moc"
