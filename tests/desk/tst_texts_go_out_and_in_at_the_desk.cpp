// SPDX-License-Identifier: MIT
//
// At the desk, by keyboard: the shop's texts go out into a folder and come in edited, as the
// commands `export` and `import` do it; what would change is said before, and it can be taken back.
// The demo shop is invented.

#include "app/workshop/whole/edited_folder.h"
#include "keeping_on_screen.h"

using namespace flarestock;

class TextsGoOutAndIn : public QObject, protected KeepingOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase() { prepareScreens(); }
    void init()
    {
        newNames();
        show();
    }
    void theyAreWrittenIntoAFolder();
    void aFolderWithSomethingInItIsRefused();
    void whatWasEditedIsSaidThenTakenIn();
    void itIsTakenBackAndTakenInOnceMore();
    void whatDoesNotReadIsSaidAndNothingIsWritten();
    void whereNothingWasEditedItIsSaid();
    void whatWasEditedSinceTheLookIsNotTakenIn();
    void linesAreCounted_data();
    void linesAreCounted();
    void warnsAboutNothing() { QCOMPARE(m_screens->warnings(), QStringList()); }

private:
    [[nodiscard]] ShopTexts &texts() const { return *m_desk->keeping()->texts(); }
    void awaitTexts()
    {
        QTRY_VERIFY_WITH_TIMEOUT(!texts().isBusy() && !m_desk->pen()->isBusy(), 60'000);
    }
    [[nodiscard]] QString written() const
    {
        const QString folder = in("texts");
        [&] { QVERIFY(writeDocuments(documents(m_file), folder.toStdString())); }();
        return folder;
    }
    /// Two files, three lines.
    void editTwo(const QString &folder) const
    {
        edit(folder + QStringLiteral("/builds.toml"), "id = \"coupe-fuel\"",
             "id = \"coupe-fuel-2\"");
        edit(folder + QStringLiteral("/offers.csv"), "\n", "\n\n");
    }
    void look(const QString &folder)
    {
        ask("textsIn");
        QTRY_COMPARE(focus(), QStringLiteral("inFolder"));
        write("inFolder", folder);
        key(Qt::Key_Return);
        awaitTexts();
    }
    void takeIn()
    {
        QTRY_COMPARE(focus(), QStringLiteral("takeTextsIn"));
        key(Qt::Key_Return);
        awaitTexts();
    }
};

void TextsGoOutAndIn::theyAreWrittenIntoAFolder()
{
    ask("textsOut");
    QTRY_COMPARE(focus(), QStringLiteral("outFolder"));
    QVERIFY2(words("sheetAbout").contains(QStringLiteral("first day; only a backup")),
             qPrintable(words("sheetAbout")));
    pictureOfSheet(*m_window, *m_look, "texts-out");
    const QString folder = in("texts");
    write("outFolder", folder);
    key(Qt::Key_Return);
    QVERIFY(texts().isBusy());
    awaitTexts();
    QTRY_COMPARE(focus(), QStringLiteral("textsOutAway"));
    pictureOfSheet(*m_window, *m_look, "texts-out-done");
    const auto there = documentsIn(folder.toStdString());
    QVERIFY(there && *there == documents(m_file));
    QCOMPARE(allWords("textName").size(), static_cast<int>(there->size()));
    QVERIFY2(m_desk->build()->lastStep().contains(folder), qPrintable(m_desk->build()->lastStep()));
    key(Qt::Key_Return);
    QTRY_VERIFY(item("textsOutAway") == nullptr);
}

void TextsGoOutAndIn::aFolderWithSomethingInItIsRefused()
{
    const QString folder = written();
    ask("textsOut");
    write("outFolder", folder);
    key(Qt::Key_Return);
    awaitTexts();
    QTRY_VERIFY2(words("sheetProblem").contains(QStringLiteral("is not empty")),
                 qPrintable(words("sheetProblem")));
    write("outFolder", QStringLiteral("texts"));
    key(Qt::Key_Return);
    QVERIFY2(words("sheetProblem").startsWith(QStringLiteral("texts: does not say where it is")),
             qPrintable(words("sheetProblem")));
}

void TextsGoOutAndIn::whatWasEditedIsSaidThenTakenIn()
{
    const QString folder = written();
    editTwo(folder);
    const TextFiles before = documents(m_file);
    look(folder);
    QTRY_COMPARE(allWords("textName"),
                 (QStringList{QStringLiteral("builds.toml"), QStringLiteral("offers.csv")}));
    QCOMPARE(allWords("textSays"),
             (QStringList{QStringLiteral("1 line changed"), QStringLiteral("1 line new")}));
    QVERIFY(documents(m_file) == before); // Nothing is written by looking.
    QTRY_COMPARE(focus(), QStringLiteral("takeTextsIn"));
    pictureOfSheet(*m_window, *m_look, "texts-in");
    takeIn();
    QTRY_VERIFY(item("takeTextsIn") == nullptr);
    const TextFiles after = documents(m_file);
    QVERIFY(after == documentsIn(folder.toStdString()).value());
    QVERIFY(after != before);
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-fuel-2")));
    // The folder knows what the shop has of it, as after the command.
    QVERIFY(EditedFolder::of(folder.toStdString(), after)->changed.empty());
    QVERIFY(EditedFolder::of(folder.toStdString(), before)->changed.empty());
}

void TextsGoOutAndIn::itIsTakenBackAndTakenInOnceMore()
{
    const QString folder = written();
    editTwo(folder);
    const TextFiles before = documents(m_file);
    look(folder);
    takeIn();
    QTRY_VERIFY(documents(m_file) != before);
    const TextFiles after = documents(m_file);
    key(Qt::Key_Z, Qt::ControlModifier);
    QTRY_VERIFY_WITH_TIMEOUT(documents(m_file) == before, 60'000);
    awaitTexts();
    QVERIFY2(m_desk->build()->lastStep().startsWith(QStringLiteral("Taken back: 2 edited texts")),
             qPrintable(m_desk->build()->lastStep()));
    look(folder); // It is there once more, as nothing of it is in the shop.
    QTRY_COMPARE(allWords("textName").size(), 2);
    takeIn();
    QTRY_VERIFY(documents(m_file) == after);
    QVERIFY(ShopFile::verify(m_file.toStdString()).value().whole);
}

void TextsGoOutAndIn::whatDoesNotReadIsSaidAndNothingIsWritten()
{
    const QString folder = written();
    editTwo(folder);
    edit(folder + QStringLiteral("/parts/adapters.csv"), "AD-8-8,adapter", "AD-8-8,adaptor");
    const TextFiles before = documents(m_file);
    look(folder);
    QTRY_VERIFY2(words("sheetProblem").contains(QStringLiteral("parts/adapters.csv")),
                 qPrintable(words("sheetProblem")));
    QVERIFY(item("takeTextsIn") == nullptr);
    QVERIFY(documents(m_file) == before);
    pictureOfSheet(*m_window, *m_look, "texts-in-wrong");
}

void TextsGoOutAndIn::whereNothingWasEditedItIsSaid()
{
    const QString folder = written();
    edit(folder + QStringLiteral("/stock.csv"), "\n", "\n\n"); // A shop only begins with it.
    look(folder);
    QTRY_VERIFY2(texts().outlook().startsWith(QStringLiteral("Nothing that is taken in was ed")),
                 qPrintable(texts().outlook()));
    QVERIFY(item("takeTextsIn") == nullptr);
    QVERIFY(item("lookAtTexts") != nullptr);
}

void TextsGoOutAndIn::whatWasEditedSinceTheLookIsNotTakenIn()
{
    const QString folder = written();
    editTwo(folder);
    const TextFiles before = documents(m_file);
    look(folder);
    edit(folder + QStringLiteral("/offers.csv"), "\n", "\n\n");
    takeIn();
    QTRY_VERIFY2(words("sheetProblem").contains(QStringLiteral("when it was looked at")),
                 qPrintable(words("sheetProblem")));
    QVERIFY(documents(m_file) == before);
    press("lookAtTexts");
    awaitTexts();
    takeIn();
    QTRY_VERIFY(documents(m_file) != before);
}

void TextsGoOutAndIn::linesAreCounted_data()
{
    QTest::addColumn<QByteArray>("before");
    QTest::addColumn<QByteArray>("now");
    QTest::addColumn<QList<int>>("counts"); // Changed, new, gone.
    const auto row = [](const char *name, const char *before, const char *now, QList<int> counts) {
        QTest::newRow(name) << QByteArray(before) << QByteArray(now) << counts;
    };
    row("the same", "a\nb\n", "a\nb\n", {0, 0, 0});
    row("another order", "a\nb\n", "b\na\n", {0, 0, 0});
    row("one edited", "a\nb\n", "a\nc\n", {1, 0, 0});
    row("one more", "a\nb\n", "a\nb\nc\n", {0, 1, 0});
    row("one fewer, one edited", "a\nb\nc\n", "a\nd\n", {1, 0, 1});
    row("one of two alike is gone", "a\na\n", "a\n", {0, 0, 1});
    row("without its last line end", "a\nb\n", "a\nb", {0, 0, 0});
    row("nothing before", "", "a\nb\n", {0, 2, 0});
}

void TextsGoOutAndIn::linesAreCounted()
{
    QFETCH(QByteArray, before);
    QFETCH(QByteArray, now);
    QFETCH(QList<int>, counts);
    const ChangedLines said = changedLines(before.toStdString(), now.toStdString());
    QCOMPARE((QList<int>{said.changed, said.added, said.gone}), counts);
}

QTEST_MAIN(TextsGoOutAndIn)
#include "tst_texts_go_out_and_in_at_the_desk.moc"
