// SPDX-License-Identifier: MIT
//
// Builds by date, by keyboard in the real window on the demo shop: opened, a day moved so that the
// last pieces change hands, seen, kept in one step, taken back; days put back as before; a part
// found; a short cell leads to Buying; what another seat does meanwhile is said. Pictures light and
// dark, large and small.

#include "for_everyone.h"
#include "sheet_pictures.h"
#include "stock_on_screen.h"

#include <QAbstractItemModelTester>

using namespace flarestock;

class BuildsByDateByKeyboard : public QObject, protected StockOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void theShortcutShowsThem();
    void arrowsWalkTheCells();
    void aPartIsFound();
    void theLastPiecesChangeHands();
    void escapeKeepsWhatIsTried();
    void daysAreKeptInOneStep();
    void ctrlZTakesThemBack();
    void aDayIsTyped();
    void anotherSeatIsHeard();
    void itsPiecesAreReserved();
    void whatIsShortLeadsToBuying();
    void tabComesRound();
    void everyControlHasAName();
    void cutsNoWordsShort_data();
    void cutsNoWordsShort();
    void targetsAreBigEnoughForGloves();
    void nothingIsWarnedAbout();

private:
    [[nodiscard]] AbreastDesk &abreast() const { return *m_desk->abreast(); }
    void await()
    {
        QTRY_VERIFY_WITH_TIMEOUT(!m_desk->pen()->isBusy(), 20000);
        QTRY_VERIFY_WITH_TIMEOUT(!abreast().isLoading(), 60000);
    }
    void show()
    {
        key(Qt::Key_D, Qt::ControlModifier);
        QTRY_VERIFY(item("abreastList") != nullptr);
        await();
        QTRY_VERIFY(item("abreastList")->hasActiveFocus());
    }
    [[nodiscard]] std::string dayInFile(const char *build) const
    {
        return Workshop::open(m_file.toStdString()).value()->build(build)->by;
    }
    /// What a screen reader is told of a cell.
    [[nodiscard]] QString cell(const char *part, const char *build) const
    {
        Rows &lines = *abreast().lines();
        const auto cells = lines.cell(lines.rowOf(QLatin1String(part)), QStringLiteral("cells"));
        const int column = abreast().heads()->rowOf(QLatin1String(build));
        return cells.toList().value(column).toMap().value(QStringLiteral("says")).toString();
    }
    void goToBuild(const char *build)
    {
        key(Qt::Key_Home);
        for (int at = abreast().column(); at > 0; --at)
            key(Qt::Key_Left);
        while (abreast().build() != QLatin1String(build) &&
               abreast().column() + 1 < abreast().heads()->count())
            key(Qt::Key_Right);
        QCOMPARE(abreast().build(), QLatin1String(build));
    }
    void pictureOfSheets(const char *name) { pictureOfSheet(*m_window, *m_look, name); }

    std::vector<std::unique_ptr<QAbstractItemModelTester>> m_testers;
};

void BuildsByDateByKeyboard::initTestCase()
{
    open();
    for (Rows *rows : {abreast().heads(), abreast().lines()})
        m_testers.push_back(std::make_unique<QAbstractItemModelTester>(
            rows, QAbstractItemModelTester::FailureReportingMode::QtTest));
    key(Qt::Key_1, Qt::AltModifier);
    QTRY_VERIFY(item("lineMap") != nullptr);
}

void BuildsByDateByKeyboard::theShortcutShowsThem()
{
    QVERIFY(item("buildsByDate") != nullptr);
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-fuel")));
    show();
    QCOMPARE(abreast().build(), QStringLiteral("coupe-fuel")); // As on the desk.
    QVERIFY(item("lineMap") == nullptr);
    QCOMPARE(abreast().heads()->cell(0, QStringLiteral("key")).toString(),
             QStringLiteral("coupe-brakes")); // The earliest of the demo shop.
    QVERIFY(abreast().lines()->count() > 20);
    pictureOfSheets("builds-by-date");
}

void BuildsByDateByKeyboard::arrowsWalkTheCells()
{
    key(Qt::Key_Home);
    const QString part = abreast().part();
    key(Qt::Key_Down);
    QVERIFY(abreast().part() != part);
    key(Qt::Key_Up);
    QCOMPARE(abreast().part(), part);
    for (int at = 0; at < 20; ++at)
        key(Qt::Key_Right);
    QCOMPARE(abreast().column(), abreast().heads()->count() - 1);
    QVERIFY(words("abreastWhich").contains(QStringLiteral("of 11"))); // Some moved out at the left.
    for (int at = 0; at < 20; ++at)
        key(Qt::Key_Left);
    QCOMPARE(abreast().column(), 0);
    QVERIFY2(words("abreastInHand").contains(part), qPrintable(words("abreastInHand")));
}

void BuildsByDateByKeyboard::aPartIsFound()
{
    key(Qt::Key_F, Qt::ControlModifier);
    key(Qt::Key_A, Qt::ControlModifier);
    type("HE-6-90");
    QTRY_COMPARE(abreast().lines()->count(), 1);
    key(Qt::Key_Return);
    QTRY_VERIFY(item("abreastList")->hasActiveFocus());
    QCOMPARE(abreast().part(), QStringLiteral("HE-6-90"));
}

/// Two lie here. The coupe needs both by 12 Dec, so that the roadster has none by 19 Dec.
void BuildsByDateByKeyboard::theLastPiecesChangeHands()
{
    goToBuild("coupe-fuel");
    QVERIFY(cell("HE-6-90", "coupe-fuel").contains(QStringLiteral("2 here, the last")));
    QVERIFY(cell("HE-6-90", "roadster-fuel").contains(QStringLiteral("short 1")));
    key(Qt::Key_Right, Qt::ControlModifier | Qt::ShiftModifier);
    key(Qt::Key_Right, Qt::ControlModifier);
    await();
    QCOMPARE(abreast().typedDay(QStringLiteral("coupe-fuel")), QStringLiteral("2026-12-20"));
    QCOMPARE(abreast().build(), QStringLiteral("coupe-fuel")); // It went past another one.
    const QString coupe = cell("HE-6-90", "coupe-fuel");
    QVERIFY2(coupe.contains(QStringLiteral("short 1")), qPrintable(coupe));
    QVERIFY2(coupe.contains(QStringLiteral("before: 2 here, the last")), qPrintable(coupe));
    const QString roadster = cell("HE-6-90", "roadster-fuel");
    QVERIFY2(roadster.contains(QStringLiteral("needs 1, 1 here")), qPrintable(roadster));
    QVERIFY(words("abreastOutcome").contains(QStringLiteral("loses")));
    QVERIFY(words("abreastOutcome").contains(QStringLiteral("gets")));
    QCOMPARE(dayInFile("coupe-fuel"), std::string("2026-12-12")); // Nothing is written.
    pictureOfSheets("builds-by-date-one-part");
    key(Qt::Key_F, Qt::ControlModifier);
    key(Qt::Key_A, Qt::ControlModifier);
    key(Qt::Key_Backspace);
    key(Qt::Key_Return);
    press("shown-2");
    QCOMPARE(abreast().lines()->count(), 8);
    QVERIFY(abreast().lines()->rowOf(QStringLiteral("EG-10-S")) < 0); // Nothing of it changes.
    pictureOfSheets("builds-by-date-tried");
}

void BuildsByDateByKeyboard::escapeKeepsWhatIsTried()
{
    item("abreastList")->forceActiveFocus();
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("lineMap") != nullptr && item("abreastList") == nullptr);
    show();
    QVERIFY(abreast().isTrying());
}

void BuildsByDateByKeyboard::daysAreKeptInOneStep()
{
    goToBuild("roadster-fuel");
    key(Qt::Key_Left, Qt::ControlModifier);
    await();
    press("keepDays");
    await();
    QTRY_VERIFY(!abreast().isTrying());
    await();
    QCOMPARE(dayInFile("coupe-fuel"), std::string("2026-12-20"));
    QCOMPARE(dayInFile("roadster-fuel"), std::string("2026-12-18"));
    QVERIFY2(words("lastStep").contains(QStringLiteral("2 builds")), qPrintable(words("lastStep")));
    QVERIFY(item("abreastList") != nullptr);
    QVERIFY(cell("HE-6-90", "coupe-fuel").contains(QStringLiteral("short 1")));
}

void BuildsByDateByKeyboard::ctrlZTakesThemBack()
{
    key(Qt::Key_Z, Qt::ControlModifier);
    await();
    QTRY_COMPARE(dayInFile("coupe-fuel"), std::string("2026-12-12"));
    QCOMPARE(dayInFile("roadster-fuel"), std::string("2026-12-19"));
    await();
    QTRY_VERIFY(cell("HE-6-90", "coupe-fuel").contains(QStringLiteral("2 here, the last")));
}

void BuildsByDateByKeyboard::aDayIsTyped()
{
    item("abreastList")->forceActiveFocus();
    goToBuild("coupe-oil");
    item("abreastHeads")->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_Return);
    QTRY_VERIFY(item("dayField") != nullptr && item("dayField")->hasActiveFocus());
    key(Qt::Key_A, Qt::ControlModifier);
    type("2026-13-01"); // No such day.
    key(Qt::Key_Return);
    QTRY_VERIFY(words("sheetProblem").contains(QStringLiteral("2026-13-01")));
    key(Qt::Key_A, Qt::ControlModifier);
    type("2027-01-05");
    pictureOfSheets("builds-by-date-day");
    key(Qt::Key_Return);
    QTRY_VERIFY(item("dayField") == nullptr);
    await();
    QVERIFY(abreast().isTrying());
    press("daysAsBefore");
    await();
    QVERIFY(!abreast().isTrying());
    QVERIFY(item("keepDays") == nullptr);
}

void BuildsByDateByKeyboard::anotherSeatIsHeard()
{
    item("abreastList")->forceActiveFocus();
    goToBuild("coupe-oil");
    key(Qt::Key_Right, Qt::ControlModifier);
    await();
    {
        auto shop = ShopFile::open(m_file.toStdString(), OpenMode::ReadWrite).value();
        auto builds = readBuilds(shop.documents()->at("builds.toml"), "builds.toml").value();
        for (BuildPlan &plan : builds)
            if (plan.id == "roadster-gearbox")
                plan.by = "2026-12-03";
        QVERIFY(shop.putDocument("builds.toml", writeBuilds(builds), "other", 1).has_value());
    }
    QTRY_VERIFY_WITH_TIMEOUT(
        words("abreastMeanwhile").contains(QStringLiteral("Roadster: gearbox")), 20000);
    await();
    QVERIFY(abreast().isTrying()); // What was tried stays.
    QCOMPARE(abreast().heads()->cell(0, QStringLiteral("key")).toString(),
             QStringLiteral("roadster-gearbox"));
    press("daysAsBefore");
    await();
    QVERIFY(item("abreastMeanwhile") == nullptr);
}

/// The roadster takes on purpose what an earlier day would get.
void BuildsByDateByKeyboard::itsPiecesAreReserved()
{
    QVERIFY(abreast().scan(QStringLiteral("HE-6-90")));
    item("abreastList")->forceActiveFocus();
    abreast().setBuild(QStringLiteral("roadster-fuel"));
    press("abreastReserve");
    await();
    QTRY_VERIFY2(cell("HE-6-90", "roadster-fuel").contains(QStringLiteral("1 reserved")),
                 qPrintable(cell("HE-6-90", "roadster-fuel")));
    QVERIFY(words("lastStep").contains(QStringLiteral("1 of HE-6-90 reserved")));
    QVERIFY(cell("HE-6-90", "coupe-fuel").contains(QStringLiteral("short 1")));
    QVERIFY2(words("abreastWhy").contains(QStringLiteral("stays its own")),
             qPrintable(words("abreastWhy")));
    press("abreastReserve"); // All of it is its own already, and it says so.
    QVERIFY(words("lastStep").contains(QStringLiteral("already")));
    key(Qt::Key_Z, Qt::ControlModifier);
    await();
    QTRY_VERIFY(cell("HE-6-90", "roadster-fuel").contains(QStringLiteral("short 1")));
}

void BuildsByDateByKeyboard::whatIsShortLeadsToBuying()
{
    item("abreastList")->forceActiveFocus();
    QVERIFY(abreast().lacks());
    key(Qt::Key_Return);
    QTRY_VERIFY_WITH_TIMEOUT(item("lackingList") != nullptr, 20000);
    QTRY_COMPARE_WITH_TIMEOUT(m_desk->buying()->lacking()->part(), QStringLiteral("HE-6-90"),
                              60000);
    key(Qt::Key_1, Qt::AltModifier);
    QTRY_VERIFY(item("abreastList") != nullptr);
    await();
}

void BuildsByDateByKeyboard::tabComesRound()
{
    const QString missed =
        missedByTab(*m_window, {"shown-0", "shown-1", "leaveAbreast", "abreastHeads", "abreastLine",
                                "abreastReserve", "abreastBuy", "abreastOpen"});
    QVERIFY2(missed.isEmpty(), qPrintable(missed));
}

void BuildsByDateByKeyboard::everyControlHasAName()
{
    QCOMPARE(namelessControls(*m_window, 20), QString());
}

void BuildsByDateByKeyboard::cutsNoWordsShort_data()
{
    addScreenSizes();
}

/// Of a part, a build and a cell the foot says all.
void BuildsByDateByKeyboard::cutsNoWordsShort()
{
    QFETCH(QSize, size);
    WordsSeen seenWords;
    abreast().move(QStringLiteral("coupe-fuel"), 8);
    await();
    (void)pictureOf(*m_window, size);
    seenWords.look(*m_window, {"abreastLine", "abreastBuild"});
    abreast().asBefore();
    await();
    (void)pictureOf(*m_window, size);
    seenWords.look(*m_window, {"abreastLine", "abreastBuild"});
    (void)pictureOf(*m_window, QSize(1440, 900));
    QCOMPARE(seenWords.cut(60), QString());
}

void BuildsByDateByKeyboard::targetsAreBigEnoughForGloves()
{
    const QString small =
        tooSmallForGloves(*m_window, {"dayBefore", "buildDay", "dayAfter", "abreastLine",
                                      "abreastReserve", "abreastBuy", "shown-0", "laterBuilds"});
    QVERIFY2(small.isEmpty(), qPrintable(small));
}

void BuildsByDateByKeyboard::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(BuildsByDateByKeyboard)
#include "tst_builds_by_date_by_keyboard.moc"
