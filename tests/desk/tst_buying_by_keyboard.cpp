// SPDX-License-Identifier: MIT
//
// A buyer at work, by keyboard alone, in the real window on the demo shop: what is short is looked
// at, planned, drafted, placed; a box comes with a bracket missing, which becomes a claim, is
// promised and comes. At each step the shop's file is asked by the code that the commands ask.

#include "buying_on_screen.h"
#include "model/exchange/papers/order_csv.h"

#include <QFile>

using namespace flarestock;

class BuyingByKeyboard : public QObject, protected BuyingOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase() { open(); }
    void whatIsShortIsWhatTheBuyerSays();
    void slipsAreThePlan();
    void aSlipBecomesADraft();
    void aDraftIsChangedAndPlaced();
    void anOrderGoesOutAsFiles();
    void aBoxIsTickedOffAndLacksABracket();
    void whatIsOwedIsPromisedAndComes();
    void anInvoiceThatComesLateIsBorne();
    void nothingIsWarnedAbout();

private:
    /// The row of a list whose cell says so; -1 where none does.
    static int rowWith(Rows *rows, const char *name, const QString &text)
    {
        for (int row = 0; row < rows->count(); ++row)
            if (cell(rows, row, name) == text)
                return row;
        return -1;
    }
    void turnTo(int page)
    {
        key(static_cast<Qt::Key>(Qt::Key_1 + page), Qt::ControlModifier);
        QTRY_COMPARE(buying().page(), page);
        awaitBuying();
    }
    void daysSayWhatTheyCount();
    void serialsAreRead(int pump);
    [[nodiscard]] const BookedOrder *orderIn(const Workshop &shop) const
    {
        return shop.bought.orders.order(m_order.toStdString());
    }

    QString m_order; ///< The one that the journey is about.
};

void BuyingByKeyboard::whatIsShortIsWhatTheBuyerSays()
{
    showBuying();
    const auto shop = inFile();
    const auto lacking = shortages();
    QVERIFY(lacking.size() > 50);
    Rows *lines = buying().lacking()->lines();
    QCOMPARE(lines->count(), static_cast<int>(lacking.size()));
    for (int row = 0; row < lines->count(); ++row) {
        const Shortage &one = lacking[static_cast<std::size_t>(row)];
        QCOMPARE(cell(lines, row, "part").toStdString(), one.part);
        if (const Part *part = shop->part(one.part); !isLength(part->unit))
            QCOMPARE(cell(lines, row, "lacks").toStdString(), one.quantity.stripped().text());
    }
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("lackingLine"));
    const QString first = buying().lacking()->selected();
    key(Qt::Key_Down);
    QVERIFY(buying().lacking()->selected() != first);
    QTRY_COMPARE(words("lackingPart"), buying().lacking()->part());
    // What nobody sells is on no slip: it is not all in time.
    const auto unsold = std::count_if(lacking.begin(), lacking.end(), [&shop](const Shortage &one) {
        return shop->catalogue.offers(*shop->part(one.part)).empty();
    });
    QVERIFY(unsold > 0);
    QVERIFY(!buying().canBeInTime());
    QVERIFY2(buying().inTime().contains(QStringLiteral("on no slip")),
             qPrintable(buying().inTime()));
    daysSayWhatTheyCount();
    pictureOfBuying("short");
    key(Qt::Key_Home);
    QCOMPARE(buying().lacking()->selected(), first);
}

/// Parts, not pieces; and what is short of the part in hand is said on a day that changes it.
void BuyingByKeyboard::daysSayWhatTheyCount()
{
    Rows *days = buying().lacking()->days();
    QVERIFY(days->count() > 5);
    int said = 0;
    for (int row = 0; row < days->count(); ++row) {
        for (const char *name : {"comes", "needs"})
            for (const QString &one : days->cell(row, QString::fromLatin1(name)).toStringList())
                QVERIFY2(one.contains(QStringLiteral(" part")), qPrintable(one));
        const bool isShort = days->cell(row, QStringLiteral("partShort")).toBool();
        said += isShort ? 1 : 0;
        if (isShort && row > 0 && cell(days, row, "partComes").isEmpty() &&
            cell(days, row, "partNeeds").isEmpty())
            QVERIFY2(cell(days, row, "partLacks") != cell(days, row - 1, "partLacks"),
                     qPrintable(cell(days, row, "says")));
    }
    QVERIFY(said > 0);
}

void BuyingByKeyboard::slipsAreThePlan()
{
    turnTo(BuyingDesk::Slips);
    const auto shop = inFile();
    const auto file = ShopFile::open(m_file.toStdString(), OpenMode::ReadOnly).value();
    const PlanWanted wanted{shortages(), today()};
    const PurchasePlan plan = plannedFor(*shop, ratesOf(file).value(), wanted);
    Rows *slips = buying().slips()->slips();
    QCOMPARE(slips->count(), static_cast<int>(plan.orders.size()));
    for (int row = 0; row < slips->count(); ++row) {
        const ProposedOrder &order = plan.orders[static_cast<std::size_t>(row)];
        QCOMPARE(cell(slips, row, "total"), saidMoney({order.total, order.currency}));
        QCOMPARE(slips->cell(row, QStringLiteral("lines")).toList().size(),
                 static_cast<qsizetype>(order.lines.size()));
    }
    QCOMPARE(cell(buying().slips()->aims(), 0, "worth"),
             saidMoney({plan.figures.worth, shop->settings.currency}));
    const bool isTaxGotBack =
        std::any_of(plan.orders.begin(), plan.orders.end(), [](const ProposedOrder &one) {
            return one.tax.sign() > 0 && one.supplier->tax.recovered;
        });
    QVERIFY(isTaxGotBack); // It is paid on the slips, and no cost of the plan.
    QVERIFY(
        cell(buying().slips()->aims(), 0, "detail").contains(QStringLiteral("without the tax")));
    pictureOfBuying("slips");
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("aim-cheapest"));
    press("aim-parcels");
    QCOMPARE(buying().slips()->aim(), QStringLiteral("parcels"));
    press("aim-cheapest");
    QCOMPARE(buying().slips()->slips()->count(), static_cast<int>(plan.orders.size()));
}

void BuyingByKeyboard::aSlipBecomesADraft()
{
    const int before = static_cast<int>(inFile()->bought.orders.orders.size());
    const int slip =
        rowWith(buying().slips()->slips(), "name", QStringLiteral("Millpond Pump Works"));
    QVERIFY(slip >= 0);
    const QString total = cell(buying().slips()->slips(), slip, "total");
    item(qPrintable(QStringLiteral("slip-") + cell(buying().slips()->slips(), slip, "key")))
        ->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_Tab);
    QCOMPARE(focusName(*m_window), QStringLiteral("slipDraft"));
    key(Qt::Key_Return);
    awaitBuying();
    QVERIFY2(words("lastStep").startsWith(QStringLiteral("Drafted: ")),
             qPrintable(words("lastStep")));
    QCOMPARE(static_cast<int>(inFile()->bought.orders.orders.size()), before + 1);
    m_order = cell(buying().slips()->slips(), slip, "draft");
    QVERIFY(!m_order.isEmpty());
    key(Qt::Key_Z,
        Qt::ControlModifier); // A draft that is taken back is cancelled, and leads nowhere.
    awaitBuying();
    QTRY_COMPARE(cell(buying().slips()->slips(), slip, "draft"), QString());
    QCOMPARE(orderIn(*inFile())->standing(), OrderStanding::Cancelled);
    buying().slips()->draft(cell(buying().slips()->slips(), slip, "key"));
    awaitBuying();
    m_order = cell(buying().slips()->slips(), slip, "draft");
    turnTo(BuyingDesk::Orders);
    buying().orders()->select(m_order);
    QCOMPARE(
        cell(buying().orders()->orders(), buying().orders()->orders()->rowOf(m_order), "total"),
        total);
}

void BuyingByKeyboard::aDraftIsChangedAndPlaced()
{
    const std::size_t lacked = shortages().size();
    buying().orders()->setLine(QStringLiteral("CB-4"));
    press("deed-change");
    QTRY_VERIFY(item("field-note") != nullptr);
    QCOMPARE(words("field-part"), QStringLiteral("CB-4"));
    QCOMPARE(words("field-quantity"), QStringLiteral("1"));
    write("field-note", "leave it at the gate");
    pictureOfBuying("change");
    key(Qt::Key_Return);
    awaitBuying();
    QTRY_VERIFY(item("field-note") == nullptr);
    QCOMPARE(orderIn(*inFile())->now().note, std::string("leave it at the gate"));
    QCOMPARE(orderIn(*inFile())->standing(), OrderStanding::Draft);
    press("deed-place");
    QTRY_VERIFY(item("field-due") != nullptr);
    write("field-due", "when it pleases");
    key(Qt::Key_Return);
    awaitBuying();
    QTRY_VERIFY(!words("sheetProblem").isEmpty());
    QVERIFY(!words("sheetProblem").contains(QStringLiteral("--")));
    key(Qt::Key_A, Qt::ControlModifier);
    type("2026-12-09");
    key(Qt::Key_Return);
    awaitBuying();
    QTRY_VERIFY(item("field-due") == nullptr);
    QCOMPARE(words("orderState"), QStringLiteral("placed"));
    QCOMPARE(orderIn(*inFile())->now().due, std::string("2026-12-09"));
    QVERIFY(shortages().size() < lacked);
    QTRY_COMPARE(buying().lacking()->lines()->count(), static_cast<int>(shortages().size()));
    pictureOfBuying("order");
}

/// The file is chosen in the desktop's own dialogue, which a test cannot see.
void BuyingByKeyboard::anOrderGoesOutAsFiles()
{
    const auto written = [this](const char *kind) {
        const QString path = m_folder.filePath(QStringLiteral("order.") + QLatin1String(kind));
        buying().orders()->writePaper(QString::fromLatin1(kind), QUrl::fromLocalFile(path));
        if (!QTest::qWaitFor([this] { return !buying().orders()->isWriting(); }, 60000))
            return QByteArray();
        QFile file(path);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    };
    const Order order = orderIn(*inFile())->now();
    QCOMPARE(written("csv").toStdString(), orderCsv(order));
    QVERIFY2(words("lastStep").contains(QStringLiteral("order.csv")),
             qPrintable(words("lastStep")));
    QVERIFY(written("pdf").startsWith("%PDF-"));
    QVERIFY(written("xlsx").startsWith("PK"));
    buying().orders()->writePaper(QStringLiteral("csv"),
                                  QUrl::fromLocalFile(QStringLiteral("/no/such/folder/order.csv")));
    QTRY_VERIFY(!buying().orders()->isWriting());
    QVERIFY2(words("lastStep").contains(QStringLiteral("/no/such/folder")),
             qPrintable(words("lastStep")));
}

void BuyingByKeyboard::serialsAreRead(int pump)
{
    Rows *ticks = buying().box()->ticks();
    item("boxList")->setProperty("currentIndex", 0);
    buying().box()->putAway(); // Nobody has read its serial.
    QVERIFY(!m_desk->pen()->isBusy());
    QVERIFY2(words("boxProblem").contains(QStringLiteral("serial")),
             qPrintable(words("boxProblem")));
    QCOMPARE(item("boxList")->property("currentIndex").toInt(), pump);
    // What is read behind it is its serial, a blank and all; what nobody waits for is said.
    QVERIFY(buying().scan(QStringLiteral("SN 5005")));
    QCOMPARE(cell(ticks, pump, "mark"), QStringLiteral("SN 5005"));
    QCOMPARE(item("boxList")->property("currentIndex").toInt(), pump);
    std::vector<int> pumps;
    for (int row = 0; row < ticks->count(); ++row)
        if (cell(ticks, row, "part") == QStringLiteral("EP-460M"))
            pumps.push_back(row);
    for (std::size_t at = 1; at < pumps.size(); ++at) { // The next that has none.
        QVERIFY(buying().scan(QStringLiteral("SN 600%1").arg(at)));
        QCOMPARE(cell(ticks, pumps[at], "mark"), QStringLiteral("SN 600%1").arg(at));
    }
    QVERIFY(buying().scan(QStringLiteral("NO SUCH")));
    QVERIFY2(words("boxProblem").contains(QStringLiteral("NO SUCH")),
             qPrintable(words("boxProblem")));
    QCOMPARE(buying().page(), static_cast<int>(BuyingDesk::Orders));
    QVERIFY(buying().orders()->nothing().isEmpty());
    for (const int row : pumps)
        buying().box()->setMark(row, {});
    for (std::size_t at = 1; at < pumps.size(); ++at)
        buying().box()->step(pumps[at], -1);
    QVERIFY(buying().scan(QStringLiteral("EP-460M=SN-9"))); // As a label has both.
    QVERIFY(cell(ticks, pumps.size() > 1 ? pumps[1] : pump, "mark") == QStringLiteral("SN-9"));
    buying().box()->setMark(pumps.size() > 1 ? pumps[1] : pump, {});
    buying().box()->step(pumps.size() > 1 ? pumps[1] : pump, -1);
    item("boxList")->setProperty("currentIndex", pump);
}

void BuyingByKeyboard::aBoxIsTickedOffAndLacksABracket()
{
    const auto before = inFile();
    press("deed-receive");
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("tickLine"));
    Rows *ticks = buying().box()->ticks();
    key(Qt::Key_Home);
    for (int row = 0; cell(ticks, row, "part") != QStringLiteral("CB-4"); ++row)
        key(Qt::Key_Down);
    key(Qt::Key_Space);
    const int pump = rowWith(ticks, "part", QStringLiteral("EP-460M"));
    QCOMPARE(buying().box()->scan(QStringLiteral("EP-460M")), pump);
    QCOMPARE(item("boxList")->property("currentIndex").toInt(), pump); // It is in hand.
    serialsAreRead(pump);
    key(Qt::Key_Return);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("handMark"));
    type("SN-40718");
    key(Qt::Key_Tab);
    QCOMPARE(focusName(*m_window), QStringLiteral("handPlace"));
    type("a2");
    key(Qt::Key_Return);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("tickLine"));
    while (cell(ticks, item("boxList")->property("currentIndex").toInt(), "part") !=
           QStringLiteral("CL-T60"))
        key(Qt::Key_Down);
    key(Qt::Key_Space);
    QVERIFY2(words("boxLacks").contains(QStringLiteral("BK-460")), qPrintable(words("boxLacks")));
    pictureOfBuying("box");
    buying().box()->setPlace(rowWith(ticks, "part", QStringLiteral("CB-4")), QStringLiteral("A2"));
    press("putAway");
    awaitBuying();
    QTRY_VERIFY2(!words("boxResult").isEmpty(), qPrintable(words("boxProblem")));
    QTRY_VERIFY(buying().box()->came()->count() >= 3);
    const auto after = inFile();
    QCOMPARE(after->bought.claims.claims.size(), before->bought.claims.claims.size() + 1);
    const SupplierClaim &claim = after->bought.claims.claims.back().now;
    QCOMPARE(claim.part, std::string("BK-460"));
    QCOMPARE(claim.boxOf, std::string("EP-460M"));
    QCOMPARE(claim.boxLot, std::string("SN-40718"));
    QCOMPARE(after->ledger.balance({"EP-460M", "A2", "SN-40718", PieceCondition::New}).quantity, 1);
    QCOMPARE(after->looks.size(), before->looks.size() + 1);
    QCOMPARE(orderIn(*after)->received("EP-460M"), 1);
    // What it carries is what the order landed for: 286.00 each, freight none from 250, tax back.
    QCOMPARE(after->ledger.balance({"EP-460M", "A2", "SN-40718", PieceCondition::New}).value,
             286'000'000);
    pictureOfBuying("came");
    press("boxDone");
    QTRY_COMPARE(words("orderState"), QStringLiteral("partly received"));
}

void BuyingByKeyboard::whatIsOwedIsPromisedAndComes()
{
    turnTo(BuyingDesk::Owed);
    QCOMPARE(buying().owed()->open(), 1);
    press("deed-promise");
    write("field-day", "2026-12-04");
    key(Qt::Key_Return);
    awaitBuying();
    QTRY_VERIFY(item("field-day") == nullptr);
    const auto claim = [this] { return inFile()->bought.claims.claims.back(); };
    QCOMPARE(claim().now.state, ClaimState::Promised);
    QCOMPARE(claim().now.day, std::string("2026-12-04"));
    pictureOfBuying("owed");
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitBuying();
    QTRY_COMPARE(claim().now.state, ClaimState::Raised);
    press("deed-came");
    QTRY_VERIFY(item("field-came") != nullptr);
    key(Qt::Key_Return); // All of it, into the box that lacked it.
    awaitBuying();
    QTRY_VERIFY(item("field-came") == nullptr);
    QCOMPARE(claim().now.state, ClaimState::PieceCame);
    QVERIFY(inFile()->looks.back().missing.empty());
    QCOMPARE(buying().owed()->open(), 0);
}

void BuyingByKeyboard::anInvoiceThatComesLateIsBorne()
{
    const auto carries = [this] {
        const auto shop = inFile();
        return shop->ledger.balance({"EP-460M", "A2", "SN-40718", PieceCondition::New}).value;
    };
    turnTo(BuyingDesk::Orders);
    buying().orders()->select(m_order);
    press("deed-late");
    QTRY_VERIFY(item("field-amount") != nullptr);
    write("field-amount", "12.00");
    item("choice-part")->forceActiveFocus(Qt::TabFocusReason);
    while (item("choice-part")->property("displayText").toString() != QStringLiteral("EP-460M"))
        key(Qt::Key_Down);
    press("doDeed");
    awaitBuying();
    QTRY_VERIFY2(item("field-amount") == nullptr, qPrintable(words("sheetProblem")));
    QCOMPARE(carries(), 298'000'000); // The only one that came bears all of it.
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitBuying();
    QTRY_COMPARE(carries(), 286'000'000);
}

void BuyingByKeyboard::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(BuyingByKeyboard)
#include "tst_buying_by_keyboard.moc"
