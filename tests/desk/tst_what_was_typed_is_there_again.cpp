// SPDX-License-Identifier: MIT
//
// What is filled in on a sheet and not written down is there again at the next start where the desk
// ended in the midst of it, in the real window: a deed of the stock, a new card, a box that is
// ticked off, a list that is picked. What was written, or put away by its person, is not.

#include "desk_that_ends.h"

namespace flarestock {

class WhatWasTypedIsThereAgain : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aDeedIsFilledInAgain();
    void whatIsPutAwayIsGone();
    void aNewCardIsTypedOn();
    void aBoxIsTickedOn();
    void aListIsPickedOn();
    void ofAnotherDayAndShopNothing();
};

void WhatWasTypedIsThereAgain::aDeedIsFilledInAgain()
{
    QString left;
    {
        DeskThatEnds desk;
        desk.start({});
        desk.take("AD-8-8");
        desk.press("deed-move");
        desk.write("field-quantity", "7");
        left = desk.left();
    }
    QVERIFY(!left.isEmpty());
    DeskThatEnds desk;
    desk.start(left);
    QVERIFY2(desk.words("lastStep").contains(QStringLiteral("AD-8-8")),
             qPrintable(desk.words("lastStep")));
    desk.take("AD-8-8");
    desk.press("deed-move");
    QTRY_VERIFY(desk.item("field-quantity") != nullptr);
    QTRY_VERIFY(desk.words("field-quantity").endsWith(QLatin1Char('7')));
    QVERIFY(desk.item("ofBefore") != nullptr);
    QVERIFY(!desk.words("lastStep").contains(QStringLiteral("AD-8-8")));
    QCOMPARE(desk.left(), left); // Were it to end again.
}

void WhatWasTypedIsThereAgain::whatIsPutAwayIsGone()
{
    DeskThatEnds desk;
    desk.start({});
    desk.take("AD-8-8");
    desk.press("deed-scrap");
    QTRY_VERIFY(desk.item("doDeed") != nullptr);
    QVERIFY(desk.item("ofBefore") == nullptr);
    QVERIFY(desk.left().isEmpty()); // Nobody has typed anything.
    desk.write("field-quantity", "3");
    QVERIFY(!desk.left().isEmpty());
    desk.key(Qt::Key_Escape);
    QTRY_VERIFY(desk.item("doDeed") == nullptr);
    QVERIFY(desk.left().isEmpty());

    desk.press("deed-scrap");
    desk.write("field-why", "torn");
    QVERIFY(!desk.left().isEmpty());
    desk.press("doDeed");
    desk.awaitWritten();
    QTRY_VERIFY2(desk.item("doDeed") == nullptr, qPrintable(desk.words("sheetProblem")));
    QVERIFY(desk.left().isEmpty());
}

void WhatWasTypedIsThereAgain::aNewCardIsTypedOn()
{
    const auto begin = [](DeskThatEnds &desk) {
        desk.key(Qt::Key_6, Qt::AltModifier);
        QTRY_VERIFY(!desk.desk().parts()->isLoading());
        desk.key(Qt::Key_N, Qt::ControlModifier);
        QTRY_VERIFY(desk.card().isOpen());
    };
    QString left;
    {
        DeskThatEnds desk;
        desk.start({});
        begin(desk);
        QVERIFY(!desk.card().isOfBefore());
        QVERIFY(desk.left().isEmpty());
        desk.card().fill(QStringLiteral("part"), QStringLiteral("AD-99"));
        desk.card().wordPort(desk.card().ports()->cell(0, QStringLiteral("key")).toString(),
                             QStringLiteral("ORB -6 fem"));
        left = desk.left();
    }
    DeskThatEnds desk;
    desk.start(left);
    begin(desk);
    QVERIFY(desk.card().isOfBefore());
    QCOMPARE(desk.card().number(), QStringLiteral("AD-99"));
    QCOMPARE(desk.card().ports()->cell(0, QStringLiteral("words")).toString(),
             QStringLiteral("ORB -6 fem"));
    QCOMPARE(desk.card().ports()->count(), 1);
    desk.key(Qt::Key_Escape);
    QTRY_VERIFY(!desk.card().isOpen());
    QVERIFY(desk.left().isEmpty());
}

void WhatWasTypedIsThereAgain::aBoxIsTickedOn()
{
    QString left;
    QString order;
    QString count;
    {
        DeskThatEnds desk;
        desk.start({});
        order = desk.ordered();
        QVERIFY2(desk.box().open(order), qPrintable(order));
        QVERIFY(desk.left().isEmpty());
        desk.box().step(0, 1);
        desk.box().setDocument(QStringLiteral("DN 4411"));
        desk.box().beginTrouble(0);
        desk.box().form()->finish(
            {{QStringLiteral("fault"), 0}, {QStringLiteral("quantity"), QStringLiteral("1")}});
        count = desk.box().count();
        left = desk.left();
    }
    DeskThatEnds desk;
    desk.start(left);
    QVERIFY(desk.words("lastStep").contains(order));
    QCOMPARE(desk.ordered(), order);
    QVERIFY(desk.box().open(order));
    QCOMPARE(desk.box().document(), QStringLiteral("DN 4411"));
    QCOMPARE(desk.box().troubles()->count(), 1);
    QCOMPARE(desk.box().count(), count);
    QVERIFY(desk.box().count() != QStringLiteral("0 of 0 ticked"));
    desk.box().close();
    QVERIFY(desk.left().isEmpty());
    QVERIFY(desk.box().open(order));
    QVERIFY(desk.box().document().isEmpty());
}

void WhatWasTypedIsThereAgain::aListIsPickedOn()
{
    const auto reserve = [](DeskThatEnds &desk) {
        desk.key(Qt::Key_1, Qt::AltModifier);
        desk.press("step-reserve");
        desk.awaitWritten();
        QTRY_VERIFY(desk.desk().handing()->picks()->count() > 3);
    };
    QString left;
    {
        DeskThatEnds desk;
        desk.start({});
        reserve(desk);
        desk.desk().handing()->tick(1);
        desk.desk().handing()->tick(2);
        left = desk.left();
    }
    DeskThatEnds desk;
    desk.start(left);
    QCOMPARE(desk.desk().handing()->tickedCount(), 0);
    reserve(desk);
    QTRY_COMPARE(desk.desk().handing()->tickedCount(), 2);
    QVERIFY(desk.desk().handing()->picks()->cell(1, QStringLiteral("ticked")).toBool());
    desk.desk().handing()->issue(false);
    desk.awaitWritten();
    QTRY_COMPARE(desk.desk().handing()->tickedCount(), 0);
    QVERIFY(desk.left().isEmpty());
}

void WhatWasTypedIsThereAgain::ofAnotherDayAndShopNothing()
{
    const QString day =
        QDate::currentDate().addDays(-Unwritten::DaysKept - 1).toString(Qt::ISODate);
    Unwritten unwritten;
    QString is;
    QObject::connect(&unwritten, &Unwritten::kept, &unwritten,
                     [&is](const QString &, const QString &text) { is = text; });
    unwritten.setShop(
        QStringLiteral("a"),
        QStringLiteral(R"({"x":{"title":"X","day":"%1","filled":{"n":"1"}}})").arg(day));
    QVERIFY(unwritten.said().isEmpty());
    unwritten.keep(QStringLiteral("y"), QStringLiteral("Y"), {{QStringLiteral("n"), 2}});
    unwritten.setShop(QStringLiteral("b"), {}); // Told before it goes.
    QVERIFY(is.contains(QLatin1String("\"Y\"")) && !is.contains(QLatin1String("\"X\"")));
    QVERIFY(unwritten.takeUp(QStringLiteral("y")).isEmpty());
    unwritten.setShop(QStringLiteral("a"), is);
    QVERIFY(unwritten.said().contains(QStringLiteral("“Y”")));
    QCOMPARE(unwritten.takeUp(QStringLiteral("y")).value(QStringLiteral("n")).toInt(), 2);
    QVERIFY(unwritten.said().isEmpty());
    unwritten.setShop(QStringLiteral("c"), QStringLiteral("no such text {"));
    QVERIFY(unwritten.said().isEmpty());
}

} // namespace flarestock

QTEST_MAIN(flarestock::WhatWasTypedIsThereAgain)
#include "tst_what_was_typed_is_there_again.moc"
