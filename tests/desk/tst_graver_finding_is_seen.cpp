// SPDX-License-Identifier: MIT
//
// A stop that comes while the list of findings is scrolled is shown: it is never above what is
// seen.

#include "app/desk/words/standing.h"
#include "stock_on_screen.h"

using namespace flarestock;

namespace {

Row finding(const QString &key, int mark)
{
    return {key,
            {mark, key, key, QStringLiteral("why"), QStringLiteral("source"),
             QStringLiteral("what to do about it"), QString(), QString(), key}};
}

std::vector<Row> cautions()
{
    std::vector<Row> rows;
    for (int at = 0; at < 20; ++at)
        rows.push_back(finding(QString::number(at), Standing::Caution));
    return rows;
}

} // namespace

class GraverFindingIsSeen : public QObject, protected StockOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase() { open(); }
    void aStopIsShownWhereverTheListWas();
    void nothingIsWarnedAbout() { QCOMPARE(m_screens->warnings(), QStringList()); }
};

void GraverFindingIsSeen::aStopIsShownWhereverTheListWas()
{
    Rows *rows = m_desk->build()->findings();
    rows->become(cautions());
    QQuickItem *list = item("findingList");
    QVERIFY(list != nullptr);
    const auto above = [list] {
        return list->property("contentY").toReal() - list->property("originY").toReal();
    };
    QTRY_VERIFY(above() < 1);
    QTest::qWait(50);
    list->setProperty("currentIndex", 19);
    QTRY_VERIFY(above() > 100);
    // A note at the end moves nothing.
    auto more = cautions();
    more.push_back(finding(QStringLiteral("a note"), Standing::Note));
    rows->become(more);
    QTest::qWait(50);
    QVERIFY(above() > 100);
    more.insert(more.begin(), finding(QStringLiteral("a stop"), Standing::Trap));
    rows->become(more);
    QTRY_VERIFY2(above() < 1, qPrintable(QString::number(above())));
}

QTEST_MAIN(GraverFindingIsSeen)
#include "tst_graver_finding_is_seen.moc"
