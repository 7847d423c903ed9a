// SPDX-License-Identifier: MIT
//
// Whatever of the shop has the words that were typed is offered, by kind, and nothing else is: what
// is found of parts is what the list of stock lets through; the window does no work for it.

#include "app/desk/find/find_anywhere.h"
#include "app/desk/stock/found_by.h"
#include "tests/desk/desk_on_demo.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <QTest>

#include <algorithm>

using namespace flarestock;

class WholeShopIsFound : public QObject, protected DeskOnDemo {
    Q_OBJECT

private Q_SLOTS:
    void init() { renew(); }
    void everyKindIsFound_data();
    void everyKindIsFound();
    void partsAreThoseOfStock();
    void whatAnAreaNarrowsItselfIsLeftOut();
    void whatIsWrittenIsFoundThen();

private:
    /// "kind title" of each line.
    QStringList found(const QString &typed, const QStringList &without = {})
    {
        FindAnywhere &anywhere = *m_desk->anywhere();
        anywhere.find(typed, without);
        [&] { QTRY_VERIFY_WITH_TIMEOUT(!anywhere.isLooking(), 10'000); }();
        QStringList all;
        for (int row = 0; row < anywhere.rows()->count(); ++row)
            all.append(anywhere.rows()->cell(row, QStringLiteral("area")).toString() + u' ' +
                       anywhere.rows()->cell(row, QStringLiteral("target")).toString());
        return all;
    }
};

void WholeShopIsFound::everyKindIsFound_data()
{
    QTest::addColumn<QString>("typed");
    QTest::addColumn<QString>("line");
    QTest::newRow("a bin") << "h4"
                           << "place H4";
    QTest::newRow("a drawer by its title") << "drawer 3"
                                           << "place trailer-3";
    QTest::newRow("a car by its title") << "hill-climb coupe"
                                        << "car car-2";
    QTest::newRow("a build by its words") << "injection e85"
                                          << "build coupe-fuel";
    QTest::newRow("a build by its id") << "coupe-fuel"
                                       << "build coupe-fuel";
    QTest::newRow("a supplier by its name") << "northeaves"
                                            << "order NHT";
    QTest::newRow("a supplier by its short name") << "nht"
                                                  << "order NHT";
    QTest::newRow("a serial") << "sn 2203"
                              << "lot EP-255=SN 2203";
    QTest::newRow("a part by its number") << "ad-8-10"
                                          << "part AD-8-10";
    QTest::newRow("an element by its rating") << "10 micron short"
                                              << "part EG-10-S";
}

void WholeShopIsFound::everyKindIsFound()
{
    QFETCH(const QString, typed);
    QFETCH(const QString, line);
    const QAbstractItemModelTester tester(m_desk->anywhere()->rows());
    const QStringList lines = found(typed);
    QVERIFY2(lines.contains(line), qPrintable(lines.join(u'\n')));
    for (int row = 0; row < m_desk->anywhere()->rows()->count(); ++row) {
        const QString area =
            m_desk->anywhere()->rows()->cell(row, QStringLiteral("area")).toString();
        QVERIFY(lines.filter(QString(area + u' ')).size() <=
                static_cast<int>(FindAnywhere::MostEach));
    }
    QVERIFY(found(QStringLiteral("  ")).isEmpty());

    QVERIFY(found(typed + QStringLiteral(" nothing-has-this")).isEmpty());
}

void WholeShopIsFound::partsAreThoseOfStock()
{
    const auto workshop = inFile();
    for (const char *typed : {"-8 orb", "10 micron", "hose ptfe", "ring fkm"}) {
        std::set<std::string> wanted;
        for (const Part &part : workshop->catalogue.parts())
            if (holdsAll(soughtOf(part), wordsTyped(typed)))
                wanted.insert(part.number);
        const QStringList lines = found(QString::fromLatin1(typed)).filter(QStringLiteral("part "));
        QCOMPARE(static_cast<std::size_t>(lines.size()),
                 std::min(wanted.size(), FindAnywhere::MostEach));
        for (const QString &line : lines)
            QVERIFY2(wanted.contains(line.mid(5).toStdString()), qPrintable(line));
        const Rows &rows = *m_desk->anywhere()->rows();
        const QString last = rows.cell(rows.count() - 1, QStringLiteral("detail")).toString();
        const auto more = static_cast<int>(wanted.size()) - lines.size();
        QCOMPARE(last.contains(QStringLiteral("and %1 more").arg(more)), more > 0);
    }
}

void WholeShopIsFound::whatAnAreaNarrowsItselfIsLeftOut()
{
    QVERIFY(!found(QStringLiteral("coupe")).filter(QStringLiteral("build ")).isEmpty());
    QVERIFY(found(QStringLiteral("coupe"), {QStringLiteral("build")})
                .filter(QStringLiteral("build "))
                .isEmpty());
}

void WholeShopIsFound::whatIsWrittenIsFoundThen()
{
    QVERIFY(found(QStringLiteral("coupe-new")).isEmpty());
    QVERIFY(changedElsewhere([](std::vector<BuildPlan> &builds) {
        builds.push_back(builds.front());
        builds.back().id = "coupe-new";
    }));
    QTRY_VERIFY_WITH_TIMEOUT(
        found(QStringLiteral("coupe-new")).contains(QStringLiteral("build coupe-new")), 20'000);
}

QTEST_MAIN(WholeShopIsFound)
#include "tst_whole_shop_is_found.moc"
