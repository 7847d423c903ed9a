// SPDX-License-Identifier: MIT
//
// The form of a template and its text are the same thing: each deed of the form changes the text at
// its place and nowhere else, one step back gives the text as it was, and the form says what the
// text says. Without a window.

#include "desk_on_demo.h"

#include <QAbstractItemModelTester>
#include <QTextDocument>

using namespace flarestock;

class TemplateFormEditsItsText : public QObject, protected DeskOnDemo {
    Q_OBJECT
private Q_SLOTS:
    void init()
    {
        renew();
        m_desk->setWho(QStringLiteral("Kim"));
        m_desk->templates()->ask();
        QTRY_VERIFY(!m_desk->templates()->isLoading());
        open("gravity-feed");
    }
    void everyFieldOfEveryTemplateSaysItsText();
    void aFieldChangesOneLine_data();
    void aFieldChangesOneLine();
    void typingInOneFieldIsOneStep();
    void aParagraphComesAndGoes_data();
    void aParagraphComesAndGoes();
    void paragraphsChangePlaces();
    void aValueGoesByAnswers();
    void aFaultIsSaidAtItsField();
    void aStaleFormTakesNothing();
    void whatCouldStandThereIsOffered_data();
    void whatCouldStandThereIsOffered();
    void aSpotOfTheMapIsAParagraph_data();
    void aSpotOfTheMapIsAParagraph();
    void aNewOneIsDrawnAtOnce();
    void linesOfAnotherEditorStay();
    void whatWasTypedWaitsForTheNextStart();
    void whatWaitsForANameIsNotWrittenByAnother();

private:
    [[nodiscard]] TemplateEditor &editor() { return *m_desk->templates()->editor(); }
    [[nodiscard]] TemplateForm &form() { return *editor().form(); }
    void open(const char *id)
    {
        m_desk->templates()->begin(
            QStringLiteral("file|templates/%1.toml").arg(QString::fromLatin1(id)));
        QVERIFY(editor().isOpen());
    }
    [[nodiscard]] QString text() { return editor().document().toPlainText(); }
    [[nodiscard]] QString field(const QString &place, const char *cell = "value")
    {
        const Rows &fields = *form().fields();
        return fields.cell(fields.rowOf(place), QString::fromLatin1(cell)).toString();
    }
    void awaitDrawn() { QTRY_VERIFY_WITH_TIMEOUT(!editor().isDrawing(), 20000); }
};

/// What the form says of each paragraph is put back as it is: nothing changes.
void TemplateFormEditsItsText::everyFieldOfEveryTemplateSaysItsText()
{
    QAbstractItemModelTester fields(form().fields(),
                                    QAbstractItemModelTester::FailureReportingMode::QtTest);
    QAbstractItemModelTester paragraphs(form().paragraphs(),
                                        QAbstractItemModelTester::FailureReportingMode::QtTest);
    int fieldsSeen = 0;
    const Rows &all = *m_desk->templates()->choices();
    for (int row = 0; row < all.count(); ++row) {
        m_desk->templates()->begin(all.cell(row, QStringLiteral("key")).toString());
        const QString before = text();
        for (int at = 0; at < form().paragraphs()->count(); ++at) {
            form().choose(form().paragraphs()->cell(at, QStringLiteral("key")).toString());
            for (int one = 0; one < form().fields()->count(); ++one) {
                const QString key = form().fields()->cell(one, QStringLiteral("key")).toString();
                QCOMPARE(field(key, "problem"), QString());
                const QString value = field(key);
                form().fill(key, value);
                if (field(key, "form") == QStringLiteral("typed") && fieldsSeen % 5 == 0) {
                    form().fill(key, QString(value + QStringLiteral("7")));
                    form().fill(key, value);
                }
                QVERIFY2(text() == before, qPrintable(key));
                ++fieldsSeen;
            }
        }
    }
    QVERIFY(fieldsSeen > 2000);
}

void TemplateFormEditsItsText::aFieldChangesOneLine_data()
{
    QTest::addColumn<QString>("paragraph");
    QTest::addColumn<QString>("place");
    QTest::addColumn<QVariant>("filled");
    QTest::addColumn<QString>("was"); // Of the whole text …
    QTest::addColumn<QString>("is");  // … becomes this.
    const auto row = [](const char *name, const char *place, const char *filled, const char *was,
                        const char *is) {
        const QString at = QString::fromLatin1(place);
        QTest::newRow(name) << (at.contains(u'/') ? at.section(u'/', 0, 1) : QStringLiteral("top"))
                            << at << QVariant(QString::fromUtf8(filled)) << QString::fromUtf8(was)
                            << QString::fromUtf8(is);
    };
    row("a title", "station/2/title", "tap \"a\"", "title = \"fuel cock\"",
        "title = \"tap \\\"a\\\"\"");
    row("a part by answers", "station/0/part/1/is", "FT-9", "is = \"FT-3\" } ]",
        "is = \"FT-9\" } ]");
    row("what is not said yet", "run/0/length", "2 in", "to = \"cock.in\"",
        "to = \"cock.in\"\nlength = \"2 in\"");
    row("what is not said any more", "station/3/spare-elements", "", "\nspare-elements = 1", "");
    row("a number", "station/3/spare-elements", "3", "spare-elements = 1", "spare-elements = 3");
    row("a list", "question/6/choices", "-5; -6; -8", "[\"-5\", \"-8\"]",
        "[\"-5\", \"-6\", \"-8\"]");
    row("a level", "station/1/level", "0",
        "title = \"roll-over valve\"\nkind = \"rollover valve\"\nlevel = \"return\"",
        "title = \"roll-over valve\"\nkind = \"rollover valve\"\nlevel = \"suction\"");
    row("yes or no", "station/1/bracketed", "1", "part = \"RV-6\"\nbracketed = false",
        "part = \"RV-6\"\nbracketed = true");
    row("the fluid", "title", "Gravity", "title = \"Gravity feed to a carburettor\"",
        "title = \"Gravity\"");
}

void TemplateFormEditsItsText::aFieldChangesOneLine()
{
    QFETCH(QString, paragraph);
    QFETCH(QString, place);
    QFETCH(QVariant, filled);
    QFETCH(QString, was);
    QFETCH(QString, is);
    const QString before = text();
    QCOMPARE(before.count(was), 1);
    form().choose(paragraph);
    QCOMPARE(form().chosen(), paragraph);
    form().fill(place, filled);
    QString wanted = before;
    QCOMPARE(text(), wanted.replace(was, is));
    QCOMPARE(field(place).isEmpty(), filled.toString().isEmpty());
    editor().undo();
    QCOMPARE(text(), before);
    editor().redo();
    QCOMPARE(text(), wanted);
}

void TemplateFormEditsItsText::typingInOneFieldIsOneStep()
{
    const QString before = text();
    form().choose(QStringLiteral("station/2"));
    QString typed;
    for (const QChar letter : QStringLiteral("tap")) {
        typed += letter;
        form().fill(QStringLiteral("station/2/title"), typed);
    }
    form().choose(QStringLiteral("station/3"));
    form().fill(QStringLiteral("station/3/title"), QStringLiteral("bowl x"));
    QVERIFY(text().contains(QStringLiteral("\"tap\"")) &&
            text().contains(QStringLiteral("\"bowl x\"")));
    editor().undo();
    QVERIFY(text().contains(QStringLiteral("\"tap\"")) &&
            !text().contains(QStringLiteral("\"bowl x\"")));
    editor().undo();
    QCOMPARE(text(), before);
}

void TemplateFormEditsItsText::aParagraphComesAndGoes_data()
{
    QTest::addColumn<int>("kind");
    QTest::newRow("a question") << static_cast<int>(TemplateForm::Question);
    QTest::newRow("a station") << static_cast<int>(TemplateForm::Station);
    QTest::newRow("a run") << static_cast<int>(TemplateForm::Run);
    QTest::newRow("a module") << static_cast<int>(TemplateForm::Module);
    QTest::newRow("an extra") << static_cast<int>(TemplateForm::Extra);
}

/// As it begins it is whole: no fault of the text.
void TemplateFormEditsItsText::aParagraphComesAndGoes()
{
    QFETCH(int, kind);
    awaitDrawn();
    const QString before = text();
    const int count = form().paragraphs()->count();
    form().choose(QStringLiteral("station/2"));
    form().add(static_cast<TemplateForm::Kind>(kind));
    QCOMPARE(form().paragraphs()->count(), count + 1);
    QVERIFY2(editor().read().isWhole(), qPrintable(text()));
    QCOMPARE(form().chosen().startsWith(QStringLiteral("station/3")),
             kind == TemplateForm::Station); // Behind the one in hand.
    form().remove();
    QCOMPARE(text(), before);
    editor().undo();
    QVERIFY(text() != before);
    editor().undo();
    QCOMPARE(text(), before);
}

void TemplateFormEditsItsText::paragraphsChangePlaces()
{
    const QString before = text();
    form().choose(QStringLiteral("station/2"));
    form().move(true);
    QCOMPARE(form().chosen(), QStringLiteral("station/3"));
    QCOMPARE(form().chosenTitle(), QStringLiteral("fuel cock"));
    QVERIFY(text() != before && editor().read().isWhole());
    form().move(false);
    QCOMPARE(text(), before);
    form().choose(QStringLiteral("station/0"));
    QVERIFY(!form().canMoveUp() && form().canMoveDown());
}

void TemplateFormEditsItsText::aValueGoesByAnswers()
{
    const QString before = text();
    form().choose(QStringLiteral("station/1"));
    QCOMPARE(field(QStringLiteral("station/1/part")), QStringLiteral("RV-6"));
    form().vary(QStringLiteral("station/1/part"), QStringLiteral("vary"));
    QVERIFY(editor().read().isWhole());
    QCOMPARE(field(QStringLiteral("station/1/part/1/is")), QStringLiteral("RV-6"));
    form().vary(QStringLiteral("station/1/part/1/is"), QStringLiteral("more"));
    QCOMPARE(field(QStringLiteral("station/1/part/2/is")), QStringLiteral("RV-6"));
    QVERIFY(!field(QStringLiteral("station/1/part/1/when")).isEmpty());
    QVERIFY(editor().read().isWhole());
    form().vary(QStringLiteral("station/1/part/0/is"), QStringLiteral("fewer"));
    form().vary(QStringLiteral("station/1/part/0/is"), QStringLiteral("fewer"));
    QCOMPARE(text(), before);
}

void TemplateFormEditsItsText::aFaultIsSaidAtItsField()
{
    form().choose(QStringLiteral("run/1"));
    form().fill(QStringLiteral("run/1/to"), QStringLiteral("filtre.in"));
    QVERIFY(field(QStringLiteral("run/1/to"), "problem").contains(QStringLiteral("filter")));
    QCOMPARE(form().problem(), QString());
    const Rows &all = *form().paragraphs();
    QVERIFY(all.cell(all.rowOf(QStringLiteral("run/1")), QStringLiteral("wrong")).toBool());
    QVERIFY(!all.cell(all.rowOf(QStringLiteral("run/0")), QStringLiteral("wrong")).toBool());
    form().fill(QStringLiteral("run/1/to"), QString());
    QVERIFY(form().problem().contains(QStringLiteral("\"to\""))); // There is no field for it …
    QVERIFY(form().fields()->rowOf(QStringLiteral("run/1/to")) >= 0); // … but to fill in.
}

void TemplateFormEditsItsText::aStaleFormTakesNothing()
{
    form().choose(QStringLiteral("station/2"));
    editor().document().setPlainText(
        text().replace(QStringLiteral("fuel cock\""), QStringLiteral("x")));
    QVERIFY(form().isStale() && !editor().stale().isEmpty());
    QCOMPARE(field(QStringLiteral("station/2/title")), QStringLiteral("fuel cock"));
    const QString before = text();
    form().fill(QStringLiteral("station/2/title"), QStringLiteral("y"));
    form().add(TemplateForm::Run);
    form().remove();
    form().vary(QStringLiteral("station/2/part"), QStringLiteral("vary"));
    QCOMPARE(text(), before);
}

void TemplateFormEditsItsText::whatCouldStandThereIsOffered_data()
{
    QTest::addColumn<QString>("place");
    QTest::addColumn<QString>("offer");
    const auto row = [](const char *place, const char *offer) {
        QTest::newRow(place) << QString::fromLatin1(place) << QString::fromLatin1(offer);
    };
    row("run/1/to", "filter.in");
    row("run/1/length", "{bowl}");
    row("run/1/dash", "{feed-size}");
    row("run/1/construction", "PT");
    row("run/1/when", "fluid is methanol");
    row("station/2/part/1/is", "CK-516");
    row("station/3/words", "bowl");
    row("fluid", "methanol");
    row("fluid", "{fluid}");
}

void TemplateFormEditsItsText::whatCouldStandThereIsOffered()
{
    QFETCH(QString, place);
    QFETCH(QString, offer);
    awaitDrawn();
    form().choose(place.contains(u'/') ? place.section(u'/', 0, 1) : QStringLiteral("top"));
    const QStringList offers = form().offers(place);
    QVERIFY2(offers.contains(offer) ||
                 (place.endsWith(QStringLiteral("words")) && !offers.isEmpty()),
             qPrintable(offers.join(u' ')));
    QCOMPARE(form().withOffered(QStringLiteral("run/1/to"), QStringLiteral("a.b")),
             QStringLiteral("a.b"));
    form().choose(QStringLiteral("question/6"));
    QCOMPARE(form().withOffered(QStringLiteral("question/6/choices"), QStringLiteral("-6")),
             QStringLiteral("-5; -8; -6"));
}

void TemplateFormEditsItsText::aSpotOfTheMapIsAParagraph_data()
{
    QTest::addColumn<QString>("spot");
    QTest::addColumn<QString>("title");
    QTest::newRow("a station") << QStringLiteral("station|join") << QStringLiteral("joining block");
    QTest::newRow("a run") << QStringLiteral("run|supply-2") << QStringLiteral("supply-2");
    QTest::newRow("a joint") << QStringLiteral("joint|post.end") << QStringLiteral("post");
    QTest::newRow("a closed port")
        << QStringLiteral("joint|plug:rail.gauge") << QStringLiteral("rails");
    QTest::newRow("in a module") << QStringLiteral("station|pump-2/pump")
                                 << QStringLiteral("pump-2");
}

void TemplateFormEditsItsText::aSpotOfTheMapIsAParagraph()
{
    QFETCH(QString, spot);
    QFETCH(QString, title);
    open("alcohol-twin-pumps");
    awaitDrawn();
    editor().openSpot(spot);
    QCOMPARE(form().chosenTitle(), title);
}

void TemplateFormEditsItsText::aNewOneIsDrawnAtOnce()
{
    m_desk->templates()->beginNew();
    awaitDrawn();
    QCOMPARE(editor().faults()->count(), 0);
    QVERIFY(editor().mapStale().isEmpty());
    QCOMPARE(editor().map()->layout().plates.size(), std::size_t(2));
    QVERIFY(editor().isChanged());
    m_desk->templates()->beginCopy(QStringLiteral("file|templates/coolant.toml"));
    awaitDrawn();
    QCOMPARE(editor().faults()->count(), 0);
    QCOMPARE(QString::fromStdString(editor().read().top("id")), QStringLiteral("coolant-copy"));
}

/// As an editor elsewhere may have saved it: lines end with two bytes, some with one.
void TemplateFormEditsItsText::linesOfAnotherEditorStay()
{
    const std::string begun = "\xEF\xBB\xBF"
                              "id = \"a\"\r\ntitle = \"b\"\nsystem = \"oil\"\r\n# é\r\n";
    editor().begin({"templates/a.toml", begun, begun});
    QVERIFY(!editor().isChanged());
    QVERIFY(editor().typed().text == begun);
    form().choose(QStringLiteral("top"));
    form().fill(QStringLiteral("fluid"), QStringLiteral("engine oil"));
    const std::string wanted =
        "\xEF\xBB\xBF"
        "id = \"a\"\r\ntitle = \"b\"\nsystem = \"oil\"\r\nfluid = \"engine oil\"\r\n# é\r\n";
    QVERIFY(editor().typed().text == wanted);
}

/// What the settings are given is what they give back.
void TemplateFormEditsItsText::whatWasTypedWaitsForTheNextStart()
{
    QString kept;
    QString shop;
    connect(m_desk->templates(), &TemplateDesk::sketchesKept, this,
            [&kept, &shop](const QString &file, const QString &text) {
                shop = file;
                kept = text;
            });
    form().fill(QStringLiteral("title"), QStringLiteral("Gravity \"µ\""));
    const QString typed = text();
    m_desk.reset(); // Without a word, as a desk that is closed.
    QCOMPARE(shop, m_file);
    m_desk = std::make_unique<Desk>(nullptr);
    m_desk->setDeeds({openShopFile, makeDemoFile});
    QVERIFY(m_desk->openShopFile(m_file));
    m_desk->templates()->setSketches(kept);
    const Rows &choices = *m_desk->templates()->choices();
    const QString first = choices.cell(0, QStringLiteral("key")).toString();
    QVERIFY(m_desk->templates()->isWaiting(first));
    m_desk->templates()->begin(first);
    QCOMPARE(text(), typed);
    QVERIFY(editor().isChanged());
    editor().close();
    m_desk->templates()->throwAway(first);
    QCOMPARE(choices.count(), 0);
}

/// Nobody has said who is at the desk, the sheet is left, and something else is written.
void TemplateFormEditsItsText::whatWaitsForANameIsNotWrittenByAnother()
{
    m_desk->setWho({});
    form().fill(QStringLiteral("title"), QStringLiteral("Gravity"));
    editor().finish();
    m_desk->pen()->forgetWaiting();
    QVERIFY(editor().isOpen());
    const auto writeAnother = [this] {
        m_desk->pen()->rewrite(QStringLiteral("another"), [](const TextFiles &newest) {
            return TextFiles{{"templates/coolant.toml", newest.at("templates/coolant.toml") + "#"}};
        });
        QTRY_VERIFY_WITH_TIMEOUT(!m_desk->pen()->isBusy(), 20000);
    };
    m_desk->setWho(QStringLiteral("Kim"));
    writeAnother();
    QVERIFY(editor().isOpen() && editor().isChanged());
    editor().close();
    writeAnother();
    const Rows &choices = *m_desk->templates()->choices();
    QVERIFY(m_desk->templates()->isWaiting(choices.cell(0, QStringLiteral("key")).toString()));
    QVERIFY(inFile()->templates->at("gravity-feed")->title != "Gravity");
}

QTEST_MAIN(TemplateFormEditsItsText)
#include "tst_template_form_edits_its_text.moc"
