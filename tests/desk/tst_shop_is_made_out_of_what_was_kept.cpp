// SPDX-License-Identifier: MIT
//
// At the desk, by keyboard: a shop is made out of a backup or out of a folder of texts, as the
// commands `restore` and `begin` make it, and one is proved whole, as `verify` does. The demo shop
// is invented.

#include "app/desk/papers/persons_folder.h"
#include "app/workshop/demo_shop.h"
#include "keeping_on_screen.h"
#include "model/storage/upkeep/kept_backups.h"

using namespace flarestock;

class ShopIsMade : public QObject, protected KeepingOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase() { prepareScreens(); }
    void init()
    {
        newNames();
        show();
    }
    void outOfABackup();
    void outOfAFolderWhereThereIsNoShop();
    void aTextThatDoesNotReadMakesNone();
    void whatIsMissingIsSaid();
    void anotherFileIsNeverWrittenOver();
    void itIsProvedWhole();
    void whatIsDamagedIsSaidWithTheBackupToGoOnFrom();
    void withoutABackupItIsSaid();
    void warnsAboutNothing() { QCOMPARE(m_screens->warnings(), QStringList()); }

private:
    [[nodiscard]] QString backedUp()
    {
        m_desk->backups()->now();
        [&] { QTRY_VERIFY_WITH_TIMEOUT(!m_desk->backups()->isBusy(), 60'000); }();
        const auto kept = keptBackups(m_file.toStdString());
        return kept.empty() ? QString() : QString::fromStdString(kept.front().path.string());
    }
    /// Wherever the shop's name stands.
    void damage() const
    {
        while (bytesOf(m_file).contains("Two Beacons hill-climb"))
            edit(m_file, "Two Beacons hill-climb", "Ten Beacons hill-climb");
    }
    [[nodiscard]] QString texts() const
    {
        const QString folder = in("texts");
        [&] { QVERIFY(writeDocuments(demoDocuments(), folder.toStdString())); }();
        return folder;
    }
    void make(const QString &source, const QString &file)
    {
        write("source", source);
        key(Qt::Key_Return);
        QCOMPARE(focus(), QStringLiteral("newShop"));
        write("newShop", file);
        key(Qt::Key_Return);
    }
    static Verification proof(const QString &file)
    {
        return ShopFile::verify(file.toStdString()).value();
    }
    [[nodiscard]] ShopMaker &maker() const { return *m_desk->keeping()->maker(); }
    void awaitProof()
    {
        QTRY_VERIFY(item("proofFinding") != nullptr);
        QTRY_VERIFY_WITH_TIMEOUT(!m_desk->keeping()->proof()->isBusy(), 60'000);
    }
};

void ShopIsMade::outOfABackup()
{
    QCOMPARE(m_desk->keeping()->backupsFolder(), QUrl::fromLocalFile(personsFolder()));
    const QString backup = backedUp(); // Where that lies the file is looked for.
    QCOMPARE(m_desk->keeping()->backupsFolder(),
             QUrl::fromLocalFile(QFileInfo(backup).absolutePath()));
    const QByteArray before = bytesOf(backup);
    QVERIFY(!before.isEmpty());
    ask("otherBackup");
    QTRY_COMPARE(focus(), QStringLiteral("source"));
    pictureOfSheet(*m_window, *m_look, "of-backup");
    const QString file = in("restored.flarestock");
    make(backup, file);
    QVERIFY(maker().isBusy()); // It came back before the shop was made.
    QTRY_COMPARE_WITH_TIMEOUT(m_desk->shopPath(), file, 60'000);
    QTRY_VERIFY(item("source") == nullptr);
    QVERIFY2(m_desk->build()->lastStep().contains(file), qPrintable(m_desk->build()->lastStep()));
    QVERIFY(bytesOf(backup) == before);
    QVERIFY(proof(file).whole);
    QCOMPARE(proof(file).movements, proof(m_file).movements);
    QVERIFY(documents(file) == documents(m_file));
}

void ShopIsMade::outOfAFolderWhereThereIsNoShop()
{
    show(false);
    press("makeOfFolder");
    QTRY_COMPARE(focus(), QStringLiteral("source"));
    QVERIFY2(words("sheetAbout").contains(QStringLiteral("stock of the first day")),
             qPrintable(words("sheetAbout")));
    pictureOfSheet(*m_window, *m_look, "of-folder");
    const QString file = in("own.flarestock");
    make(texts(), file);
    QTRY_COMPARE_WITH_TIMEOUT(m_desk->shopPath(), file, 60'000);
    QTRY_VERIFY(item("lineMap") != nullptr);
    QVERIFY(documents(file) == demoDocuments());
    // Each row of the opening stock is a movement, below a line of headings.
    const QByteArray stock = QByteArray::fromStdString(demoDocuments().at("stock.csv")).trimmed();
    QCOMPARE(proof(file).movements, stock.count('\n'));
}

void ShopIsMade::aTextThatDoesNotReadMakesNone()
{
    const QString folder = texts();
    edit(folder + QStringLiteral("/parts/adapters.csv"), "AD-8-8,adapter", "AD-8-8,adaptor");
    const QString file = in("own.flarestock");
    ask("otherFolder");
    make(folder, file);
    QTRY_VERIFY_WITH_TIMEOUT(words("sheetProblem").contains(QStringLiteral("parts/adapters.csv")),
                             60'000);
    for (const char *says : {"adaptor", "line "})
        QVERIFY2(words("sheetProblem").contains(QLatin1String(says)),
                 qPrintable(words("sheetProblem")));
    QVERIFY(!QFile::exists(file));
    QCOMPARE(m_desk->shopPath(), m_file);
    m_look->setLanguage(QStringLiteral("de"));
    press("makeShop");
    QTRY_VERIFY_WITH_TIMEOUT(!maker().isBusy(), 60'000);
    QVERIFY2(words("sheetProblem").contains(QStringLiteral("Zeile")),
             qPrintable(words("sheetProblem")));
    pictureOfSheet(*m_window, *m_look, "of-folder-wrong-german");
    // Mended, the same sheet makes it.
    edit(folder + QStringLiteral("/parts/adapters.csv"), "AD-8-8,adaptor", "AD-8-8,adapter");
    press("makeShop");
    QTRY_COMPARE_WITH_TIMEOUT(m_desk->shopPath(), file, 60'000);
}

void ShopIsMade::whatIsMissingIsSaid()
{
    ask("otherBackup");
    press("makeShop");
    QCOMPARE(words("sheetProblem"), QStringLiteral("Choose the backup first."));
    write("source", QStringLiteral("backup.flarestock"));
    press("makeShop");
    QVERIFY2(words("sheetProblem").startsWith(QStringLiteral("backup.flarestock: does not say")),
             qPrintable(words("sheetProblem")));
    write("source", m_file);
    write("newShop", QStringLiteral(" "));
    press("makeShop");
    QCOMPARE(words("sheetProblem"), QStringLiteral("Say which new file the shop becomes."));
    QVERIFY(!maker().isBusy());
}

void ShopIsMade::anotherFileIsNeverWrittenOver()
{
    const QString letter = in("letter.txt");
    QFile file(letter);
    QVERIFY(file.open(QIODevice::WriteOnly) && file.write("Dear shop,\n") > 0);
    file.close();
    ask("otherBackup");
    make(m_file, letter);
    QTRY_VERIFY_WITH_TIMEOUT(!words("sheetProblem").isEmpty(), 60'000);
    QVERIFY2(words("sheetProblem").contains(QStringLiteral("exists already")),
             qPrintable(words("sheetProblem")));
    QCOMPARE(bytesOf(letter), QByteArray("Dear shop,\n"));
}

void ShopIsMade::itIsProvedWhole()
{
    const QByteArray before = bytesOf(m_file);
    ask("proveShop");
    awaitProof();
    const auto movements = proof(m_file).movements;
    QVERIFY(movements > 400);
    QVERIFY2(words("proofFinding")
                 .contains(
                     QStringLiteral(" is whole: %1 movements,").arg(QLocale().toString(movements))),
             qPrintable(words("proofFinding")));
    QVERIFY(item("damage") == nullptr && item("goOnFromBackup") == nullptr);
    QTRY_COMPARE(focus(), QStringLiteral("proveAgain"));
    pictureOfSheet(*m_window, *m_look, "proof-whole");
    QVERIFY(bytesOf(m_file) == before); // It never writes.
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("proofFinding") == nullptr);
}

void ShopIsMade::whatIsDamagedIsSaidWithTheBackupToGoOnFrom()
{
    const QString backup = backedUp();
    damage();
    ask("proveShop");
    awaitProof();
    QVERIFY2(words("proofFinding").contains(QStringLiteral("is not whole")),
             qPrintable(words("proofFinding")));
    QStringList damages;
    const Verification found = proof(m_file);
    for (const std::string &one : found.problems)
        damages.append(QString::fromStdString(one));
    QVERIFY(!damages.isEmpty());
    QCOMPARE(allWords("damage"), damages);
    QVERIFY2(words("proofRemedy").contains(backup.section(u'/', -1)),
             qPrintable(words("proofRemedy")));
    pictureOfSheet(*m_window, *m_look, "proof-damaged");
    QTRY_COMPARE(focus(), QStringLiteral("goOnFromBackup"));
    key(Qt::Key_Return);
    QTRY_COMPARE(words("source"), backup);
    write("newShop", in("again.flarestock"));
    key(Qt::Key_Return);
    QTRY_COMPARE_WITH_TIMEOUT(m_desk->shopPath(), in("again.flarestock"), 60'000);
    QVERIFY(proof(m_desk->shopPath()).whole);
}

void ShopIsMade::withoutABackupItIsSaid()
{
    damage();
    m_look->setLanguage(QStringLiteral("de"));
    ask("proveShop");
    awaitProof();
    QVERIFY(item("goOnFromBackup") == nullptr);
    QVERIFY2(words("proofRemedy").contains(QStringLiteral("Sicherung")),
             qPrintable(words("proofRemedy")));
    QVERIFY2(!allWords("damage").join(u' ').contains(QStringLiteral("the shop")),
             qPrintable(allWords("damage").join(u'\n')));
    pictureOfSheet(*m_window, *m_look, "proof-damaged-german");
}

QTEST_MAIN(ShopIsMade)
#include "tst_shop_is_made_out_of_what_was_kept.moc"
