// SPDX-License-Identifier: MIT
//
// The demo shop's catalogue reads without a word, and says what its files say.

#include "text_files.h"

#include <QTest>

#include <set>

using namespace flarestock;

class DemoCatalogueTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void readsWithoutAProblem();
    void holdsWhatAShopNeeds();
};

void DemoCatalogueTest::readsWithoutAProblem()
{
    const auto problems = catalogueProblems(demoFiles());
    for (const Problem &problem : problems)
        qWarning("%s", problem.text().c_str());
    QVERIFY(problems.empty());
}

void DemoCatalogueTest::holdsWhatAShopNeeds()
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

QTEST_APPLESS_MAIN(DemoCatalogueTest)
#include "tst_demo_catalogue.moc"
