// SPDX-License-Identifier: MIT
//
// Laws of netting over time over random plans (RapidCheck prints its seed; another is given by
// RC_PARAMS="seed=…"): covered and short are what is wanted, more stock never makes more short,
// nothing wanted is left without a source. The plans are worked out again by another program, which
// knows no levels: it goes round until nothing changes.

#include "tests/netting/published_plan.h"

#include <rapidcheck.h>

#include <QProcess>
#include <QTest>

using namespace flarestock;
using namespace flarestock::tests;

namespace {

/// By repeated relaxation, in Python's fractions. A line an item: id, on hand, minimum, lead,
/// least, lot, then pairs of part and count; wants and receipts by item, day, quantity; "go" ends a
/// plan and is preceded by what was made of it: releases and the last balance.
constexpr const char *PythonPlans = R"(
import sys
from fractions import Fraction as F
def relaxed(items, wants, dues, first):
    releases = {i: {} for i in items}
    while True:
        before = {i: dict(r) for i, r in releases.items()}
        ends = {}
        for i, (hand, least_left, lead, least, lot, made) in items.items():
            gross, comes = {}, {}
            for who, day, many in wants:
                if who == i: gross[max(day, first)] = gross.get(max(day, first), 0) + many
            for parent, row in items.items():
                for part, count in row[5]:
                    if part == i:
                        for day, many in before[parent].items():
                            gross[max(day, first)] = gross.get(max(day, first), 0) + many * count
            for who, day, many in dues:
                if who == i: comes[max(day, first)] = comes.get(max(day, first), 0) + many
            left, orders = hand, {}
            for day in range(first, 60):
                left += comes.get(day, 0) - gross.get(day, 0)
                lacks = least_left - left
                if lacks > 0:
                    many = max(lacks, least)
                    if lot: many = lot * -((-many) // lot)
                    orders[day - lead] = many
                    left += many
            releases[i], ends[i] = orders, left
        if releases == before:
            return releases, ends
items, wants, dues, made, plans, orders = {}, [], [], {}, 0, 0
for line in sys.stdin:
    w = line.split()
    if w[0] == 'item':
        pairs = w[7:]
        items[w[1]] = (F(w[2]), F(w[3]), int(w[4]), F(w[5]), F(w[6]),
                       [(pairs[k], F(pairs[k + 1])) for k in range(0, len(pairs), 2)])
    elif w[0] == 'want': wants.append((w[1], int(w[2]), F(w[3])))
    elif w[0] == 'due': dues.append((w[1], int(w[2]), F(w[3])))
    elif w[0] == 'made': made[w[1]] = (F(w[2]), {int(d): F(q) for d, q in (x.split('@') for x in w[3:])})
    elif w[0] == 'go':
        releases, ends = relaxed(items, wants, dues, 1)
        for i in items:
            if made[i] != (ends[i], releases[i]):
                print(plans, i, made[i], 'is', ends[i], releases[i])
            orders += len(releases[i])
        plans += 1
        items, wants, dues, made = {}, [], [], {}
print(plans, orders > plans)
)";

/// Of the whole range from the first try on.
template <class T>
rc::Gen<T> whole(rc::Gen<T> range)
{
    return rc::gen::resize(100, std::move(range));
}

rc::Gen<Decimal> anyAmount(std::int64_t most)
{
    return rc::gen::map(whole(rc::gen::inRange<std::int64_t>(0, most + 1)),
                        [](std::int64_t tenths) { return Decimal::scaled(tenths, 1).stripped(); });
}

template <class T>
T drawn(const rc::Gen<T> &from)
{
    return *from;
}

int number(int from, int to)
{
    return drawn(whole(rc::gen::inRange(from, to + 1)));
}

/// Up to seven items, each made of some that stand behind it.
WantedOverTime anyWanted(bool isInLots)
{
    WantedOverTime wanted;
    const int count = number(1, 7);
    for (int i = 0; i < count; ++i) {
        NettedItem made = item(std::string(1, static_cast<char>('A' + i)), number(0, 3));
        made.onHand = drawn(anyAmount(300));
        made.minimum = number(0, 3) == 0 ? drawn(anyAmount(100)) : Decimal();
        if (isInLots) {
            made.least = number(0, 3) == 0 ? drawn(anyAmount(300)) : Decimal();
            made.lot = number(0, 2) == 0 ? drawn(anyAmount(200)) : Decimal();
        }
        for (int part = i + 1; part < count; ++part)
            if (number(0, 2) == 0)
                made.madeOf.push_back(
                    {std::string(1, static_cast<char>('A' + part)), number(1, 4)});
        wanted.items.push_back(std::move(made));
    }
    const auto anyItem = [&] {
        return std::string(1, static_cast<char>('A' + number(0, count - 1)));
    };
    for (int i = number(0, 8); i > 0; --i)
        wanted.wanted.push_back(
            {anyItem(), number(-1, 12), drawn(anyAmount(200)), "want " + std::to_string(i)});
    for (int i = number(0, 5); i > 0; --i)
        wanted.due.push_back(
            {anyItem(), number(-1, 12), drawn(anyAmount(200)), "order " + std::to_string(i)});
    // Deepest first, or as it comes: the order of the items must not matter.
    if (number(0, 1) == 1)
        std::reverse(wanted.items.begin(), wanted.items.end());
    return wanted;
}

Decimal shortOf(const NettedPlan &plan, const std::string &id)
{
    Decimal all;
    for (const MetWant &met : plan.item(id)->wants)
        all += met.shortBy();
    return all;
}

std::string asLines(const WantedOverTime &wanted, const NettedPlan &plan)
{
    std::string lines;
    for (const NettedItem &one : wanted.items) {
        lines += "item " + one.id + " " + one.onHand.text() + " " + one.minimum.text() + " " +
                 std::to_string(one.lead) + " " + one.least.text() + " " + one.lot.text();
        for (const NettedItem::Made &made : one.madeOf)
            lines += " " + made.of + " " + made.count.text();
        lines += "\nmade " + one.id + " " + plan.item(one.id)->days.back().balance.text();
        for (const PlannedOrder &order : plan.item(one.id)->orders)
            lines += " " + std::to_string(order.release) + "@" + order.quantity.text();
        lines += "\n";
    }
    for (const WantedItem &one : wanted.wanted)
        lines +=
            "want " + one.item + " " + std::to_string(one.day) + " " + one.quantity.text() + "\n";
    for (const DueItem &one : wanted.due)
        lines +=
            "due " + one.item + " " + std::to_string(one.day) + " " + one.quantity.text() + "\n";
    return lines + "go\n";
}

/// What of a plan is wrong by itself.
void keepsItsLaws(const WantedOverTime &wanted, const NettedPlan &plan)
{
    for (const NettedItem &asked : wanted.items) {
        const NettedPlan::Item &item = *plan.item(asked.id);
        for (const NettedDay &day : item.days) {
            RC_ASSERT(day.net.sign() >= 0);
            RC_ASSERT(day.planned >= day.net);
            RC_ASSERT(day.balance >= asked.minimum);
        }
        std::map<std::string, Decimal> ofOrder;
        Decimal onHand;
        for (const MetWant &met : item.wants) {
            RC_ASSERT(met.covered() + met.shortBy() == met.want.quantity);
            Decimal pegs;
            for (const Peg &peg : met.pegs) {
                RC_ASSERT(peg.quantity.sign() > 0);
                RC_ASSERT(peg.day <= met.want.day);
                pegs += peg.quantity;
                if (peg.from == Peg::From::OnHand)
                    onHand += peg.quantity;
                if (peg.from == Peg::From::Scheduled)
                    ofOrder[peg.order] += peg.quantity;
            }
            RC_ASSERT(pegs == met.want.quantity);
        }
        RC_ASSERT(onHand <= asked.onHand);
        for (const DueItem &due : wanted.due)
            if (due.item == asked.id)
                RC_ASSERT(ofOrder[due.order] <= due.quantity);
    }
}

} // namespace

class PlansKeepTheirLaws : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyWantHasItsSource();
    void moreStockIsNeverMoreShort();
    void anotherProgramGetsTheSame();
};

void PlansKeepTheirLaws::everyWantHasItsSource()
{
    QVERIFY(rc::check("every want has its source", [] {
        const WantedOverTime wanted = anyWanted(true);
        const auto plan = nettedOverTime(wanted);
        RC_ASSERT(plan.has_value());
        keepsItsLaws(wanted, *plan);
    }));
}

void PlansKeepTheirLaws::moreStockIsNeverMoreShort()
{
    QVERIFY(rc::check("more stock is never more short", [] {
        WantedOverTime wanted = anyWanted(false);
        const auto before = nettedOverTime(wanted);
        auto &more = wanted.items[static_cast<std::size_t>(
            number(0, static_cast<int>(wanted.items.size()) - 1))];
        more.onHand += drawn(anyAmount(300));
        const auto after = nettedOverTime(wanted);
        RC_ASSERT(before.has_value() && after.has_value());
        for (const NettedItem &item : wanted.items)
            RC_ASSERT(shortOf(*after, item.id) <= shortOf(*before, item.id));
    }));
}

void PlansKeepTheirLaws::anotherProgramGetsTheSame()
{
    std::string plans;
    int count = 0;
    QVERIFY(rc::check("plans for another program", [&plans, &count] {
        const WantedOverTime wanted = anyWanted(true);
        const auto plan = nettedOverTime(wanted);
        RC_ASSERT(plan.has_value());
        plans += asLines(wanted, *plan);
        ++count;
    }));
    QProcess python;
    python.start(QStringLiteral("/usr/bin/python3"),
                 {QStringLiteral("-c"), QString::fromUtf8(PythonPlans)});
    python.write(QByteArray::fromStdString(plans));
    python.closeWriteChannel();
    QVERIFY(python.waitForFinished(120'000));
    QCOMPARE(python.readAllStandardError(), QByteArray());
    QCOMPARE(python.readAllStandardOutput(), QByteArray::number(count) + " True\n");
}

QTEST_APPLESS_MAIN(PlansKeepTheirLaws)
#include "tst_plans_keep_their_laws.moc"
