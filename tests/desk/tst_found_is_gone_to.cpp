// SPDX-License-Identifier: MIT
//
// What is found anywhere in the shop is one key press away, whichever area shows: words into the
// find field, Enter, and the area that has it shows it.

#include "stock_on_screen.h"

using namespace flarestock;

class FoundIsGoneTo : public QObject, protected StockOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase() { open(); }
    void aBinIsFoundFromABuild();
    void aBuildIsFoundFromStock();
    void aSupplierIsFoundFromStock();
    void theLastThatIsFoundIsSeen();
    void enterWithoutALineStaysInTheArea();
    void nothingIsWarnedAbout() { QCOMPARE(m_screens->warnings(), QStringList()); }

private:
    void seek(const char *words)
    {
        key(Qt::Key_F, Qt::ControlModifier);
        key(Qt::Key_A, Qt::ControlModifier);
        type(words);
    }
    [[nodiscard]] int offered() const { return m_desk->anywhere()->rows()->count(); }
};

void FoundIsGoneTo::aBinIsFoundFromABuild()
{
    QVERIFY(item("lineMap") != nullptr);
    seek("h4");
    QTRY_COMPARE(offered(), 1);
    QTRY_VERIFY(item("foundAnywhere") != nullptr);
    picture("found");
    key(Qt::Key_Return);
    QTRY_VERIFY(item("stockList") != nullptr);
    QTRY_VERIFY(stock().isNarrowed());
    QTRY_VERIFY2(stock().heading().contains(QStringLiteral("H4")), qPrintable(stock().heading()));
    QVERIFY(words("findField").isEmpty());
}

void FoundIsGoneTo::aBuildIsFoundFromStock()
{
    seek("coupe gearbox");
    QTRY_COMPARE(m_desk->anywhere()->rows()->cell(0, QStringLiteral("target")).toString(),
                 QStringLiteral("coupe-gearbox"));
    key(Qt::Key_Down);
    key(Qt::Key_Return);
    QTRY_VERIFY(item("lineMap") != nullptr);
    QVERIFY(item("stockList") == nullptr);
    QTRY_VERIFY(m_desk->build()->title().contains(QStringLiteral("gearbox"), Qt::CaseInsensitive));
}

/// Of whom nothing is ordered in the demo shop: what would be stands on the slips.
void FoundIsGoneTo::aSupplierIsFoundFromStock()
{
    key(Qt::Key_2, Qt::AltModifier);
    QTRY_VERIFY(item("stockList") != nullptr);
    seek("northeaves");
    QTRY_VERIFY(offered() > 0);
    Rows *found = m_desk->anywhere()->rows();
    int at = 0;
    while (at < offered() &&
           found->cell(at, QStringLiteral("kind")).toString() != QStringLiteral("supplier"))
        ++at;
    QVERIFY(at < offered());
    for (int line = 0; line <= at; ++line)
        key(Qt::Key_Down);
    key(Qt::Key_Return);
    QTRY_COMPARE_WITH_TIMEOUT(m_desk->buying()->page(), static_cast<int>(BuyingDesk::Slips), 20000);
    QTRY_VERIFY2(words("lastStep").contains(QStringLiteral("Nothing is ordered from Northeaves")),
                 qPrintable(words("lastStep")));
}

/// In a small window: the last line stands within the window and within its list.
void FoundIsGoneTo::theLastThatIsFoundIsSeen()
{
    picture("found-small", QSize(1024, 640));
    seek("e");
    QTRY_VERIFY(offered() > 15);
    QTRY_VERIFY(item("foundScroller") != nullptr);
    for (int line = 0; line < 60; ++line)
        key(Qt::Key_Down);
    const QQuickItem *scroller = item("foundScroller");
    const QQuickItem *list = item("foundAnywhere");
    const QRectF shown =
        scroller->mapRectToScene(QRectF(0, 0, scroller->width(), scroller->height()));
    const qreal end = list->mapToScene(QPointF(0, list->height())).y();
    QVERIFY2(end <= shown.bottom() + 1, qPrintable(QString::number(end)));
    QVERIFY(shown.bottom() <= m_window->height());
    picture("found-last", QSize(1024, 640));
    key(Qt::Key_Escape);
    (void)pictureOf(*m_window, QSize(1440, 900));
}

void FoundIsGoneTo::enterWithoutALineStaysInTheArea()
{
    key(Qt::Key_2, Qt::AltModifier);
    QTRY_VERIFY(item("stockList") != nullptr);
    seek("coupe");
    QTRY_VERIFY(offered() > 0);
    key(Qt::Key_Return);
    QVERIFY(item("lineMap") == nullptr);
    seek("");
    key(Qt::Key_Escape);
}

QTEST_MAIN(FoundIsGoneTo)
#include "tst_found_is_gone_to.moc"
