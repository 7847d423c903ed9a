// SPDX-License-Identifier: MIT
//
// How much was on hand over the last year: summed up by hand for a few movements, and as picture
// and sentence in the stock's panel.

#include "app/desk/stock/overtime/on_hand.h"
#include "app/stockroom/byhand/coming_in.h"
#include "app/stockroom/byhand/moving.h"
#include "app/workshop/clock.h"
#include "stock_on_screen.h"

using namespace flarestock;

namespace {

constexpr std::int64_t OneDay = 24LL * 60 * 60 * 1000;
constexpr std::int64_t Now = 20'000 * OneDay + OneDay / 2; // Noon of some day.

Movement moved(int daysAgo, std::int64_t quantity, const char *from, const char *to)
{
    Movement one;
    one.at = Now - daysAgo * OneDay;
    one.quantity = quantity;
    one.from = from;
    one.to = to;
    return one;
}

bool isShelf(const std::string &id)
{
    return id.size() == 2; // "A1", "B2"
}

} // namespace

class StockOverTimeIsTold : public QObject, protected StockOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void aYearIsSummedUp();
    void theOrderOfTheJournalDoesNotMatter();
    void aDayAloneIsNoPicture();
    void thePanelShowsAndSaysIt();
    void nothingIsWarnedAbout();

private:
    void writeLastYear() const;
};

void StockOverTimeIsTold::aYearIsSummedUp()
{
    const OnHand hand = onHandOver({moved(400, 10, "supplier", "A1"), moved(200, 4, "A1", "used"),
                                    moved(100, 3, "A1", "B2"), moved(50, 5, "supplier", "A1"),
                                    moved(50, 1, "B2", "car")},
                                   isShelf, Now);
    QCOMPARE(hand.before, 10);
    QCOMPARE(hand.from, Now - 365 * OneDay);
    QVERIFY(hand.days == (std::vector<OnHandDay>{{Now - 200 * OneDay, 6, false, true},
                                                 {Now - 50 * OneDay, 10, true, true}}));
    QCOMPARE(hand.least, 6);
    QCOMPARE(hand.most, 10);
    QCOMPARE(hand.now, 10);
    QCOMPARE(hand.came, 5);
    QCOMPARE(hand.went, 5);
}

/// A copy that was brought has entries of before behind those of after.
void StockOverTimeIsTold::theOrderOfTheJournalDoesNotMatter()
{
    const std::vector<Movement> inTime{moved(90, 8, "supplier", "A1"), moved(60, 3, "A1", "used"),
                                       moved(30, 2, "supplier", "B2")};
    const OnHand one = onHandOver(inTime, isShelf, Now);
    const OnHand other = onHandOver({inTime[2], inTime[0], inTime[1]}, isShelf, Now);
    QVERIFY(one.days == other.days);
    QCOMPARE(other.least, 5);
    QCOMPARE(other.most, 8);
    QCOMPARE(other.from, Now - 90 * OneDay); // It begins with the first.
}

void StockOverTimeIsTold::aDayAloneIsNoPicture()
{
    QVERIFY(!onHandOver({}, isShelf, Now).isThere());
    QVERIFY(!onHandOver({moved(0, 8, "supplier", "A1")}, isShelf, Now).isThere());
    QVERIFY(onHandOver({moved(3, 8, "supplier", "A1")}, isShelf, Now).isThere());
}

/// 20 came 200 days ago, 6 went 120 days ago; the demo shop's own came today.
void StockOverTimeIsTold::writeLastYear() const
{
    auto file = ShopFile::open(m_file.toStdString(), OpenMode::ReadWrite).value();
    const auto shop = Workshop::open(m_file.toStdString()).value();
    const auto came = cameIn({"AD-8-8", "20", "supplier-TCF", "A3", "100.00", {}, {}, {}, {}},
                             *shop, {"Kim", {}, nowMilliseconds() - 200 * OneDay, {}});
    QVERIFY(came.has_value() && file.append(*came).has_value());
    MoveWords words;
    words.part = "AD-8-8";
    words.quantity = "6";
    words.from = "A3";
    words.to = placeOfKind(PlaceKind::UsedUp, shop->ledger).value()->id;
    const By by{"Kim", {}, nowMilliseconds() - 120 * OneDay, {}};
    const auto went =
        flarestock::moved(words, *Workshop::open(m_file.toStdString()).value(), by.at);
    QVERIFY(went.has_value() && file.append(numbered({*went}, by)).has_value());
}

void StockOverTimeIsTold::thePanelShowsAndSaysIt()
{
    open();
    const std::int64_t before = lies("AD-8-8", "A3") + lies("AD-8-8", "trailer-2");
    writeLastYear();
    QVERIFY(m_desk->openShopFile(m_file));
    showStock();
    take("AD-8-8");
    QTRY_VERIFY(stock().panel()->time()->isThere());
    const QString says = words("overTimeSays");
    QVERIFY2(says.contains(QStringLiteral("Between 14 and 20 since")), qPrintable(says));
    QVERIFY2(says.contains(QStringLiteral("; %1 now.").arg(14 + before)), qPrintable(says));
    QVERIFY2(says.contains(QStringLiteral("%1 came, 6 went.").arg(20 + before)), qPrintable(says));
    const QQuickItem *drawing = item("overTime");
    QVERIFY(drawing != nullptr);
    QAccessibleInterface *node = QAccessible::queryAccessibleInterface(
        const_cast<QQuickItem *>(drawing)); // NOLINT(cppcoreguidelines-pro-type-const-cast)
    QCOMPARE(node->text(QAccessible::Name), says);
    key(Qt::Key_Return);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("partPanel"));
    item("partPanel")->setProperty("contentY", 330);
    picture("over-time");
    m_look->setDark(true);
    picture("over-time-dark-small", QSize(1024, 640));
    m_look->setDark(false);
    take("AD-6-6"); // Nothing but today is known of it.
    QTRY_VERIFY(item("overTime") == nullptr);
}

void StockOverTimeIsTold::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(StockOverTimeIsTold)
#include "tst_stock_over_time_is_told.moc"
