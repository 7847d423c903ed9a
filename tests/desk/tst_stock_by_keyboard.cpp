// SPDX-License-Identifier: MIT
//
// A hand in the stock, by keyboard alone, in the real window on the demo shop: a part is found,
// moved and taken back; counted with a difference; an unmarked fitting is measured.

#include "stock_on_screen.h"

using namespace flarestock;

class StockByKeyboard : public QObject, protected StockOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase() { open(); }
    void altTwoShowsTheStock();
    void theFindFieldNarrowsIt();
    void aPartIsMovedAndTakenBack();
    void anEmptyFindFieldTakesBackToo();
    void aLengthIsOfferedInThePersonsUnits();
    void aDeedIsOfThePartInHand();
    void aCountIsSaidOnlyAfterwards();
    void whatCannotBeDoneSaysWhy();
    void whatIsKeptIsTakenBackToo();
    void aFieldNarrowsByKeyboard();
    void anUnmarkedFittingIsMeasured();
    void nothingIsWarnedAbout();
};

void StockByKeyboard::altTwoShowsTheStock()
{
    showStock();
    QVERIFY(item("lineMap") == nullptr);
    QVERIFY(!stock().selected().isEmpty());
    const QString first = stock().selected();
    key(Qt::Key_Down);
    QVERIFY(stock().selected() != first);
    QTRY_COMPARE(words("partNumber"), stock().selected());
    key(Qt::Key_End);
    QCOMPARE(stock().selected(), stock().rows()->numberAt(stock().rows()->count() - 1));
    key(Qt::Key_Home);
    QCOMPARE(stock().selected(), first);
    picture("light");
}

void StockByKeyboard::theFindFieldNarrowsIt()
{
    const int all = stock().rows()->count();
    key(Qt::Key_F, Qt::ControlModifier);
    QCOMPARE(focusName(*m_window), QStringLiteral("findField"));
    type("-8 orb");
    QTRY_VERIFY(stock().rows()->count() < all && stock().rows()->count() > 1);
    for (int row = 0; row < stock().rows()->count(); ++row)
        QVERIFY(stock().rows()->data(stock().rows()->index(row), StockRows::What).isValid());
    key(Qt::Key_Return);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("stockLine"));
    key(Qt::Key_F, Qt::ControlModifier);
    key(Qt::Key_Escape);
    QTRY_COMPARE(stock().rows()->count(), all);
}

void StockByKeyboard::aPartIsMovedAndTakenBack()
{
    const std::int64_t before = lies("AD-8-8", "A3");
    const std::int64_t there = lies("AD-8-8", "B1");
    QVERIFY(before > 1);
    take("AD-8-8");
    key(Qt::Key_Return);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("partPanel"));
    key(Qt::Key_Tab);
    QCOMPARE(focusName(*m_window), QStringLiteral("binTag"));
    press("deed-move");
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("field-quantity"));
    type("2");
    key(Qt::Key_Tab);
    QCOMPARE(focusName(*m_window), QStringLiteral("field-to"));
    type("nowhere");
    key(Qt::Key_Return);
    awaitWritten();
    QTRY_VERIFY(words("sheetProblem").contains(QStringLiteral("nowhere")));
    picture("move");
    key(Qt::Key_A, Qt::ControlModifier);
    type("b1"); // The place that is meant: case is forgiven.
    key(Qt::Key_Return);
    awaitWritten();
    QTRY_VERIFY(item("field-to") == nullptr);
    QVERIFY2(words("lastStep").startsWith(QStringLiteral("2 of AD-8-8 moved from A3 to")),
             qPrintable(words("lastStep")));
    QCOMPARE(lies("AD-8-8", "A3"), before - 2);
    QCOMPARE(lies("AD-8-8", "B1"), there + 2);
    QCOMPARE(stock().selected(), QStringLiteral("AD-8-8"));
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitWritten();
    QTRY_VERIFY(words("lastStep").startsWith(QStringLiteral("Taken back: ")));
    QCOMPARE(lies("AD-8-8", "A3"), before);
    QCOMPARE(lies("AD-8-8", "B1"), there);
}

/// With words in it the field undoes its own.
void StockByKeyboard::anEmptyFindFieldTakesBackToo()
{
    const std::int64_t before = lies("AD-8-8", "A3");
    take("AD-8-8");
    press("deed-move");
    QTRY_VERIFY(item("field-to") != nullptr);
    write("field-to", "b1");
    key(Qt::Key_Return);
    awaitWritten();
    QTRY_COMPARE(lies("AD-8-8", "A3"), before - 1);
    key(Qt::Key_F, Qt::ControlModifier);
    key(Qt::Key_Escape);
    type("-8");
    QTest::qWait(ScanEar::GapMost * 2);
    key(Qt::Key_Z, Qt::ControlModifier);
    QVERIFY(words("findField") != QStringLiteral("-8"));
    awaitWritten();
    QCOMPARE(lies("AD-8-8", "A3"), before - 1);
    key(Qt::Key_Escape);
    QCOMPARE(words("findField"), QString());
    QCOMPARE(focusName(*m_window), QStringLiteral("findField"));
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitWritten();
    QTRY_VERIFY2(words("lastStep").startsWith(QStringLiteral("Taken back: ")),
                 qPrintable(words("lastStep")));
    QCOMPARE(lies("AD-8-8", "A3"), before);
}

/// 4 ft 6 in lie in the bin: 54 × 25.4 mm.
void StockByKeyboard::aLengthIsOfferedInThePersonsUnits()
{
    for (const bool inInches : {false, true}) {
        m_look->setInInches(inInches);
        take("EP-10");
        press("deed-move");
        QTRY_VERIFY(item("field-quantity") != nullptr);
        QCOMPARE(words("field-quantity"),
                 inInches ? QStringLiteral("4 ft 6 in") : QStringLiteral("1371.6 mm"));
        key(Qt::Key_Escape);
        QTRY_VERIFY(item("field-quantity") == nullptr);
    }
    m_look->setInInches(true); // As the other functions have it.
}

/// Also before the panel shows it: what happened to it is still being read.
void StockByKeyboard::aDeedIsOfThePartInHand()
{
    take("EP-10");
    stock().select(QStringLiteral("AD-10-10"));
    QVERIFY(stock().form()->begin(QStringLiteral("move")));
    QVERIFY2(stock().form()->title().contains(QStringLiteral("AD-10-10")),
             qPrintable(stock().form()->title()));
    QVERIFY2(stock().form()->about().contains(QStringLiteral("A4")),
             qPrintable(stock().form()->about()));
    QTRY_COMPARE(words("partNumber"), QStringLiteral("AD-10-10"));
}

void StockByKeyboard::aCountIsSaidOnlyAfterwards()
{
    const std::int64_t book = lies("AD-10-10", "A4");
    take("AD-10-10");
    press("deed-count");
    QTRY_VERIFY(item("field-found") != nullptr);
    QTRY_VERIFY(item("field-found")->hasActiveFocus()); // The bin is known.
    for (const QQuickItem *one : allSeen(*m_window)) {  // Who counts is told nothing before.
        bool ofSheet = false;
        for (const QQuickItem *above = one; above != nullptr; above = above->parentItem())
            ofSheet = ofSheet || above->objectName() == QStringLiteral("field-found");
        QVERIFY(!ofSheet || one->property("text").toString() != QString::number(book));
    }
    press("doDeed");
    QTRY_VERIFY(words("sheetProblem").contains(QStringLiteral("counted")));
    write("field-found", "1");
    key(Qt::Key_Return);
    awaitWritten();
    QTRY_VERIFY(item("field-found") == nullptr);
    QCOMPARE(words("lastStep"),
             QStringLiteral("Counted AD-10-10 at A4: found 1, the book said %1: %2 less.")
                 .arg(book)
                 .arg(book - 1));
    QCOMPARE(lies("AD-10-10", "A4"), 1);
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitWritten();
    QTRY_COMPARE(lies("AD-10-10", "A4"), book);
}

void StockByKeyboard::whatCannotBeDoneSaysWhy()
{
    take("AD-8-8");
    press("deed-putBack");
    QVERIFY(words("lastStep").contains(QStringLiteral("in a car")));
    QVERIFY(item("doDeed") == nullptr);
}

void StockByKeyboard::whatIsKeptIsTakenBackToo()
{
    const auto kept = [this] {
        const auto shop = Workshop::open(m_file.toStdString()).value();
        const auto found = shop->notes.keepings.find({"AD-8-8", "A3"});
        return found == shop->notes.keepings.end() ? std::int64_t(-1) : found->second.least;
    };
    const std::int64_t before = kept();
    take("AD-8-8");
    press("deed-keep");
    write("field-least", "77");
    write("field-most", "80");
    key(Qt::Key_Return);
    awaitWritten();
    QTRY_COMPARE(kept(), 77);
    QTRY_VERIFY(item("field-least") == nullptr);
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitWritten();
    QTRY_COMPARE(kept(), before);
}

void StockByKeyboard::aFieldNarrowsByKeyboard()
{
    key(Qt::Key_F, Qt::ControlModifier);
    key(Qt::Key_Escape);
    QTRY_VERIFY(stock().rows()->count() > 50);
    const int all = stock().rows()->count();
    item("narrow-kind")->forceActiveFocus(Qt::TabFocusReason);
    for (QQuickItem *one : allSeen(*m_window)) {
        if (one->objectName() == QStringLiteral("choice")) {
            one->forceActiveFocus(Qt::TabFocusReason);
            break;
        }
    }
    key(Qt::Key_Down);
    QTRY_VERIFY(stock().rows()->count() < all);
    QVERIFY(stock().isNarrowed());
    QVERIFY(words("stockTitle") != QStringLiteral("Stock"));
    press("clearNarrowing");
    QTRY_COMPARE(stock().rows()->count(), all);
}

/// 22.1 mm over the crests: 7/8-14 (22.225 mm, SAE J514 and ASME B1.1) and M22 are within what a
/// caliper on a worn thread can tell, so that the pitch has to be measured.
void StockByKeyboard::anUnmarkedFittingIsMeasured()
{
    key(Qt::Key_M, Qt::ControlModifier);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("caliperDiameter"));
    type("22.1");
    QTRY_VERIFY(item("measured") != nullptr);
    QVERIFY(!words("measureNext").isEmpty());
    const int before = stock().whatIsThis()->candidates()->count();
    picture("what-is-this");
    write("caliperPitch", "14 tpi");
    QTRY_VERIFY(stock().whatIsThis()->candidates()->count() <= before);
    QCOMPARE(stock().whatIsThis()->candidates()->cell(0, QStringLiteral("thread")).toString(),
             QStringLiteral("7/8-14"));
    press("showCandidates");
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("stockLine"));
    QTRY_VERIFY(words("stockTitle").contains(QStringLiteral("what it can be")));
    press("clearNarrowing");
}

void StockByKeyboard::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(StockByKeyboard)
#include "tst_stock_by_keyboard.moc"
