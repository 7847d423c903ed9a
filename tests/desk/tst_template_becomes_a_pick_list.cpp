// SPDX-License-Identifier: MIT
//
// The shop manager's way before a build, by keyboard in the real window on the demo shop: a
// template is chosen and tried out, its power changed, and the lines become thicker at once;
// another way is picked for a joint; it is planned for a car by a day, reserved, and its pick list,
// build sheet and line map are written to files, which other programs (poppler's) read. All is
// taken back.

#include "stock_on_screen.h"

#include <QProcess>
#include <QSignalSpy>

using namespace flarestock;

class TemplateBecomesAPickList : public QObject, protected StockOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void aTemplateIsChosen();
    void morePowerMakesThickerLines();
    void anotherWayIsPicked();
    void itIsPlannedForACar();
    void itsPiecesAreReserved();
    void itsPapersAreWritten_data();
    void itsPapersAreWritten();
    void aPaperIsNotWrittenOverUnasked();
    void itsDayIsChanged();
    void givingUpSaysWhatStandsInTheWay();
    void allIsTakenBack();
    void nothingIsWarnedAbout();

private:
    void awaitPen() { QTRY_VERIFY_WITH_TIMEOUT(!m_desk->pen()->isBusy(), 20000); }
    [[nodiscard]] BuildDesk &build() const { return *m_desk->build(); }
    [[nodiscard]] QString dashOf(const char *run) const
    {
        const Rows &runs = *build().map()->runs();
        return runs.cell(runs.rowOf(QLatin1String(run)), QStringLiteral("dash")).toString();
    }
    [[nodiscard]] QString read(const QString &file) const
    {
        QProcess reader;
        reader.start(QStringLiteral("pdftotext"),
                     {QStringLiteral("-layout"), file, QStringLiteral("-")});
        return reader.waitForFinished() ? QString::fromUtf8(reader.readAllStandardOutput())
                                        : QString();
    }
    /// The field of a question, by the name that a screen reader is told.
    [[nodiscard]] QQuickItem *fieldOf(const char *question) const
    {
        for (QQuickItem *one : allSeen(*m_window)) {
            QAccessibleInterface *told = QAccessible::queryAccessibleInterface(one);
            if (one->objectName() == QStringLiteral("measure") && told != nullptr &&
                told->text(QAccessible::Name) == QLatin1String(question))
                return one;
        }
        return nullptr;
    }
    QObject *child(const char *name) const
    {
        for (const QQuickItem *one : allSeen(*m_window)) {
            if (QObject *found = one->findChild<QObject *>(QLatin1String(name)))
                return found;
        }
        return nullptr;
    }

    QString m_waySlot;
};

void TemplateBecomesAPickList::initTestCase()
{
    open();
    key(Qt::Key_1, Qt::AltModifier);
    QTRY_VERIFY(item("lineMap") != nullptr);
}

void TemplateBecomesAPickList::aTemplateIsChosen()
{
    key(Qt::Key_B, Qt::ControlModifier);
    QTRY_VERIFY(item("buildList") != nullptr && item("buildList")->hasActiveFocus());
    const int row = m_desk->builds()->rowOf(QStringLiteral("template|injection-frame-rail"));
    QVERIFY(row > 0);
    key(Qt::Key_Home);
    for (int at = item("buildList")->property("currentIndex").toInt(); at < row; ++at)
        key(Qt::Key_Down);
    key(Qt::Key_Return);
    QTRY_VERIFY(item("buildList") == nullptr);
    QVERIFY(build().about().contains(QStringLiteral("tried out")));
    QVERIFY(!m_desk->handing()->isDone());
    press("step-reserve"); // A template takes no stock, and says so.
    QVERIFY(words("lastStep").contains(QStringLiteral("template")));
}

void TemplateBecomesAPickList::morePowerMakesThickerLines()
{
    const QString before = dashOf("supply");
    const QString total = build().total();
    QQuickItem *field = fieldOf("power");
    QVERIFY(field != nullptr);
    field->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_A, Qt::ControlModifier);
    type("900 hp");
    key(Qt::Key_Return);
    QVERIFY2(dashOf("supply") != before, qPrintable(before)); // At once: nothing else was pressed.
    QVERIFY(dashOf("supply").mid(1).toInt() > before.mid(1).toInt());
    QVERIFY(build().total() != total);
    field->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_A, Qt::ControlModifier);
    type("450 hp");
    key(Qt::Key_Return);
    QCOMPARE(dashOf("supply"), before);
}

/// The first joint on the way along the map that can be made otherwise.
void TemplateBecomesAPickList::anotherWayIsPicked()
{
    item("lineMap")->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_Home);
    for (int at = 0; at < 30; ++at) {
        if (build().opened()->spot().startsWith(QStringLiteral("joint|")) &&
            build().opened()->ways()->count() > 2)
            break;
        key(Qt::Key_Right);
    }
    m_waySlot = build().opened()->spot().section(u'|', 1);
    QVERIFY2(build().opened()->ways()->count() > 2, qPrintable(m_waySlot));
    key(Qt::Key_Return);
    for (int at = 0; at < 4 && focusName(*m_window) != QStringLiteral("way"); ++at)
        key(Qt::Key_Tab);
    key(Qt::Key_Tab); // Past the one that holds.
    QCOMPARE(focusName(*m_window), QStringLiteral("way"));
    key(Qt::Key_Return);
    QVERIFY(build().plan().picks.contains(m_waySlot.toStdString()));
    QVERIFY(build().opened()->picked());
}

void TemplateBecomesAPickList::itIsPlannedForACar()
{
    key(Qt::Key_N, Qt::ControlModifier);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("field-title"));
    key(Qt::Key_A, Qt::ControlModifier);
    type("Coupe: winter fuel");
    write("field-by", "2027-03-20");
    QTRY_VERIFY(item("choice-car") != nullptr);
    item("choice-car")->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_Down);
    picture("plan-a-build");
    press("doDeed");
    if (item("whoField") != nullptr) {
        type("Kim");
        key(Qt::Key_Return);
    }
    awaitPen();
    QTRY_COMPARE(build().id(), QStringLiteral("coupe-winter-fuel"));
    QVERIFY(words("lastStep").contains(QStringLiteral("planned")));
    QVERIFY(build().plan().picks.contains(m_waySlot.toStdString())); // What was decided goes along.
    const auto file = Workshop::open(m_file.toStdString()).value();
    const BuildPlan *kept = file->build("coupe-winter-fuel");
    QVERIFY(kept != nullptr);
    QCOMPARE(kept->by, std::string("2027-03-20"));
    QVERIFY(!kept->car.empty());
    QCOMPARE(kept->picks, build().plan().picks);
}

void TemplateBecomesAPickList::itsPiecesAreReserved()
{
    press("step-reserve");
    awaitPen();
    QTRY_VERIFY(m_desk->handing()->picks()->count() > 5);
}

void TemplateBecomesAPickList::itsPapersAreWritten_data()
{
    QTest::addColumn<int>("paper");
    QTest::addColumn<QString>("name");
    QTest::addColumn<QString>("head");
    QTest::newRow("build sheet") << 0 << QStringLiteral("build-sheet-coupe-winter-fuel.pdf")
                                 << QStringLiteral("Build sheet");
    QTest::newRow("pick list") << 1 << QStringLiteral("pick-list-coupe-winter-fuel.pdf")
                               << QStringLiteral("Pick list");
    QTest::newRow("line map") << 2 << QStringLiteral("line-map-coupe-winter-fuel.pdf")
                              << QStringLiteral("Coupe: winter fuel");
}

void TemplateBecomesAPickList::itsPapersAreWritten()
{
    QFETCH(int, paper);
    QFETCH(QString, name);
    QFETCH(QString, head);
    key(Qt::Key_P, Qt::ControlModifier);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("choice-paper"));
    for (int at = 0; at < paper; ++at)
        key(Qt::Key_Down);
    if (paper == 0)
        picture("papers");
    QSignalSpy filled(m_desk->papers(), &BuildPapers::filled);
    press("doDeed");
    QTRY_COMPARE(filled.count(), 1);
    QCOMPARE(m_desk->papers()->fileName(), name);
    QObject *dialog = child("buildPaperFile");
    QVERIFY(dialog != nullptr);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("fileName"));
    QVERIFY(dialog->setProperty("folder", QUrl::fromLocalFile(m_folder.path())));
    const QString file = m_folder.filePath(name);
    key(Qt::Key_Return);
    QTRY_VERIFY(m_desk->papers()->isBusy() || QFile::exists(file));
    QTRY_VERIFY_WITH_TIMEOUT(!m_desk->papers()->isBusy(), 20000);
    QVERIFY2(words("lastStep").contains(name), qPrintable(words("lastStep")));
    const QString looked = QStringLiteral(FLARESTOCK_BINARY_DIR "/pictures/") + name;
    QFile::remove(looked); // Beside the pictures, for whoever wants to look.
    QVERIFY(QFile::copy(file, looked));
    const QString text = read(file);
    QVERIFY2(text.contains(head), qPrintable(text));
    QStringList wanted;
    if (paper == 1) {
        const Rows &picks = *m_desk->handing()->picks();
        for (int row = 0; row < picks.count(); ++row)
            wanted.append(picks.cell(row, QStringLiteral("part")).toString());
    } else {
        for (const PlacedStation &station : build().worked().expansion->stations)
            if (paper == 2 && station.part != nullptr)
                wanted.append(QString::fromStdString(station.part->number));
        for (const PlacedRun &run : build().worked().expansion->runs)
            if (paper == 0 && run.line != nullptr)
                wanted.append(QString::fromStdString(run.line->number));
    }
    QVERIFY(wanted.count() > 3);
    for (const QString &one : wanted)
        QVERIFY2(text.contains(one), qPrintable(one));
}

void TemplateBecomesAPickList::aPaperIsNotWrittenOverUnasked()
{
    const QString file = m_folder.filePath(QStringLiteral("build-sheet-coupe-winter-fuel.pdf"));
    const QByteArray mine("somebody's notes");
    QFile notes(file);
    QVERIFY(notes.open(QIODevice::WriteOnly | QIODevice::Truncate));
    notes.write(mine);
    notes.close();
    const auto bytes = [&file] {
        QFile now(file);
        return now.open(QIODevice::ReadOnly) ? now.readAll() : QByteArray();
    };
    key(Qt::Key_P, Qt::ControlModifier);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("choice-paper"));
    press("doDeed");
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("fileName"));
    key(Qt::Key_Return);
    QTRY_VERIFY(item("fileIsThere") != nullptr);
    QCOMPARE(bytes(), mine);
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("fileName") == nullptr);
    QCOMPARE(bytes(), mine);
    key(Qt::Key_P, Qt::ControlModifier);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("choice-paper"));
    press("doDeed");
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("fileName"));
    key(Qt::Key_Return);
    QTRY_VERIFY(item("fileIsThere") != nullptr);
    key(Qt::Key_Return);
    QTRY_VERIFY(bytes().startsWith("%PDF"));
}

void TemplateBecomesAPickList::itsDayIsChanged()
{
    key(Qt::Key_B, Qt::ControlModifier);
    QTRY_VERIFY(item("build-change") != nullptr);
    press("build-change");
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("field-title"));
    item("field-by")->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_A, Qt::ControlModifier);
    type("2027-13-45"); // No such day.
    press("doDeed");
    QTRY_VERIFY(words("sheetProblem").contains(QStringLiteral("2027-13-45")));
    item("field-by")->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_A, Qt::ControlModifier);
    type("2027-04-03");
    press("doDeed");
    awaitPen();
    QTRY_COMPARE(build().plan().by, std::string("2027-04-03"));
    QCOMPARE(build().id(), QStringLiteral("coupe-winter-fuel"));
}

void TemplateBecomesAPickList::givingUpSaysWhatStandsInTheWay()
{
    key(Qt::Key_B, Qt::ControlModifier);
    QTRY_VERIFY(item("build-give-up") != nullptr);
    press("build-give-up");
    QTRY_VERIFY(words("lastStep").contains(QStringLiteral("has pieces")));
}

void TemplateBecomesAPickList::allIsTakenBack()
{
    for (int at = 0; at < 3; ++at) { // The day, the promise, the plan.
        QTRY_VERIFY(m_desk->canTakeBack());
        key(Qt::Key_Z, Qt::ControlModifier);
        awaitPen();
    }
    const auto file = Workshop::open(m_file.toStdString()).value();
    QVERIFY(file->build("coupe-winter-fuel") == nullptr);
    QTRY_VERIFY(build().id() != QStringLiteral("coupe-winter-fuel"));
    QVERIFY(build().isOpen());
}

void TemplateBecomesAPickList::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(TemplateBecomesAPickList)
#include "tst_template_becomes_a_pick_list.moc"
