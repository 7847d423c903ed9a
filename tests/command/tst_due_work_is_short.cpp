// SPDX-License-Identifier: MIT
//
// Promise: what is due to be replaced in a car wants its parts by its own day: it is met before a
// build that wants the same part later, what then lacks is short and is bought like the rest, and
// what a travelling copy has for its own is said not to lie here.

#include "tests/command/changed_shop.h"

#include <QTest>

using namespace flarestock::tests;

namespace {

constexpr const char *On = "2026-11-28";
/// An element of which the demo shop has two: in a bin, and in the trailer.
constexpr const char *Part = "EM-40-S";

} // namespace

class DueWorkIsShort : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init()
    {
        m_shop.renew();
        for (const char *at : {"left", "right", "front", "rear"})
            fit(at);
    }
    void whatLacksForItIsShort()
    {
        damage({"left", "right", "front", "rear"}); // Two lie in the shop.
        QCOMPARE(works(), std::string("front:0 left:0 rear:1 right:1 "));
        const Ran list = m_shop.run({"short", "--on", On});
        QVERIFY(list.out.find("car-2: left") == std::string::npos);
        QVERIFY(list.out.find("car-2: rear") != std::string::npos);
        // The plan orders what is short by then, and the one that its drawer is to hold; no more.
        QCOMPARE(planned(), 3);
    }
    void anEarlierWorkIsMetBeforeALaterBuild()
    {
        QCOMPARE(builds(), std::string("roadster-fuel:0 single-seater-return:0 coupe-classic:1 "));
        damage({"left"}); // Who wants it last lacks it first.
        QCOMPARE(works(), std::string("left:0 "));
        QCOMPARE(builds(), std::string("roadster-fuel:0 single-seater-return:1 coupe-classic:1 "));
        damage({"right"});
        QCOMPARE(works(), std::string("left:0 right:0 "));
        QCOMPARE(builds(), std::string("roadster-fuel:1 single-seater-return:1 coupe-classic:1 "));
    }
    void anEarlierBuildKeepsWhatItTakes()
    {
        // To be replaced before the trial on 2027-01-30, behind the roadster and before the others.
        for (const char *at : {"left", "right"})
            fit(at, {"--use-by", "2027-01-05"});
        QCOMPARE(works(), std::string("left:0 right:1 "));
        QCOMPARE(builds(), std::string("roadster-fuel:0 single-seater-return:1 coupe-classic:1 "));
    }
    void theTableOfNeedsPlansTheSame()
    {
        damage({"left", "right"});
        const std::string table = m_shop.path() + ".csv";
        const Ran due = m_shop.run({"due", "--today", On, "--csv", table});
        QVERIFY2(due.status == 0, due.err.c_str());
        // What builds would take is nobody's yet for who services a car now.
        QVERIFY(!bytesOf(table).contains(Part));
        damage({"front"});
        QCOMPARE(m_shop.run({"due", "--today", On, "--csv", table + "2"}).status, 0);
        QVERIFY(bytesOf(table + "2").contains("EM-40-S,1,2026-11-28,car-2"));
        const Ran plan = m_shop.json({"plan", "--today", On, "--needs", table + "2"});
        QVERIFY2(plan.status == 0, plan.err.c_str());
        QVERIFY(plan.out.find(Part) != std::string::npos);
    }
    void whatIsAwayIsSaid()
    {
        damage({"left", "right"});
        QVERIFY(m_shop.run({"short", "--on", On}).out.find("away are") == std::string::npos);
        const Ran taken =
            m_shop.run({"trailer", "take", "--to", m_shop.path() + ".copy", "--name", "oxlow"});
        QVERIFY2(taken.status == 0, taken.err.c_str());
        const Ran said = m_shop.run({"short", "--on", On});
        QVERIFY2(said.out.find("EM-40-S: 2 counted on, 1 of it here; away are 1 with oxlow") !=
                     std::string::npos,
                 said.out.c_str());
    }

private:
    void fit(const char *at, const Words &more = {})
    {
        Words words{"service", "car-2", "fit", Part, "--at", at, "--since", "2026-11-01"};
        words.insert(words.end(), more.begin(), more.end());
        const Ran done = m_shop.run(words);
        QVERIFY2(done.status == 0, done.err.c_str());
    }
    void damage(const Words &positions)
    {
        for (const std::string &at : positions) {
            const Ran done = m_shop.run({"service", "car-2", "damaged", at, "--day", On});
            QVERIFY2(done.status == 0, done.err.c_str());
        }
    }
    /// "left:0 right:1 ": who wants the part, and how much of it is short.
    [[nodiscard]] std::string wanted(const char *name, bool forWork) const
    {
        std::string all;
        for (const QJsonValue &line : arrayOf(m_shop.json({"short", "--on", On}), "lines"))
            if (textOf(line, "part") == Part && textOf(line, "work").empty() != forWork &&
                !line.toObject().value(QLatin1String("place")).toBool())
                all += textOf(line, name) + ":" + textOf(line, "short") + " ";
        return all;
    }
    [[nodiscard]] std::string works() const { return wanted("work", true); }
    [[nodiscard]] std::string builds() const { return wanted("for", false); }
    /// How many of the part the plan buys by the day.
    [[nodiscard]] int planned() const
    {
        const Ran plan = m_shop.json({"plan", "--today", On, "--by", On});
        int pieces = 0;
        for (const QJsonValue &order : arrayOf(plan, "orders"))
            for (const QJsonValue &line : order.toObject().value(QLatin1String("lines")).toArray())
                if (textOf(line, "part") == Part)
                    pieces += std::stoi(textOf(line, "quantity"));
        return pieces;
    }

    ChangedShop m_shop;
};

QTEST_APPLESS_MAIN(DueWorkIsShort)
#include "tst_due_work_is_short.moc"
