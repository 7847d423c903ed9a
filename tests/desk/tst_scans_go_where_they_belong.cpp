// SPDX-License-Identifier: MIT
//
// A scanned code goes to what shows, wherever the keyboard is, and presses nothing on its way: not
// the button that has the keyboard, nor the count of the line in hand by the dash in its number.

#include "app/desk/scan/scan_ear.h"
#include "buying_on_screen.h"

#include <QSignalSpy>

using namespace flarestock;

class ScansGoWhereTheyBelong : public QObject, protected BuyingOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void aLetterOfBeforeIsNoneOfTheCode();
    void aBinHasTwoLetters();
    void whatWasFoundIsPutAway();
    void aNewNumberIsOfThePieceThatComes();
    void aSheetThatAsksForNothingSaysSo();
    void aPickIsTickedWhateverHasTheKeyboard();
    void aBoxIsCountedOneByOne();
    void whatIsNotThereIsNotTicked();
    void nothingIsWarnedAbout();

private:
    /// As a scanner does: a capital with Shift before it, Return at the end.
    void scan(const QString &code)
    {
        for (const QChar letter : code) {
            if (letter.isUpper())
                QTest::keyPress(m_window, Qt::Key_Shift, Qt::NoModifier, 1);
            QTest::keyClick(m_window, letter.toLatin1(),
                            letter.isUpper() ? Qt::ShiftModifier : Qt::NoModifier, 1);
        }
        key(Qt::Key_Return);
    }
    void focus(const char *name)
    {
        QTRY_VERIFY2(item(name) != nullptr, name);
        item(name)->forceActiveFocus(Qt::TabFocusReason);
        QTRY_VERIFY(item(name)->hasActiveFocus());
    }
    [[nodiscard]] int ticked() const { return m_desk->handing()->tickedCount(); }

    ScanEar m_ear;
};

void ScansGoWhereTheyBelong::initTestCase()
{
    open();
    connect(m_desk.get(), &Desk::takesScansChanged, &m_ear,
            [this] { m_ear.setTelling(m_desk->takesScans()); });
    connect(&m_ear, &ScanEar::heard, m_desk.get(), &Desk::scanned);
    m_ear.setTelling(m_desk->takesScans());
    m_ear.listenTo(*m_window);
    showStock();
}

void ScansGoWhereTheyBelong::aLetterOfBeforeIsNoneOfTheCode()
{
    focus("sort-2");
    key(Qt::Key_W);
    QTest::qWait(ScanEar::GapMost * 3);
    scan(QStringLiteral("AD-6-6"));
    QTRY_COMPARE(stock().selected(), QStringLiteral("AD-6-6"));
    QTRY_VERIFY(words("findField").isEmpty());
}

void ScansGoWhereTheyBelong::aBinHasTwoLetters()
{
    scan(QStringLiteral("H4"));
    QTRY_VERIFY2(words("stockTitle").contains(QStringLiteral("H4")),
                 qPrintable(words("stockTitle")));
    press("clearNarrowing");
}

void ScansGoWhereTheyBelong::whatWasFoundIsPutAway()
{
    focus("findField");
    type("filter");
    QTRY_VERIFY(item("foundScroller") != nullptr);
    QTest::qWait(ScanEar::GapMost * 3);
    scan(QStringLiteral("AD-8-8"));
    QTRY_COMPARE(stock().selected(), QStringLiteral("AD-8-8"));
    QTRY_VERIFY(item("foundScroller") == nullptr);
}

void ScansGoWhereTheyBelong::aNewNumberIsOfThePieceThatComes()
{
    take("EP-460");
    press("deed-receive");
    QTRY_VERIFY(item("field-lot") != nullptr);
    focus("field-quantity");
    const QString quantity = words("field-quantity");
    scan(QStringLiteral("SN 9901"));
    QTRY_COMPARE(words("field-lot"), QStringLiteral("SN 9901"));
    QCOMPARE(words("field-quantity"), quantity);
    QCOMPARE(words("findField"), QStringLiteral("EP-460")); // As it stood.
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("field-lot") == nullptr);
}

void ScansGoWhereTheyBelong::aSheetThatAsksForNothingSaysSo()
{
    take("AD-8-8");
    const std::int64_t before = lies("AD-8-8", "A3");
    press("deed-scrap");
    QTRY_VERIFY(item("doDeed") != nullptr);
    focus("doDeed");
    scan(QStringLiteral("NO-SUCH-CODE"));
    QTRY_VERIFY2(words("sheetProblem").contains(QStringLiteral("NO-SUCH-CODE")),
                 qPrintable(words("sheetProblem")));
    QVERIFY(item("doDeed") != nullptr); // Not pressed by the Return.
    QCOMPARE(lies("AD-8-8", "A3"), before);
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("doDeed") == nullptr);
}

void ScansGoWhereTheyBelong::aPickIsTickedWhateverHasTheKeyboard()
{
    key(Qt::Key_1, Qt::AltModifier);
    press("step-reserve");
    awaitWritten();
    Rows *picks = m_desk->handing()->picks();
    QTRY_VERIFY(picks->count() > 3);
    press("step-pick");
    QTRY_VERIFY(item("pickList") != nullptr);
    const int before = picks->count();
    focus("issueAll");
    QSignalSpy found(m_desk->handing(), &HandingOut::found);
    const QString bin = picks->cell(2, QStringLiteral("place")).toString();
    scan(bin); // Is no piece.
    QTRY_COMPARE(found.count(), 1);
    QCOMPARE(picks->cell(found.at(0).at(0).toInt(), QStringLiteral("place")).toString(), bin);
    QCOMPARE(ticked(), 0);
    const QString part = picks->cell(2, QStringLiteral("part")).toString();
    scan(part);
    QTRY_COMPARE(ticked(), 1);
    scan(part);
    QTRY_VERIFY2(words("sheetProblem").contains(QStringLiteral("already")),
                 qPrintable(words("sheetProblem")));
    scan(QStringLiteral("NO-SUCH-CODE"));
    QTRY_VERIFY2(words("sheetProblem").contains(QStringLiteral("not on this list")),
                 qPrintable(words("sheetProblem")));
    QCOMPARE(ticked(), 1);
    QVERIFY(!m_desk->handing()->isBusy());
    press("issueTicked");
    awaitWritten();
    QTRY_COMPARE(picks->count(), before - 1);
    QTRY_VERIFY(item("pickList") != nullptr && item("pickList")->hasActiveFocus());
    scan(picks->cell(1, QStringLiteral("part")).toString());
    QTRY_COMPARE(ticked(), 1);
    QCOMPARE(picks->count(), before - 1); // Nothing else went to the car.
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("pickList") == nullptr);
}

void ScansGoWhereTheyBelong::aBoxIsCountedOneByOne()
{
    showBuying();
    key(Qt::Key_2, Qt::ControlModifier);
    awaitBuying();
    buying().slips()->draft({});
    awaitBuying();
    OrdersPage &orders = *buying().orders();
    const auto shop = inFile();
    const auto wanted = [&shop](const OrderLine &line) {
        return line.quantity >= Decimal(3) && line.part.find('-') != std::string::npos &&
               shop->part(line.part)->box.empty() && !isLength(line.unit);
    };
    QString part;
    QString number;
    for (const auto &[id, order] : shop->bought.orders.orders) {
        const auto &lines = order.now().lines;
        const auto line = std::find_if(lines.begin(), lines.end(), wanted);
        if (line != lines.end() && lines.size() > 1 && order.standing() == OrderStanding::Draft) {
            part = said(line->part);
            number = said(id);
        }
    }
    QVERIFY(!number.isEmpty());
    key(Qt::Key_3, Qt::ControlModifier);
    orders.select(number);
    press("deed-place");
    press("doDeed");
    awaitBuying();
    QTRY_COMPARE(words("orderState"), QStringLiteral("placed"));
    press("deed-receive");
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("tickLine"));
    Rows *ticks = buying().box()->ticks();
    int row = 0;
    while (row < ticks->count() && cell(ticks, row, "part") != part)
        ++row;
    QVERIFY(row < ticks->count());
    const int other = row == 0 ? 1 : 0;
    for (int at = 1; at <= 2; ++at) {
        scan(part);
        QTRY_VERIFY2(cell(ticks, row, "came").startsWith(QString::number(at)),
                     qPrintable(cell(ticks, row, "came")));
        QTest::qWait(ScanEar::GapMost * 3);
    }
    item("boxList")->setProperty("currentIndex", row);
    const QString otherPart = cell(ticks, other, "part");
    scan(otherPart); // Its dashes do not count the line in hand down.
    QTRY_VERIFY(cell(ticks, row, "came").startsWith(u'2'));
}

void ScansGoWhereTheyBelong::whatIsNotThereIsNotTicked()
{
    BoxPage &box = *buying().box();
    Rows *ticks = box.ticks();
    int row = 0;
    while (row < ticks->count() && !cell(ticks, row, "came").startsWith(u'2'))
        ++row;
    QVERIFY(row < ticks->count());
    const QString part = cell(ticks, row, "part");
    const int all = cell(ticks, row, "amount").section(u' ', 0, 0).toInt();
    box.tickAll();
    QVERIFY(ticks->cell(row, QStringLiteral("full")).toBool());
    box.beginTrouble(row);
    box.form()->finish({{QStringLiteral("fault"), 1}, {QStringLiteral("quantity"), 2}});
    QTRY_VERIFY2(cell(ticks, row, "came").startsWith(QString::number(all - 2)),
                 qPrintable(cell(ticks, row, "came")));
    box.tickAll();
    QVERIFY(cell(ticks, row, "came").startsWith(QString::number(all - 2)));
    const std::string id = part.toStdString();
    const auto onShelves = [&](const Workshop &shop) {
        std::int64_t sum = 0;
        for (const auto &[key, held] : shop.ledger.balances())
            sum += key.part == id && !bringsValue(shop.ledger.place(key.place)->kind)
                       ? held.quantity
                       : 0;
        return sum;
    };
    const std::int64_t before = onShelves(*inFile());
    for (int at = 0; at < ticks->count(); ++at)
        box.setPlace(at, QStringLiteral("A2"));
    box.putAway();
    awaitBuying();
    QTRY_VERIFY2(!words("boxResult").isEmpty(), qPrintable(m_desk->pen()->problem()));
    QCOMPARE(onShelves(*inFile()), before + all - 2);
    const auto after = inFile();
    QCOMPARE(after->bought.claims.claims.back().now.quantity, 2);
}

void ScansGoWhereTheyBelong::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(ScansGoWhereTheyBelong)
#include "tst_scans_go_where_they_belong.moc"
