// SPDX-License-Identifier: MIT
//
// What the program proposes to order is ordered once: each line of an order is expected on the day
// that its offer's lead says, not on that of the slowest line, and once the slips are drafted and
// placed nothing of them is proposed again. Days are counted here by hand.

#include "app/buyer/order_lines.h"
#include "app/buyer/ordering.h"
#include "buying_on_screen.h"

using namespace flarestock;

class WhatIsOrderedIsNotProposedAgain : public QObject, protected BuyingOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase() { open(); }
    void moreThatCostsNoMoreIsSaid();
    void draftsHaveADayForEachLine();
    void aLineThatChangesLeavesTheDaysOfOthers();
    void aDayThatIsPromisedIsThatOfAll();
    void allThatIsPlacedIsExpectedAndNotProposed();
    void aSupplierLeadsToWhatIsOrderedFromHim();
    void aPlacedOrderIsNotCancelledUnasked();
    void whatIsMadeByHandIsInHand();
    void nothingIsWarnedAbout();

private:
    [[nodiscard]] std::vector<Order> drafts() const
    {
        std::vector<Order> all;
        const auto shop = inFile();
        for (const auto &[number, order] : shop->bought.orders.orders)
            if (order.standing() == OrderStanding::Draft && m_before.count(number) == 0)
                all.push_back(order.now());
        return all;
    }
    /// The first draft whose lines come on several days.
    [[nodiscard]] Order ofSeveralDays() const
    {
        for (const Order &order : drafts())
            if (order.hasDaysByLine())
                return order;
        return drafts().front();
    }
    static std::string daysOn(const std::string &day, int days)
    {
        return QDate::fromString(said(day), Qt::ISODate)
            .addDays(days)
            .toString(Qt::ISODate)
            .toStdString();
    }

    std::set<std::string> m_before; ///< The orders of before.
};

/// 1: 11.90; 10: 10.71. Nine come to 107.10, ten to 107.10; eight to 95.20.
void WhatIsOrderedIsNotProposedAgain::moreThatCostsNoMoreIsSaid()
{
    const auto dec = [](const char *text) { return Decimal::parse(text).value(); };
    Offer offer{"HE-10", "NHT", "", 1, 1, 1, Currency::parse("USD").value(), {}, 5};
    offer.breaks = {{1, dec("11.90")}, {10, dec("10.71")}};
    QCOMPARE(moreForNoMore(offer, 9), std::optional<Decimal>(10));
    QVERIFY(!moreForNoMore(offer, 8));
    QVERIFY(!moreForNoMore(offer, 10));
    offer.pack = 4; // He sends no ten of them.
    QVERIFY(!moreForNoMore(offer, 9));
}

void WhatIsOrderedIsNotProposedAgain::draftsHaveADayForEachLine()
{
    const auto before = inFile();
    for (const auto &[number, order] : before->bought.orders.orders)
        m_before.insert(number);
    showBuying();
    key(Qt::Key_2, Qt::ControlModifier);
    awaitBuying();
    QVERIFY(buying().slips()->slips()->count() > 2);
    buying().slips()->draft({});
    awaitBuying();
    const auto shop = inFile();
    int several = 0;
    for (const Order &order : drafts()) {
        std::string last;
        for (const OrderLine &line : order.lines) {
            std::vector<std::string> days; // He may have several offers for it.
            for (const Offer &offer : shop->catalogue.offers(*shop->part(line.part)))
                if (offer.supplier == order.supplier)
                    days.push_back(daysOn(order.day, offer.leadDays));
            QVERIFY2(std::count(days.begin(), days.end(), order.dueOf(line)) > 0,
                     line.part.c_str());
            last = std::max(last, order.dueOf(line));
        }
        QCOMPARE(order.due, last);
        several += order.hasDaysByLine() ? 1 : 0;
    }
    QVERIFY(several > 0);
}

/// The slowest line is ordered again in another number: the quick ones stay as quick.
void WhatIsOrderedIsNotProposedAgain::aLineThatChangesLeavesTheDaysOfOthers()
{
    const auto shop = inFile();
    const Order draft = ofSeveralDays();
    const auto slow = std::find_if(draft.lines.begin(), draft.lines.end(),
                                   [](const OrderLine &line) { return line.due.empty(); });
    QVERIFY(slow != draft.lines.end());
    OrderWords words;
    words.lines = {slow->part + " " + (slow->quantity * Decimal(3)).stripped().text() + " at 1.00"};
    const auto next = orderChanged(draft, words, *shop);
    QVERIFY2(next.has_value(), next ? "" : next.error().sentence().c_str());
    for (const OrderLine &line : draft.lines) // The draft says so before it is placed.
        QCOMPARE(next->dueOf(*next->line(line.part)), draft.dueOf(line));
    const auto placed = orderPlaced(*next, {}, *shop, nowMilliseconds());
    QVERIFY(placed.has_value());
    for (const OrderLine &line : draft.lines)
        QCOMPARE(placed->dueOf(*placed->line(line.part)), draft.dueOf(line));
    // A week later all of it comes a week later.
    OrderWords later;
    later.day = daysOn(draft.day, 7);
    const auto afterAWeek = orderPlaced(draft, later, *shop, nowMilliseconds());
    QVERIFY(afterAWeek.has_value());
    for (const OrderLine &line : afterAWeek->lines)
        QCOMPARE(afterAWeek->dueOf(line), daysOn(draft.dueOf(*draft.line(line.part)), 7));
}

void WhatIsOrderedIsNotProposedAgain::aDayThatIsPromisedIsThatOfAll()
{
    OrderWords words;
    words.due = "2027-03-01";
    const auto placed = orderPlaced(ofSeveralDays(), words, *inFile(), nowMilliseconds());
    QVERIFY(placed.has_value());
    QVERIFY(!placed->hasDaysByLine());
    QCOMPARE(placed->dueOf(placed->lines.front()), std::string("2027-03-01"));
}

void WhatIsOrderedIsNotProposedAgain::allThatIsPlacedIsExpectedAndNotProposed()
{
    const auto all = drafts();
    key(Qt::Key_3, Qt::ControlModifier);
    awaitBuying();
    for (const Order &draft : all) {
        buying().orders()->select(said(draft.number));
        QVERIFY(buying().orders()->begin(QStringLiteral("place")));
        // As the form stands: Enter.
        buying().orders()->form()->finish(
            {{QStringLiteral("day"), QString()}, {QStringLiteral("due"), said(draft.due)}});
        awaitBuying();
    }
    pictureOfBuying("placed");
    const auto shop = inFile();
    for (const Order &draft : all) {
        const Order &now = shop->bought.orders.order(draft.number)->now();
        QVERIFY(now.state == OrderState::Placed);
        for (const OrderLine &line : now.lines)
            QCOMPARE(now.dueOf(line), draft.dueOf(*draft.line(line.part)));
    }
    key(Qt::Key_2, Qt::ControlModifier);
    awaitBuying();
    Rows *slips = buying().slips()->slips();
    QVERIFY2(slips->count() == 0, qPrintable(slips->cell(0, QStringLiteral("name")).toString()));
    for (int row = 0; row < buying().slips()->aims()->count(); ++row) {
        const QString says = cell(buying().slips()->aims(), row, "says");
        QVERIFY2(!says.contains(QStringLiteral("parcel,")) &&
                     !says.contains(QStringLiteral("parcels,")),
                 qPrintable(says));
    }
    pictureOfBuying("nothing-more");
}

/// As the find field goes to him: his newest order is in hand.
void WhatIsOrderedIsNotProposedAgain::aSupplierLeadsToWhatIsOrderedFromHim()
{
    QVERIFY(buying().scan(QStringLiteral("nht")));
    QCOMPARE(buying().page(), static_cast<int>(BuyingDesk::Orders));
    const auto shop = inFile();
    const auto *order = shop->bought.orders.order(buying().orders()->selected().toStdString());
    QVERIFY(order != nullptr);
    QCOMPARE(order->now().supplier, std::string("NHT"));
}

void WhatIsOrderedIsNotProposedAgain::aPlacedOrderIsNotCancelledUnasked()
{
    key(Qt::Key_3, Qt::ControlModifier);
    awaitBuying();
    const std::string number = buying().orders()->selected().toStdString();
    const auto state = [this, &number] {
        return inFile()->bought.orders.order(number)->now().state;
    };
    press("deed-cancel");
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("doDeed"));
    QVERIFY(state() == OrderState::Placed);
    pictureOfBuying("cancel");
    key(Qt::Key_Return);
    awaitBuying();
    QTRY_VERIFY(item("doDeed") == nullptr);
    QVERIFY(state() == OrderState::Cancelled);
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitBuying();
    QVERIFY(state() == OrderState::Placed);
}

void WhatIsOrderedIsNotProposedAgain::whatIsMadeByHandIsInHand()
{
    const QString before = buying().orders()->selected();
    QVERIFY(buying().orders()->begin(QStringLiteral("new")));
    const auto shop = inFile();
    const auto all = shop->catalogue.suppliers();
    const auto of =
        std::find_if(all.begin(), all.end(), [](const Supplier &one) { return one.id == "QBF"; });
    buying().orders()->form()->finish(
        {{QStringLiteral("supplier"), static_cast<int>(of - all.begin())},
         {QStringLiteral("part"), QStringLiteral("HE-10")},
         {QStringLiteral("quantity"), QStringLiteral("3")},
         {QStringLiteral("price"), QStringLiteral("1.00")}});
    awaitBuying();
    QTRY_VERIFY2(buying().orders()->selected() != before, qPrintable(m_desk->pen()->problem()));
    const auto after = inFile();
    const auto *made = after->bought.orders.order(buying().orders()->selected().toStdString());
    QVERIFY(made != nullptr && made->standing() == OrderStanding::Draft);
    QCOMPARE(made->now().lines.front().part, std::string("HE-10"));
}

void WhatIsOrderedIsNotProposedAgain::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(WhatIsOrderedIsNotProposedAgain)
#include "tst_what_is_ordered_is_not_proposed_again.moc"
