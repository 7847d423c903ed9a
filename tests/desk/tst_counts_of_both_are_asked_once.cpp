// SPDX-License-Identifier: MIT
//
// Promise: what a copy and the shop have both counted is asked once, in words that say what then
// lies there, and what lies there is that; nothing is said as done before it is, and what is done
// with a copy is what the bottom line says last.
//
// Two of EC-100-S lie in H4 and two of HE-6 in trailer-2.

#include "app/desk/language/language.h"
#include "model/journal/notes/count.h"
#include "trailer_on_screen.h"

using namespace flarestock;

namespace {

/// Counts in a shop file, as another hand at another place would.
void countIn(const QString &file, const char *part, const char *place, std::int64_t found)
{
    auto shop = ShopFile::open(file.toStdString(), OpenMode::ReadWrite);
    QVERIFY2(shop, shop ? "" : shop.error().sentence().c_str());
    const Count count{
        freshId(),        {part, place, {}, PieceCondition::New}, found, 0, "the pit crew", {},
        nowMilliseconds()};
    const auto done = shop->append(count, freshId());
    QVERIFY2(done, done ? "" : done.error().sentence().c_str());
}

} // namespace

class CountsOfBothAreAskedOnce : public QObject, protected TrailerOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void itIsAskedOnceAndSaysWhatLiesThere();
    void whatWasCountedIsSaidWithItsPlace();
    void itIsGermanAtAGermanDesk();
    void itComesToWhatTheAnswerSays();
    void nothingIsSaidAsDoneBefore();
    void theBottomLineSaysTheLastThing();
    void nothingIsWarnedAbout() { QCOMPARE(m_screens->warnings(), QStringList()); }
    void cleanupTestCase() { speak(QStringLiteral("en")); }

private:
    void look(const QString &copy)
    {
        copies().look(copy);
        QTRY_VERIFY_WITH_TIMEOUT(copies().hasLooked() && !copies().isBusy(), 30000);
    }
    void takeAlong(const QString &copy, const char *drawer)
    {
        copies().take({{QStringLiteral("file"), copy},
                       {QStringLiteral("places"), QStringList{QString::fromLatin1(drawer)}}});
        awaitShown();
        QVERIFY2(copies().problem().isEmpty(), qPrintable(copies().problem()));
    }
    [[nodiscard]] QStringList choices() const
    {
        return copies().questions()->cell(0, QStringLiteral("choices")).toStringList();
    }
    [[nodiscard]] QString came() const
    {
        QStringList all;
        for (int row = 0; row < copies().came()->count(); ++row)
            all.append(copies().came()->cell(row, QStringLiteral("says")).toString());
        return all.join(u'\n');
    }
    QString m_first;
    QString m_second;
};

void CountsOfBothAreAskedOnce::initTestCase()
{
    openTrailer();
    QCOMPARE(all("EC-100-S", "H4"), 2);
    QCOMPARE(all("HE-6", "trailer-2"), 2);
    m_first = m_folder.filePath(QStringLiteral("lakeside.flarestock"));
    m_second = m_folder.filePath(QStringLiteral("hillside.flarestock"));
    takeAlong(m_first, "trailer-1");
    takeAlong(m_second, "trailer-2");
    QTRY_COMPARE_WITH_TIMEOUT(copies().awayCount(), 2, 20000);
    for (const QString &file : {m_file, m_first}) {
        countIn(file, "EC-100-S", "H4", file == m_file ? 0 : 1);
        countIn(file, "AD-8-8", "A3", 1); // Both find the same.
    }
    press("workCopies");
    look(m_first);
}

void CountsOfBothAreAskedOnce::itIsAskedOnceAndSaysWhatLiesThere()
{
    QCOMPARE(copies().questions()->count(), 1);
    QCOMPARE(choices().size(), 3);
    trailerPicture("counted", QSize(1024, 640));
    QVERIFY2(choices()[0].endsWith(QStringLiteral("(there then: 0)")), qPrintable(choices()[0]));
    QVERIFY2(choices()[1].endsWith(QStringLiteral("(there then: 1)")), qPrintable(choices()[1]));
    QVERIFY2(choices()[2].endsWith(QStringLiteral("(there then: 0)")), qPrintable(choices()[2]));
}

void CountsOfBothAreAskedOnce::whatWasCountedIsSaidWithItsPlace()
{
    QVERIFY2(came().contains(QStringLiteral("EC-100-S at H4, found 1")), qPrintable(came()));
    QVERIFY2(came().contains(QStringLiteral("AD-8-8 at A3, found 1")), qPrintable(came()));
    QVERIFY2(!came().contains(u'@'), qPrintable(came()));
}

void CountsOfBothAreAskedOnce::itIsGermanAtAGermanDesk()
{
    QVERIFY(speak(QStringLiteral("de")));
    copies().choose(0, 1);
    QVERIFY2(choices()[1].endsWith(QStringLiteral("(dann dort: 1)")), qPrintable(choices()[1]));
    QVERIFY(speak(QStringLiteral("en")));
    copies().choose(0, 1);
    trailerPicture("counted-decided");
}

void CountsOfBothAreAskedOnce::itComesToWhatTheAnswerSays()
{
    press("bringCopy");
    awaitShown();
    QTRY_COMPARE_WITH_TIMEOUT(copies().awayCount(), 1, 20000);
    QCOMPARE(all("EC-100-S", "H4"), 1);
    QCOMPARE(all("AD-8-8", "A3"), 1);
    QVERIFY(ShopFile::verify(m_file.toStdString()).value().whole);
}

/// Two lie there, and three were taken: one came from nowhere.
void CountsOfBothAreAskedOnce::nothingIsSaidAsDoneBefore()
{
    QVERIFY(m_desk->canTakeBack());
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitShown();
    QTRY_VERIFY(words("lastStep").contains(QStringLiteral("lakeside was brought stays")));
    moveIn(m_second, {"HE-6", "2", "trailer-2", "car-1", "", "", "", ""});
    moveIn(m_second, {"EC-100-S", "1", "H4", "car-1", "", "", "", ""});
    countIn(m_file, "EC-100-S", "H4", 0);
    look(m_second);
    QCOMPARE(copies().questions()->count(), 1);
    // How many were taken and lay there, and where others lie that can have been taken instead.
    const QString asked = copies().questions()->cell(0, QStringLiteral("what")).toString();
    QVERIFY2(asked.endsWith(QStringLiteral("taken 1, there 0")), qPrintable(asked));
    const std::int64_t others = all("EC-100-S", "trailer-1");
    QVERIFY(others > 0);
    const QString from =
        QStringLiteral("what lacks came from trailer-1 (there are: %1)").arg(others);
    QVERIFY2(choices().contains(from), qPrintable(choices().join(u'\n')));
    QVERIFY(!copies().questions()->cell(0, QStringLiteral("wantsMore")).toBool());
    for (const QString &told : {copies().lookedAbout(), came()})
        QVERIFY2(!told.contains(QStringLiteral("difference now")) && !told.contains(u'@'),
                 qPrintable(told));
    copies().choose(0, 0);
    QVERIFY(!copies().lookedAbout().contains(QStringLiteral("difference now")));
    press("bringCopy");
    awaitShown();
    QTRY_COMPARE_WITH_TIMEOUT(copies().awayCount(), 0, 20000);
    QVERIFY2(copies().lookedAbout().contains(
                 QStringLiteral("What lacked of EC-100-S at H4 is a difference now.")),
             qPrintable(copies().lookedAbout()));
    QCOMPARE(all("EC-100-S", "H4"), 0);
}

void CountsOfBothAreAskedOnce::theBottomLineSaysTheLastThing()
{
    QTRY_VERIFY2(words("lastStep").startsWith(QStringLiteral("Brought back from hillside")),
                 qPrintable(words("lastStep")));
    QVERIFY2(m_desk->kept().startsWith(QStringLiteral("kept, ")), qPrintable(m_desk->kept()));
    trailerPicture("two-brought");
}

QTEST_MAIN(CountsOfBothAreAskedOnce)
#include "tst_counts_of_both_are_asked_once.moc"
