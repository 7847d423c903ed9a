// SPDX-License-Identifier: MIT
//
// The stock's screen is for everyone: a scanner is heard wherever the keyboard is, the keyboard
// reaches everything, every control has a name, no word is cut, targets are for gloves.

#include "app/desk/scan/scan_ear.h"
#include "for_everyone.h"
#include "stock_on_screen.h"

using namespace flarestock;

class StockIsForEveryone : public QObject, protected StockOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase()
    {
        open();
        showStock();
    }
    void aScannerIsHeardWhereverTheKeyboardIs();
    void figuresStandAsTheSumGoes();
    void tabComesRound_data();
    void tabComesRound();
    void everyControlHasAName();
    void cutsNoWordsShort_data();
    void cutsNoWordsShort();
    void targetsAreBigEnoughForGloves();
    void nothingIsWarnedAbout();

private:
    ScanEar m_ear;
};

void StockIsForEveryone::aScannerIsHeardWhereverTheKeyboardIs()
{
    connect(&m_ear, &ScanEar::heard, m_desk.get(), &Desk::scanned);
    m_ear.listenTo(*m_window);
    item("findField")->forceActiveFocus(Qt::TabFocusReason);
    type("AD-6-6", 3);
    key(Qt::Key_Return);
    QTRY_COMPARE(stock().selected(), QStringLiteral("AD-6-6"));
    QTRY_VERIFY(words("findField").isEmpty());
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("partPanel"));
    item("sort-2")->forceActiveFocus(Qt::TabFocusReason);
    type("trailer-2", 3);
    key(Qt::Key_Return);
    QTRY_VERIFY(words("stockTitle").contains(QStringLiteral("drawer 2")));
    QCOMPARE(stock().order(), 0); // The button that had the keyboard was not pressed.
    press("clearNarrowing");
    // Of a form it is the place, wherever in the form the keyboard is.
    QVERIFY(stock().scan(QStringLiteral("AD-8-8")));
    press("deed-move");
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("field-quantity"));
    type("trailer-2", 3);
    key(Qt::Key_Return);
    QTRY_COMPARE(words("field-to"), QStringLiteral("trailer-2"));
    QCOMPARE(words("field-quantity"), QStringLiteral("1"));
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("field-to") == nullptr);
    m_window->removeEventFilter(&m_ear);
}

/// Here, and in the trailer, less what is promised, is free: in the table and on the panel.
void StockIsForEveryone::figuresStandAsTheSumGoes()
{
    const auto left = [this](const char *name) { return item(name)->mapToScene(QPointF()).x(); };
    QVERIFY(left("sort-1") < left("sort-3")); // here, in the trailer …
    QVERIFY(left("sort-3") < left("sort-2")); // … free.
    const auto shop = Workshop::open(m_file.toStdString()).value();
    int inBoth = 0;
    for (const Part &part : shop->catalogue.parts()) {
        std::int64_t here = 0;
        std::int64_t trailer = 0;
        for (const auto &[key, held] : shop->ledger.balances()) {
            const Place *place = shop->ledger.place(key.place);
            if (key.part == part.number && isStock(place->kind))
                (place->kind == PlaceKind::Drawer ? trailer : here) += held.quantity;
        }
        if (here <= 0 || trailer <= 0 || isLength(part.unit) || inBoth == 5)
            continue;
        ++inBoth;
        stock().select(QString::fromStdString(part.number));
        const QString sum = QStringLiteral("%1 here + %2 in the trailer").arg(here).arg(trailer);
        QTRY_VERIFY2(words("stockSum").startsWith(sum), qPrintable(words("stockSum")));
        QVERIFY2(words("stockSum").contains(QStringLiteral(" free")),
                 qPrintable(words("stockSum")));
    }
    QVERIFY(inBoth > 0);
}

void StockIsForEveryone::tabComesRound_data()
{
    QTest::addColumn<Qt::Key>("tab");
    QTest::newRow("forwards") << Qt::Key_Tab;
    QTest::newRow("backwards") << Qt::Key_Backtab;
}

void StockIsForEveryone::tabComesRound()
{
    QFETCH(Qt::Key, tab);
    const QString missed = missedByTab(*m_window,
                                       {"belowKept", "whatIsThis", "choice", "sort-0", "stockLine",
                                        "partPanel", "binTag", "deed-take", "deed-level", "area-2"},
                                       {tab});
    QVERIFY2(missed.isEmpty(), qPrintable(missed));
}

void StockIsForEveryone::everyControlHasAName()
{
    QCOMPARE(namelessControls(*m_window, 50), QString());
}

void StockIsForEveryone::cutsNoWordsShort_data()
{
    addScreenSizes();
}

/// Of the table's lines the panel says all, so that they may be longer than their column.
void StockIsForEveryone::cutsNoWordsShort()
{
    QFETCH(QSize, size);
    WordsSeen seenWords;
    for (const char *part : {"AD-8-8", "PT-6", "AD-6-6"}) {
        stock().select(QString::fromLatin1(part));
        for (const bool dark : {false, true}) {
            m_look->setDark(dark);
            (void)pictureOf(*m_window, size);
        }
        seenWords.look(*m_window, {"stockLine"});
    }
    m_look->setDark(size.width() == 1024);
    picture(size.width() == 1024   ? "dark-small"
            : size.width() == 1280 ? "middling"
                                   : "light",
            size);
    m_look->setDark(false);
    QCOMPARE(seenWords.cut(), QString());
}

void StockIsForEveryone::targetsAreBigEnoughForGloves()
{
    const QString small = tooSmallForGloves(
        *m_window,
        {"belowKept", "whatIsThis", "narrow-kind", "sort-1", "stockLine", "binTag", "deed-take",
         "deed-putBack", "deed-move", "deed-count", "deed-scrap", "deed-keep", "area-2"});
    QVERIFY2(small.isEmpty(), qPrintable(small));
}

void StockIsForEveryone::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(StockIsForEveryone)
#include "tst_stock_is_for_everyone.moc"
