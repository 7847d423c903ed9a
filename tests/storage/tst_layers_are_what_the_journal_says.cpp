// SPDX-License-Identifier: MIT
//
// A shop that costs first in, first out values what leaves by layers that stand beside its journal,
// and they are what the journal says: whoever writes, whatever is refused or taken back. Another
// program adds the same file up in the fault tests (shop_reader.py).

#include "shop_somewhere.h"

#include <QTest>

using namespace flarestock;
using namespace flarestock::tests;

namespace {

NewShop firstInShop()
{
    auto shop = smallShop();
    shop.settings.costing = Costing::FirstInFirstOut;
    shop.places.push_back({"B1", "bin B1", PlaceKind::Bin});
    shop.places.push_back({"supplier", "supplier", PlaceKind::Supplier});
    return shop;
}

unsigned seed()
{
    const auto given = qEnvironmentVariable("FLARESTOCK_SEED");
    return given.isEmpty() ? std::random_device()() : given.toUInt();
}

/// Something that may be done, or refused; `done` are those that were.
Movement drawn(std::mt19937 &random, std::uint32_t number, const std::vector<Movement> &done)
{
    static const std::array<std::string, 4> Places{"A1", "B1", "trailer-1", "car-1"};
    const auto below = [&random](unsigned end) { return static_cast<unsigned>(random() % end); };
    if (below(10) == 0 && !done.empty()) {
        const Movement &past = done[below(static_cast<unsigned>(done.size()))];
        auto back = move(number, past.quantity, past.to, past.from);
        back.part = past.part;
        back.reverses = past.id;
        return back;
    }
    auto movement = below(3) == 0
                        ? move(number, 1 + below(7), "supplier", Places[below(3)], below(9'000'000))
                        : move(number, 1 + below(4), Places[below(3)], Places[below(4)]);
    movement.part = "P" + std::to_string(below(3));
    return movement;
}

} // namespace

class LayersTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void areWhatTheFoldHas();
    void aWriterReadsNoHistory();
};

void LayersTest::areWhatTheFoldHas()
{
    const unsigned begun = seed();
    qInfo("FLARESTOCK_SEED=%u", begun);
    std::mt19937 random(begun);
    const Folder folder;
    auto shop = ShopFile::create(folder.file(), firstInShop());
    auto other = ShopFile::open(folder.file(), OpenMode::ReadWrite);
    std::vector<Movement> done;
    int refused = 0;
    for (std::uint32_t number = 2; number < 2002; ++number) {
        const auto movement = drawn(random, number, done);
        auto &writer = random() % 20 == 0 ? other : shop;
        if (writer->append({movement}))
            done.push_back(movement);
        else
            ++refused;
        if (number % 400 != 0)
            continue;
        const auto said = ShopFile::verify(folder.file());
        QVERIFY2(said->whole, said->whole ? "" : said->problems.front().c_str());
    }
    QVERIFY2(done.size() > 800 && refused > 50, qPrintable(QString::number(refused)));
    // What is read is what stands there, to the last layer.
    const auto places = shop->places();
    Ledger fold(*places, Costing::FirstInFirstOut);
    const auto journal = shop->movements();
    for (const Movement &movement : *journal)
        QVERIFY(!fold.apply(movement));
    QVERIFY(fold.layers() == shop->ledger()->layers());
    QVERIFY(fold.balances() == shop->ledger()->balances());
}

void LayersTest::aWriterReadsNoHistory()
{
    // Were the journal folded for it, a movement of before that says another value would show.
    const Folder folder;
    auto shop = ShopFile::create(folder.file(), firstInShop());
    QVERIFY(shop->append({move(2, 10, "supplier", "A1", 100'000'000)}));
    {
        RawConnection raw(folder.file());
        QCOMPARE(raw.run(QStringLiteral("DROP TRIGGER movement_stays")), QString());
        QCOMPARE(raw.run(QStringLiteral("UPDATE movement SET value = value + 1")), QString());
    }
    QVERIFY(shop->append({move(3, 1, "A1", "car-1")}));
    QCOMPARE(shop->movement(idNumber(3))->value().value, 7'450'000);
}

QTEST_GUILESS_MAIN(LayersTest)
#include "tst_layers_are_what_the_journal_says.moc"
