// SPDX-License-Identifier: MIT
//
// A text comes back byte for byte, or it is refused before anything is written: what is no UTF-8,
// and what begins with a byte-order mark (SQLite drops it). Otherwise its seal would not fit.
//
// The ill-formed ones are those that the Unicode Standard names, chapter 3.9, table 3-7 and what
// it excludes: lone continuation bytes, overlong forms, surrogates, beyond U+10FFFF, cut off.

#include "shop_somewhere.h"

#include <QTest>

using namespace flarestock;
using namespace flarestock::tests;

class TextsComeBackAsTheyWentIn : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase_data() { bothPlaces(); }
    void whereTheyAreText_data();
    void whereTheyAreText();
    void areRefusedWhereTheyAreNone_data();
    void areRefusedWhereTheyAreNone();
    void withoutTheMarkThatSpreadsheetsWrite();
};

void TextsComeBackAsTheyWentIn::whereTheyAreText_data()
{
    QTest::addColumn<std::string>("text");
    QTest::newRow("letters of every length") << std::string("aé€𝄞");
    QTest::newRow("the last of each length")
        << std::string("\x7F\xDF\xBF\xEF\xBF\xBD\xF4\x8F\xBF\xBD");
    QTest::newRow("letter and accent apart") << std::string("e\u0301");
    QTest::newRow("a mark in the middle") << std::string("a\xEF\xBB\xBF"
                                                         "b");
    QTest::newRow("blanks and line ends") << std::string("  a\r\n\tb \n");
    QTest::newRow("what SQL means something by")
        << std::string("x'); DROP TABLE movement; --%_?1:a");
    QTest::newRow("a long one") << std::string(100'000, 'x') + "ü";
}

void TextsComeBackAsTheyWentIn::whereTheyAreText()
{
    QFETCH(std::string, text);
    QFETCH_GLOBAL(bool, onServer);
    const Somewhere here(onServer);
    NewShop begun = smallShop();
    begun.settings.title = text;
    begun.documents["notes.txt"] = text;
    {
        auto shop = here.make(begun);
        QVERIFY2(shop, shop ? "" : shop.error().sentence().c_str());
        Movement movement = move(2, 1, "A1", "car-1");
        movement.who = movement.why = movement.document = text;
        QVERIFY(shop->append({movement}));
        QVERIFY(shop->record({idNumber(3), "AD-8-10", text, {"CL-10"}, text, 1}));
    }
    const auto shop = ShopFile::open(here.path(), OpenMode::ReadOnly);
    QVERIFY(shop);
    QVERIFY(shop->settings().title == text);
    QVERIFY(shop->documents()->at("notes.txt") == text);
    const Movement back = shop->movement(idNumber(2))->value();
    QVERIFY(back.who == text && back.why == text && back.document == text);
    QVERIFY(shop->boxChecks()->front().lot == text && shop->boxChecks()->front().who == text);
    const auto verified = ShopFile::verify(here.path());
    QVERIFY2(verified->whole, verified->whole ? "" : verified->problems.front().c_str());
}

void TextsComeBackAsTheyWentIn::areRefusedWhereTheyAreNone_data()
{
    QTest::addColumn<std::string>("text");
    QTest::newRow("Latin-1") << std::string("Zo\xEB");
    QTest::newRow("a lone continuation byte") << std::string("a\x80z");
    QTest::newRow("an overlong slash") << std::string("\xC0\xAF");
    QTest::newRow("an overlong NUL") << std::string("\xC0\x80");
    QTest::newRow("a surrogate") << std::string("\xED\xA0\x80");
    QTest::newRow("a pair of surrogates") << std::string("\xED\xA0\xB4\xED\xB4\x9E");
    QTest::newRow("beyond the last letter") << std::string("\xF4\x90\x80\x80");
    QTest::newRow("a letter cut off") << std::string("price in \xE2\x82");
    QTest::newRow("a byte that never stands") << std::string("\xFF");
    QTest::newRow("a byte-order mark before it") << std::string("\xEF\xBB\xBF"
                                                                "AD-8-10");
    QTest::newRow("nothing but the mark") << std::string("\xEF\xBB\xBF");
    QTest::newRow("a NUL in the middle") << std::string("a\0b", 3);
    QTest::newRow("UTF-16") << std::string("\xFF\xFE"
                                           "A\0D\0",
                                           6);
}

void TextsComeBackAsTheyWentIn::areRefusedWhereTheyAreNone()
{
    QFETCH(std::string, text);
    QFETCH_GLOBAL(bool, onServer);
    const Somewhere here(onServer);
    auto shop = here.make(smallShop());
    const auto saysSo = [](const auto &done) {
        return !done && done.error().wrong.find("bytes that are no text") != std::string::npos &&
               done.error().remedy.find("UTF-8") != std::string::npos;
    };
    for (const auto field :
         {&Movement::who, &Movement::why, &Movement::document, &Movement::lot, &Movement::part}) {
        Movement movement = move(2, 1, "opening", "A1", 7'450'000);
        movement.*field = text;
        QVERIFY(saysSo(shop->append({move(4, 1, "A1", "car-1"), movement})));
    }
    QVERIFY(saysSo(shop->record({idNumber(3), "AD-8-10", text, {}, "test", 1})));
    QVERIFY(saysSo(shop->record({idNumber(3), "AD-8-10", "", {text}, "test", 1})));
    QVERIFY(saysSo(shop->putDocument(text + ".csv", "part\n", "test", 1)));
    QVERIFY(saysSo(shop->putDocument("a.csv", "part\n", text, 1)));
    if (!text.starts_with("\xEF\xBB\xBF"))
        QVERIFY(saysSo(shop->putDocument("a.csv", text, "test", 1)));

    // Nothing of it was written, and the file writes on.
    QCOMPARE(shop->movements()->size(), std::size_t{1});
    QVERIFY(shop->boxChecks()->empty());
    QCOMPARE(shop->documents()->size(), std::size_t{1});
    QVERIFY(shop->append({move(4, 1, "A1", "car-1")}));
    QVERIFY(ShopFile::verify(here.path())->whole);

    NewShop begun = smallShop();
    begun.settings.title = text;
    const Somewhere other(onServer);
    QVERIFY(saysSo(other.make(begun)));
    QVERIFY(!ShopFile::open(other.path(), OpenMode::ReadOnly));
    QVERIFY(onServer || !std::filesystem::exists(other.path()));
}

void TextsComeBackAsTheyWentIn::withoutTheMarkThatSpreadsheetsWrite()
{
    QFETCH_GLOBAL(bool, onServer);
    const Somewhere here(onServer);
    NewShop begun = smallShop();
    begun.documents["parts/a.csv"] = "\xEF\xBB\xBFpart,kind\n";
    auto shop = here.make(begun);
    QVERIFY(shop);
    QCOMPARE(shop->documents()->at("parts/a.csv"), std::string("part,kind\n"));
    // With or without, it is the same document: no new version of it.
    QVERIFY(shop->putDocument("parts/a.csv", "part,kind\n", "test", 2));
    QVERIFY(shop->putDocument("parts/a.csv", "\xEF\xBB\xBFpart,kind\n", "test", 3));
    QCOMPARE(shop->documents()->at("parts/a.csv"), std::string("part,kind\n"));
    QVERIFY(ShopFile::verify(here.path())->whole);
}

QTEST_GUILESS_MAIN(TextsComeBackAsTheyWentIn)
#include "tst_texts_come_back_as_they_went_in.moc"
