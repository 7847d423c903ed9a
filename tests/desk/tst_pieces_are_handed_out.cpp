// SPDX-License-Identifier: MIT
//
// From the desk: a build's pieces are reserved, picked, issued, given back, and the build is done;
// each is in the shop file as the commands would have it, and each is taken back.
// The demo shop is invented; what is checked are laws, not its figures.

#include "app/stockroom/deed.h"
#include "desk_on_demo.h"

#include <QSignalSpy>

using namespace flarestock;

class PiecesAreHandedOut : public QObject, protected DeskOnDemo {
    Q_OBJECT
private Q_SLOTS:
    void init();
    void whatIsFreeIsReserved();
    void theFirstDeedAsksWhoIsThere();
    void picksStandInTheOrderOfTheBins();
    void whatIsTickedIsIssuedAndNothingElse();
    void aScanTicksWhatIsInTheHand();
    void whatIsLeftOverIsGivenBack();
    void whatIsGivenBackGoesWhereItCameFrom();
    void aBuildIsDoneWithItsLeakTest();
    void aTestThatFailedLeavesItOpen();
    void brakesAskForASecondName();
    void everyDeedIsTakenBackInTheOrderItWasDone();
    void aTemplateTakesNoStock();
    void aFileThatCanOnlyBeReadIsNotWritten();
    void whatAnotherSeatTookIsSaid();
    void theWindowStaysAwakeMeanwhile();

private:
    [[nodiscard]] QString cell(const Rows *rows, int row, const char *name) const
    {
        return rows->cell(row, QString::fromLatin1(name)).toString();
    }
    HandingOut &handing() { return *m_desk->handing(); }
    /// Waits for what is being written, and says whether it was.
    bool wasWritten();
    [[nodiscard]] QVariantMap test(bool passed, const QString &second = {}) const
    {
        return {{QStringLiteral("medium"), QStringLiteral("air")},
                {QStringLiteral("pressure"), QStringLiteral("60 psi")},
                {QStringLiteral("held"), QStringLiteral("10 min")},
                {QStringLiteral("result"),
                 passed ? QStringLiteral("passed") : QStringLiteral("failed")},
                {QStringLiteral("second"), second}};
    }
};

void PiecesAreHandedOut::init()
{
    renew("coupe-fuel");
    m_desk->setWho(QStringLiteral("Kim"));
}

bool PiecesAreHandedOut::wasWritten()
{
    return QTest::qWaitFor([this] { return !handing().isBusy(); }, 20000) &&
           handing().problem().isEmpty();
}

void PiecesAreHandedOut::whatIsFreeIsReserved()
{
    const QString total = m_desk->build()->total();
    QVERIFY(handing().steps()->cell(0, QStringLiteral("ready")).toBool());
    handing().reserve();
    QVERIFY2(wasWritten(), qPrintable(handing().problem()));
    QVERIFY(m_desk->build()->lastStep().contains(QStringLiteral("lines promised to")));
    const auto workshop = inFile();
    int promised = 0;
    for (const auto &[key, claim] : workshop->ledger.claims()) {
        QCOMPARE(key.build, std::string("coupe-fuel"));
        promised += claim.promised > 0 ? 1 : 0;
    }
    QVERIFY(promised > 5);
    QCOMPARE(handing().picks()->count() >= promised, true);
    QCOMPARE(m_desk->build()->total(), total); // A promise costs nothing.
    QVERIFY(!handing().steps()->cell(0, QStringLiteral("ready")).toBool());
    handing().reserve();
    QVERIFY(handing().problem().contains(QStringLiteral("Nothing to reserve")));
    const auto file = ShopFile::open(m_file.toStdString(), OpenMode::ReadOnly).value();
    const auto records = file.records().value();
    for (const Record &record : records) {
        if (record.kind == RecordKind::Promise) // Others the shop began with.
            QCOMPARE(record.who, std::string("Kim"));
    }
}

void PiecesAreHandedOut::theFirstDeedAsksWhoIsThere()
{
    m_desk->setWho({});
    QSignalSpy asked(m_desk->pen(), &Pen::askedWho);
    handing().reserve();
    QCOMPARE(asked.count(), 1);
    QVERIFY(!handing().isBusy());
    QVERIFY(inFile()->ledger.claims().empty());
    m_desk->setWho(QStringLiteral("Lee"));
    QVERIFY(wasWritten());
    QVERIFY(!inFile()->ledger.claims().empty());

    handing().issue(true);
    QVERIFY(wasWritten());
    m_desk->setWho({});
    handing().openAgain();
    QCOMPARE(asked.count(), 2);
    m_desk->pen()->forgetWaiting(); // The sheet was put away.
    m_desk->setWho(QStringLiteral("Lee"));
    QVERIFY(!handing().isBusy());
}

void PiecesAreHandedOut::picksStandInTheOrderOfTheBins()
{
    handing().reserve();
    QVERIFY(wasWritten());
    const auto workshop = inFile();
    std::ptrdiff_t before = -1;
    for (int row = 0; row < handing().picks()->count(); ++row) {
        const auto places = workshop->ledger.places();
        const auto found = std::find_if(places.begin(), places.end(), [&](const Place &place) {
            return place.id == cell(handing().picks(), row, "place").toStdString();
        });
        QVERIFY(found != places.end());
        QVERIFY(found - places.begin() >= before);
        before = found - places.begin();
    }
    QVERIFY(before > 0);
}

void PiecesAreHandedOut::whatIsTickedIsIssuedAndNothingElse()
{
    handing().reserve();
    QVERIFY(wasWritten());
    handing().issue(false);
    QVERIFY(handing().problem().contains(QStringLiteral("Nothing is ticked")));
    const int all = handing().picks()->count();
    const std::string first = cell(handing().picks(), 0, "part").toStdString();
    handing().tick(0);
    QCOMPARE(handing().tickedCount(), 1);
    QVERIFY(handing().problem().isEmpty());
    handing().issue(false);
    QVERIFY(wasWritten());
    QCOMPARE(handing().picks()->count(), all - 1);
    QCOMPARE(handing().tickedCount(), 0);
    const auto workshop = inFile();
    for (const auto &[key, claim] : workshop->ledger.claims())
        QCOMPARE(claim.issued > 0, key.part == first);
    QVERIFY(m_desk->build()->billHasGot());
}

void PiecesAreHandedOut::aScanTicksWhatIsInTheHand()
{
    handing().reserve();
    QVERIFY(wasWritten());
    const QString part = cell(handing().picks(), 1, "part");
    QVERIFY(handing().scan(part.toLower()));
    QVERIFY(handing().picks()->cell(1, QStringLiteral("ticked")).toBool() ||
            handing().tickedCount() == 1);
    QVERIFY(!handing().scan(QStringLiteral("ZZ-99")));
    QVERIFY(handing().problem().contains(QStringLiteral("ZZ-99")));
    handing().tick(0);
    handing().tick(0);
    QCOMPARE(handing().tickedCount(), 1);
}

void PiecesAreHandedOut::whatIsLeftOverIsGivenBack()
{
    handing().reserve();
    QVERIFY(wasWritten());
    handing().issue(true);
    QVERIFY(wasWritten());
    QVERIFY(handing().inCar()->count() > 5);
    int row = 0;
    while (cell(handing().inCar(), row, "typed") != QStringLiteral("1"))
        ++row;
    const std::string part = cell(handing().inCar(), row, "part").toStdString();
    const std::string to = cell(handing().inCar(), row, "to").toStdString();
    handing().giveBack(row, QStringLiteral("2"), QString::fromStdString(to), {});
    QVERIFY(!wasWritten());
    QVERIFY(handing().problem().contains(QStringLiteral("was issued to")));
    handing().giveBack(row, QStringLiteral("1"), QStringLiteral("nowhere"), {});
    QVERIFY(!wasWritten());
    QVERIFY(handing().problem().contains(QStringLiteral("is no place")));
    handing().giveBack(row, QStringLiteral("1"), QString::fromStdString(to),
                       QStringLiteral("to be checked"));
    QVERIFY2(wasWritten(), qPrintable(handing().problem()));
    const auto workshop = inFile();
    QCOMPARE(workshop->ledger.claim({part, "coupe-fuel"}).issued, 0);
    QCOMPARE(workshop->ledger.balance({part, to, "", PieceCondition::ToBeChecked}).quantity, 1);
}

/// Each place of the pick list stands in the field, and a length in the unit of its line.
void PiecesAreHandedOut::whatIsGivenBackGoesWhereItCameFrom()
{
    handing().reserve();
    QVERIFY(wasWritten());
    const Rows *picks = handing().picks();
    std::map<QString, QString> cameFrom; // The last that was taken of the same.
    for (int row = 0; row < picks->count(); ++row)
        cameFrom[cell(picks, row, "part") + u'|' + cell(picks, row, "lot")] =
            cell(picks, row, "place");
    handing().issue(true);
    QVERIFY(wasWritten());
    const Rows *inCar = handing().inCar();
    QVERIFY(inCar->count() > 5);
    const auto isProposed = [&] {
        for (int row = 0; row < inCar->count(); ++row) {
            const QString key = cell(inCar, row, "part") + u'|' + cell(inCar, row, "lot");
            if (cell(inCar, row, "to") != cameFrom.at(key))
                return false;
        }
        return true;
    };
    QTRY_VERIFY(isProposed());
    int lengths = 0;
    for (int row = 0; row < inCar->count(); ++row) {
        QString quantity = cell(inCar, row, "quantity");
        lengths += quantity.endsWith(QStringLiteral(" mm")) ? 1 : 0;
        if (!quantity.startsWith(u'≈'))
            QCOMPARE(cell(inCar, row, "typed"), quantity.remove(QLocale().groupSeparator()));
    }
    QVERIFY(lengths > 0);
}

void PiecesAreHandedOut::aBuildIsDoneWithItsLeakTest()
{
    handing().finish({});
    QVERIFY(handing().problem().contains(QStringLiteral("no leak test")));
    handing().finish({{QStringLiteral("pressure"), QStringLiteral("60 psi")}});
    QVERIFY(handing().problem().contains(QStringLiteral("for how long")));
    QVariantMap wrong = test(true);
    wrong.insert(QStringLiteral("pressure"), QStringLiteral("60"));
    handing().finish(wrong);
    QVERIFY(!wasWritten());
    QVERIFY(!inFile()->notes.build("coupe-fuel").isDone());

    handing().finish(test(true));
    QVERIFY2(wasWritten(), qPrintable(handing().problem()));
    QVERIFY(handing().isDone());
    const auto workshop = inFile();
    QVERIFY(workshop->notes.build("coupe-fuel").isDone());
    QCOMPARE(workshop->notes.build("coupe-fuel").done->car,
             workshop->build("coupe-fuel")->car); // The as-built stays with the car.
    QVERIFY(handing().newestTest().contains(QStringLiteral("60 psi")));
    handing().openAgain();
    QVERIFY(wasWritten());
    QVERIFY(!inFile()->notes.build("coupe-fuel").isDone());
    handing().finish({}); // With the test that stands.
    QVERIFY(wasWritten());
    QVERIFY(handing().isDone());
}

void PiecesAreHandedOut::aTestThatFailedLeavesItOpen()
{
    handing().finish(test(false));
    QVERIFY(wasWritten());
    QVERIFY(!handing().isDone());
    QCOMPARE(inFile()->notes.build("coupe-fuel").tests.size(), std::size_t{1});
    QVERIFY(!m_desk->canTakeBack()); // What was seen stays.
    QVERIFY(m_desk->build()->lastStep().contains(QStringLiteral("failed")));
}

void PiecesAreHandedOut::brakesAskForASecondName()
{
    const auto workshop = inFile();
    QString brakes;
    for (const BuildPlan &plan : workshop->builds) {
        QVERIFY(m_desk->openBuild(QString::fromStdString(plan.id)));
        if (handing().brakes())
            brakes = QString::fromStdString(plan.id);
    }
    QVERIFY(m_desk->openBuild(brakes));
    handing().finish(test(true));
    QVERIFY(handing().problem().contains(QStringLiteral("second name")));
    handing().finish(test(true, QStringLiteral("Kim"))); // The same person twice.
    QVERIFY(!wasWritten());
    handing().finish(test(true, QStringLiteral("Lee")));
    QVERIFY2(wasWritten(), qPrintable(handing().problem()));
    QVERIFY(handing().isDone());
}

void PiecesAreHandedOut::everyDeedIsTakenBackInTheOrderItWasDone()
{
    const auto before = inFile();
    QVERIFY(m_desk->build()->answer(QStringLiteral("power"), QStringLiteral("610 hp")));
    handing().reserve();
    QVERIFY(wasWritten());
    handing().issue(true);
    QVERIFY(wasWritten());
    QVERIFY(m_desk->build()->answer(QStringLiteral("power"), QStringLiteral("500 hp")));
    m_desk->takeBack();
    QCOMPARE(m_desk->build()->plan().answers.at("power"), std::string("610 hp"));
    QVERIFY(handing().inCar()->count() > 0);
    m_desk->takeBack();
    QVERIFY(wasWritten());
    QVERIFY(m_desk->build()->lastStep().startsWith(QStringLiteral("Taken back: ")));
    QCOMPARE(handing().inCar()->count(), 0);
    QVERIFY(handing().picks()->count() > 0);
    m_desk->takeBack();
    QVERIFY(wasWritten());
    QCOMPARE(handing().picks()->count(), 0);
    m_desk->takeBack();
    QVERIFY(!m_desk->canTakeBack());
    m_desk->keepNow();
    const auto after = inFile();
    QVERIFY(after->ledger.balances() == before->ledger.balances());
    QVERIFY(after->ledger.claims().empty());
    QVERIFY(after->build("coupe-fuel")->answers == before->build("coupe-fuel")->answers);
    const auto proof = ShopFile::verify(m_file.toStdString());
    QVERIFY(proof && proof->whole);
}

void PiecesAreHandedOut::aTemplateTakesNoStock()
{
    QVERIFY(m_desk->openBuild(QStringLiteral("template|injection-frame-rail")));
    for (int row = 0; row < handing().steps()->count(); ++row)
        QVERIFY(!handing().steps()->cell(row, QStringLiteral("ready")).toBool());
    handing().reserve();
    QVERIFY(!handing().isBusy());
    QVERIFY(handing().problem().contains(QStringLiteral("template")));
}

void PiecesAreHandedOut::aFileThatCanOnlyBeReadIsNotWritten()
{
    auto shop = openShopFile(m_file.toStdString()).value();
    shop.readOnly = true; // As it is found where the file or its folder refuses.
    m_desk->show(std::move(shop));
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-fuel")));
    QVERIFY(!handing().steps()->cell(0, QStringLiteral("ready")).toBool());
    QVERIFY(cell(handing().steps(), 0, "detail").contains(QStringLiteral("only be read")));
    handing().reserve();
    QVERIFY(!handing().isBusy());
    QVERIFY(handing().problem().contains(QStringLiteral("only be read")));
    QVERIFY(inFile()->ledger.claims().empty());
}

void PiecesAreHandedOut::whatAnotherSeatTookIsSaid()
{
    handing().reserve();
    QVERIFY(wasWritten());
    const auto pick = handing().picks()->cell(0, QStringLiteral("part")).toString().toStdString();
    {
        auto file = ShopFile::open(m_file.toStdString(), OpenMode::ReadWrite).value();
        const auto workshop = Workshop::read(file).value();
        std::vector<Movement> gone;
        for (const auto &[key, held] : workshop->ledger.balancesOf(pick)) {
            const Place *place = workshop->ledger.place(key.place);
            if (isStock(place->kind))
                gone.push_back(movementOf(key, held.quantity, "scrap", Deed::Scrap));
        }
        Action action = numbered(gone, {"other", "lost", 1, std::nullopt});
        action.promised = Promised::MayGo;
        QVERIFY(file.append(action));
    }
    const auto before = inFile()->ledger.balances();
    handing().issue(true);
    QVERIFY(!wasWritten());
    QVERIFY(!handing().problem().isEmpty());
    QVERIFY(inFile()->ledger.balances() == before); // All of it or nothing.
}

void PiecesAreHandedOut::theWindowStaysAwakeMeanwhile()
{
    handing().reserve();
    QVERIFY(handing().isBusy()); // It came back before the shop was written.
    QVERIFY(!m_desk->canTakeBack());
    handing().reserve(); // A second press does nothing.
    QVERIFY(m_desk->build()->answer(QStringLiteral("power"), QStringLiteral("610 hp")));
    m_desk->keepNow();
    QVERIFY(wasWritten());
    QCOMPARE(m_desk->build()->plan().answers.at("power"), std::string("610 hp"));
    QVERIFY(m_desk->openBuild(QStringLiteral("roadster-fuel")));
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-fuel")));
    QCOMPARE(m_desk->build()->plan().answers.at("power"), std::string("610 hp"));
}

QTEST_MAIN(PiecesAreHandedOut)
#include "tst_pieces_are_handed_out.moc"
