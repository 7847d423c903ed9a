// SPDX-License-Identifier: MIT
//
// Laws of netting over random shops, and their totals added up again by Python's fractions.

#include "tests/netting/small_shop.h"

#include <QProcess>
#include <QTest>

#include <random>

using namespace flarestock;

namespace {

/// Exact arithmetic of another hand. One line a bill line: free, value, on hand, short, price each,
/// cost as printed ("-" where there is none); then the total. Prints what differs.
constexpr const char *PythonAdds = R"(
import sys
from decimal import Decimal, ROUND_HALF_EVEN, getcontext
from fractions import Fraction
getcontext().prec = 400
total, count, priced = Decimal(0), 0, 0
for line in sys.stdin:
    words = line.split()
    if words[0] == 'total':
        if Decimal(words[1]) != total:
            print('total', words[1], 'is', total)
        total = Decimal(0)
        continue
    count += 1
    free, value, hand, short, each = (Fraction(w) if w != '-' else None for w in words[:5])
    if short and each is None:
        if words[5] != '-':
            print(line, 'has no price')
        continue
    exact = (free * value / hand if free else 0) + (short * each if short else 0)
    cents = Decimal(round(exact * 100)) / 100      # Fraction rounds half to even
    priced += 1
    if cents != Decimal(words[5]):
        print(line, 'is', cents)
    total += cents
print(count, priced)
)";

std::string textOf(const Decimal &number)
{
    return number.text();
}

} // namespace

class ShortageKeepsItsLaws : public QObject {
    Q_OBJECT

private:
    std::mt19937_64 m_random;
    SmallShop randomShop();
    Expansion randomBuild(const Catalogue &catalogue);
    int upTo(int most) { return static_cast<int>(m_random() % static_cast<unsigned>(most + 1)); }
    std::string amount(int most, int decimals)
    {
        return Decimal::scaled(upTo(most), decimals).text();
    }

private Q_SLOTS:
    void initTestCase();
    void coversPlusShortIsWhatIsNeeded();
    void isNeverMadeMoreByMoreStock();
    void isAddedUpAlikeByPython();
};

void ShortageKeepsItsLaws::initTestCase()
{
    bool given = false;
    quint64 seed = qEnvironmentVariable("FLARESTOCK_SEED").toULongLong(&given);
    if (!given)
        seed = 20261125;
    qInfo("FLARESTOCK_SEED=%llu", seed);
    m_random.seed(seed);
}

SmallShop ShortageKeepsItsLaws::randomShop()
{
    SmallShop shop;
    for (int i = 0; i < 12; ++i) {
        const std::string number = "P" + std::to_string(i);
        const bool hose = i % 4 == 3;
        shop.part(number, hose ? Unit::Inch : Unit::Each, hose ? Kind::Hose : Kind::Adapter);
        if (upTo(9) > 0)
            shop.offer(number, amount(20000, upTo(4)), amount(15000, upTo(4)));
        if (upTo(3) == 0)
            continue;
        const int free = upTo(8);
        if (hose) {
            int all = 0;
            for (int piece = 0; piece < free; ++piece) {
                const int length = 1 + upTo(80);
                shop.piece(number, std::to_string(length));
                all += length;
            }
            shop.stock(number, std::to_string(all), std::to_string(all), amount(90000, 2));
        } else {
            shop.stock(number, std::to_string(free + upTo(2)), std::to_string(free),
                       amount(90000, 3));
        }
    }
    return shop;
}

Expansion ShortageKeepsItsLaws::randomBuild(const Catalogue &catalogue)
{
    Expansion build;
    for (const Part &part : catalogue.parts()) {
        if (upTo(4) == 0)
            continue;
        if (part.unit == Unit::Each) {
            build.lines.push_back(needOf(catalogue, part.number, std::to_string(1 + upTo(12))));
            continue;
        }
        std::vector<std::string> cuts;
        int all = 0;
        for (int i = 0; i <= upTo(5); ++i) {
            const int length = 1 + upTo(60);
            cuts.push_back(std::to_string(length));
            all += length;
        }
        build.lines.push_back(needOf(catalogue, part.number, std::to_string(all), cuts));
    }
    return build;
}

void ShortageKeepsItsLaws::coversPlusShortIsWhatIsNeeded()
{
    int lines = 0;
    for (int i = 0; i < 300; ++i) {
        const SmallShop shop = randomShop();
        const Catalogue catalogue = shop.catalogue();
        const Expansion build = randomBuild(catalogue);
        const PricedBill bill = price(build, catalogue, shop.shelf, *Currency::parse("USD"));
        bool anyShort = false;
        for (const PricedLine &line : bill.lines) {
            QCOMPARE(line.free + line.shortBy, line.line->need.amount);
            QVERIFY(line.free.sign() >= 0 && line.shortBy.sign() >= 0);
            const auto on = shop.shelf.find(line.line->part->number);
            QVERIFY(line.free <= (on == shop.shelf.end() ? Decimal(0) : on->second.free.amount));
            anyShort = anyShort || line.shortBy.sign() > 0;
            ++lines;
        }
        QCOMPARE(bill.complete, !anyShort);
    }
    QVERIFY(lines > 1000);
}

void ShortageKeepsItsLaws::isNeverMadeMoreByMoreStock()
{
    int less = 0;
    for (int i = 0; i < 500; ++i) {
        SmallShop shop = randomShop();
        const Catalogue catalogue = shop.catalogue();
        const Expansion build = randomBuild(catalogue);
        const auto before = price(build, catalogue, shop.shelf, *Currency::parse("USD"));
        for (const Part &part : catalogue.parts()) {
            FreeStock &on = shop.shelf[part.number];
            const Decimal more(1 + upTo(30));
            on.onHand = {on.onHand.amount + more, part.unit};
            on.free = {on.free.amount + more, part.unit};
            if (part.unit == Unit::Inch)
                on.pieces.push_back({more, part.unit});
        }
        const auto after = price(build, catalogue, shop.shelf, *Currency::parse("USD"));
        for (std::size_t line = 0; line < before.lines.size(); ++line) {
            QVERIFY(after.lines[line].shortBy <= before.lines[line].shortBy);
            less += after.lines[line].shortBy < before.lines[line].shortBy ? 1 : 0;
        }
    }
    QVERIFY(less > 500);
}

void ShortageKeepsItsLaws::isAddedUpAlikeByPython()
{
    std::string lines;
    for (int i = 0; i < 400; ++i) {
        const SmallShop shop = randomShop();
        const Catalogue catalogue = shop.catalogue();
        const Expansion build = randomBuild(catalogue);
        const PricedBill bill = price(build, catalogue, shop.shelf, *Currency::parse("USD"));
        for (const PricedLine &line : bill.lines) {
            const auto on = shop.shelf.find(line.line->part->number);
            const bool here = on != shop.shelf.end();
            lines += textOf(line.free) + " " + (here ? textOf(on->second.value) : "0") + " " +
                     (here ? textOf(on->second.onHand.amount) : "0") + " " + textOf(line.shortBy) +
                     " " + (line.offer ? textOf(line.offer->priceEach(line.shortBy)) : "-") + " " +
                     (line.cost ? textOf(line.cost->amount) : "-") + "\n";
        }
        lines += "total " + textOf(bill.total.amount) + "\n";
    }
    QProcess python;
    python.start(QStringLiteral("/usr/bin/python3"),
                 {QStringLiteral("-c"), QString::fromUtf8(PythonAdds)});
    QVERIFY2(python.waitForStarted(), "python3 is needed");
    python.write(lines.data(), static_cast<qint64>(lines.size()));
    python.closeWriteChannel();
    QVERIFY(python.waitForFinished(60000));
    const QByteArray said = python.readAllStandardOutput().trimmed();
    const auto counts = said.split(' ');
    QVERIFY2(counts.size() == 2, said.constData()); // Nothing but the counts: nothing differs.
    QVERIFY(counts[0].toInt() > 2000 && counts[1].toInt() > 1500);
}

QTEST_APPLESS_MAIN(ShortageKeepsItsLaws)
#include "tst_shortage_keeps_its_laws.moc"
