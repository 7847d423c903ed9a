// SPDX-License-Identifier: MIT
//
// Labels from the stock's panel, by keyboard in the real window: what zbar's scanner reads off the
// written PDF is what a hand would type, as often as was asked for.

#include "stock_on_screen.h"

#include <QProcess>
#include <QSignalSpy>

using namespace flarestock;

class LabelsAreWrittenAtTheDesk : public QObject, protected StockOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase()
    {
        open();
        showStock();
    }
    void whatIsNoCountIsSaid();
    void aPartIsLabelledTwice();
    void aLotIsLabelledByItsOwnCode();
    void everyPlaceHasOne();
    void aFileThatCannotBeWrittenIsNamed();
    void nothingIsWarnedAbout();

private:
    void fillIn(const char *count);
    void writeTo(const QString &file);
    [[nodiscard]] QStringList scanned(const QString &file) const;
};

/// The form, filled in and said to be, and its file dialog put away: files are written below.
void LabelsAreWrittenAtTheDesk::fillIn(const char *count)
{
    write("field-count", count);
    QSignalSpy filled(stock().labels(), &LabelForm::filled);
    key(Qt::Key_Return);
    QTRY_COMPARE(filled.count(), 1);
    QObject *dialog = nullptr;
    for (const QQuickItem *one : allSeen(*m_window)) {
        if (dialog == nullptr)
            dialog = one->findChild<QObject *>(QStringLiteral("labelFile"));
    }
    QVERIFY(dialog != nullptr);
    QTRY_VERIFY(dialog->property("visible").toBool());
    key(Qt::Key_Escape); // This test says the file itself.
    QTRY_VERIFY(!dialog->property("visible").toBool());
    QTRY_VERIFY(item("field-count") == nullptr);
}

void LabelsAreWrittenAtTheDesk::writeTo(const QString &file)
{
    stock().labels()->write(QUrl::fromLocalFile(file));
    QTRY_VERIFY_WITH_TIMEOUT(!stock().labels()->isBusy(), 20000);
}

/// What the scanner reads off each page.
QStringList LabelsAreWrittenAtTheDesk::scanned(const QString &file) const
{
    const QString pages = m_folder.filePath(QStringLiteral("page"));
    QProcess::execute(QStringLiteral("pdftoppm"), {QStringLiteral("-r"), QStringLiteral("300"),
                                                   QStringLiteral("-png"), file, pages});
    QDir folder(m_folder.path());
    QStringList codes;
    for (const QString &page :
         folder.entryList({QStringLiteral("page*.png")}, QDir::Files, QDir::Name)) {
        QProcess reader;
        reader.start(QStringLiteral("zbarimg"),
                     {QStringLiteral("-q"), QStringLiteral("--raw"), folder.filePath(page)});
        if (!reader.waitForFinished())
            return {};
        codes.append(QString::fromUtf8(reader.readAllStandardOutput()).trimmed());
        folder.remove(page);
    }
    return codes;
}

void LabelsAreWrittenAtTheDesk::whatIsNoCountIsSaid()
{
    take("AD-8-8");
    press("deed-label");
    QTRY_VERIFY(item("choice-for") != nullptr);
    write("field-count", "0");
    key(Qt::Key_Return);
    QTRY_VERIFY(words("sheetProblem").contains(QStringLiteral("1 to 500")));
    write("field-count", "1");
    write("field-size", "5x5");
    key(Qt::Key_Return);
    QTRY_VERIFY(words("sheetProblem").contains(QStringLiteral("10 to 300 mm")));
    picture("labels");
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("field-count") == nullptr);
}

void LabelsAreWrittenAtTheDesk::aPartIsLabelledTwice()
{
    take("AD-8-8");
    press("deed-label");
    fillIn("2");
    QCOMPARE(stock().labels()->fileName(), QStringLiteral("labels-AD-8-8.pdf"));
    const QString file = m_folder.filePath(QStringLiteral("part.pdf"));
    writeTo(file);
    QCOMPARE(words("lastStep"),
             QStringLiteral("2 labels for the part AD-8-8 written: %1").arg(file));
    QCOMPARE(scanned(file), QStringList({QStringLiteral("AD-8-8"), QStringLiteral("AD-8-8")}));
}

void LabelsAreWrittenAtTheDesk::aLotIsLabelledByItsOwnCode()
{
    take("PT-6");
    const QString pieces = stock().panel()->pieces();
    const QString lot = pieces.section(u'|', 1, 1);
    QVERIFY2(!lot.isEmpty(), qPrintable(pieces));
    press("deed-label");
    QTRY_VERIFY(item("choice-for") != nullptr);
    item("choice-for")->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_Down);
    fillIn("1");
    const QString file = m_folder.filePath(QStringLiteral("lot.pdf"));
    writeTo(file);
    QCOMPARE(scanned(file), QStringList(QStringLiteral("PT-6=") + lot));
}

void LabelsAreWrittenAtTheDesk::everyPlaceHasOne()
{
    take("AD-8-8");
    press("deed-label");
    QTRY_VERIFY(item("choice-for") != nullptr);
    item("choice-for")->forceActiveFocus(Qt::TabFocusReason);
    for (int step = 0; step < 4; ++step)
        key(Qt::Key_Down);
    fillIn("1");
    const QString file = m_folder.filePath(QStringLiteral("places.pdf"));
    writeTo(file);
    QStringList places;
    const auto shop = Workshop::open(m_file.toStdString()).value();
    for (const Place &place : shop->ledger.places()) {
        if (isStock(place.kind))
            places.append(QString::fromStdString(place.id));
    }
    QStringList read = scanned(file);
    places.sort();
    read.sort();
    QCOMPARE(read, places);
}

void LabelsAreWrittenAtTheDesk::aFileThatCannotBeWrittenIsNamed()
{
    writeTo(QStringLiteral("/nowhere/labels.pdf"));
    QTRY_VERIFY(words("lastStep").contains(QStringLiteral("/nowhere/")));
}

void LabelsAreWrittenAtTheDesk::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(LabelsAreWrittenAtTheDesk)
#include "tst_labels_are_written_at_the_desk.moc"
