// SPDX-License-Identifier: MIT
//
// The demo shop's own files read without a word, and say what they should.

#include "model/exchange/shop_toml.h"
#include "model/exchange/template_toml.h"
#include "text_files.h"

#include <QTest>

#include <set>

using namespace flarestock;

class DemoFilesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void readsWithoutAProblem();
    void holdsWhatAShopNeeds();
    void readsItsTemplatesAndBuilds();
    void readsItsPlacesAndStock();
};

void DemoFilesTest::readsWithoutAProblem()
{
    const auto problems = catalogueProblems(demoFiles());
    for (const Problem &problem : problems)
        qWarning("%s", problem.text().c_str());
    QVERIFY(problems.empty());
}

void DemoFilesTest::holdsWhatAShopNeeds()
{
    const auto catalogue = readCatalogue(demoFiles());
    QVERIFY2(catalogue.has_value(), catalogue ? "" : catalogue.error().text().c_str());
    QVERIFY(catalogue->parts().size() >= 450);
    QVERIFY(catalogue->suppliers().size() >= 6);
    std::set<Kind> kinds;
    for (const Part &part : catalogue->parts())
        kinds.insert(part.kind);
    QVERIFY2(kinds.size() >= 30, std::to_string(kinds.size()).c_str());
}

void DemoFilesTest::readsItsTemplatesAndBuilds()
{
    const TextFiles files = demoFiles();
    const auto book = readTemplates(files);
    QVERIFY2(book.has_value(), book ? "" : book.error().text().c_str());
    QVERIFY((*book)->size() >= 12);
    const auto builds = readBuilds(files.at("builds.toml"), "builds.toml");
    QVERIFY2(builds.has_value(), builds ? "" : builds.error().text().c_str());
    QVERIFY(builds->size() >= 3);
    for (const BuildPlan &build : *builds)
        QVERIFY2((*book)->count(build.templateId) == 1, build.templateId.c_str());
}

void DemoFilesTest::readsItsPlacesAndStock()
{
    const TextFiles files = demoFiles();
    const auto shop = readShop(files.at("shop.toml"), "shop.toml");
    QVERIFY2(shop.has_value(), shop ? "" : shop.error().text().c_str());
    QVERIFY(shop->places.size() >= 10);
    const auto catalogue = readCatalogue(files);
    QVERIFY(catalogue.has_value());
    const auto stock =
        readOpeningStock(files.at("stock.csv"), "stock.csv", *catalogue, shop->places);
    QVERIFY2(stock.has_value(), stock ? "" : stock.error().text().c_str());
    QVERIFY(stock->size() >= 100);
}

QTEST_APPLESS_MAIN(DemoFilesTest)
#include "tst_demo_files_read_without_a_word.moc"
