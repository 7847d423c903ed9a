// SPDX-License-Identifier: MIT
//
// Where builds stand side by side, the figures of each cell are those of `flarestock short`, as the
// days stand and as they are tried; who gets the last pieces is reckoned once more by hand: stock
// less what the earlier ones need. What is reserved stays. What another seat does to the builds
// meanwhile is said, and nobody's day is written over. With no build, one, or none with a day it
// says what to do first.

#include "app/desk/buying/buying_words.h"
#include "app/desk/words/spoken.h"
#include "app/workshop/clock.h"
#include "app/workshop/made_up.h"
#include "desk_on_demo.h"

#include <QAbstractItemModelTester>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>

using namespace flarestock;

class BuildsStandAbreast : public QObject, protected DeskOnDemo {
    Q_OBJECT
private Q_SLOTS:
    void init();
    void figuresAreThoseOfTheCommand_data();
    void figuresAreThoseOfTheCommand();
    void theLastTwoGoToTheEarlierDay();
    void piecesThatAreTooShortAreSaid();
    void noPieceIsGivenTwice();
    void whatIsReservedStays();
    void anotherOrderOfDaysIsOnlyTried();
    void aDayThatChangedElsewhereIsNotWrittenOver();
    void aBuildThatIsGoneIsSaid();
    void withoutBuildsItSaysWhatToDoFirst_data();
    void withoutBuildsItSaysWhatToDoFirst();

private:
    [[nodiscard]] AbreastDesk &abreast() const { return *m_desk->abreast(); }
    void await()
    {
        QTRY_VERIFY_WITH_TIMEOUT(!m_desk->pen()->isBusy(), 20000);
        QTRY_VERIFY_WITH_TIMEOUT(!abreast().isLoading(), 60000);
    }
    void tryDay(const char *build, const char *day)
    {
        QCOMPARE(abreast().moveTo(QLatin1String(build), QLatin1String(day)), QString());
        await();
    }
    [[nodiscard]] QVariantMap cell(const QString &part, const QString &build) const
    {
        Rows &lines = *abreast().lines();
        const auto cells = lines.cell(lines.rowOf(part), QStringLiteral("cells")).toList();
        return cells.value(abreast().heads()->rowOf(build)).toMap();
    }
    [[nodiscard]] double figure(const char *part, const char *build, const char *name) const
    {
        return cell(QLatin1String(part), QLatin1String(build))
            .value(QLatin1String(name))
            .toDouble();
    }
    [[nodiscard]] QString head(int column, const char *name) const
    {
        return abreast().heads()->cell(column, QLatin1String(name)).toString();
    }
    /// What the command prints.
    [[nodiscard]] QJsonObject told(QStringList words) const
    {
        words = QStringList{QStringLiteral("short"), QStringLiteral("--shop"), m_file,
                            QStringLiteral("--json")} +
                words;
        QProcess command;
        command.start(QStringLiteral(FLARESTOCK_EXECUTABLE), words);
        return command.waitForFinished()
                   ? QJsonDocument::fromJson(command.readAllStandardOutput()).object()
                   : QJsonObject();
    }

    std::vector<std::unique_ptr<QAbstractItemModelTester>> m_testers;
};

void BuildsStandAbreast::init()
{
    m_testers.clear();
    renew();
    m_desk->setWho(QStringLiteral("Kim"));
    for (Rows *rows : {abreast().heads(), abreast().lines()})
        m_testers.push_back(std::make_unique<QAbstractItemModelTester>(
            rows, QAbstractItemModelTester::FailureReportingMode::QtTest));
    abreast().setLooking(true);
    await();
    abreast().setShown(static_cast<int>(AbreastShown::All));
}

void BuildsStandAbreast::figuresAreThoseOfTheCommand_data()
{
    QTest::addColumn<QString>("build");
    QTest::addColumn<QString>("day");
    QTest::newRow("as the days stand") << QString() << QString();
    QTest::newRow("later than others")
        << QStringLiteral("coupe-fuel") << QStringLiteral("2027-01-20");
    QTest::newRow("earlier than all")
        << QStringLiteral("roadster-fuel") << QStringLiteral("2026-12-01");
}

void BuildsStandAbreast::figuresAreThoseOfTheCommand()
{
    QFETCH(QString, build);
    QFETCH(QString, day);
    QStringList words;
    if (!build.isEmpty()) {
        tryDay(qPrintable(build), qPrintable(day));
        words = {QStringLiteral("--move"), QString(build + u'=' + day)};
    }
    const std::string today = dayOf(nowMilliseconds());
    int compared = 0;
    for (const QJsonValue &one : told(words).value(QStringLiteral("lines")).toArray()) {
        const QJsonObject line = one.toObject();
        if (line.value(QStringLiteral("place")).toBool() ||
            !line.value(QStringLiteral("work")).isNull())
            continue;
        const auto amount = [&line](const char *name) {
            return line.value(QLatin1String(name)).toString().toDouble();
        };
        double coming = 0;
        for (const QJsonValue &due : line.value(QStringLiteral("coming")).toArray())
            coming += due.toObject().value(QStringLiteral("quantity")).toString().toDouble();
        const QVariantMap is = cell(line.value(QStringLiteral("part")).toString(),
                                    line.value(QStringLiteral("for")).toString());
        const QString says = is.value(QStringLiteral("says")).toString();
        QVERIFY2(is.contains(QStringLiteral("need")), qPrintable(says));
        QCOMPARE(is.value(QStringLiteral("reserved")).toDouble(), amount("own"));
        QCOMPARE(is.value(QStringLiteral("here")).toDouble(), amount("free"));
        QCOMPARE(is.value(QStringLiteral("lacks")).toDouble(), amount("short"));
        QCOMPARE(is.value(QStringLiteral("coming")).toDouble(), coming);
        // Where the best offer's day is over, that of who brings it in time yet.
        const QString quicker = line.value(QStringLiteral("quickerBy")).toString();
        const QString orderBy =
            quicker.isEmpty() ? line.value(QStringLiteral("orderBy")).toString() : quicker;
        QVERIFY2(quicker.isEmpty() || !says.contains(QStringLiteral("is over")), qPrintable(says));
        QVERIFY2(orderBy.isEmpty() || says.contains(saidDayOf(orderBy.toStdString(), today)),
                 qPrintable(says));
        ++compared;
    }
    QVERIFY(compared > 200);
}

/// Two of these hose ends lie in the shop (stock.csv: one in E3, one in the trailer). The coupe
/// wants two by 12 Dec, the roadster one by 19 Dec, the single-seater one in March.
void BuildsStandAbreast::theLastTwoGoToTheEarlierDay()
{
    const double stock = 2;
    const double coupe = 2;
    const double roadster = 1;
    QCOMPARE(figure("HE-6-90", "coupe-fuel", "here"), std::min(coupe, stock));
    QCOMPARE(figure("HE-6-90", "roadster-fuel", "here"), stock - coupe);
    QCOMPARE(figure("HE-6-90", "roadster-fuel", "lacks"), roadster - (stock - coupe));
    QVERIFY(figure("HE-6-90", "coupe-fuel", "changed") == 0);
    tryDay("coupe-fuel", "2026-12-20"); // A day behind the roadster.
    QCOMPARE(figure("HE-6-90", "roadster-fuel", "here"), roadster);
    QCOMPARE(figure("HE-6-90", "coupe-fuel", "here"), stock - roadster);
    QCOMPARE(figure("HE-6-90", "coupe-fuel", "lacks"), coupe - (stock - roadster));
    QVERIFY(figure("HE-6-90", "coupe-fuel", "changed") == 1);
    QVERIFY(cell(QStringLiteral("HE-6-90"), QStringLiteral("coupe-fuel"))
                .value(QStringLiteral("got"))
                .toString()
                .contains(QStringLiteral("the last")));
    QVERIFY2(abreast().outcome().contains(QStringLiteral("loses")),
             qPrintable(abreast().outcome()));
}

/// Behind the roadster the coupe finds more of a hose than it wants, and no piece long enough.
void BuildsStandAbreast::piecesThatAreTooShortAreSaid()
{
    tryDay("coupe-fuel", "2026-12-20");
    const auto shop = inFile();
    int tooShort = 0;
    for (int row = 0; row < abreast().lines()->count(); ++row) {
        const QString number = abreast().lines()->cell(row, QStringLiteral("part")).toString();
        if (!isLength(shop->part(number.toStdString())->unit))
            continue;
        double left = 0;
        if (const auto stock = shop->shelf.find(number.toStdString()); stock != shop->shelf.end())
            left = QString::fromStdString(stock->second.free.amount.text()).toDouble();
        for (int column = 0; column < abreast().heads()->count(); ++column)
            left -= cell(number, head(column, "key")).value(QStringLiteral("here")).toDouble();
        abreast().setPart(number);
        abreast().setBuild(QStringLiteral("coupe-fuel"));
        const bool isSaid = abreast().why().contains(QStringLiteral("too short"));
        QVERIFY2(!isSaid || (left > 0 && abreast().lacks()), qPrintable(number));
        tooShort += isSaid ? 1 : 0;
    }
    QVERIFY(tooShort > 0);
}

/// Of each part that is used up piece by piece: who comes first has what he needs, the next what is
/// left.
void BuildsStandAbreast::noPieceIsGivenTwice()
{
    const auto shop = inFile();
    int contested = 0;
    for (int row = 0; row < abreast().lines()->count(); ++row) {
        const QString number = abreast().lines()->cell(row, QStringLiteral("part")).toString();
        const Part *part = shop->part(number.toStdString());
        const auto stock = shop->shelf.find(part->number);
        if (part->unit != Unit::Each || part->kind == Kind::Tool ||
            (stock != shop->shelf.end() && stock->second.level))
            continue;
        double left = stock == shop->shelf.end()
                          ? 0
                          : QString::fromStdString(stock->second.free.amount.text()).toDouble();
        int takers = 0;
        for (int column = 0; column < abreast().heads()->count(); ++column) {
            const QVariantMap is = cell(number, head(column, "key"));
            if (!is.contains(QStringLiteral("need")))
                continue;
            const double need = is.value(QStringLiteral("need")).toString().toDouble();
            const double here = is.value(QStringLiteral("here")).toDouble();
            QVERIFY2(here == std::min(need, left), qPrintable(number + head(column, "title")));
            left -= here;
            ++takers;
        }
        contested += takers > 1 ? 1 : 0;
    }
    QVERIFY(contested > 20);
}

void BuildsStandAbreast::whatIsReservedStays()
{
    abreast().setPart(QStringLiteral("HE-6-90"));
    abreast().setBuild(QStringLiteral("single-seater-return"));
    QVERIFY2(abreast().whyNotReserve().isEmpty(), qPrintable(abreast().whyNotReserve()));
    abreast().reserve();
    await();
    QTRY_COMPARE(figure("HE-6-90", "single-seater-return", "reserved"), 1.0);
    QCOMPARE(cell(QStringLiteral("HE-6-90"), QStringLiteral("single-seater-return"))
                 .value(QStringLiteral("got"))
                 .toString(),
             QStringLiteral("1 reserved"));
    QCOMPARE(figure("HE-6-90", "coupe-fuel", "here"), 1.0); // Two less the one that is reserved.
    QVERIFY2(abreast().why().contains(QStringLiteral("stays its own")),
             qPrintable(abreast().why()));
    tryDay("single-seater-return", "2027-09-01");
    QCOMPARE(figure("HE-6-90", "single-seater-return", "reserved"), 1.0);
    QVERIFY(!abreast().whyNotReserve().isEmpty()); // Not while days are tried.
}

void BuildsStandAbreast::anotherOrderOfDaysIsOnlyTried()
{
    QCOMPARE(head(0, "key"), QStringLiteral("coupe-brakes"));
    abreast().move(QStringLiteral("coupe-classic"), -200);
    await();
    QCOMPARE(head(0, "key"), QStringLiteral("coupe-classic"));
    QVERIFY(!head(0, "was").isEmpty());
    QCOMPARE(inFile()->build("coupe-classic")->by, std::string("2027-04-10"));
    abreast().move(QStringLiteral("coupe-classic"), 200);
    await();
    QVERIFY(!abreast().isTrying()); // It is where it was.
    QVERIFY(!abreast().moveTo(QStringLiteral("coupe-oil"), QStringLiteral("soon")).isEmpty());
}

void BuildsStandAbreast::aDayThatChangedElsewhereIsNotWrittenOver()
{
    tryDay("coupe-oil", "2027-01-05");
    QVERIFY(changedElsewhere([](std::vector<BuildPlan> &builds) {
        for (BuildPlan &plan : builds)
            if (plan.id == "coupe-oil")
                plan.by = "2026-12-30";
    }));
    abreast().keep(); // Before this desk has heard of it.
    await();
    QVERIFY2(m_desk->pen()->problem().contains(QStringLiteral("another day")),
             qPrintable(m_desk->pen()->problem()));
    QCOMPARE(inFile()->build("coupe-oil")->by, std::string("2026-12-30"));
    QTRY_VERIFY_WITH_TIMEOUT(abreast().meanwhile().contains(QStringLiteral("oil cooler")), 20000);
    await();
    QVERIFY(abreast().isTrying());
    abreast().keep(); // Knowing of it.
    await();
    QTRY_VERIFY(!abreast().isTrying());
    QCOMPARE(inFile()->build("coupe-oil")->by, std::string("2027-01-05"));
}

void BuildsStandAbreast::aBuildThatIsGoneIsSaid()
{
    tryDay("coupe-oil", "2027-01-05");
    tryDay("coupe-brakes", "2027-01-05");
    QVERIFY(changedElsewhere([](std::vector<BuildPlan> &builds) {
        std::erase_if(builds, [](const BuildPlan &plan) { return plan.id == "coupe-oil"; });
    }));
    QTRY_VERIFY_WITH_TIMEOUT(abreast().meanwhile().contains(QStringLiteral("oil cooler")), 20000);
    await();
    QVERIFY(abreast().isTrying()); // The other one.
    QVERIFY(abreast().heads()->rowOf(QStringLiteral("coupe-oil")) < 0);
}

void BuildsStandAbreast::withoutBuildsItSaysWhatToDoFirst_data()
{
    QTest::addColumn<int>("left");
    QTest::addColumn<QString>("says");
    QTest::newRow("no build") << 0 << QStringLiteral("Ctrl+B");
    QTest::newRow("one build") << 1 << QStringLiteral("Ctrl+N");
    QTest::newRow("none with a day") << 3 << QStringLiteral("Give them days first");
}

void BuildsStandAbreast::withoutBuildsItSaysWhatToDoFirst()
{
    QFETCH(int, left);
    QFETCH(QString, says);
    QVERIFY(changedElsewhere([left](std::vector<BuildPlan> &builds) {
        builds.resize(static_cast<std::size_t>(left));
        for (BuildPlan &plan : builds)
            plan.by.clear();
    }));
    QTRY_COMPARE_WITH_TIMEOUT(abreast().heads()->count(), left, 20000);
    await();
    const QString said = abreast().about() + abreast().nothing();
    QVERIFY2(said.contains(says), qPrintable(said));
    for (int column = 0; column < left; ++column)
        QCOMPARE(head(column, "day"), QStringLiteral("no day said"));
}

QTEST_MAIN(BuildsStandAbreast)
#include "tst_builds_stand_abreast.moc"
