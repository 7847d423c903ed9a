// SPDX-License-Identifier: MIT
//
// Promise: what is wrong on a sheet with fields is said without one of them moving, and the sheet
// stays within a window of 1024 × 640, the smallest that there is.

#include "parts_on_screen.h"

using namespace flarestock;

class FieldsStayWhereTheyAre : public QObject, protected PartsOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase()
    {
        open();
        (void)pictureOf(*m_window, Small);
    }
    void ofADeed();
    void ofASupplier();
    void ofACard();
    void nothingIsWarnedAbout() { QCOMPARE(m_screens->warnings(), QStringList()); }

private:
    static constexpr QSize Small{1024, 640};
    using Places = std::map<QString, QRectF>;
    /// The fields and buttons of the sheet, where they are in the window.
    [[nodiscard]] Places places() const
    {
        Places all;
        for (QQuickItem *one : allSeen(*m_window)) {
            for (const char *kind : {"field-", "choice-", "doDeed", "writeCard", "portWords"}) {
                if (one->objectName().startsWith(QLatin1String(kind)))
                    all[one->objectName()] = one->mapRectToScene(one->boundingRect());
            }
        }
        return all;
    }
    void sameAs(const Places &before) const
    {
        const Places now = places();
        QCOMPARE(now.size(), before.size());
        for (const auto &[name, place] : before)
            QVERIFY2(now.at(name) == place, qPrintable(name));
    }
    void isInSight(const char *name) const
    {
        const QQuickItem *one = item(name);
        QVERIFY2(one != nullptr, name);
        QVERIFY2(QRectF(QPointF(), Small).contains(one->mapRectToScene(one->boundingRect())), name);
    }
};

void FieldsStayWhereTheyAre::ofADeed()
{
    showStock();
    stock().select(QStringLiteral("AD-8-8"));
    press("deed-move");
    QTRY_VERIFY(item("field-to") != nullptr);
    write("field-to", "nowhere");
    const Places before = places();
    QVERIFY(before.size() >= 4);
    key(Qt::Key_Return);
    awaitWritten();
    QTRY_VERIFY(words("sheetProblem").contains(QStringLiteral("nowhere")));
    picture("move-refused-small", Small);
    sameAs(before);
    isInSight("sheetProblem");
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("field-to") == nullptr);
}

/// The sheet with the most fields.
void FieldsStayWhereTheyAre::ofASupplier()
{
    showParts();
    press("suppliers");
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("newSupplier"));
    key(Qt::Key_Return);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("field-supplier"));
    type("NFL");
    write("field-name", "New Forge Lines");
    write("field-freight", "5: 3.00");
    const Places before = places();
    QVERIFY(before.size() > 10);
    key(Qt::Key_Return);
    QTRY_VERIFY(words("sheetProblem").contains(QStringLiteral("begin at 0")));
    pictureOfParts("supplier-refused-small", Small);
    sameAs(before);
    isInSight("sheetProblem");
    isInSight("doDeed");
    isInSight("field-address");
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("field-freight") == nullptr);
    key(Qt::Key_Escape);
}

void FieldsStayWhereTheyAre::ofACard()
{
    key(Qt::Key_N, Qt::ControlModifier);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("field-part"));
    type("BR-43");
    const Places before = places();
    QVERIFY(before.size() > 5);
    key(Qt::Key_Return);
    QTRY_VERIFY(words("wrong-part").contains(QStringLiteral("already")));
    QTRY_VERIFY(words("wrong-description").contains(QStringLiteral("empty")));
    QVERIFY(words("sheetProblem").contains(QStringLiteral("not right")));
    pictureOfParts("wrong-small", Small);
    sameAs(before);
    isInSight("sheetProblem");
    isInSight("writeCard");
    key(Qt::Key_Escape);
    QTRY_VERIFY(item("writeCard") == nullptr);
}

QTEST_MAIN(FieldsStayWhereTheyAre)
#include "tst_fields_stay_where_they_are.moc"
