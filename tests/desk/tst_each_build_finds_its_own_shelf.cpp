// SPDX-License-Identifier: MIT
//
// What one build after the other finds on the shelf, worked out only where it differs from what the
// one before found, is what it would be if it were worked out anew: with what the builds before it
// took, what is promised to it, what it has got, lots that are kept from it, and what nobody
// counts.

#include "app/buyer/by_date/shelf_in_turn.h"
#include "app/buyer/needs.h"
#include "app/workshop/demo_shop.h"

#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <iterator>

using namespace flarestock;

namespace {

std::string text(const std::string &number, const FreeStock &stock)
{
    std::string all = number + '|' + stock.onHand.amount.text() + '|' + stock.free.amount.text() +
                      '|' + stock.value.text() + '|' + stock.seen;
    for (const Quantity &piece : stock.pieces)
        all += "|piece " + piece.amount.text();
    for (const FreeStock::AtPlace &at : stock.places)
        all += '|' + at.place + ' ' + at.free.amount.text();
    for (const std::string &part : stock.missing)
        all += "|lacks " + part;
    if (stock.cutBefore)
        all += "|cut " + stock.cutBefore->amount.text();
    if (stock.level)
        all += '|' + std::string(text(*stock.level));
    return all;
}

std::vector<std::string> texts(const Shelf &shelf)
{
    std::vector<std::string> all;
    for (const auto &[number, stock] : shelf)
        all.push_back(text(number, stock));
    return all;
}

/// How many of the lines of one are not among the other's.
std::size_t differing(const std::vector<std::string> &one, const std::vector<std::string> &other)
{
    std::vector<std::string> only;
    std::set_difference(one.begin(), one.end(), other.begin(), other.end(),
                        std::back_inserter(only));
    return only.size();
}

} // namespace

class ShelvesInTurn : public QObject {
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    const std::string m_path = m_folder.filePath(QStringLiteral("demo.flarestock")).toStdString();
    std::shared_ptr<const Workshop> m_shop;

private Q_SLOTS:
    void initTestCase()
    {
        QVERIFY(makeDemoShop(m_path, 1'795'824'000'000).has_value()); // 2026-11-28
        m_shop = Workshop::open(m_path).value();
    }
    void eachIsWhatItWouldBeAnew();
    void theShopsOwnIsTheFirst();
};

void ShelvesInTurn::eachIsWhatItWouldBeAnew()
{
    const auto builds = buildsByDate(*m_shop, {});
    QVERIFY(builds.size() > 4);
    Bars bars = m_shop->bars;
    Ledger ledger = m_shop->ledger;
    // A lot of what lies here is kept from the third build, and something is promised to the last.
    const auto lot = std::find_if(ledger.balances().begin(), ledger.balances().end(),
                                  [](const auto &one) { return !one.first.lot.empty(); });
    QVERIFY(lot != ledger.balances().end());
    bars[builds[2].id].insert({lot->first.part, lot->first.lot});
    ShelfInTurn shelf(*m_shop, bars);
    std::size_t differed = 0;
    std::vector<std::string> before;
    const auto look = [&](const BuildPlan &plan) {
        const auto anew = texts(m_shop->shelfFor(plan, ledger, bars));
        const auto inTurn = texts(shelf.of(plan, ledger));
        QCOMPARE(differing(inTurn, anew), std::size_t{0});
        QCOMPARE(inTurn, anew);
        differed += before.empty() ? 0 : differing(anew, before);
        before = anew;
    };
    std::size_t count = 0;
    for (const BuildPlan &plan : builds) {
        look(plan);
        const Shelf now = shelf.of(plan, ledger);
        for (const auto &[number, stock] : now) {
            const Part *part = m_shop->catalogue.find(number);
            const auto free = stock.free.smallest();
            if (!part || !free || *free < 2 || ++count % 7 != 0)
                continue;
            // Every other of them it has got already, as far as the shop knows.
            const std::int64_t issued = count % 2 == 0 ? *free / 4 : 0;
            ledger.carryOver(ClaimKey{number, plan.id}, Claim{*free / 2, issued});
            shelf.changed(*part);
        }
        look(plan);
    }
    look(builds.front()); // And back.
    QVERIFY(count > 100);
    QVERIFY(differed > builds.size()); // They are not all the same.
}

void ShelvesInTurn::theShopsOwnIsTheFirst()
{
    ShelfInTurn shelf(*m_shop, m_shop->bars);
    for (const BuildPlan &plan : m_shop->builds)
        QCOMPARE(texts(shelf.of(plan, m_shop->ledger)), texts(m_shop->shelfFor(plan)));
}

QTEST_GUILESS_MAIN(ShelvesInTurn)
#include "tst_each_build_finds_its_own_shelf.moc"
