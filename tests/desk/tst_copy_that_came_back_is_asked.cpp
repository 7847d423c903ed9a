// SPDX-License-Identifier: MIT
//
// Promise: a copy that came back with work on a car that was done at home as well is asked about,
// in the person's language; what came is told as hands did it; that it was brought stays.
//
// The pieces are counted by hand beside each step.

#include "app/desk/language/language.h"
#include "app/desk/trailer/copies/brought_rows.h"
#include "app/garage/at_work.h"
#include "model/journal/notes/build_log.h"
#include "trailer_on_screen.h"

#include <QRegularExpression>

using namespace flarestock;

namespace {

/// Renews car 1's coarse element in a shop file, as another hand at another place would.
void renewIn(const QString &file, const char *from, const char *tag)
{
    auto shop = ShopFile::open(file.toStdString(), OpenMode::ReadWrite);
    QVERIFY2(shop, shop ? "" : shop.error().sentence().c_str());
    const auto workshop = Workshop::read(*shop).value();
    const auto garage = Garage::of(*workshop, *shop).value();
    WorkWords words;
    words.car = "car-1";
    words.position = "coarse element";
    words.from = words.oldTo = from;
    words.tag = tag;
    const auto done =
        replaced(words, garage, By{"the pit crew", "torn mesh", nowMilliseconds(), freshId()});
    QVERIFY2(done, done ? "" : done.error().sentence().c_str());
    const auto written = shop->append(done->action);
    QVERIFY2(written, written ? "" : written.error().sentence().c_str());
}

} // namespace

class CopyThatCameBackIsAsked : public QObject, protected TrailerOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void whatCameIsToldAsHandsDidIt();
    void whatIsSaidOfABuildHasItsTitle();
    void aRefusalComesIntoSight();
    void theQuestionIsGermanAtAGermanDesk();
    void itIsBroughtAsAnswered();
    void whatWasDecidedIsNotOfferedToGoBack();
    void thatItWasBroughtStays();
    void anUnknownCodeIsSaid();
    void theCopyItselfSaysThatItIsOne();
    void nothingIsWarnedAbout() { QCOMPARE(m_screens->warnings(), QStringList()); }
    void cleanupTestCase() { speak(QStringLiteral("en")); }

private:
    [[nodiscard]] QStringList told(const Rows &rows, const char *cell) const
    {
        QStringList all;
        for (int row = 0; row < rows.count(); ++row)
            all.append(rows.cell(row, QString::fromLatin1(cell)).toString());
        return all;
    }
    QString m_copy;
    std::int64_t m_atHome = 0;
    std::int64_t m_inTrailer = 0;
};

void CopyThatCameBackIsAsked::initTestCase()
{
    openTrailer();
    press("loadDrawer"); // The last deed at this desk before the copy goes.
    awaitShown();
    QCOMPARE(all("EM-40-S", "trailer-1"), 1);
    m_atHome = all("EC-100-S", "H4");
    m_inTrailer = all("EC-100-S", "trailer-1");
    QVERIFY(m_atHome > 0 && m_inTrailer > 0);
    m_copy = m_folder.filePath(QStringLiteral("lakeside.flarestock"));
    copies().take({{QStringLiteral("file"), m_copy},
                   {QStringLiteral("places"), QStringList{QStringLiteral("trailer-1")}}});
    awaitShown();
    QTRY_COMPARE_WITH_TIMEOUT(copies().awayCount(), 1, 20000);
    QCOMPARE(copies().expected(), m_copy); // It is offered where it lies at this machine.
    renewIn(m_copy, "trailer-1", "T-9");
    renewIn(m_file, "H4", "S-9");
    press("workCopies");
    copies().look(m_copy);
    QTRY_VERIFY_WITH_TIMEOUT(copies().hasLooked() && !copies().isBusy(), 30000);
}

void CopyThatCameBackIsAsked::whatCameIsToldAsHandsDidIt()
{
    const QStringList what = told(*copies().came(), "what");
    const QString all = (what + told(*copies().came(), "detail")).join(u'\n');
    QVERIFY2(all.contains(QStringLiteral("coarse element: EC-100-S replaced")), qPrintable(all));
    QVERIFY2(all.contains(QStringLiteral("called T-9 from then on")), qPrintable(all));
    QVERIFY2(!all.contains(QStringLiteral("ench →")), qPrintable(all)); // Out of the car it came.
    QVERIFY2(all.contains(QStringLiteral("torn mesh")), qPrintable(all));
}

/// Who takes a piece for a build that was tested opens it again: it is not done by that.
void CopyThatCameBackIsAsked::whatIsSaidOfABuildHasItsTitle()
{
    auto shop = ShopFile::open(m_file.toStdString(), OpenMode::ReadOnly).value();
    const auto workshop = Workshop::read(shop).value();
    BuildDone done;
    done.build = "coupe-fuel";
    BuildDone open = done;
    open.open = true;
    Promise promise;
    promise.build = "coupe-fuel";
    promise.part = "EG-10-S";
    promise.quantity = 2;
    Promise letGo = promise;
    letGo.quantity = -1;
    BroughtBack back;
    back.records = {done.asRecord(), open.asRecord(), promise.asRecord(), letGo.asRecord()};
    QStringList what;
    for (const Row &row : broughtRows(back, *workshop, Units::Metric))
        what.append(row.cells.at(0).toString());
    const QString build = QStringLiteral("Coupe, hill-climb: fuel for E85 injection");
    QCOMPARE(
        what,
        QStringList({build + QStringLiteral(" is done"), build + QStringLiteral(" is open again"),
                     QStringLiteral("promised to %1: 2 of EG-10-S").arg(build),
                     QStringLiteral("no more promised to %1: 1 of EG-10-S").arg(build)}));
}

void CopyThatCameBackIsAsked::aRefusalComesIntoSight()
{
    (void)pictureOf(*m_window, QSize(1024, 640));
    QCOMPARE(copies().openCount(), 1);
    press("bringCopy");
    QTRY_VERIFY(item("bringProblem") != nullptr);
    trailerPicture("asked", QSize(1024, 640));
    const QQuickItem *pane = item("copies");
    QTRY_VERIFY2(
        pane->mapRectToScene(pane->boundingRect())
            .contains(item("bringProblem")->mapRectToScene(item("bringProblem")->boundingRect())),
        "it is out of sight");
    QVERIFY(words("bringProblem").contains(QStringLiteral("One question is open")));
}

void CopyThatCameBackIsAsked::theQuestionIsGermanAtAGermanDesk()
{
    static const QRegularExpression english(
        QStringLiteral("\\b(the|were|had|been|out|both|what)\\b"));
    QVERIFY(speak(QStringLiteral("de")));
    copies().choose(0, 0);
    QVERIFY(copies().problem().isEmpty());
    const Rows &questions = *copies().questions();
    QStringList said = told(questions, "what");
    said += questions.cell(0, QStringLiteral("choices")).toStringList();
    QCOMPARE(said.size(), 5);
    for (const QString &one : said)
        QVERIFY2(!one.contains(english), qPrintable(one));
    QVERIFY2(said.first().contains(QStringLiteral("auf beiden Seiten")), qPrintable(said.first()));
    QVERIFY(speak(QStringLiteral("en")));
    copies().choose(0, 0);
}

/// Home first: the new one from H4 went out to the trailer, the one before it lies in H4. So each
/// has as many as before, and the car has one of them.
void CopyThatCameBackIsAsked::itIsBroughtAsAnswered()
{
    (void)pictureOf(*m_window, QSize(1440, 900));
    trailerPicture("answered");
    const QString question = told(*copies().questions(), "what").first();
    QVERIFY(question.contains(QStringLiteral("coarse element")));
    // Cars by their titles, days as people say them.
    QVERIFY2(question.contains(QStringLiteral("car 1: ")) &&
                 !question.contains(QStringLiteral("car-1")),
             qPrintable(question));
    QVERIFY2(!question.contains(QRegularExpression(QStringLiteral("\\d-\\d\\d-\\d"))),
             qPrintable(question));
    press("bringCopy");
    awaitShown();
    QTRY_COMPARE_WITH_TIMEOUT(copies().awayCount(), 0, 20000);
    QCOMPARE(all("EC-100-S", "H4"), m_atHome);           // One of them to be checked.
    QCOMPARE(all("EC-100-S", "trailer-1"), m_inTrailer); // The same.
    QCOMPARE(all("EC-100-S", "car-1"), 1);
    QVERIFY(ShopFile::verify(m_file.toStdString()).value().whole);
}

/// What both did is one work followed by the other now: neither goes back alone, as it would be
/// refused.
void CopyThatCameBackIsAsked::whatWasDecidedIsNotOfferedToGoBack()
{
    ServiceDesk &service = *m_desk->service();
    service.setLooking(true);
    QTRY_VERIFY_WITH_TIMEOUT(!service.isLoading(), 30000);
    service.setTab(QStringLiteral("car|car-1"));
    service.select(QStringLiteral("coarse element"));
    const Rows &card = *service.lines();
    int decided = 0;
    for (int row = 0; row < card.count(); ++row) {
        const QString detail = card.cell(row, QStringLiteral("detail")).toString();
        if (!detail.contains(QStringLiteral("decided when a copy was brought, and stays")))
            continue;
        ++decided;
        QCOMPARE(card.cell(row, QStringLiteral("back")).toString(), QString());
    }
    QCOMPARE(decided, 2);
    service.setLooking(false);
}

void CopyThatCameBackIsAsked::thatItWasBroughtStays()
{
    QVERIFY(m_desk->canTakeBack());
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitShown();
    QVERIFY2(m_desk->pen()->problem().contains(QStringLiteral("was brought stays")),
             qPrintable(m_desk->pen()->problem()));
    QCOMPARE(all("EM-40-S", "trailer-1"), 1); // What was done before it is not taken back instead.
    // What is done afterwards is taken back as ever, and no more.
    trailer().load()->tickAll();
    trailer().load()->finish(-1);
    awaitShown();
    const auto loaded = all("EG-10-S", "trailer-1") + all("EC-100-S", "trailer-1");
    m_desk->takeBack();
    awaitShown();
    QVERIFY(all("EG-10-S", "trailer-1") + all("EC-100-S", "trailer-1") <= loaded);
    m_desk->takeBack();
    awaitShown();
    QVERIFY(m_desk->pen()->problem().contains(QStringLiteral("was brought stays")));
    QCOMPARE(all("EM-40-S", "trailer-1"), 1);
}

void CopyThatCameBackIsAsked::anUnknownCodeIsSaid()
{
    press("workIn");
    Q_EMIT m_desk->scanned(QStringLiteral("NO-SUCH-1"));
    QTRY_VERIFY2(words("lastStep").contains(QStringLiteral("NO-SUCH-1")),
                 qPrintable(words("lastStep")));
    QVERIFY(words("findField").isEmpty());
}

void CopyThatCameBackIsAsked::theCopyItselfSaysThatItIsOne()
{
    QVERIFY(!m_desk->shopTitle().contains(QStringLiteral("copy")));
    QVERIFY(m_desk->openShopFile(m_copy));
    QVERIFY2(m_desk->shopTitle().contains(QStringLiteral("the copy lakeside")),
             qPrintable(m_desk->shopTitle()));
    QTRY_VERIFY_WITH_TIMEOUT(!trailer().isLoading() && !copies().isBusy(), 30000);
    press("workCopies");
    QTRY_VERIFY(item("tripLine") != nullptr);
    trailerPicture("in-the-copy");
    QVERIFY(item("releasePlace") == nullptr);
    QVERIFY(item("endTrip") == nullptr);
    // What is in the trailer is at hand before what lies at home.
    ServiceDesk &service = *m_desk->service();
    service.setLooking(true);
    QTRY_VERIFY_WITH_TIMEOUT(!service.isLoading(), 30000);
    service.setTab(QStringLiteral("car|car-1"));
    service.select(QStringLiteral("coarse element"));
    QVERIFY(service.form()->begin(QStringLiteral("replace")));
    const Rows &fields = *service.form()->fields();
    const QStringList from =
        fields.cell(fields.rowOf(QStringLiteral("from")), QStringLiteral("choices")).toStringList();
    QVERIFY2(from.size() > 2 && from.first().startsWith(QStringLiteral("trailer-1")),
             qPrintable(from.join(u'\n')));
}

QTEST_MAIN(CopyThatCameBackIsAsked)
#include "tst_copy_that_came_back_is_asked.moc"
