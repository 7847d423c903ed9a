// SPDX-License-Identifier: MIT
//
// A hand at the cars, by keyboard alone, in the real window on the demo shop: a car ran, its
// element is washed and what is due changes, it is replaced out of the stock, all is taken back; a
// paper element is not washed; a lot is followed. All lists hold to the rules of a model meanwhile.

#include "service_on_screen.h"

#include <QAbstractItemModelTester>
#include <QProcess>
#include <QSignalSpy>

using namespace flarestock;

class ServiceByKeyboard : public QObject, protected ServiceOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void altFiveShowsWhatIsDue();
    void figuresAreThoseOfTheCommands();
    void whatIsDueLaterIsSaidApart();
    void aCarRanAtAnEvent();
    void aWashChangesWhatIsDue();
    void aReplacedElementComesOutOfTheStock();
    void whatWasFoundByMistakeIsTakenBack();
    void whatMustNotBeWashedSaysWhy();
    void whatIsTakenOutLeavesItsPlace();
    void aScanLeadsToThePiece();
    void aLotIsFollowedToTheCars();
    void aCardIsWrittenIntoAChosenFile();
    void nothingIsWarnedAbout();

private:
    [[nodiscard]] bool isToBeWashed() const;
    std::vector<std::unique_ptr<QAbstractItemModelTester>> m_testers;
};

void ServiceByKeyboard::initTestCase()
{
    openWithCars();
    for (Rows *rows : {service().tabs(), service().positions(), service().due(), service().lines(),
                       service().form()->deeds(), service().form()->fields(),
                       service().lot()->acts(), service().lot()->came()})
        m_testers.push_back(std::make_unique<QAbstractItemModelTester>(
            rows, QAbstractItemModelTester::FailureReportingMode::QtTest));
}

/// Whether a wash of the element stands among what is due now.
bool ServiceByKeyboard::isToBeWashed() const
{
    const Rows &due = *service().due();
    for (int row = 0; row < due.count(); ++row) {
        if (due.cell(row, QStringLiteral("key")).toString().contains(QLatin1String(Element)) &&
            due.cell(row, QStringLiteral("head")).toString() == QStringLiteral("now"))
            return true;
    }
    return false;
}

void ServiceByKeyboard::altFiveShowsWhatIsDue()
{
    showService();
    QTRY_VERIFY(service().due()->count() > 5);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("dueEntry"));
    const QString first = service().selected();
    key(Qt::Key_Down);
    QVERIFY(service().selected() != first);
    QTRY_COMPARE(words("pieceTitle"), service().pieceTitle());
    key(Qt::Key_Home);
    QCOMPARE(service().selected(), first);
    picture("due");
    key(Qt::Key_Right);
    key(Qt::Key_Right);
    QTRY_VERIFY(item("positionList") != nullptr);
    QCOMPARE(service().tab(), QStringLiteral("car|car-2"));
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("positionLine"));
    picture("car");
}

/// The desk and the commands ask the same garage; here its figures are read anew from the file.
void ServiceByKeyboard::figuresAreThoseOfTheCommands()
{
    const auto shop = Workshop::open(m_file.toStdString()).value();
    const auto file = ShopFile::open(m_file.toStdString(), OpenMode::ReadOnly).value();
    const auto garage = Garage::of(*shop, file).value();
    showCar("car-2");
    service().setRings(true);
    const CarLife &life = garage.life("car-2");
    QVERIFY(life.fitted.size() > 12);
    for (const FittedPiece &piece : life.fitted) {
        const QString key = QString::fromStdString(piece.position);
        QVERIFY2(service().positions()->rowOf(key) >= 0, qPrintable(key));
        QVERIFY(cell(*service().positions(), key, "piece")
                    .startsWith(QString::fromStdString(piece.piece.part)));
        QVERIFY(cell(*service().positions(), key, "use")
                    .startsWith(QString::number(piece.sinceFitted.runs)));
    }
    service().setRings(false);
    const auto due = dueList(garage, {{}, {}, {}, today(), false}).value();
    QCOMPARE(service().due()->count(), static_cast<int>(due.size()));
    // Above the list of a car stands what is over of that car.
    const auto over = std::count_if(due.begin(), due.end(), [](const DueLine &line) {
        return line.car == "car-2" && line.work.standing >= DueStanding::Now;
    });
    QVERIFY(over > 1 &&
            over < std::count_if(
                       due.begin(), due.end(),
                       [](const DueLine &line) { return line.work.standing >= DueStanding::Now; }));
    QCOMPARE(service().overdue(), QStringLiteral("%1 things").arg(over));
    service().setInInches(false); // What is taken is in the person's units.
    QStringList takes;
    for (int row = 0; row < service().due()->count(); ++row)
        takes.append(service().due()->cell(row, QStringLiteral("takes")).toString());
    service().setInInches(true);
    QVERIFY(!takes.filter(QStringLiteral(" mm × ")).isEmpty());
    QVERIFY(takes.filter(QStringLiteral(" in × ")).isEmpty());
    // In flow order: what is nearer to the tank stands above.
    const Rows &rows = *service().positions();
    QVERIFY(rows.rowOf(QStringLiteral("coupe-fuel/cell")) <
            rows.rowOf(QString::fromLatin1(Element)));
    QVERIFY(rows.rowOf(QString::fromLatin1(Element)) <
            rows.rowOf(QStringLiteral("coupe-fuel/pump")));
    QVERIFY(rows.rowOf(QStringLiteral("coupe-fuel/pump")) <
            rows.rowOf(QStringLiteral("coupe-fuel/rail")));
}

/// Above the list as many are due as stand under "now"; what comes before an event is due later.
void ServiceByKeyboard::whatIsDueLaterIsSaidApart()
{
    const Rows &due = *service().due();
    int now = 0;
    for (int row = 0; row < due.count(); ++row)
        now += due.cell(row, QStringLiteral("head")).toString() == QStringLiteral("now") ? 1 : 0;
    QVERIFY(now > 0 && now < due.count());
    QCOMPARE(cell(*service().tabs(), QStringLiteral("due"), "detail"),
             QStringLiteral("%1 due now, %2 later").arg(now).arg(due.count() - now));
}

void ServiceByKeyboard::aCarRanAtAnEvent()
{
    showCar("car-2");
    const auto before = service().book()->garage.life("car-2").use();
    begin('e', "field-runs");
    type("6");
    write("field-hours", "0.5");
    write("field-other", "third test day");
    picture("ran");
    key(Qt::Key_Return);
    awaitRead();
    QTRY_VERIFY(item("field-runs") == nullptr);
    QVERIFY2(words("lastStep").contains(QStringLiteral("ran at third test day")),
             qPrintable(words("lastStep")));
    const auto after = service().book()->garage.life("car-2").use();
    QCOMPARE(after.runs, before.runs + 6);
    QCOMPARE(after.eventCount(), before.eventCount() + 1);
}

void ServiceByKeyboard::aWashChangesWhatIsDue()
{
    showCar("car-2");
    walkTo(Element);
    QVERIFY(isToBeWashed());
    const QString before = standing(Element);
    QVERIFY(before.startsWith(QStringLiteral("over by")));
    begin('w', "field-note");
    type("fibres");
    picture("wash");
    key(Qt::Key_Return);
    awaitRead();
    QTRY_VERIFY(item("field-note") == nullptr);
    QVERIFY2(words("lastStep").contains(QStringLiteral("washed")), qPrintable(words("lastStep")));
    QVERIFY(!isToBeWashed());
    QVERIFY(standing(Element) != before);
    QCOMPARE(cell(*service().positions(), QString::fromLatin1(Element), "washed"),
             QStringLiteral("1 of 10"));
    QCOMPARE(service().selected(), QString::fromLatin1(Element));
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitRead();
    QTRY_COMPARE(standing(Element), before);
    QVERIFY(isToBeWashed());
}

void ServiceByKeyboard::aReplacedElementComesOutOfTheStock()
{
    const std::int64_t before = inStock("EC-100-L");
    QVERIFY(before > 0);
    showCar("car-2");
    walkTo(Element);
    begin('r', "field-note");
    write("field-tag", "T-1");
    picture("replace");
    key(Qt::Key_Return);
    awaitRead();
    QTRY_VERIFY(item("field-note") == nullptr);
    QVERIFY2(words("lastStep").contains(QStringLiteral("replaced")), qPrintable(words("lastStep")));
    QCOMPARE(inStock("EC-100-L"), before - 1);
    QVERIFY(cell(*service().positions(), QString::fromLatin1(Element), "use")
                .startsWith(QStringLiteral("0 runs")));
    // The old one lies there under its tag to be checked; washed at the bench it can go in again.
    walkTo("out|EC-100-L|T-1");
    begin('w', "field-note");
    key(Qt::Key_Return);
    awaitRead();
    QCOMPARE(inStock("EC-100-L"), before);
    QVERIFY(service().positions()->rowOf(QStringLiteral("out|EC-100-L|T-1")) < 0);
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitRead();
    QCOMPARE(inStock("EC-100-L"), before - 1);
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitRead();
    QCOMPARE(inStock("EC-100-L"), before);
    QTRY_VERIFY(words("lastStep").startsWith(QStringLiteral("Taken back: ")));
}

/// A slip: it was not damaged at all. Also once the shop was opened anew, so that Ctrl+Z knows
/// nothing of it.
void ServiceByKeyboard::whatWasFoundByMistakeIsTakenBack()
{
    showCar("car-2");
    walkTo(Element);
    const QString before = standing(Element);
    begin('d', "field-note");
    key(Qt::Key_Return);
    awaitRead();
    QTRY_VERIFY(standing(Element).contains(QStringLiteral("damaged")));
    QVERIFY(item("work-inspect") == nullptr); // No look makes it good again.
    const Rows &due = *service().due();
    for (int row = 0; row < due.count(); ++row) // That it is damaged is said once.
        QVERIFY(due.cell(row, QStringLiteral("why")).toString() != QStringLiteral("damaged"));
    type("i");
    QTRY_VERIFY2(words("lastStep").contains(QStringLiteral("What was done here")),
                 qPrintable(words("lastStep")));
    QVERIFY(m_desk->openShopFile(m_file));
    awaitRead();
    showCar("car-2");
    walkTo(Element);
    QTRY_VERIFY(standing(Element).contains(QStringLiteral("damaged")));
    press("takeBackEvent"); // The newest stands first.
    QTRY_VERIFY(item("formOutlook") != nullptr);
    QTRY_VERIFY2(words("formOutlook").contains(QStringLiteral("damaged, counts no more")),
                 qPrintable(words("formOutlook")));
    QVERIFY2(words("formOutlook").startsWith(QStringLiteral("car 2: ")), // Not its id.
             qPrintable(words("formOutlook")));
    picture("take-back");
    press("doDeed");
    awaitRead();
    QTRY_COMPARE(standing(Element), before);
    QVERIFY(item("work-inspect") != nullptr);
}

/// Glass fibre tears and lets go of what it holds: it is replaced, never washed. Common practice.
void ServiceByKeyboard::whatMustNotBeWashedSaysWhy()
{
    showCar("car-2"); // A tank is never washed, unless the shop has an interval for it.
    walkTo("coupe-fuel/cell");
    QVERIFY(item("work-replace") != nullptr && item("work-wash") == nullptr);
    showCar("car-1");
    begin('f', "field-part");
    type("EG-10-S");
    write("field-position", "fuel/fine element");
    key(Qt::Key_Return);
    awaitRead();
    QTRY_VERIFY(item("field-part") == nullptr);
    walkTo("fuel/fine element");
    QVERIFY(item("work-wash") == nullptr);
    QVERIFY(item("work-replace") != nullptr);
    QVERIFY2(words("noWash").contains(QStringLiteral("never washed")), qPrintable(words("noWash")));
    type("w");
    QTRY_VERIFY(words("lastStep").contains(QStringLiteral("never washed")));
    QVERIFY(item("doDeed") == nullptr);
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitRead();
    QTRY_VERIFY(service().positions()->rowOf(QStringLiteral("fuel/fine element")) < 0);
}

void ServiceByKeyboard::whatIsTakenOutLeavesItsPlace()
{
    showCar("car-2");
    walkTo("coupe-fuel/pump");
    begin('o', "field-oldTo");
    write("field-oldTo", "nowhere");
    key(Qt::Key_Return);
    QTRY_VERIFY(words("sheetProblem").contains(QStringLiteral("nowhere")));
    QVERIFY(!words("sheetProblem").contains(QStringLiteral("flarestock")));
    key(Qt::Key_A, Qt::ControlModifier);
    type("trailer-1");
    key(Qt::Key_Return);
    awaitRead();
    QTRY_VERIFY(item("field-oldTo") == nullptr);
    QCOMPARE(standing("coupe-fuel/pump"), QStringLiteral("nothing is there"));
    QCOMPARE(service().selected(), QStringLiteral("coupe-fuel/pump"));
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitRead();
    QTRY_VERIFY(standing("coupe-fuel/pump") != QStringLiteral("nothing is there"));
}

void ServiceByKeyboard::aScanLeadsToThePiece()
{
    showCar("car-1");
    QVERIFY(service().scan(QStringLiteral("sn 4417")));
    QCOMPARE(service().tab(), QStringLiteral("car|car-2"));
    QCOMPARE(service().selected(), QStringLiteral("coupe-fuel/pump"));
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("positionLine"));
    QVERIFY(service().opened().contains(QStringLiteral("fuel")));
    QVERIFY(item("openedTitle") != nullptr);
}

void ServiceByKeyboard::aLotIsFollowedToTheCars()
{
    key(Qt::Key_Right);
    key(Qt::Key_Right);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("lotList"));
    key(Qt::Key_F, Qt::ControlModifier);
    type("SN 4417");
    key(Qt::Key_Return);
    awaitRead();
    QTRY_VERIFY(service().lot()->acts()->count() > 0);
    QVERIFY(service().lot()->came()->count() > 1);
    for (int row = 0; row < service().lot()->acts()->count(); ++row) {
        const Rows &acts = *service().lot()->acts();
        for (const char *cell : {"todo", "says"}) // A look does not condemn it.
            QVERIFY2(acts.cell(row, QString::fromLatin1(cell))
                         .toString()
                         .startsWith(QStringLiteral("if it is bad: ")),
                     qPrintable(acts.cell(row, QString::fromLatin1(cell)).toString()));
    }
    QTRY_COMPARE(service().inHand().car, std::string("car-2"));
    QCOMPARE(service().inHand().position, std::string("coupe-fuel/pump"));
    picture("lot");
    key(Qt::Key_F, Qt::ControlModifier);
    type("never here");
    key(Qt::Key_Return);
    awaitRead();
    QTRY_VERIFY(words("serviceNothing").contains(QStringLiteral("never here")));
    QVERIFY(!words("serviceNothing").contains(QStringLiteral("flarestock")));
}

/// Another program (poppler's) reads what stands on it.
void ServiceByKeyboard::aCardIsWrittenIntoAChosenFile()
{
    showCar("car-2");
    type("c");
    QTRY_VERIFY(item("choice-event") != nullptr);
    const QString file = m_folder.filePath(QStringLiteral("card.pdf"));
    QSignalSpy filled(service().paper(), &PaperForm::filled);
    press("doDeed");
    QTRY_COMPARE(filled.count(), 1);
    QObject *dialog = nullptr;
    for (const QQuickItem *one : allSeen(*m_window)) {
        if (dialog == nullptr)
            dialog = one->findChild<QObject *>(QStringLiteral("paperFile"));
    }
    QVERIFY(dialog != nullptr);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("fileName"));
    QVERIFY(dialog->setProperty("folder", QUrl::fromLocalFile(m_folder.path())));
    key(Qt::Key_A, Qt::ControlModifier);
    type("card");
    key(Qt::Key_Return);
    QTRY_VERIFY(service().paper()->isBusy() || QFile::exists(file));
    QTRY_VERIFY_WITH_TIMEOUT(!service().paper()->isBusy(), 20000);
    QVERIFY2(words("lastStep").contains(QStringLiteral("written")), qPrintable(words("lastStep")));
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"),
                 {QStringLiteral("-layout"), file, QStringLiteral("-")});
    QVERIFY(reader.waitForFinished());
    const QString text = QString::fromUtf8(reader.readAllStandardOutput());
    for (const char *words : {"Service card", "EC-100-L", "wash", "Where a system is opened"})
        QVERIFY2(text.contains(QLatin1String(words)), words);
    service().paper()->write(QUrl::fromLocalFile(QStringLiteral("/nowhere/card.pdf")));
    QTRY_VERIFY_WITH_TIMEOUT(!service().paper()->isBusy(), 20000);
    QTRY_VERIFY(words("lastStep").contains(QStringLiteral("/nowhere/")));
}

void ServiceByKeyboard::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(ServiceByKeyboard)
#include "tst_service_by_keyboard.moc"
