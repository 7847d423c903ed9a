// SPDX-License-Identifier: MIT
//
// Promise: what a hand takes after it has scanned a place, a lot or a part is what it has scanned:
// the pieces in hand lie there, whatever else lies elsewhere; a part that is scanned shows,
// whatever the list was narrowed to.
//
// EC-100-L lies in H4 and in trailer-1, EC-100-S as well; CL-38 in trailer-6 and not in trailer-3.

#include "app/workshop/clock.h"
#include "model/storage/trailer/travelling.h"
#include "stock_on_screen.h"

#include <QSignalSpy>

using namespace flarestock;

class PiecesInHandAreThoseMeant : public QObject, protected StockOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase()
    {
        open();
        showStock();
    }
    void aScannedPlaceGivesItsPieces();
    void theyAreTakenFromThere();
    void noMoreAreTakenThanLieThere();
    void whereNoneLieAnyMoreNoneAreInHand();
    void aScannedLotGivesItsPieces();
    void aScannedPartShowsWhateverItWasNarrowedTo();
    void enterWaitsForTheLinesThatAreSought();
    void escapeLeavesThePlace();
    void inACopyWhatIsElsewhereIsSaid();
    void nothingIsWarnedAbout() { QCOMPARE(m_screens->warnings(), QStringList()); }

private:
    [[nodiscard]] std::string inHandAt() const
    {
        const auto key = stock().panel()->key();
        return key ? key->place : std::string();
    }
    void scan(const char *code)
    {
        QVERIFY(stock().scan(QString::fromLatin1(code)));
        QTRY_VERIFY_WITH_TIMEOUT(!stock().isLoading(), 20000);
    }
};

void PiecesInHandAreThoseMeant::aScannedPlaceGivesItsPieces()
{
    stock().select(QStringLiteral("EC-100-S"));
    QTRY_COMPARE(inHandAt(), std::string("H4"));
    scan("trailer-1");
    QTRY_COMPARE(inHandAt(), std::string("trailer-1"));
    for (int row = 0; row < stock().rows()->count(); ++row) {
        stock().select(stock().rows()->numberAt(row));
        QTRY_COMPARE_WITH_TIMEOUT(inHandAt(), std::string("trailer-1"), 2000);
    }
    picture("scanned-place");
    scan("H4");
    stock().select(QStringLiteral("EC-100-S"));
    QTRY_COMPARE(inHandAt(), std::string("H4"));
    // By hand as well, and another may still be chosen.
    scan("trailer-1");
    stock().select(QStringLiteral("EC-100-S"));
    QTRY_VERIFY(stock().panel()->lying()->count() > 1);
    stock().panel()->setPieces(stock().panel()->lying()->cell(0, QStringLiteral("key")).toString());
    QCOMPARE(inHandAt(), std::string("H4"));
}

void PiecesInHandAreThoseMeant::theyAreTakenFromThere()
{
    const auto atHome = lies("EC-100-S", "H4");
    scan("trailer-1");
    stock().select(QStringLiteral("EC-100-S"));
    press("deed-take");
    QTRY_VERIFY(item("field-to") != nullptr || item("field-quantity") != nullptr);
    key(Qt::Key_Escape);
    press("deed-move");
    write("field-to", "trailer-3");
    key(Qt::Key_Return);
    awaitWritten();
    QTRY_VERIFY(item("field-to") == nullptr);
    QCOMPARE(lies("EC-100-S", "H4"), atHome);
    QCOMPARE(lies("EC-100-S", "trailer-1"), 0);
    QCOMPARE(lies("EC-100-S", "trailer-3"), 1);
}

void PiecesInHandAreThoseMeant::noMoreAreTakenThanLieThere()
{
    scan("trailer-6");
    stock().select(QStringLiteral("CL-38"));
    QTRY_COMPARE(inHandAt(), std::string("trailer-6"));
    press("deed-move");
    write("field-to", "trailer-3");
    item("field-quantity")->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_A, Qt::ControlModifier);
    type("999");
    key(Qt::Key_Return);
    QTRY_VERIFY(words("sheetProblem").startsWith(QStringLiteral("trailer-6 holds ")));
    QVERIFY(words("sheetProblem").contains(QStringLiteral("999 would go")));
    QCOMPARE(lies("CL-38", "trailer-3"), 0);
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("field-to") == nullptr);
}

/// The one of trailer-1 is gone: the next deed is not done with one of H4 instead.
void PiecesInHandAreThoseMeant::whereNoneLieAnyMoreNoneAreInHand()
{
    stock().panel()->show(nullptr, {});
    stock().clear();
    scan("EC-100-S");
    QTRY_COMPARE(inHandAt(), std::string("H4"));
    scan("trailer-1");
    QVERIFY2(inHandAt() != "H4", inHandAt().c_str());
    m_desk->takeBack();
    awaitWritten();
    QCOMPARE(lies("EC-100-S", "trailer-1"), 1);
}

void PiecesInHandAreThoseMeant::aScannedLotGivesItsPieces()
{
    const auto shop = Workshop::open(m_file.toStdString()).value();
    QStringList seen;
    for (const auto &[key, held] : shop->ledger.balances()) {
        const Place *place = shop->ledger.place(key.place);
        if (key.lot.empty() || !isStock(place->kind) || held.quantity <= 0)
            continue;
        const QString code = QString::fromStdString(key.part + "=" + key.lot);
        scan(qPrintable(code));
        QTRY_COMPARE(stock().selected(), QString::fromStdString(key.part));
        QTRY_VERIFY(stock().panel()->key().has_value());
        QCOMPARE(stock().panel()->key()->lot, key.lot);
        seen.append(code);
    }
    QVERIFY(seen.size() > 3);
}

void PiecesInHandAreThoseMeant::aScannedPartShowsWhateverItWasNarrowedTo()
{
    scan("trailer-3");
    scan("EC-100-S");
    QTRY_VERIFY(stock().rows()->rowOf(QStringLiteral("EC-100-S")) >= 0);
    QCOMPARE(stock().selected(), QStringLiteral("EC-100-S"));
    // Typed whole, as a slow scanner does; Enter.
    scan("trailer-3");
    key(Qt::Key_F, Qt::ControlModifier);
    type("EC-100-S", 60);
    QTRY_VERIFY_WITH_TIMEOUT(!stock().isLoading() && stock().rows()->count() == 0, 20000);
    key(Qt::Key_Return);
    QTRY_VERIFY(stock().rows()->rowOf(QStringLiteral("EC-100-S")) >= 0);
    QCOMPARE(stock().selected(), QStringLiteral("EC-100-S"));
    QTRY_COMPARE(words("findField"), QString());
    // What is no code leaves what was asked for.
    scan("trailer-3");
    key(Qt::Key_F, Qt::ControlModifier);
    type("no such thing", 60);
    QTRY_VERIFY_WITH_TIMEOUT(!stock().isLoading(), 20000);
    const QString asked = stock().heading();
    key(Qt::Key_Return);
    QVERIFY(stock().isNarrowed());
    QCOMPARE(stock().heading(), asked);
    QCOMPARE(focusName(*m_window), QStringLiteral("findField")); // There is no line to go to.
    stock().find({});
    QVERIFY2(stock().isNarrowed(), "the place was left as well");
}

/// Lines are sought away from the window: Enter pressed meanwhile is answered once they are there.
void PiecesInHandAreThoseMeant::enterWaitsForTheLinesThatAreSought()
{
    const QString element = QStringLiteral("EC-100-S");
    const QSignalSpy reached(&stock(), &StockDesk::linesReached);
    scan("trailer-3");
    stock().find(element);
    stock().reach(element);
    QVERIFY(stock().isLoading() && stock().isNarrowed());
    QTRY_COMPARE(stock().selected(), element);
    QVERIFY(stock().rows()->rowOf(element) >= 0);
    QCOMPARE(reached.count(), 0);
    stock().find(QStringLiteral("EC"));
    stock().reach(QStringLiteral("EC"));
    QCOMPARE(reached.count(), 0);
    QTRY_COMPARE(reached.count(), 1);
    QVERIFY(stock().rows()->count() > 1);
    stock().find(QStringLiteral("EC-1"));
    stock().reach(QStringLiteral("EC-1"));
    stock().find(QStringLiteral("EC-10")); // One types on.
    QTRY_VERIFY(!stock().isLoading());
    QCOMPARE(reached.count(), 1);
    stock().clear();
    QTRY_VERIFY(!stock().isLoading());
}

void PiecesInHandAreThoseMeant::escapeLeavesThePlace()
{
    scan("trailer-3");
    key(Qt::Key_F, Qt::ControlModifier);
    type("EC", 60);
    key(Qt::Key_Escape); // First what was typed …
    QCOMPARE(words("findField"), QString());
    QVERIFY(stock().isNarrowed());
    key(Qt::Key_Escape); // … then the place.
    QVERIFY(!stock().isNarrowed());
    scan("trailer-3");
    key(Qt::Key_F, Qt::ControlModifier);
    key(Qt::Key_Return);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("stockLine"));
    QVERIFY(stock().isNarrowed());
    key(Qt::Key_Escape);
    QVERIFY(!stock().isNarrowed());
}

void PiecesInHandAreThoseMeant::inACopyWhatIsElsewhereIsSaid()
{
    const auto caution = [this](const char *place) {
        scan(place);
        stock().select(QStringLiteral("EC-100-S"));
        if (!QTest::qWaitFor([&] { return inHandAt() == place; }) ||
            !stock().form()->begin(QStringLiteral("take")))
            return QStringLiteral("not begun");
        return stock().form()->caution();
    };
    QCOMPARE(caution("H4"), QString());
    const QString copy = m_folder.filePath(QStringLiteral("along.flarestock"));
    {
        auto shop = ShopFile::open(m_file.toStdString(), OpenMode::ReadWrite).value();
        const auto taken = Travelling::take(shop, copy.toStdString(), {"along", {}, {"trailer-1"}},
                                            {freshId(), "Kim", {}, nowMilliseconds()});
        QVERIFY2(taken, taken ? "" : taken.error().sentence().c_str());
    }
    QVERIFY(m_desk->openShopFile(copy));
    QTRY_VERIFY_WITH_TIMEOUT(stock().rows()->count() > 50, 20000);
    QVERIFY2(caution("H4").contains(QStringLiteral("H4 did not come along")),
             qPrintable(caution("H4")));
    QCOMPARE(caution("trailer-1"), QString());
}

QTEST_MAIN(PiecesInHandAreThoseMeant)
#include "tst_pieces_in_hand_are_those_meant.moc"
