// SPDX-License-Identifier: MIT
//
// From the stock's panel, by keyboard in the real window: something that happened a while ago is
// taken back, with the reason; a new place is added; what is for one car alone is received so.

#include "stock_on_screen.h"

using namespace flarestock;

class WhatHappenedIsTakenBack : public QObject, protected StockOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase()
    {
        open();
        showStock();
    }
    void anOlderMoveIsTakenBack();
    void whatIsTakenBackIsNotOfferedAgain();
    void thatTooIsTakenBack();
    void aNewPlaceIsAdded();
    void aPlaceThatIsThereIsRefused();
    void whatIsForOneCarIsReceivedSo();
    void nothingIsWarnedAbout();

private:
    void move(const char *part, const char *to);
    [[nodiscard]] QQuickItem *backOf(const QString &event) const;
    [[nodiscard]] std::shared_ptr<const Workshop> inFile() const
    {
        return Workshop::open(m_file.toStdString()).value();
    }
};

void WhatHappenedIsTakenBack::move(const char *part, const char *to)
{
    take(part);
    press("deed-move");
    write("field-to", to);
    key(Qt::Key_Return);
    awaitWritten();
    QTRY_VERIFY(item("field-to") == nullptr);
}

/// The button beside what happened; nothing where there is none.
QQuickItem *WhatHappenedIsTakenBack::backOf(const QString &event) const
{
    for (QQuickItem *one : allSeen(*m_window)) {
        const QQuickItem *line = one->parentItem() ? one->parentItem()->parentItem() : nullptr;
        if (one->objectName() == QStringLiteral("takeBackEvent") && line != nullptr &&
            line->property("title").toString() == event)
            return one;
    }
    return nullptr;
}

void WhatHappenedIsTakenBack::anOlderMoveIsTakenBack()
{
    const std::int64_t before = lies("AD-8-8", "A3");
    move("AD-8-8", "B1");
    move("AD-6-6", "B1"); // The step that Ctrl+Z would take back.
    QCOMPARE(lies("AD-8-8", "A3"), before - 1);
    take("AD-8-8");
    const QString event = QStringLiteral("moved  A3 → B1");
    QTRY_VERIFY(backOf(event) != nullptr);
    backOf(event)->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_Return);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("field-why"));
    QTRY_COMPARE(words("formOutlook"), QStringLiteral("1 of AD-8-8 goes back, B1 → A3"));
    type("wrong bin");
    picture("going-back");
    m_look->setDark(true);
    picture("going-back-dark-small", QSize(1024, 640));
    m_look->setDark(false);
    (void)pictureOf(*m_window, QSize(1440, 900));
    key(Qt::Key_Return);
    awaitWritten();
    QTRY_VERIFY(item("field-why") == nullptr);
    QCOMPARE(words("lastStep"), QStringLiteral("Gone back: %1.").arg(event));
    QCOMPARE(lies("AD-8-8", "A3"), before);
    QCOMPARE(lies("AD-6-6", "B1"), 1);
    const auto file = ShopFile::open(m_file.toStdString(), OpenMode::ReadOnly).value();
    QCOMPARE(file.movements("AD-8-8").value().back().why, std::string("wrong bin"));
}

void WhatHappenedIsTakenBack::whatIsTakenBackIsNotOfferedAgain()
{
    const QString event = QStringLiteral("moved  A3 → B1");
    QTRY_VERIFY(backOf(event) == nullptr);
    QVERIFY(backOf(QStringLiteral("moved  opening → A3")) != nullptr);
}

void WhatHappenedIsTakenBack::thatTooIsTakenBack()
{
    const std::int64_t before = lies("AD-8-8", "A3");
    item("stockList")->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitWritten();
    QTRY_COMPARE(lies("AD-8-8", "A3"), before - 1);
}

void WhatHappenedIsTakenBack::aNewPlaceIsAdded()
{
    press("deed-place");
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("field-id"));
    type("Z9");
    picture("new-place");
    key(Qt::Key_Return);
    QTRY_VERIFY(item("field-id") == nullptr);
    QCOMPARE(words("lastStep"), QStringLiteral("Z9 is a place of the shop now."));
    const auto shop = inFile();
    QVERIFY(shop->ledger.place("Z9") != nullptr);
    QVERIFY(shop->ledger.place("Z9")->kind == PlaceKind::Bin);
    QTest::qWait(1500); // The desk reads it anew.
    awaitWritten();
    move("AD-8-8", "Z9");
    QCOMPARE(lies("AD-8-8", "Z9"), 1);
}

void WhatHappenedIsTakenBack::aPlaceThatIsThereIsRefused()
{
    press("deed-place");
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("field-id"));
    type("Z9");
    key(Qt::Key_Return);
    QTRY_VERIFY(words("sheetProblem").contains(QStringLiteral("is there already")));
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("field-id") == nullptr);
}

void WhatHappenedIsTakenBack::whatIsForOneCarIsReceivedSo()
{
    take("AD-8-8");
    press("deed-receive");
    write("field-quantity", "2");
    write("field-cost", "15.00");
    write("field-lot", "CUST-1");
    QTRY_VERIFY(item("choice-owner") != nullptr);
    item("choice-owner")->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_Down);
    press("doDeed");
    awaitWritten();
    QTRY_VERIFY(item("field-lot") == nullptr);
    const auto shop = inFile();
    const auto facts = shop->notes.lots.find({"AD-8-8", "CUST-1"});
    QVERIFY(facts != shop->notes.lots.end());
    const Place *car = shop->ledger.place(facts->second.owner);
    QVERIFY(car != nullptr && car->kind == PlaceKind::Car);
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitWritten();
    QTRY_VERIFY(words("lastStep").startsWith(QStringLiteral("Taken back: ")));
}

void WhatHappenedIsTakenBack::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(WhatHappenedIsTakenBack)
#include "tst_what_happened_is_taken_back.moc"
