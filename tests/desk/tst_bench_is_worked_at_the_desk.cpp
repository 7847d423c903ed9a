// SPDX-License-Identifier: MIT
//
// At the bench, by keyboard in the real window on the demo shop: lengths are cut by a plan that is
// seen before, a hose is made up, a box is opened; each is one step that is taken back, and no
// value is lost on the way. The lengths are reckoned by hand, in sixteenths of an inch.

#include "app/workshop/worked_build.h"
#include "stock_on_screen.h"

using namespace flarestock;

namespace {

constexpr std::int64_t Inch = 203'200; // 25.4 mm in steps of 125 nm.

} // namespace

class BenchIsWorkedAtTheDesk : public QObject, protected StockOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase()
    {
        open();
        showStock();
    }
    void onlyWhatThePartIsForIsOffered();
    void aCutIsSeenBeforeTheSaw();
    void aCutIsWrittenAndTakenBack();
    void whatNothingIsLongEnoughForIsSaid();
    void aBuildsLengthsArePlanned();
    void aHoseIsMadeUp();
    void aBoxIsOpened();
    void nothingIsWarnedAbout();

private:
    /// What lies of a lot, whichever place; smallest units.
    [[nodiscard]] std::int64_t has(const char *part, const char *lot) const;
    [[nodiscard]] std::int64_t valueOfAll() const;
    void choose(const char *field, int steps);
    void awaitOutlook();
    [[nodiscard]] QString cut(int row, const char *cell) const
    {
        return stock().bench()->cuts()->cell(row, QString::fromLatin1(cell)).toString();
    }
};

std::int64_t BenchIsWorkedAtTheDesk::has(const char *part, const char *lot) const
{
    const auto shop = Workshop::open(m_file.toStdString()).value();
    std::int64_t all = 0;
    for (const auto &[key, held] : shop->ledger.balancesOf(part)) {
        const Place *place = shop->ledger.place(key.place);
        if (key.lot == lot && place != nullptr && isStock(place->kind))
            all += held.quantity;
    }
    return all;
}

std::int64_t BenchIsWorkedAtTheDesk::valueOfAll() const
{
    const auto shop = Workshop::open(m_file.toStdString()).value();
    std::int64_t all = 0;
    for (const auto &[key, held] : shop->ledger.balances()) {
        const Place *place = shop->ledger.place(key.place);
        if (place != nullptr && (isStock(place->kind) || place->kind == PlaceKind::Scrap))
            all += held.value;
    }
    return all;
}

void BenchIsWorkedAtTheDesk::choose(const char *field, int steps)
{
    QTRY_VERIFY2(item(field) != nullptr, field);
    item(field)->forceActiveFocus(Qt::TabFocusReason);
    for (int step = 0; step < std::abs(steps); ++step)
        key(steps > 0 ? Qt::Key_Down : Qt::Key_Up);
}

void BenchIsWorkedAtTheDesk::awaitOutlook()
{
    QCoreApplication::processEvents(); // What was typed is heard after the last letter.
    QTRY_VERIFY_WITH_TIMEOUT(!stock().bench()->isReckoning(), 20000);
}

void BenchIsWorkedAtTheDesk::onlyWhatThePartIsForIsOffered()
{
    take("AD-8-8");
    QVERIFY(item("deed-cut") == nullptr && item("deed-open") == nullptr);
    QVERIFY(item("deed-label") != nullptr);
    take("PT-6");
    QVERIFY(item("deed-cut") != nullptr && item("deed-makeUp") != nullptr);
    QVERIFY(item("deed-open") == nullptr);
}

/// 3 ft 4 in gives 30 in: 40 - 30 - 1/16 = 9 15/16. 5 ft gives 26 and 24: 60 - 50 - 2/16 = 9 7/8.
/// 12 ft gives all three: 144 - 80 - 3/16 = 63 13/16, with as much waste and one piece begun.
void BenchIsWorkedAtTheDesk::aCutIsSeenBeforeTheSaw()
{
    take("PT-6");
    press("deed-cut");
    write("field-lengths", "24 in + 30 in + 26 in");
    awaitOutlook();
    QTRY_COMPARE(stock().bench()->cuts()->count(), 2);
    QCOMPARE(cut(0, "name"), QStringLiteral("PT-6-C in SH-4, 3 ft 4 in"));
    QCOMPARE(cut(0, "cuts"), QStringLiteral("2 ft 6 in, 9 15/16 in is left"));
    QCOMPARE(cut(1, "cuts"), QStringLiteral("2 ft 2 in + 2 ft, 9 7/8 in is left"));
    QVERIFY2(words("formOutlook").contains(QStringLiteral("To waste: 3/16 in.")),
             qPrintable(words("formOutlook")));
    picture("cut");
    m_look->setDark(true);
    picture("cut-dark-small", QSize(1024, 640));
    m_look->setDark(false);
    (void)pictureOf(*m_window, QSize(1440, 900));
    choose("choice-plan", 1);
    QTRY_COMPARE(stock().bench()->cuts()->count(), 1);
    QCOMPARE(cut(0, "cuts"),
             QStringLiteral("2 ft 6 in + 2 ft 2 in + 2 ft, 5 ft 3 13/16 in is left"));
}

void BenchIsWorkedAtTheDesk::aCutIsWrittenAndTakenBack()
{
    const std::int64_t value = valueOfAll();
    write("field-to", "SH-1");
    key(Qt::Key_Return);
    awaitWritten();
    QTRY_VERIFY(item("field-lengths") == nullptr);
    QVERIFY2(words("lastStep").startsWith(QStringLiteral("Cut of PT-6: 2 ft 6 in off PT-6-B as ")),
             qPrintable(words("lastStep")));
    QCOMPARE(has("PT-6", "PT-6-B"), 63 * Inch + 13 * Inch / 16);
    QCOMPARE(valueOfAll(), value);
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitWritten();
    QTRY_COMPARE(has("PT-6", "PT-6-B"), 144 * Inch);
}

void BenchIsWorkedAtTheDesk::whatNothingIsLongEnoughForIsSaid()
{
    take("PT-6");
    press("deed-cut");
    write("field-lengths", "99 ft");
    awaitOutlook();
    QTRY_VERIFY2(words("formOutlook").contains(QStringLiteral("Nothing here is long enough")),
                 qPrintable(words("formOutlook")));
    key(Qt::Key_Return);
    awaitWritten();
    QTRY_VERIFY(words("sheetProblem").contains(QStringLiteral("99 ft")));
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("field-lengths") == nullptr);
}

void BenchIsWorkedAtTheDesk::aBuildsLengthsArePlanned()
{
    const auto shop = Workshop::open(m_file.toStdString()).value();
    int at = 0;
    std::int64_t wanted = 0;
    for (const BuildPlan &plan : shop->builds) {
        ++at;
        const auto worked = workBuild(*shop, plan);
        QVERIFY(worked.has_value());
        for (const BillLine &line : worked->expansion.lines) {
            for (const Quantity &one : line.cuts)
                wanted += line.part->number == "PT-6" ? one.smallest().value() : 0;
        }
        if (wanted > 0)
            break;
    }
    QVERIFY(wanted > 0);
    take("PT-6");
    press("deed-cut");
    choose("choice-build", at);
    awaitOutlook();
    QTRY_VERIFY(stock().bench()->cuts()->count() > 0);
    picture("cut-build");
    const std::int64_t before = has("PT-6", "PT-6-A") + has("PT-6", "PT-6-B") +
                                has("PT-6", "PT-6-C") + has("PT-6", "PT-6-T");
    press("doDeed");
    awaitWritten();
    QTRY_VERIFY(item("field-lengths") == nullptr);
    const auto now = Workshop::open(m_file.toStdString()).value();
    const BuildPlan &plan = now->builds[static_cast<std::size_t>(at) - 1];
    QCOMPARE(now->ledger.claim({"PT-6", plan.id}).issued, wanted);
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitWritten();
    QTRY_COMPARE(has("PT-6", "PT-6-A") + has("PT-6", "PT-6-B") + has("PT-6", "PT-6-C") +
                     has("PT-6", "PT-6-T"),
                 before);
}

void BenchIsWorkedAtTheDesk::aHoseIsMadeUp()
{
    const std::int64_t value = valueOfAll();
    take("PT-6");
    press("deed-makeUp");
    write("field-cut", "24 in");
    awaitOutlook();
    QTRY_VERIFY2(words("formOutlook").contains(QStringLiteral("Without a proof test")),
                 qPrintable(words("formOutlook")));
    choose("choice-result", 1);
    write("field-pressure", "2000 psi");
    write("field-medium", "water");
    awaitOutlook();
    QTRY_VERIFY(!words("formOutlook").contains(QStringLiteral("proof test")));
    picture("make-up");
    m_look->setDark(true);
    picture("make-up-dark-small", QSize(1024, 640));
    m_look->setDark(false);
    (void)pictureOf(*m_window, QSize(1440, 900));
    item("field-cut")->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_Return);
    awaitWritten();
    QTRY_VERIFY(item("field-cut") == nullptr);
    QVERIFY2(words("lastStep").startsWith(QStringLiteral("L-1 is made up of PT-6")),
             qPrintable(words("lastStep")));
    QCOMPARE(has("L-1", "L-1"), 1);
    QCOMPARE(valueOfAll(), value);
    key(Qt::Key_F, Qt::ControlModifier);
    key(Qt::Key_Escape);
    QTRY_VERIFY(stock().rows()->rowOf(QStringLiteral("L-1")) >= 0);
    stock().select(QStringLiteral("L-1"));
    QTRY_COMPARE(words("partNumber"), QStringLiteral("L-1"));
    QVERIFY(item("deed-makeUp") == nullptr); // It is a piece now, no hose to cut.
    key(Qt::Key_Return);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("stockLine"));
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitWritten();
    QTRY_COMPARE(has("L-1", "L-1"), 0);
}

void BenchIsWorkedAtTheDesk::aBoxIsOpened()
{
    const std::int64_t value = valueOfAll();
    const std::int64_t clamps = has("CL-T60", "");
    take("EP-460");
    press("deed-open");
    awaitOutlook();
    QTRY_VERIFY2(words("formOutlook").contains(QStringLiteral("2 of CL-T60")),
                 qPrintable(words("formOutlook")));
    picture("open");
    press("doDeed");
    awaitWritten();
    QTRY_VERIFY(item("choice-only") == nullptr);
    QVERIFY2(words("lastStep").contains(QStringLiteral("out of it came")),
             qPrintable(words("lastStep")));
    QCOMPARE(has("CL-T60", ""), clamps + 2);
    QCOMPARE(valueOfAll(), value);
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitWritten();
    QTRY_COMPARE(has("CL-T60", ""), clamps);
}

void BenchIsWorkedAtTheDesk::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(BenchIsWorkedAtTheDesk)
#include "tst_bench_is_worked_at_the_desk.moc"
