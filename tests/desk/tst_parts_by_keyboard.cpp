// SPDX-License-Identifier: MIT
//
// A hand in the card index, by keyboard alone, in the real window on the demo shop: a card is
// found, a new adapter is written and its mating seen while it is typed, it stands in the index, is
// taken back and gone; a card is changed; an offer is written.

#include "app/workshop/worked_build.h"
#include "parts_on_screen.h"

#include <QSignalSpy>

using namespace flarestock;

class PartsByKeyboard : public QObject, protected PartsOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase()
    {
        open();
        showParts();
    }
    void theFindFieldFindsACard();
    void aCardSaysWhichBuildsTakeIt();
    void aPortShowsWhatItMeets();
    void aNewCardIsWrittenAndTakenBack();
    void whatIsWrongIsSaidAtItsField();
    void aTeeOfOnePortIsOdd();
    void aCardIsChangedAndIsAsItWas();
    void anOfferIsWritten();
    void aSupplierIsWritten();
    void nothingIsWarnedAbout();

private:
    [[nodiscard]] QString meeting(const QString &port) const
    {
        const Rows &all = *parts().editor()->meetings();
        return all.cell(all.rowOf(port), QStringLiteral("verdict")).toString();
    }
};

void PartsByKeyboard::theFindFieldFindsACard()
{
    const int all = parts().rows()->count();
    key(Qt::Key_F, Qt::ControlModifier);
    type("regulator orb -6");
    QTRY_VERIFY(parts().rows()->count() < all && parts().rows()->count() > 0);
    key(Qt::Key_Return);
    takeCard("BR-43");
    QTRY_COMPARE(words("cardNumber"), QStringLiteral("BR-43"));
    key(Qt::Key_F, Qt::ControlModifier);
    key(Qt::Key_Escape);
    QTRY_COMPARE(parts().rows()->count(), all);
    QCOMPARE(parts().selected(), QStringLiteral("BR-43"));
    pictureOfParts("light");
}

/// Those whose own bill has it.
void PartsByKeyboard::aCardSaysWhichBuildsTakeIt()
{
    const auto shop = inFile();
    const BuildPlan *plan = shop->build("coupe-fuel");
    const auto worked = workBuild(*shop, *plan);
    QVERIFY(plan != nullptr && worked && !worked->expansion.lines.empty());
    takeCard(worked->expansion.lines.front().part->number.c_str());
    const auto isUsed = [&] {
        const Rows &links = *parts().links();
        for (int row = 0; row < links.count(); ++row) {
            if (links.cell(row, QStringLiteral("title")).toString().toStdString() == plan->title)
                return true;
        }
        return false;
    };
    QTRY_VERIFY_WITH_TIMEOUT(isUsed(), 60000); // All of them are worked out away from the window.
    pictureOfParts("used");
}

/// A boss of size -6 takes a male one of that size with its O-ring (SAE J1926-1); a flare of that
/// size has the same thread, 9/16-18, and meets nothing there to seal on (SAE J514).
void PartsByKeyboard::aPortShowsWhatItMeets()
{
    takeCard("BR-43");
    key(Qt::Key_Return);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("cardView"));
    press("portTag");
    QTRY_VERIFY(item("meetingLine") != nullptr);
    QCOMPARE(parts().portWords(), QStringLiteral("ORB -6 female"));
    const Rows &met = *parts().meetings();
    QVERIFY(met.cell(met.rowOf(QStringLiteral("ORB -6 male")), QStringLiteral("detail"))
                .toString()
                .contains(QStringLiteral("AS568-906")));
    QVERIFY(met.cell(met.rowOf(QStringLiteral("AN -6 male")), QStringLiteral("verdict"))
                .toString()
                .contains(QStringLiteral("leaks")));
    pictureOfParts("meets");
    press("portTag");
    QTRY_VERIFY(item("meetingLine") == nullptr);
}

void PartsByKeyboard::aNewCardIsWrittenAndTakenBack()
{
    key(Qt::Key_F, Qt::ControlModifier);
    key(Qt::Key_Escape);
    QTRY_VERIFY(parts().rows()->count() > 100);
    const int all = parts().rows()->count();
    const QSignalSpy remade(parts().rows(), &QAbstractItemModel::modelReset);
    const QSignalSpy madeOnceMore(parts().rows(), &QAbstractItemModel::dataChanged);
    key(Qt::Key_N, Qt::ControlModifier);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("field-part"));
    type("ZZ-ORB6-AN8");
    write("field-description", "adapter, boss -6 to flare -8");
    write("portWords", "orb -6 male");
    QTRY_VERIFY(meeting(QStringLiteral("ORB -6 female")).contains(QStringLiteral("needs")));
    QVERIFY(words("portNote").contains(QStringLiteral("9/16-18")));
    QVERIFY(words("portNote").contains(QStringLiteral("cards fit it")));
    pictureOfParts("new");
    press("addPort");
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("portWords"));
    type("AN -8 ma"); // Half typed, it says so, and meets nothing.
    QVERIFY(parts().editor()->meetings()->count() == 0);
    type("le");
    QTRY_VERIFY(meeting(QStringLiteral("AN -8 female swivel")).contains(QStringLiteral("made")));
    key(Qt::Key_Return);
    awaitCards();
    QTRY_VERIFY2(item("writeCard") == nullptr, qPrintable(words("sheetProblem")));
    QTRY_COMPARE(parts().rows()->count(), all + 1);
    QCOMPARE(parts().selected(), QStringLiteral("ZZ-ORB6-AN8"));
    QCOMPARE(words("lastStep"), QStringLiteral("Card ZZ-ORB6-AN8 written."));
    QVERIFY(inFile()->catalogue.find("ZZ-ORB6-AN8") != nullptr);
    QTest::qWait(2500); // The desk hears that somebody has written: it was the desk itself.
    QCOMPARE(parts().rows()->count(), all + 1);
    QCOMPARE(remade.count(), 1);
    QCOMPARE(madeOnceMore.count(), 0);
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitCards();
    QTRY_VERIFY(words("lastStep").startsWith(QStringLiteral("Taken back: ")));
    QTRY_COMPARE(parts().rows()->count(), all);
    QVERIFY(inFile()->catalogue.find("ZZ-ORB6-AN8") == nullptr);
    QVERIFY(parts().rows()->rowOf(parts().selected()) >= 0);
}

void PartsByKeyboard::whatIsWrongIsSaidAtItsField()
{
    key(Qt::Key_N, Qt::ControlModifier);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("field-part"));
    QVERIFY(parts().editor()->standing().contains(QStringLiteral("still to be filled in")));
    type("BR-43");
    QTRY_VERIFY(words("wrong-part").contains(QStringLiteral("already")));
    write("field-rated", "500 psy");
    QTRY_VERIFY(words("wrong-rated").contains(QStringLiteral("psy")));
    press("writeCard");
    QTRY_VERIFY(words("wrong-description").contains(QStringLiteral("empty")));
    QVERIFY(words("sheetProblem").contains(QStringLiteral("not right")));
    pictureOfParts("wrong");
    // What was said of the card is said of it as it is now: two fields fewer are wrong.
    const QString before = words("sheetProblem");
    write("field-rated", "500 psi");
    QTRY_VERIFY(words("sheetProblem") != before);
    QVERIFY(words("sheetProblem").contains(QStringLiteral("not right")));
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("writeCard") == nullptr);
}

/// It is said, and forbids nothing.
void PartsByKeyboard::aTeeOfOnePortIsOdd()
{
    key(Qt::Key_N, Qt::ControlModifier);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("field-part"));
    type("ZZ-TEE");
    write("field-description", "one more tee");
    item("choice-kind")->forceActiveFocus(Qt::TabFocusReason);
    type("tee");
    QTRY_COMPARE(item("choice-kind")->property("displayText").toString(), QStringLiteral("tee"));
    write("portWords", "AN -6 male");
    QTRY_VERIFY2(parts().editor()->isWhole(), qPrintable(words("cardStanding")));
    QTRY_VERIFY2(words("cardStanding").contains(QStringLiteral("3 ports, here 1")),
                 qPrintable(words("cardStanding")));
    pictureOfParts("odd-tee");
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("writeCard") == nullptr);
}

void PartsByKeyboard::aCardIsChangedAndIsAsItWas()
{
    const auto texts = [this] {
        return ShopFile::open(m_file.toStdString(), OpenMode::ReadOnly)->documents().value();
    };
    const TextFiles before = texts();
    takeCard("AD-6-8");
    press("card-change");
    QTRY_VERIFY(item("field-description") != nullptr);
    write("field-description", "adapter, seen twice");
    key(Qt::Key_Return);
    awaitCards();
    QTRY_VERIFY(item("writeCard") == nullptr);
    QCOMPARE(inFile()->catalogue.find("AD-6-8")->description, std::string("adapter, seen twice"));
    QTRY_COMPARE(parts().selected(), QStringLiteral("AD-6-8"));
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitCards();
    QTRY_VERIFY(words("lastStep").startsWith(QStringLiteral("Taken back: ")));
    QVERIFY(texts() == before);
}

void PartsByKeyboard::anOfferIsWritten()
{
    takeCard("AD-6-8");
    const auto offers = [this] {
        const auto shop = inFile();
        return shop->catalogue.offers(*shop->catalogue.find("AD-6-8")).size();
    };
    const std::size_t before = offers();
    press("card-offer");
    QTRY_VERIFY(item("field-prices") != nullptr);
    // It is in the currency that its supplier asks in, whoever is chosen, until somebody says so.
    const auto chosen = [this](const char *id) {
        const auto shop = inFile();
        const auto all = shop->catalogue.suppliers();
        const auto at = std::find_if(all.begin(), all.end(),
                                     [id](const Supplier &one) { return one.id == id; });
        item("choice-supplier")->setProperty("currentIndex", static_cast<int>(at - all.begin()));
    };
    const auto currency = [this] { return item("field-currency")->property("text").toString(); };
    write("field-supplier part", "X-1");
    chosen("HAL");
    QTRY_COMPARE(currency(), QStringLiteral("EUR"));
    chosen("NHT");
    QTRY_COMPARE(currency(), QStringLiteral("USD"));
    QCOMPARE(item("field-supplier part")->property("text").toString(), QStringLiteral("X-1"));
    write("field-prices", "10: 4.00; 1: 5.00");
    key(Qt::Key_Return);
    QTRY_VERIFY(words("sheetProblem").contains(QStringLiteral("rise")));
    key(Qt::Key_A, Qt::ControlModifier);
    type("1: 5.00; 10: 4.00");
    pictureOfParts("offer");
    key(Qt::Key_Return);
    awaitCards();
    QTRY_VERIFY(item("field-prices") == nullptr);
    QCOMPARE(offers(), before + 1);
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitCards();
    QTRY_COMPARE(offers(), before);
}

void PartsByKeyboard::aSupplierIsWritten()
{
    const std::size_t before = inFile()->catalogue.suppliers().size();
    press("suppliers");
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("newSupplier"));
    key(Qt::Key_Return);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("field-supplier"));
    type("NFL");
    write("field-name", "New Forge Lines");
    write("field-freight", "5: 3.00");
    key(Qt::Key_Return);
    QTRY_VERIFY(words("sheetProblem").contains(QStringLiteral("begin at 0")));
    key(Qt::Key_A, Qt::ControlModifier);
    type("0: 3.00");
    pictureOfParts("supplier");
    key(Qt::Key_Return);
    awaitCards();
    QTRY_VERIFY2(item("field-freight") == nullptr, qPrintable(words("sheetProblem")));
    const auto shop = inFile();
    QCOMPARE(shop->catalogue.suppliers().size(), before + 1);
    QCOMPARE(words("lastStep"), QStringLiteral("Supplier New Forge Lines written down."));
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitCards();
    QTRY_COMPARE(inFile()->catalogue.suppliers().size(), before);
}

void PartsByKeyboard::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(PartsByKeyboard)
#include "tst_parts_by_keyboard.moc"
