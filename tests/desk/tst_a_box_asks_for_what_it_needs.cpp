// SPDX-License-Identifier: MIT
//
// A box on the bench asks for no more than it has to know, and its buttons stand where the hand has
// found them before, whatever is in hand: a heap, a pump, what lies in its box, a length of hose.

#include "buying_on_screen.h"

using namespace flarestock;

class BoxAsksForWhatItNeeds : public QObject, protected BuyingOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void whichPartCameIsAskedOfAnotherOne();
    void anotherOneThatWasTypedIsThereAgain();
    void itsButtonsKeepTheirColumns_data();
    void itsButtonsKeepTheirColumns();
    void nothingIsWarnedAbout();

private:
    [[nodiscard]] BoxPage &box() const { return *buying().box(); }
    void bringIntoHand(int row)
    {
        item("boxList")->setProperty("currentIndex", row);
        QTRY_COMPARE(box().row(), row);
    }
    void choose(const char *direction) // Of what is wrong.
    {
        item("choice-fault")->forceActiveFocus(Qt::TabFocusReason);
        key(*direction == 'v' ? Qt::Key_Down : Qt::Key_Up);
    }
    void writeOver(const char *field, const char *text)
    {
        write(field, "");
        key(Qt::Key_A, Qt::ControlModifier);
        type(text);
    }
};

void BoxAsksForWhatItNeeds::initTestCase()
{
    open();
    showBuying();
    OrdersPage &orders = *buying().orders();
    const auto add = [&](const char *deed, const char *part, const char *quantity) {
        QVERIFY(orders.begin(QString::fromLatin1(deed)));
        orders.form()->finish({{QStringLiteral("supplier"), 5},
                               {QStringLiteral("part"), QString::fromLatin1(part)},
                               {QStringLiteral("quantity"), QString::fromLatin1(quantity)},
                               {QStringLiteral("price"), QStringLiteral("4.00")}});
        awaitBuying();
        QVERIFY2(m_desk->pen()->problem().isEmpty(), qPrintable(m_desk->pen()->problem()));
    };
    add("new", "AD-6-6", "12");
    add("change", "EP-460M", "1");
    add("change", "GR-8", "20 ft");
    QVERIFY(orders.begin(QStringLiteral("place")));
    orders.form()->finish({});
    awaitBuying();
    key(Qt::Key_3, Qt::ControlModifier);
    press("deed-receive");
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("tickLine"));
}

void BoxAsksForWhatItNeeds::whichPartCameIsAskedOfAnotherOne()
{
    bringIntoHand(0);
    press("trouble");
    QTRY_VERIFY(item("choice-fault") != nullptr);
    QVERIFY(item("field-came") == nullptr); // The right one came, damaged.
    writeOver("field-quantity", "2");
    choose("v");
    QVERIFY(item("field-came") == nullptr); // None came.
    choose("v");
    QTRY_VERIFY(item("field-came") != nullptr);
    QCOMPARE(words("field-quantity"), QStringLiteral("2")); // What was typed stays.
    choose("^");
    QTRY_VERIFY(item("field-came") == nullptr);
    choose("v");
    QTRY_VERIFY(item("field-came") != nullptr);
    write("field-came", "AD-8-8");
    pictureOfBuying("another-came");
    press("doDeed");
    QTRY_COMPARE(box().troubles()->count(), 1);
    QVERIFY2(cell(box().troubles(), 0, "sentence").contains(QStringLiteral("AD-8-8")),
             qPrintable(cell(box().troubles(), 0, "sentence")));
    QTRY_VERIFY(item("choice-fault") == nullptr);
    press("trouble"); // The next time it is as at first.
    QTRY_VERIFY(item("choice-fault") != nullptr);
    QVERIFY(item("field-came") == nullptr);
    press("doDeed");
    QTRY_COMPARE(box().troubles()->count(), 2);
    QTRY_VERIFY(item("choice-fault") == nullptr);
}

/// Where the desk ends in the midst of it.
void BoxAsksForWhatItNeeds::anotherOneThatWasTypedIsThereAgain()
{
    TroubleForm &form = *box().form();
    box().beginTrouble(0);
    const QString name = form.title() + QLatin1Char('\n') + form.about();
    m_desk->pen()->unwritten().keep(name, form.title(),
                                    {{QStringLiteral("fault"), 2},
                                     {QStringLiteral("quantity"), QStringLiteral("3")},
                                     {QStringLiteral("came"), QStringLiteral("AD-8-4")}});
    press("trouble");
    QTRY_COMPARE(words("field-came"), QStringLiteral("AD-8-4"));
    QCOMPARE(words("field-quantity"), QStringLiteral("3"));
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("choice-fault") == nullptr);
}

void BoxAsksForWhatItNeeds::itsButtonsKeepTheirColumns_data()
{
    QTest::addColumn<QSize>("size");
    QTest::newRow("small") << QSize(1024, 640);
    QTest::newRow("as it opens") << QSize(1440, 900);
}

void BoxAsksForWhatItNeeds::itsButtonsKeepTheirColumns()
{
    QFETCH(QSize, size);
    (void)pictureOf(*m_window, size);
    Rows *ticks = box().ticks();
    std::map<QByteArray, std::vector<qreal>> columns;
    QStringList kinds;
    for (int row = 0; row < ticks->count(); ++row) {
        bringIntoHand(row);
        pictureOfBuying(qPrintable(QStringLiteral("in-hand-%1-%2").arg(row).arg(size.width())),
                        size);
        for (const char *name : {"oneLess", "oneMore", "trouble"}) {
            if (const QQuickItem *button = item(name)) {
                QVERIFY(button->mapToScene({button->width(), 0}).x() < size.width());
                columns[name].push_back(button->mapToScene({0, 0}).x());
            }
        }
        for (const char *kind : {"length", "content"})
            if (ticks->cell(row, QString::fromLatin1(kind)).toBool())
                kinds.append(QString::fromLatin1(kind));
        if (!cell(ticks, row, "markHint").isEmpty())
            kinds.append(QStringLiteral("marked"));
    }
    QVERIFY(ticks->count() > 4);
    for (const char *kind : {"length", "content", "marked"})
        QVERIFY2(kinds.contains(QLatin1String(kind)), kind);
    QCOMPARE(columns.size(), std::size_t(3));
    for (const auto &[name, at] : columns) {
        QVERIFY2(at.size() > 1, name.constData());
        for (const qreal x : at)
            QVERIFY2(qAbs(x - at.front()) < 0.5, name.constData());
    }
}

void BoxAsksForWhatItNeeds::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(BoxAsksForWhatItNeeds)
#include "tst_a_box_asks_for_what_it_needs.moc"
