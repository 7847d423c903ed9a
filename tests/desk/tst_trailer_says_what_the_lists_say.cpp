// SPDX-License-Identifier: MIT
//
// What the trailer's screen says is what the commands' lists say, of drawers, loads and spares; and
// where a copy and the shop cannot both be right, its questions are answered by name.

#include "app/desk/trailer/carry/carry_rows.h"
#include "app/desk/trailer/drawers/drawer_rows.h"
#include "app/garage/garage.h"
#include "app/workshop/made_up.h"
#include "trailer_on_screen.h"

#include <QAbstractItemModelTester>
#include <QRegularExpression>

using namespace flarestock;

class TrailerSays : public QObject, protected TrailerOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void linesOfTheLoadListAreThoseOfTheCommand();
    void linesToTakeOutAreThoseOfTheCommand();
    void whatHasNoBinWantsOne();
    void asManyAreCarriedAsTheCommandSays_data();
    void asManyAreCarriedAsTheCommandSays();
    void aKitIsTheCommandsKit();
    void certaintyIsRefusedInWords();
    void aDisagreementIsDecidedByName();
    void releasingAndEndingAreSaid();

private:
    [[nodiscard]] LoadAsked onEventDay() const
    {
        return {{}, {}, m_shop->season.from(today()).front()->lastDay};
    }
    [[nodiscard]] static std::string today() { return dayOf(nowMilliseconds()); }
    [[nodiscard]] SpareBook bookOf() const
    {
        const auto file = ShopFile::open(m_file.toStdString(), OpenMode::ReadOnly).value();
        auto book = SpareBook::of(file).value();
        book.lives = Garage::of(*m_shop, file).value().lives;
        return book;
    }
    [[nodiscard]] QString cell(const Rows *rows, int row, const char *name) const
    {
        return rows->cell(row, QString::fromLatin1(name)).toString();
    }

    std::shared_ptr<const Workshop> m_shop;
    std::vector<std::unique_ptr<QAbstractItemModelTester>> m_testers;
};

void TrailerSays::initTestCase()
{
    openTrailer();
    for (Rows *rows : {trailer().drawers(), trailer().inDrawer(), trailer().load()->rows(),
                       trailer().unload()->rows(), carry().rows(), carry().sum(), carry().bars(),
                       copies().trips(), copies().came(), copies().questions()})
        m_testers.push_back(std::make_unique<QAbstractItemModelTester>(
            rows, QAbstractItemModelTester::FailureReportingMode::QtTest));
    m_shop = Workshop::open(m_file.toStdString()).value();
    QCOMPARE(trailer().load()->rows()->count() > 0, true);
}

void TrailerSays::linesOfTheLoadListAreThoseOfTheCommand()
{
    int row = 0;
    const Rows *shown = trailer().load()->rows();
    for (const LoadLine &line : loadLines(*m_shop, onEventDay())) {
        for (const LoadTake &take : line.bring) {
            QCOMPARE(cell(shown, row, "part").toStdString(), line.part->number);
            QCOMPARE(cell(shown, row, "place").toStdString(), take.from.place);
            QCOMPARE(cell(shown, row, "take"), QString::number(take.quantity));
            ++row;
        }
        if (line.toBuy > 0) {
            QVERIFY(shown->cell(row, QStringLiteral("isToBuy")).toBool());
            QCOMPARE(cell(shown, row, "take"), QString::number(line.toBuy));
            ++row;
        }
    }
    QVERIFY(row >= 2);
    QCOMPARE(shown->count(), row);
}

void TrailerSays::linesToTakeOutAreThoseOfTheCommand()
{
    const auto lines = unloadLines(*m_shop, onEventDay());
    const Rows *shown = trailer().unload()->rows();
    QVERIFY(lines.size() > 3);
    QCOMPARE(shown->count(), static_cast<int>(lines.size()));
    for (std::size_t at = 0; at < lines.size(); ++at) {
        const int row = static_cast<int>(at);
        QCOMPARE(cell(shown, row, "part").toStdString(), lines[at].part->number);
        QCOMPARE(cell(shown, row, "place").toStdString(), lines[at].home);
        QCOMPARE(cell(shown, row, "note"), saidMisplaced(lines[at].why));
    }
}

void TrailerSays::whatHasNoBinWantsOne()
{
    LoadList &list = *trailer().unload();
    list.tickAll();
    QCOMPARE(list.tickedCount(), list.rows()->count());
    const auto lines = unloadLines(*m_shop, onEventDay());
    const bool isHomeless = std::any_of(lines.begin(), lines.end(),
                                        [](const UnloadLine &line) { return line.home.empty(); });
    QCOMPARE(list.wantsHome(), isHomeless);
    list.finish(isHomeless ? 0 : -1);
    awaitShown();
    QVERIFY2(m_desk->pen()->problem().isEmpty(), qPrintable(m_desk->pen()->problem()));
    QTRY_COMPARE(list.rows()->count(), 0);
    m_desk->takeBack(); // All of it was one action.
    awaitShown();
    QTRY_COMPARE(list.rows()->count(), static_cast<int>(lines.size()));
    m_shop = Workshop::open(m_file.toStdString()).value();
}

void TrailerSays::asManyAreCarriedAsTheCommandSays_data()
{
    QTest::addColumn<int>("occasion");
    QTest::addColumn<QString>("certainty");
    QTest::newRow("until delivery, 95 %") << 0 << QStringLiteral("95 %");
    QTest::newRow("the next three events, 99 %") << 3 << QStringLiteral("99%");
    QTest::newRow("the next event, 0.8") << 1 << QStringLiteral("0.8");
}

void TrailerSays::asManyAreCarriedAsTheCommandSays()
{
    QFETCH(int, occasion);
    QFETCH(QString, certainty);
    carry().setLooking(true);
    carry().carryFor(occasion);
    carry().beCertain(certainty);
    QTRY_VERIFY_WITH_TIMEOUT(!carry().isLoading() && carry().rows()->count() == 7, 20000);
    const SpareBook book = bookOf();
    CarryWanted wanted;
    wanted.today = today();
    wanted.certainty = carry().certain();
    const auto coming = m_shop->season.from(today());
    wanted.events.assign(coming.begin(), coming.begin() + occasion);
    for (const PartSpending &spending : book.spendings) {
        const auto line = carryOf(*m_shop->part(spending.part), *m_shop, book, wanted).value().line;
        const int row = carry().rows()->rowOf(QString::fromStdString(spending.part));
        QCOMPARE(cell(carry().rows(), row, "carry"), QString::number(line.carry));
        if (line.covered)
            QCOMPARE(cell(carry().rows(), row, "covered"), saidPercent(*line.covered));
        carry().select(QString::fromStdString(spending.part));
        // Nobody reads a figure of twelve decimals.
        static const QRegularExpression tooLong(QStringLiteral("[1-9]\\d*[.,]\\d{5,}"));
        for (int at = 0; at < carry().sum()->count(); ++at)
            QVERIFY2(!cell(carry().sum(), at, "detail").contains(tooLong),
                     qPrintable(cell(carry().sum(), at, "detail")));
        QCOMPARE(carry().bars()->count() > 0, line.demand.has_value());
        for (int bar = 0; bar < carry().bars()->count(); ++bar) {
            const auto pieces = cell(carry().bars(), bar, "pieces").toLongLong();
            QCOMPARE(carry().bars()->cell(bar, QStringLiteral("chance")).toDouble(),
                     line.demand->covered(pieces / line.perUse));
            QCOMPARE(carry().bars()->cell(bar, QStringLiteral("isCarried")).toBool(),
                     pieces == line.carry);
        }
    }
}

void TrailerSays::aKitIsTheCommandsKit()
{
    carry().carryFor(2);
    carry().beCertain(QStringLiteral("90 %"));
    carry().setTogether(true);
    QTRY_VERIFY_WITH_TIMEOUT(!carry().isLoading() && !carry().kit().isEmpty(), 30000);
    const SpareBook book = bookOf();
    CarryWanted wanted;
    wanted.today = today();
    wanted.certainty = 0.9;
    const auto coming = m_shop->season.from(today());
    wanted.events.assign(coming.begin(), coming.begin() + 2);
    std::vector<PartCarry> carries;
    for (const PartSpending &spending : book.spendings)
        carries.push_back(carryOf(*m_shop->part(spending.part), *m_shop, book, wanted).value());
    const auto kit = carriedKit(carries, *m_shop, 0.9).value();
    for (const PartSpending &spending : book.spendings)
        QCOMPARE(cell(carry().rows(), carry().rows()->rowOf(QString::fromStdString(spending.part)),
                      "carry"),
                 QString::number(*kit.carried(spending.part)));
    QVERIFY2(carry().kit().contains(saidPercent(kit.plan.best.covered)), qPrintable(carry().kit()));
    static const QRegularExpression inCents(QStringLiteral("\\d[.]\\d\\d USD"));
    QVERIFY2(carry().kit().contains(inCents), qPrintable(carry().kit()));
    carry().setTogether(false);
}

void TrailerSays::certaintyIsRefusedInWords()
{
    carry().beCertain(QStringLiteral("100 %"));
    QVERIFY(!carry().certaintyProblem().isEmpty());
    QVERIFY2(!carry().certaintyProblem().contains(QStringLiteral("--")),
             qPrintable(carry().certaintyProblem()));
    QCOMPARE(carry().certain(), 0.9);        // As it was before.
    carry().beCertain(QStringLiteral("95")); // Nobody means 95 times sure.
    QVERIFY2(carry().certaintyProblem().isEmpty(), qPrintable(carry().certaintyProblem()));
    QCOMPARE(carry().certain(), 0.95);
}

/// The copy takes all four of A3's, of which the shop has taken one: where that came from is to be
/// said, and only where there is one is offered.
void TrailerSays::aDisagreementIsDecidedByName()
{
    const QString copy = m_folder.filePath(QStringLiteral("quarry.flarestock"));
    copies().take({{QStringLiteral("file"), copy},
                   {QStringLiteral("with"), QStringLiteral("Kim")},
                   {QStringLiteral("places"), QStringList{QStringLiteral("trailer-1")}}});
    awaitShown();
    QTRY_COMPARE_WITH_TIMEOUT(copies().awayCount(), 1, 20000);
    QVERIFY(!copies().places().contains(QStringLiteral("trailer-1")));
    moveIn(copy, {"AD-8-8", "4", "A3", "car-1", "", "", "", ""});
    moveIn(m_file, {"AD-8-8", "1", "A3", "car-2", "", "", "", ""});
    copies().look(copy);
    awaitShown();
    QVERIFY2(copies().hasLooked(), qPrintable(copies().problem()));
    QCOMPARE(copies().openCount(), 1);
    copies().bring(false);
    QVERIFY(copies().problem().contains(QStringLiteral("One question is open")));
    QCOMPARE(all("AD-8-8", "car-1"), 0);
    const auto asked = [this](const char *name) {
        return copies().questions()->cell(0, QString::fromLatin1(name));
    };
    QVERIFY2(asked("what").toString().contains(QStringLiteral("taken 4, there 3")),
             qPrintable(asked("what").toString()));
    const QStringList choices = asked("choices").toStringList();
    QCOMPARE(choices.size(), 2);
    QVERIFY2(choices.at(1).contains(QStringLiteral("trailer-2 (there are: 1)")),
             qPrintable(choices.at(1)));
    copies().choose(0, 1);
    QCOMPARE(copies().openCount(), 0); // It says its place, and wants no more words.
    QVERIFY(!asked("wantsMore").toBool());
    copies().bring(false);
    awaitShown();
    QVERIFY2(copies().problem().isEmpty(), qPrintable(copies().problem()));
    QTRY_COMPARE_WITH_TIMEOUT(copies().awayCount(), 0, 20000);
    QCOMPARE(all("AD-8-8", "car-1"), 4);
    QCOMPARE(all("AD-8-8", "car-2"), 1);
    QCOMPARE(all("AD-8-8", "trailer-2"), 0);
    QVERIFY(ShopFile::verify(m_file.toStdString()).value().whole);
}

void TrailerSays::releasingAndEndingAreSaid()
{
    const QString copy = m_folder.filePath(QStringLiteral("oxlow.flarestock"));
    copies().take({{QStringLiteral("file"), copy}, {QStringLiteral("places"), copies().places()}});
    awaitShown();
    QTRY_COMPARE_WITH_TIMEOUT(copies().awayCount(), 1, 20000);
    copies().take({{QStringLiteral("file"), copy},
                   {QStringLiteral("places"), QStringList{QStringLiteral("A3")}}});
    awaitShown();
    QVERIFY(copies().problem().contains(QStringLiteral("exists already")));
    const QString trip = cell(copies().trips(), 0, "key");
    copies().release(trip, QStringLiteral("trailer-2"));
    awaitShown();
    QTRY_VERIFY(copies().places().contains(QStringLiteral("trailer-2")));
    copies().end(trip);
    awaitShown();
    QTRY_COMPARE_WITH_TIMEOUT(copies().awayCount(), 0, 20000);
    QTRY_VERIFY(cell(copies().trips(), 0, "stands").startsWith(QStringLiteral("ended")));
}

QTEST_MAIN(TrailerSays)
#include "tst_trailer_says_what_the_lists_say.moc"
