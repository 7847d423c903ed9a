// SPDX-License-Identifier: MIT
//
// An edit of a TOML text is an edit at one place: all else stays to the byte, an edit and its
// opposite give the text as it was, and what is read afterwards differs in nothing else. How the
// values are written is TOML 1.0's.

#include "model/exchange/editing/toml_edit.h"
#include "model/exchange/editing/toml_literal.h"
#include "model/exchange/template_toml.h"
#include "text_files.h"

#include <QTest>

using namespace flarestock;

namespace {

constexpr std::array<std::string_view, 5> Lists = {"question", "station", "run", "module", "extra"};
constexpr std::array<std::string_view, 5> Keys = {"id", "title", "kind", "level", "when"};

/// "id=a;title=b;list=[x,y]": what a value says, without where it stands.
std::string saying(const TomlValue &value)
{
    std::string out = value.text;
    if (value.form == TomlValue::Form::Whole)
        out = std::to_string(value.whole);
    if (value.form == TomlValue::Form::YesNo)
        out = value.yes ? "yes" : "no";
    for (const TomlValue &item : value.items)
        out += '[' + saying(item) + ']';
    for (const TomlEntry &entry : value.entries)
        out += entry.key + '=' + saying(entry.value) + ';';
    return out;
}

TomlDocument read(std::string_view text)
{
    return TomlDocument::read(text, "a.toml").value();
}

/// Every text in it by its place.
void addTexts(const TomlValue &value, const std::string &place, std::vector<std::string> &places)
{
    if (value.form == TomlValue::Form::Text)
        places.push_back(place);
    const std::string before = place.empty() ? "" : place + '/';
    for (std::size_t at = 0; at < value.items.size(); ++at)
        addTexts(value.items[at], before + std::to_string(at), places);
    for (const TomlEntry &entry : value.entries)
        addTexts(entry.value, before + entry.key, places);
}

std::string replaced(std::string text, const std::string &what, const std::string &by)
{
    for (std::size_t at = text.find(what); at != text.npos; at = text.find(what, at + by.size()))
        text.replace(at, what.size(), by);
    return text;
}

} // namespace

class TomlIsEditedAtOnePlace : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aTextAndBackIsTheSame();
    void onlyThatTextIsAnother();
    void aKeyComesInAndGoes();
    void aTableComesInAndGoes();
    void twoTablesChangePlaces();
    void editsGiveExactly_data();
    void editsGiveExactly();
    void listsAreEditedItemByItem_data();
    void listsAreEditedItemByItem();
    void whatCannotBeEditedIsLeftAlone_data();
    void whatCannotBeEditedIsLeftAlone();
    void aTextIsQuoted_data();
    void aTextIsQuoted();

private:
    /// The demo templates, and each as an editor elsewhere would have saved it.
    [[nodiscard]] std::vector<std::string> texts() const
    {
        std::vector<std::string> all;
        for (const auto &[name, text] : demoFiles()) {
            if (!name.starts_with("templates/"))
                continue;
            all.push_back(text);
            all.push_back(replaced(text, "\n", "\r\n"));
            all.push_back(text.substr(0, text.find_last_not_of('\n') + 1));
            all.push_back(replaced(replaced(text, " = ", "  =\t"), "\n\n", "\n"));
        }
        return all;
    }
};

void TomlIsEditedAtOnePlace::aTextAndBackIsTheSame()
{
    int edits = 0;
    for (const std::string &text : texts()) {
        const TomlDocument document = read(text);
        std::vector<std::string> places;
        addTexts(document.root(), {}, places);
        for (std::size_t at = 0; at < places.size(); at += 7) {
            const TomlEdit edit(document);
            const std::string was = edit.find(places[at])->text;
            const std::string other =
                edited(text, edit.setText(places[at], "é \"x\"", Keys).value());
            const TomlDocument then = read(other);
            QCOMPARE(TomlEdit(then).find(places[at])->text, std::string("é \"x\""));
            const auto back = TomlEdit(then).setText(places[at], was, Keys);
            QVERIFY2(edited(other, back.value()) == text, places[at].c_str());
            ++edits;
        }
    }
    QVERIFY(edits > 1000);
}

void TomlIsEditedAtOnePlace::onlyThatTextIsAnother()
{
    const std::string text = demoFiles().at("templates/gravity-feed.toml");
    const TomlDocument document = read(text);
    const auto edit = TomlEdit(document).setText("station/2/title", "tap", Keys);
    const std::string now = edited(text, *edit);
    const auto before = readTemplate(text, "a").value();
    const auto after = readTemplate(now, "a").value();
    QCOMPARE(after->stations[2].title, std::string("tap"));
    QCOMPARE(saying(read(now).root()),
             replaced(saying(document.root()), "title=fuel cock", "title=tap"));
    QCOMPARE(before->stations[2].title, std::string("fuel cock"));
}

void TomlIsEditedAtOnePlace::aKeyComesInAndGoes()
{
    int edits = 0;
    for (const std::string &text : texts()) {
        const TomlDocument document = read(text);
        for (const std::string_view list : Lists) {
            const TomlValue *const tables = TomlEdit(document).find(list);
            for (std::size_t at = 0; tables != nullptr && at < tables->items.size(); ++at) {
                const std::string place = std::string(list) + '/' + std::to_string(at) + "/new";
                const std::string with =
                    edited(text, TomlEdit(document).set(place, "true", Keys).value());
                const TomlDocument then = read(with);
                QVERIFY2(TomlEdit(then).find(place)->yes, place.c_str());
                QVERIFY(edited(with, TomlEdit(then).drop(place).value()) == text);
                ++edits;
            }
        }
    }
    QVERIFY(edits > 1000);
}

void TomlIsEditedAtOnePlace::aTableComesInAndGoes()
{
    for (const std::string &text : texts()) {
        const TomlDocument document = read(text);
        for (const std::string_view list : Lists) {
            const TomlValue *const tables = TomlEdit(document).find(list);
            const std::size_t count = tables == nullptr ? 0 : tables->items.size();
            for (std::size_t behind = 0; behind < std::max<std::size_t>(count, 1); ++behind) {
                const auto add = TomlEdit(document).addTable(list, "id = \"z\"", Lists, behind);
                const std::string with = edited(text, add.value());
                const TomlDocument then = read(with);
                const std::size_t at = count == 0 ? 0 : behind + 1;
                QCOMPARE(TomlEdit(then).find(list)->items[at].find("id")->value.text,
                         std::string("z"));
                QVERIFY(edited(with, TomlEdit(then).dropTable(list, at).value()) == text);
            }
        }
    }
}

void TomlIsEditedAtOnePlace::twoTablesChangePlaces()
{
    for (const std::string &text : texts()) {
        const TomlDocument document = read(text);
        const std::size_t count = TomlEdit(document).find("station")->items.size();
        for (std::size_t at = 0; at + 1 < count; ++at) {
            const std::string with =
                edited(text, TomlEdit(document).swapWithNext("station", at).value());
            QVERIFY(with != text);
            const TomlDocument then = read(with);
            QCOMPARE(saying(TomlEdit(then).find("station")->items[at]),
                     saying(TomlEdit(document).find("station")->items[at + 1]));
            QVERIFY(edited(with, TomlEdit(then).swapWithNext("station", at).value()) == text);
        }
        QVERIFY(!TomlEdit(document).swapWithNext("station", count - 1));
    }
}

using Deed = std::function<std::optional<TextEdit>(const TomlEdit &)>;
Q_DECLARE_METATYPE(Deed)

static void row(const char *name, const char *text, const Deed &deed, const char *now)
{
    QTest::newRow(name) << QByteArray(text) << deed << QByteArray(now);
}

void TomlIsEditedAtOnePlace::editsGiveExactly_data()
{
    QTest::addColumn<QByteArray>("text");
    QTest::addColumn<Deed>("deed");
    QTest::addColumn<QByteArray>("now");
    const auto title = [](const TomlEdit &on) { return on.setText("s/0/title", "b", Keys); };
    row("a comment behind the value stays", "[[s]]\n  title  =  'a'   # why\n", title,
        "[[s]]\n  title  =  'b'   # why\n");
    row("a missing key comes in its order, set in as the others",
        "[[s]]\n  id = \"x\" # c\n  when = \"y\"\n", title,
        "[[s]]\n  id = \"x\" # c\n  title = \"b\"\n  when = \"y\"\n");
    row("the first key comes right below the header", "[[s]] # h\nwhen = \"y\"", title,
        "[[s]] # h\ntitle = \"b\"\nwhen = \"y\"");
    row("lines end as the others do", "[[s]]\r\nid = \"x\"\r\n", title,
        "[[s]]\r\nid = \"x\"\r\ntitle = \"b\"\r\n");
    row(
        "a text over several lines stays one", "[[s]]\ntitle = \"\"\"\na\n\"\"\"\n",
        [](const TomlEdit &on) { return on.setText("s/0/title", "b\nc\n", Keys); },
        "[[s]]\ntitle = \"\"\"\nb\nc\n\"\"\"\n");
    row(
        "within a table in one line",
        "[[s]]\npart = [ { when = \"y\", is = \"A\" }, { is = \"B\" } ] # p\n",
        [](const TomlEdit &on) { return on.setText("s/0/part/1/is", "C", Keys); },
        "[[s]]\npart = [ { when = \"y\", is = \"A\" }, { is = \"C\" } ] # p\n");
    row(
        "a key of a table in one line", "[[s]]\npart = [ { is = \"B\" } ]\n",
        [](const TomlEdit &on) {
            static constexpr std::array<std::string_view, 2> Order = {"when", "is"};
            return on.setText("s/0/part/0/when", "y", Order);
        },
        "[[s]]\npart = [ { when = \"y\", is = \"B\" } ]\n");
    row(
        "dropped from a table in one line", "x = { a = 1, b = 2, c = 3 }\n",
        [](const TomlEdit &on) { return on.drop("x/c"); }, "x = { a = 1, b = 2 }\n");
    row(
        "a line goes with its own comment", "# top\nid = \"a\" # c\n\nb = 1\n",
        [](const TomlEdit &on) { return on.drop("id"); }, "# top\n\nb = 1\n");
    row(
        "dotted keys stay dotted", "[[s]]\nid = \"x\"\nanswers.a = \"1\"\n",
        [](const TomlEdit &on) { return on.setText("s/0/answers/b", "2", Keys); },
        "[[s]]\nid = \"x\"\nanswers.a = \"1\"\nanswers.b = \"2\"\n");
    row(
        "a table inside a table begins", "[[s]]\nid = \"x\"\n\n[[t]]\n",
        [](const TomlEdit &on) { return on.setText("s/0/answers/b", "2", Keys); },
        "[[s]]\nid = \"x\"\n[s.answers]\nb = \"2\"\n\n[[t]]\n");
    row(
        "and goes with its last key", "[[s]]\nid = \"x\"\n[s.answers]\nb = \"2\"\n\n[[t]]\n",
        [](const TomlEdit &on) { return on.drop("s/0/answers/b"); },
        "[[s]]\nid = \"x\"\n\n[[t]]\n");
    row(
        "a comment above goes with its table",
        "[[s]]\nid = \"a\"\n\n# of b\n[[s]]\nid = \"b\"\n# still b\n\n# free\n\n[[t]]\n",
        [](const TomlEdit &on) { return on.dropTable("s", 1); },
        "[[s]]\nid = \"a\"\n\n# free\n\n[[t]]\n");
}

void TomlIsEditedAtOnePlace::listsAreEditedItemByItem_data()
{
    QTest::addColumn<QByteArray>("text");
    QTest::addColumn<Deed>("deed");
    QTest::addColumn<QByteArray>("now");
    row(
        "of a list only what is new", "l = [ \"a\",  \"b\", # two\n \"c\" ]\n",
        [](const TomlEdit &on) {
            return on.setTexts("l", {"a", "b", "x", "c"}, Keys);
        },
        "l = [ \"a\",  \"b\", # two\n \"x\",  \"c\" ]\n");
    row(
        "one item a line", "l = [\n  \"a\",\n  \"b\",\n]\n",
        [](const TomlEdit &on) {
            return on.setTexts("l", {"a", "b", "c"}, Keys);
        },
        "l = [\n  \"a\",\n  \"b\",\n  \"c\",\n]\n");
    row(
        "an item with a comment goes, the comment stays",
        "l = [\n  \"a\", # one\n  \"b\", # two\n]\n",
        [](const TomlEdit &on) { return on.setTexts("l", {"a"}, Keys); },
        "l = [\n  \"a\", # one\n   # two\n]\n");
    row(
        "an alternative comes first", "p = [\n  { is = \"B\" },\n]\n",
        [](const TomlEdit &on) { return on.addItem("p/0", "{ when = \"y\", is = \"A\" }"); },
        "p = [\n  { when = \"y\", is = \"A\" },\n  { is = \"B\" },\n]\n");
}

void TomlIsEditedAtOnePlace::editsGiveExactly()
{
    QFETCH(QByteArray, text);
    QFETCH(Deed, deed);
    QFETCH(QByteArray, now);
    const std::string before = text.toStdString();
    const TomlDocument document = read(before);
    const auto edit = deed(TomlEdit(document));
    QVERIFY(edit.has_value());
    const std::string after = edited(before, *edit);
    QCOMPARE(QByteArray::fromStdString(after), now);
    QVERIFY(TomlDocument::read(after, "a").has_value());
}

void TomlIsEditedAtOnePlace::listsAreEditedItemByItem()
{
    editsGiveExactly();
}

void TomlIsEditedAtOnePlace::whatCannotBeEditedIsLeftAlone_data()
{
    QTest::addColumn<Deed>("deed");
    QTest::newRow("a place that is not there")
        << Deed([](const TomlEdit &on) { return on.setText("s/4/title", "x", Keys); });
    QTest::newRow("a key of a text")
        << Deed([](const TomlEdit &on) { return on.setText("id/title", "x", Keys); });
    QTest::newRow("a list of tables in one line")
        << Deed([](const TomlEdit &on) { return on.addTable("t", "id = 1", Lists); });
    QTest::newRow("a whole table as a value")
        << Deed([](const TomlEdit &on) { return on.set("s/0", "1", Keys); });
    QTest::newRow("what is not there goes")
        << Deed([](const TomlEdit &on) { return on.drop("s/0/when"); });
}

void TomlIsEditedAtOnePlace::whatCannotBeEditedIsLeftAlone()
{
    QFETCH(Deed, deed);
    const std::string text = "id = \"a\"\nt = [ { id = \"x\" } ]\n[[s]]\nid = \"b\"\n";
    const TomlDocument document = read(text);
    QVERIFY(!deed(TomlEdit(document)).has_value());
}

void TomlIsEditedAtOnePlace::aTextIsQuoted_data()
{
    QTest::addColumn<QByteArray>("text");
    QTest::newRow("plain") << QByteArray("5 ft 6 in");
    QTest::newRow("quotes and backslashes") << QByteArray("a \"b\" \\c\\ 'd'");
    QTest::newRow("lines and tabs") << QByteArray("a\n\tb\r\n\n");
    QTest::newRow("controls") << QByteArray("a\x01\x1f\x7f z");
    QTest::newRow("beyond ASCII") << QByteArray("100 µm · ½ ″");
    QTest::newRow("empty") << QByteArray("");
}

void TomlIsEditedAtOnePlace::aTextIsQuoted()
{
    QFETCH(QByteArray, text);
    const std::string wanted = text.toStdString();
    for (const std::string was : {"\"a\"", "'a'", "\"\"\"\na\"\"\"", "\"\"\"a\"\"\"", "'''a'''"}) {
        const std::string whole = "x = " + was + "\ny = 1\n";
        const TomlDocument document = read(whole);
        const std::string now = edited(whole, TomlEdit(document).setText("x", wanted, {}).value());
        const TomlDocument then = read(now);
        QCOMPARE(TomlEdit(then).find("x")->text, wanted);
        QCOMPARE(TomlEdit(then).find("y")->whole, 1);
    }
}

QTEST_APPLESS_MAIN(TomlIsEditedAtOnePlace)
#include "tst_toml_is_edited_at_one_place.moc"
