// SPDX-License-Identifier: MIT
//
// What went in comes out; a repeated action counts once; the database itself refuses to change the
// journal; an action is all or nothing.

#include "shop_somewhere.h"

#include <QTest>

using namespace flarestock;
using namespace flarestock::tests;

class ShopFileLosesNothingTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase_data() { bothPlaces(); }
    void whatWentInComesOut();
    void movementsAreFoundByTheirDocument();
    void aRepeatedActionCountsOnce();
    void anIdForSomethingElseIsRefused();
    void anActionIsAllOrNothing();
    void aReversalRestoresStockAndValue();
    void theDatabaseRefusesToChangeTheJournal_data();
    void theDatabaseRefusesToChangeTheJournal();
    void documentsKeepTheirVersions();
    void readOnlyIsReadOnly();
    void thousandActionsAndTheirFold();
};

void ShopFileLosesNothingTest::whatWentInComesOut()
{
    QFETCH_GLOBAL(bool, onServer);
    const Somewhere here(onServer);
    {
        auto shop = here.make(smallShop());
        QVERIFY2(shop, shop ? "" : shop.error().sentence().c_str());
        const auto done = shop->append({move(2, 4, "A1", "car-1")});
        QVERIFY(done && !done->front().already);
    }
    auto shop = ShopFile::open(here.path(), OpenMode::ReadWrite);
    QVERIFY(shop);
    QCOMPARE(shop->settings().title, std::string("Test shop"));
    const auto ledger = shop->ledger();
    QVERIFY(ledger);
    // 10 pieces for 74.50; four leave with 4/10 of it: 29.80, 44.70 stays.
    QCOMPARE(ledger->balance({"AD-8-10", "A1", "", PieceCondition::New}).quantity, 6);
    QCOMPARE(ledger->balance({"AD-8-10", "A1", "", PieceCondition::New}).value, 44'700'000);
    QCOMPARE(ledger->balance({"AD-8-10", "car-1", "", PieceCondition::New}).value, 29'800'000);
    QCOMPARE(shop->movements()->size(), std::size_t{2});
    QVERIFY(ShopFile::verify(here.path())->whole);
}

void ShopFileLosesNothingTest::movementsAreFoundByTheirDocument()
{
    QFETCH_GLOBAL(bool, onServer);
    const Somewhere here(onServer);
    auto shop = here.make(smallShop());
    std::vector<Movement> moved{move(2, 1, "A1", "car-1"), move(3, 2, "A1", "car-1"),
                                move(4, 1, "A1", "car-1")};
    moved[0].document = moved[2].document = "build-1";
    moved[1].document = "build-2";
    QVERIFY(shop->append(moved));
    const auto quantities = [&shop](const std::vector<std::string> &documents) {
        const auto movements = shop->movementsOfDocuments(documents).value();
        std::vector<std::int64_t> all;
        for (const Movement &one : movements)
            all.push_back(one.quantity);
        return all;
    };
    QCOMPARE(quantities({"build-1"}), (std::vector<std::int64_t>{1, 1}));
    QCOMPARE(quantities({"build-2", "build-1"}), (std::vector<std::int64_t>{1, 2, 1}));
    QVERIFY(quantities({}).empty());
    // More than one statement has room for, the two of them in different ones.
    std::vector<std::string> many(700, "build-0");
    many.front() = "build-2";
    many.back() = "build-1";
    QCOMPARE(quantities(many), (std::vector<std::int64_t>{2, 1, 1}));
}

void ShopFileLosesNothingTest::aRepeatedActionCountsOnce()
{
    QFETCH_GLOBAL(bool, onServer);
    const Somewhere here(onServer);
    auto shop = here.make(smallShop());
    for (int times = 0; times < 3; ++times) {
        const auto done = shop->append({move(7, 1, "A1", "trailer-1")});
        QVERIFY(done);
        QCOMPARE(done->front().already, times > 0);
    }
    QCOMPARE(shop->ledger()->balance({"AD-8-10", "A1", "", PieceCondition::New}).quantity, 9);
}

void ShopFileLosesNothingTest::anIdForSomethingElseIsRefused()
{
    QFETCH_GLOBAL(bool, onServer);
    const Somewhere here(onServer);
    auto shop = here.make(smallShop());
    QVERIFY(shop->append({move(7, 1, "A1", "trailer-1")}));
    const auto other = shop->append({move(7, 2, "A1", "trailer-1")});
    QVERIFY(!other);
    QVERIFY(other.error().wrong.find("something else") != std::string::npos);
}

void ShopFileLosesNothingTest::anActionIsAllOrNothing()
{
    QFETCH_GLOBAL(bool, onServer);
    const Somewhere here(onServer);
    auto shop = here.make(smallShop());
    const auto refused = shop->append({move(2, 3, "A1", "car-1"), move(3, 99, "A1", "car-1")});
    QVERIFY(!refused);
    QCOMPARE(shop->movements()->size(), std::size_t{1});
    QCOMPARE(shop->ledger()->balance({"AD-8-10", "A1", "", PieceCondition::New}).quantity, 10);
    QVERIFY(ShopFile::verify(here.path())->whole);
}

void ShopFileLosesNothingTest::aReversalRestoresStockAndValue()
{
    QFETCH_GLOBAL(bool, onServer);
    const Somewhere here(onServer);
    auto shop = here.make(smallShop());
    QVERIFY(shop->append({move(2, 3, "A1", "car-1")}));
    auto back = move(3, 3, "car-1", "A1");
    back.reverses = idNumber(2);
    QVERIFY(shop->append({back}));
    const Balance whole{10, 74'500'000};
    QVERIFY(shop->ledger()->balance({"AD-8-10", "A1", "", PieceCondition::New}) == whole);
    auto again = back;
    again.id = idNumber(4);
    QVERIFY(!shop->append({again})); // a movement is taken back once
}

void ShopFileLosesNothingTest::theDatabaseRefusesToChangeTheJournal_data()
{
    QTest::addColumn<QString>("statement");
    QTest::addColumn<QString>("statement");
    for (const char *statement :
         {"UPDATE movement SET quantity = 1", "DELETE FROM movement",
          "UPDATE document SET content = ''", "DELETE FROM document", "UPDATE place SET title = ''",
          "DELETE FROM place", "UPDATE shop SET title = 'x'", "DELETE FROM replica"})
        QTest::newRow(statement) << QString::fromLatin1(statement);
    QTest::newRow("INSERT OR REPLACE INTO movement SELECT * FROM movement")
        << QString::fromLatin1("INSERT OR REPLACE INTO movement SELECT * FROM movement");
}

void ShopFileLosesNothingTest::theDatabaseRefusesToChangeTheJournal()
{
    QFETCH_GLOBAL(bool, onServer);
    QFETCH(QString, statement);
    const Somewhere here(onServer);
    QVERIFY(here.make(smallShop()));
    const bool replaces = statement.contains(QStringLiteral("REPLACE"));
    const QString wrong =
        onServer
            ? here.raw()->run(replaces ? QStringLiteral("TRUNCATE movement CASCADE") : statement)
            : here.raw()->run(statement);
    QVERIFY2(wrong.contains(QStringLiteral("never")), qPrintable(wrong));
    QVERIFY(ShopFile::verify(here.path())->whole);
}

void ShopFileLosesNothingTest::documentsKeepTheirVersions()
{
    QFETCH_GLOBAL(bool, onServer);
    const Somewhere here(onServer);
    auto shop = here.make(smallShop());
    QVERIFY(shop->putDocument("builds.toml", "one", "test", 1));
    QVERIFY(shop->putDocument("builds.toml", "two", "test", 2));
    QVERIFY(shop->putDocument("builds.toml", "two", "test", 3)); // no news, no version
    QCOMPARE(shop->documents()->at("builds.toml"), std::string("two"));
    QVERIFY(ShopFile::verify(here.path())->whole);
}

void ShopFileLosesNothingTest::readOnlyIsReadOnly()
{
    QFETCH_GLOBAL(bool, onServer);
    const Somewhere here(onServer);
    QVERIFY(here.make(smallShop()));
    auto shop = ShopFile::open(here.path(), OpenMode::ReadOnly);
    QVERIFY(shop && shop->ledger());
    const auto refused = shop->append({move(2, 1, "A1", "car-1")});
    QVERIFY(!refused);
    QVERIFY2(refused.error().sentence().find("cannot be written") != std::string::npos,
             refused.error().sentence().c_str());
}

void ShopFileLosesNothingTest::thousandActionsAndTheirFold()
{
    QFETCH_GLOBAL(bool, onServer);
    const Somewhere here(onServer);
    auto shop = here.make(smallShop());
    const auto given = qEnvironmentVariableIntValue("FLARESTOCK_SEED");
    const unsigned seed = given != 0 ? static_cast<unsigned>(given) : 2026u;
    qInfo("seed %u", seed);
    std::mt19937 random(seed);
    // The other side of the check: a model of three numbers.
    std::map<std::string, std::int64_t> model{{"A1", 10}, {"trailer-1", 0}, {"car-1", 0}};
    const std::vector<std::string> places{"A1", "trailer-1", "car-1"};
    int moved = 0;
    for (std::uint32_t number = 100; number < 1100; ++number) {
        const auto &from = places[random() % 3];
        const auto &to = places[random() % 3];
        const auto quantity = static_cast<std::int64_t>(1 + random() % 6);
        const auto done = shop->append({move(number, quantity, from, to)});
        const bool inCar = from == "car-1"; // not a stock place: it may go below zero
        const bool expected = from != to && (inCar || model[from] >= quantity);
        QCOMPARE(done.has_value(), expected);
        if (!done)
            continue;
        model[from] -= quantity;
        model[to] += quantity;
        ++moved;
    }
    QVERIFY(moved > 200);
    const auto ledger = shop->ledger();
    for (const auto &[place, quantity] : model)
        QCOMPARE(ledger->balance({"AD-8-10", place, "", PieceCondition::New}).quantity, quantity);
    const auto said = ShopFile::verify(here.path());
    QVERIFY2(said->whole, said->whole ? "" : said->problems.front().c_str());
    QCOMPARE(said->movements, moved + 1);
}

QTEST_GUILESS_MAIN(ShopFileLosesNothingTest)
#include "tst_shop_file_loses_nothing.moc"
