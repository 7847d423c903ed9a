// SPDX-License-Identifier: MIT
//
// A paper goes into the file whose name stands in the field. One that is there already is written
// over only once that was asked, and a name that is none is refused with what to do.

#include "app/desk/papers/file_to_be.h"

#include <QDir>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

using namespace flarestock;

class FilesToBe : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void endAsTheirKindDoes_data();
    void endAsTheirKindDoes();
    void knowWhatIsThere();
    void sayWhatIsWrong_data();
    void sayWhatIsWrong();

private:
    QTemporaryDir m_folder;
};

void FilesToBe::endAsTheirKindDoes_data()
{
    QTest::addColumn<QString>("typed");
    QTest::addColumn<int>("kind");
    QTest::addColumn<QString>("name");
    QTest::newRow("as offered") << "load-list.pdf" << 0 << "load-list.pdf";
    QTest::newRow("another ending") << "load-list.csv" << 2 << "load-list.csv";
    QTest::newRow("in capitals") << "LIST.CSV" << 2 << "LIST.CSV";
    QTest::newRow("without") << "load-list" << 0 << "load-list.pdf";
    QTest::newRow("a day in it") << "list 2026.12.05" << 0 << "list 2026.12.05.pdf";
    QTest::newRow("blanks round it") << "  list.xlsx " << 1 << "list.xlsx";
}

void FilesToBe::endAsTheirKindDoes()
{
    QFETCH(QString, typed);
    QFETCH(int, kind);
    QFETCH(QString, name);
    FileToBe file;
    file.setFolder(QUrl::fromLocalFile(m_folder.path()));
    file.setFilters({QStringLiteral("PDF (*.pdf)"), QStringLiteral("XLSX (*.xlsx)"),
                     QStringLiteral("CSV (*.csv)")});
    QCOMPARE(file.kinds(),
             (QStringList{QStringLiteral("PDF"), QStringLiteral("XLSX"), QStringLiteral("CSV")}));
    file.setName(typed);
    QCOMPARE(file.kind(), kind);
    QCOMPARE(file.url(), QUrl::fromLocalFile(m_folder.filePath(name)));
    file.setKind(1);
    QVERIFY(file.url().fileName().endsWith(QStringLiteral(".xlsx")));
    QVERIFY(!file.url().fileName().contains(QStringLiteral(".pdf")));
}

void FilesToBe::knowWhatIsThere()
{
    FileToBe file;
    file.setFolder(QUrl::fromLocalFile(m_folder.path()));
    file.setFilters({QStringLiteral("Labels (*.pdf)")});
    file.setName(QStringLiteral("label"));
    QVERIFY(!file.isThere());
    QFile there(m_folder.filePath(QStringLiteral("label.pdf")));
    QVERIFY(there.open(QIODevice::WriteOnly));
    QSignalSpy changed(&file, &FileToBe::changed);
    file.look();
    QCOMPARE(changed.count(), 1);
    QVERIFY(file.isThere());
    file.setName(QStringLiteral("label-2"));
    QVERIFY(!file.isThere());
}

void FilesToBe::sayWhatIsWrong_data()
{
    QTest::addColumn<QString>("folder");
    QTest::addColumn<QString>("name");
    QTest::addColumn<QString>("says");
    const QString here = m_folder.path();
    QVERIFY(QDir(here).mkpath(QStringLiteral("sheets.pdf")));
    QTest::newRow("no name") << here << "  "
                             << "no name yet";
    QTest::newRow("a path") << here << "../list.pdf"
                            << "no stroke";
    QTest::newRow("no folder") << QString(here + QStringLiteral("/gone")) << "list.pdf"
                               << "not there any more";
    QTest::newRow("a folder") << here << "sheets.pdf"
                              << "is a folder";
    QTest::newRow("nothing") << here << "list.pdf"
                             << "";
}

void FilesToBe::sayWhatIsWrong()
{
    QFETCH(QString, folder);
    QFETCH(QString, name);
    QFETCH(QString, says);
    FileToBe file;
    file.setFolder(QUrl::fromLocalFile(folder));
    file.setFilters({QStringLiteral("PDF (*.pdf)")});
    file.setName(name);
    QVERIFY2(file.problem().contains(says), qPrintable(file.problem()));
    QCOMPARE(file.problem().isEmpty(), says.isEmpty());
}

QTEST_APPLESS_MAIN(FilesToBe)
#include "tst_no_file_is_written_over_unasked.moc"
