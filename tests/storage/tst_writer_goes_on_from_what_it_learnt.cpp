// SPDX-License-Identifier: MIT
//
// A shop that costs first in, first out and stays open goes on from what its last writing has
// learnt, and values every movement as the fold of the whole journal does: whoever else writes
// meanwhile, whatever is refused, and where entries of another replica arrive in the middle of the
// order.

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

class WriterGoesOnFromWhatItLearnt : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void asTheFoldHasIt();
    void whereEntriesArriveInTheMiddle();
};

void WriterGoesOnFromWhatItLearnt::asTheFoldHasIt()
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
        if (number % 100 != 0)
            continue;
        // The fold takes no movement whose value is another than its layers say.
        const auto fold = shop->ledger();
        QVERIFY2(fold, fold ? "" : fold.error().sentence().c_str());
    }
    QVERIFY2(done.size() > 800 && refused > 50, qPrintable(QString::number(refused)));
    const auto said = ShopFile::verify(folder.file());
    QVERIFY2(said->whole, said->whole ? "" : said->problems.front().c_str());
}

void WriterGoesOnFromWhatItLearnt::whereEntriesArriveInTheMiddle()
{
    const Folder folder;
    // Ten for 74.50, ten for 100.00; one of them leaves.
    auto shop = ShopFile::create(folder.file(), firstInShop());
    QVERIFY(shop->append({move(2, 10, "supplier", "A1", 100'000'000)}));
    QVERIFY(shop->append({move(3, 1, "A1", "car-1")}));
    // Another replica has received five for 100.00 between the two, as it turns out.
    {
        RawConnection raw(folder.file());
        const QString hash = QStringLiteral("x'%1'").arg(QString(64, u'1'));
        const QString id = QStringLiteral("x'%1'").arg(QString(32, u'2'));
        for (const auto &statement :
             {QStringLiteral("INSERT INTO replica VALUES (2, %1, 1, 3, %2)").arg(id, hash),
              QStringLiteral(
                  "INSERT INTO movement (id, replica, sequence, lamport, part, quantity, "
                  "value, from_place, to_place, lot, condition, who, why, document, at, "
                  "deed, until, hash) VALUES (%1, 2, 1, 1, 'AD-8-10', 5, 100000000, "
                  "'supplier', 'A1', '', 'new', '', '', '', 1, 'move', '', %2)")
                  .arg(id, hash),
              QStringLiteral("UPDATE balance SET quantity = quantity + 5, value = value + 100000000"
                             " WHERE place = 'A1'"),
              QStringLiteral("UPDATE balance SET quantity = quantity - 5, value = value - 100000000"
                             " WHERE place = 'supplier'")})
            QCOMPARE(raw.run(statement), QString());
    }
    // Twelve leave: nine of the first for 67.05, then three of those that arrived, 20.00 each. By
    // what was known before, the three would have been 10.00 each.
    QVERIFY(shop->append({move(4, 12, "A1", "car-1")}));
    QCOMPARE(shop->movement(idNumber(4))->value().value, 127'050'000);
    QVERIFY(shop->ledger());
}

QTEST_GUILESS_MAIN(WriterGoesOnFromWhatItLearnt)
#include "tst_writer_goes_on_from_what_it_learnt.moc"
