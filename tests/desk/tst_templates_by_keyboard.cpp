// SPDX-License-Identifier: MIT
//
// A hand at the templates, by keyboard alone, in the real window on the demo shop: one is opened
// and typed into, the line map follows, what cannot be read is said at its line, nothing typed is
// lost, it is written, and taken back.

#include "templates_on_screen.h"

using namespace flarestock;

class TemplatesByKeyboard : public QObject, protected TemplatesOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase() { open(); }
    void aTemplateIsFoundByItsLetters();
    void aTemplateIsDrawnWhileItIsTyped();
    void whatCannotBeReadIsSaidAtItsLine();
    void aFaultAtTheEndIsSeenWhole();
    void nothingTypedIsLost();
    void aChangeIsWrittenAndTakenBack();
    void whatWouldBreakABuildIsRefused();
    void aCopyBecomesABuildAndGoes();
    void whatCouldStandThereIsChosen();
    void aDeedOfTheFormIsTakenBackByKey();
    void nothingIsWarnedAbout();

private:
    [[nodiscard]] std::string inShop(const char *file) const
    {
        return ShopFile::open(m_file.toStdString(), OpenMode::ReadOnly)->documents()->at(file);
    }
};

void TemplatesByKeyboard::aTemplateIsFoundByItsLetters()
{
    const auto inHand = [this] { return item("templateList")->property("currentIndex").toInt(); };
    key(Qt::Key_T, Qt::ControlModifier);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("templateLine"));
    const Rows &all = *templates().choices();
    const int last = all.count() - 1;
    QVERIFY(last > 10);
    key(Qt::Key_End);
    QCOMPARE(inHand(), last);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("templateLine"));
    key(Qt::Key_Home);
    QCOMPARE(inHand(), 0);
    const QString title = all.cell(last, QStringLiteral("title")).toString();
    type(title.left(8).toLatin1().constData());
    QVERIFY(all.cell(inHand(), QStringLiteral("title")).toString().startsWith(title.left(8)));
    QVERIFY(inHand() > 0);
    key(Qt::Key_Return);
    awaitDrawn();
    QVERIFY(editor().title().contains(title.left(8)));
    key(Qt::Key_Escape);
    QTRY_VERIFY(!editor().isOpen());
}

void TemplatesByKeyboard::aTemplateIsDrawnWhileItIsTyped()
{
    openTemplate(QStringLiteral("Gravity feed to a carburettor"));
    const int before = stations();
    QVERIFY(before > 3);
    QCOMPARE(words("templateStanding"), QStringLiteral("As it stands in the shop."));
    pictureOfTemplates("light");
    goBehind(QStringLiteral(
        "part = [ { when = \"fluid is methanol\", is = \"CB-GM\" }, { is = \"CB-G\" } ]\n"));
    typeLines(QStringLiteral("\n[[station]]\nid = \"more\"\ntitle = \"gauge\"\nkind = \"gauge\"\n"
                             "level = \"return\""));
    awaitDrawn();
    QTRY_COMPARE(stations(), before + 1);
    QTRY_VERIFY(words("stillOpen").contains(QStringLiteral("gauge: no line leads there")));
    for (int steps = 0; steps < 40 && editor().isChanged(); ++steps)
        key(Qt::Key_Z, Qt::ControlModifier);
    QTRY_COMPARE(words("templateStanding"), QStringLiteral("As it stands in the shop."));
    awaitDrawn();
    QTRY_COMPARE(stations(), before);
}

/// TOML 1.0: a basic string ends on its line.
void TemplatesByKeyboard::whatCannotBeReadIsSaidAtItsLine()
{
    const int before = stations();
    goBehind(QStringLiteral("title = \"fuel cock\""));
    key(Qt::Key_Backspace);
    QTRY_VERIFY(words("templateStanding").contains(QStringLiteral("One place")));
    const auto line = text().left(text().indexOf(QStringLiteral("fuel cock"))).count(u'\n') + 1;
    QCOMPARE(editor().faultLine(), static_cast<int>(line));
    QVERIFY(!editor().stale().isEmpty());
    QVERIFY(words("mapStale").contains(QStringLiteral("last text that could be drawn")));
    QCOMPARE(stations(), before);
    pictureOfTemplates("unreadable");
    key(Qt::Key_S, Qt::ControlModifier);
    QTRY_VERIFY(words("sheetProblem").contains(QStringLiteral("Line %1").arg(line)));
    type("\"");
    QTRY_VERIFY(editor().stale().isEmpty() && item("mapStale") == nullptr);
    awaitDrawn();
    QCOMPARE(editor().faultLine(), 0);
    goBehind(QStringLiteral("kind = \"carbu"));
    type("x");
    QTRY_VERIFY(editor().faults()->count() == 1);
    QVERIFY(editor()
                .faults()
                ->cell(0, QStringLiteral("says"))
                .toString()
                .contains(QStringLiteral("carburettor"))); // What was probably meant.
    QVERIFY(editor().stale().isEmpty());                   // It is TOML, so the form shows it.
    key(Qt::Key_Backspace);
    QTRY_COMPARE(editor().faults()->count(), 0);
}

/// Also when what is said of it takes room from the text.
void TemplatesByKeyboard::aFaultAtTheEndIsSeenWhole()
{
    QQuickItem *area = item("templateText");
    const QQuickItem *flick = area->parentItem()->parentItem();
    const auto isSeen = [&] {
        const QRectF cursor = area->property("cursorRectangle").toRectF();
        const qreal from = flick->property("contentY").toReal();
        return cursor.top() >= from && cursor.bottom() <= from + flick->height();
    };
    area->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_End, Qt::ControlModifier);
    type("a=\"");
    QTRY_VERIFY(editor().faultLine() > 0);
    key(Qt::Key_Home, Qt::ControlModifier);
    QVERIFY(isSeen());
    key(Qt::Key_S, Qt::ControlModifier);
    QTRY_VERIFY(words("sheetProblem").contains(QStringLiteral("a quote on this line")));
    QTRY_VERIFY(area->property("cursorPosition").toInt() > 10);
    QTest::qWait(100); // What is said is laid out.
    pictureOfTemplates("fault-at-end");
    QTRY_VERIFY(isSeen());
    for (int letter = 0; letter < 3; ++letter)
        key(Qt::Key_Backspace);
    QTRY_COMPARE(editor().faults()->count(), 0);
}

void TemplatesByKeyboard::nothingTypedIsLost()
{
    goBehind(QStringLiteral("title = \"fuel cock"));
    type(" x");
    key(Qt::Key_Escape);
    QTRY_VERIFY(!editor().isOpen() && item("templateText") == nullptr);
    QTRY_VERIFY(words("lastStep").contains(QStringLiteral("kept as it was typed")));
    QVERIFY(inShop("templates/gravity-feed.toml").find("fuel cock x") == std::string::npos);
    key(Qt::Key_T, Qt::ControlModifier);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("templateLine"));
    QTRY_VERIFY(
        templates().isWaiting(templates().choices()->cell(0, QStringLiteral("key")).toString()));
    pictureOfTemplates("choose");
    key(Qt::Key_Return);
    awaitDrawn();
    QVERIFY(text().contains(QStringLiteral("fuel cock x")));
    goBehind(QStringLiteral("fuel cock x"));
    key(Qt::Key_Backspace);
    key(Qt::Key_Backspace);
    QTRY_COMPARE(words("templateStanding"), QStringLiteral("As it stands in the shop."));
    key(Qt::Key_Escape);
    key(Qt::Key_T, Qt::ControlModifier);
    QTRY_VERIFY(
        !templates().isWaiting(templates().choices()->cell(0, QStringLiteral("key")).toString()));
    key(Qt::Key_Escape);
}

void TemplatesByKeyboard::aChangeIsWrittenAndTakenBack()
{
    const std::string before = inShop("templates/gravity-feed.toml");
    openTemplate(QStringLiteral("Gravity feed to a carburettor"));
    goBehind(QStringLiteral("title = \"fuel cock"));
    type(", quarter turn");
    key(Qt::Key_S, Qt::ControlModifier);
    awaitTemplate();
    QTRY_VERIFY2(!editor().isOpen(), qPrintable(words("sheetProblem")));
    QCOMPARE(words("lastStep"), QStringLiteral("Template Gravity feed to a carburettor changed."));
    std::string wanted = before;
    wanted.insert(wanted.find("fuel cock") + 9, ", quarter turn");
    QVERIFY(inShop("templates/gravity-feed.toml") == wanted);
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitTemplate();
    QTRY_VERIFY(words("lastStep").startsWith(QStringLiteral("Taken back: ")));
    QVERIFY(inShop("templates/gravity-feed.toml") == before);
}

/// The coupe is planned by this template with 520 hp.
void TemplatesByKeyboard::whatWouldBreakABuildIsRefused()
{
    const std::string before = inShop("templates/injection-frame-rail.toml");
    openTemplate(QStringLiteral("Injection, pump on the frame rail, return loop"));
    goBehind(QStringLiteral("most = \"2000"));
    for (int digit = 0; digit < 4; ++digit)
        key(Qt::Key_Backspace);
    type("500");
    awaitDrawn();
    key(Qt::Key_S, Qt::ControlModifier);
    awaitTemplate();
    QTRY_VERIFY2(words("sheetProblem").contains(QStringLiteral("would not work out any more")),
                 qPrintable(words("sheetProblem")));
    QVERIFY(words("sheetProblem").contains(QStringLiteral("Coupe, hill-climb")));
    QVERIFY(words("sheetProblem").contains(QStringLiteral("520 hp")));
    pictureOfTemplates("refused");
    key(Qt::Key_Escape);
    QTRY_VERIFY(!editor().isOpen());
    QVERIFY(inShop("templates/injection-frame-rail.toml") == before);
}

/// One station and one run more, written, built, and taken back with the build that was tried out.
void TemplatesByKeyboard::aCopyBecomesABuildAndGoes()
{
    const QString copied = QStringLiteral("Gravity feed to a carburettor, copied");
    choose(QStringLiteral("Gravity feed to a carburettor"));
    press("copyTemplate");
    awaitDrawn();
    const int before = stations();
    QCOMPARE(focusName(*m_window), QStringLiteral("paragraph"));
    press("addStation");
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("field-station/5/id"));
    type("far-end");
    write("field-station/5/title", "gauge");
    item("choice-station/5/kind")->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_Down);
    key(Qt::Key_Down);
    QVERIFY(text().contains(
        QStringLiteral("[[station]]\nid = \"far-end\"\ntitle = \"gauge\"\nkind = \"gauge\"\n")));
    press("addRun");
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("field-run/4/id"));
    write("field-run/4/from", "carburettor.in");
    write("field-run/4/to", "far-end.in");
    awaitDrawn();
    QTRY_COMPARE(stations(), before + 1);
    QVERIFY(editor().map()->place(QStringLiteral("run|run")).isValid());
    pictureOfTemplates("form");
    key(Qt::Key_S, Qt::ControlModifier);
    awaitTemplate();
    QTRY_VERIFY2(!editor().isOpen(), qPrintable(words("sheetProblem")));
    QVERIFY(inFile()->templates->contains("gravity-feed-copy"));
    key(Qt::Key_1, Qt::AltModifier);
    key(Qt::Key_B, Qt::ControlModifier);
    QTRY_VERIFY(item("buildList") != nullptr);
    const Rows &builds = *m_desk->builds();
    for (int row = 0; row < builds.count(); ++row)
        if (builds.cell(row, QStringLiteral("title")).toString() != copied)
            key(Qt::Key_Down);
        else
            break;
    key(Qt::Key_Return);
    QTRY_COMPARE(m_desk->build()->title(), copied);
    QCOMPARE(m_desk->build()->map()->layout().plates.size(), std::size_t(before) + 1);
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitTemplate();
    QTRY_VERIFY(words("lastStep").startsWith(QStringLiteral("Taken back: ")));
    QVERIFY(!inFile()->templates->contains("gravity-feed-copy"));
    QVERIFY(m_desk->build()->title() != copied && m_desk->build()->isOpen());
}

void TemplatesByKeyboard::whatCouldStandThereIsChosen()
{
    openTemplate(QStringLiteral("Gravity feed to a carburettor"));
    QCOMPARE(focusName(*m_window), QStringLiteral("paragraph"));
    for (int row = 0; editor().form()->chosen() != QStringLiteral("run/2") && row < 40; ++row)
        key(Qt::Key_Down);
    QCOMPARE(words("paragraphTitle"), QStringLiteral("bowl"));
    QTRY_VERIFY(item("field-run/2/length") != nullptr);
    item("field-run/2/length")->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_Down);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("offer"));
    pictureOfTemplates("offers");
    key(Qt::Key_Return);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("field-run/2/length"));
    QVERIFY(text().contains(QStringLiteral("to = \"carburettor.in\"\nlength = \"{head}\"")));
    key(Qt::Key_Z, Qt::ControlModifier);
    QVERIFY(text().contains(QStringLiteral("to = \"carburettor.in\"\nlength = \"{bowl}\"")));
    QCOMPARE(words("field-run/2/length"), QStringLiteral("{bowl}"));
}

void TemplatesByKeyboard::aDeedOfTheFormIsTakenBackByKey()
{
    const QString before = text();
    item("paragraphList")->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_Delete);
    QTRY_VERIFY(!text().contains(QStringLiteral("id = \"bowl\"\nlevel")));
    key(Qt::Key_Z, Qt::ControlModifier);
    QTRY_COMPARE(text(), before);
    key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    QTRY_VERIFY(text() != before);
    key(Qt::Key_Z, Qt::ControlModifier);
    key(Qt::Key_Escape);
    QTRY_VERIFY(!editor().isOpen());
}

void TemplatesByKeyboard::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(TemplatesByKeyboard)
#include "tst_templates_by_keyboard.moc"
