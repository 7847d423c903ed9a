// SPDX-License-Identifier: MIT
//
// Tab walks all of a build, there and back, in the real window on the largest build of the demo
// shop: answers, map, what is open on it, bill, findings. Wherever the keyboard is one sees it: the
// stop has a size, nothing cuts it, and it looks otherwise than before.

#include "stock_on_screen.h"

using namespace flarestock;

namespace {

struct Walk {
    QStringList stops; ///< Names, in the order in which they come.
    QStringList wrong; ///< A sentence for each stop that nobody sees.
};

QRectF boxIn(const QQuickItem &item, const QQuickItem &view)
{
    return item.mapRectToItem(&view, QRectF(0, 0, item.width(), item.height()));
}

/// What is longer than its place has to fill it.
bool liesWithin(const QQuickItem &item, const QQuickItem &view)
{
    const QRectF box = boxIn(item, view);
    const QRectF seenOfIt = box & QRectF(0, 0, view.width(), view.height());
    return seenOfIt.width() >= std::min(box.width(), view.width()) - 1 &&
           seenOfIt.height() >= std::min(box.height(), view.height()) - 1;
}

/// With the frame that stands round it.
bool looksOtherwise(const QQuickItem &item, const QImage &before, const QImage &after)
{
    const QRect box = boxIn(item, *item.window()->contentItem()).toRect().adjusted(-6, -6, 6, 6);
    return before.copy(box) != after.copy(box);
}

/// Nothing where it is seen.
QString wrongWith(const QQuickItem &item, const QImage &before, const QImage &after)
{
    if (!item.isVisible() || !item.isEnabled())
        return QStringLiteral("is hidden, or takes no keys");
    if (item.width() < 8 || item.height() < 8)
        return QStringLiteral("has no size");
    for (const QQuickItem *view = item.parentItem(); view != nullptr; view = view->parentItem())
        if ((view->clip() || view == item.window()->contentItem()) && !liesWithin(item, *view))
            return QStringLiteral("is cut by ") + QLatin1String(view->metaObject()->className()) +
                   view->objectName();
    return looksOtherwise(item, before, after) ? QString() : QStringLiteral("looks as before");
}

} // namespace

class TabWalksAllOfABuild : public QObject, protected StockOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void altOneGivesTheKeyboardToTheLine();
    void everyStopIsSeen_data();
    void everyStopIsSeen();
    void answersKeepTheKeyboard_data();
    void answersKeepTheKeyboard();
    void whatIsWrittenOnStaysInSight();
    void whatIsFoldedAwayGivesTheKeyboardOn();
    void nothingIsWarnedAbout();

private:
    /// Laid out and painted.
    [[nodiscard]] QImage asItIsNow() const
    {
        QTest::qWait(2);
        (void)m_window->grabWindow();
        QTest::qWait(2);
        return m_window->grabWindow();
    }
    [[nodiscard]] Walk walked(Qt::Key tab, const QSize &size);
};

void TabWalksAllOfABuild::initTestCase()
{
    open();
    m_look->setInInches(false); // Answers in feet say millimetres beside, but where one types.
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-fuel")));
    QVERIFY(m_desk->build()->bill()->count() >= 30); // Longer than its list.
}

/// From the find field on, until it has come round.
Walk TabWalksAllOfABuild::walked(Qt::Key tab, const QSize &size)
{
    Walk walk;
    const QQuickItem *first = item("findField");
    item("findField")->forceActiveFocus();
    QImage before = pictureOf(*m_window, size);
    for (int at = 0; at < 120; ++at) {
        key(tab);
        const QImage after = asItIsNow();
        const QQuickItem *stop = m_window->activeFocusItem();
        if (stop == first)
            return walk;
        const QString name = focusName(*m_window);
        walk.stops.append(name);
        const QString wrong = wrongWith(*stop, before, after);
        if (!wrong.isEmpty())
            walk.wrong.append(QStringLiteral("stop %1, %2, %3").arg(at).arg(name, wrong));
        before = after;
    }
    walk.wrong.append(QStringLiteral("it does not come round"));
    return walk;
}

void TabWalksAllOfABuild::altOneGivesTheKeyboardToTheLine()
{
    showStock();
    key(Qt::Key_1, Qt::AltModifier);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("lineMap"));
    // Who comes back is where he left.
    item("byKind")->forceActiveFocus(Qt::TabFocusReason);
    showStock();
    key(Qt::Key_1, Qt::AltModifier);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("byKind"));
}

void TabWalksAllOfABuild::everyStopIsSeen_data()
{
    QTest::addColumn<QSize>("size");
    QTest::addColumn<QByteArray>("tabs"); // What is pressed before, so that it shows.
    QTest::addColumn<QStringList>("parts");
    const QSize large(1440, 900);
    const QSize low(1280, 720);
    const QSize small(1024, 640);
    const QStringList line =
        QStringLiteral("choice measure foldAnswers lineMap openedPanel way").split(u' ');
    const QStringList bill = QStringLiteral("byStation billEntry step-reserve").split(u' ');
    const QStringList findings = QStringLiteral("papers findingSlip mend").split(u' ');
    QTest::newRow("all at once") << large << QByteArray() << line + bill + findings;
    QTest::newRow("all answers") << large << QByteArray("foldAnswers") << bill + findings;
    QTest::newRow("low, all answers: findings")
        << low << QByteArray("foldAnswers tabBill") << findings;
    QTest::newRow("low: line") << low << QByteArray("pictureLine") << line;
    QTest::newRow("low: bill") << low << QByteArray("tabBill") << bill + findings;
    QTest::newRow("small: line") << small << QByteArray("pictureLine") << line;
    QTest::newRow("small: bill") << small << QByteArray("tabBill") << bill;
    QTest::newRow("small: findings") << small << QByteArray("tabFindings") << findings;
}

void TabWalksAllOfABuild::everyStopIsSeen()
{
    QFETCH(QSize, size);
    QFETCH(QByteArray, tabs);
    QFETCH(QStringList, parts);
    (void)pictureOf(*m_window, size);
    const bool unfolded = tabs.startsWith("foldAnswers");
    if (words("foldAnswers").startsWith(u"fewer") != unfolded)
        press("foldAnswers");
    if (tabs.contains("tab") || tabs.contains("picture"))
        press(tabs.mid(tabs.indexOf(' ') + 1).constData());
    const Walk on = walked(Qt::Key_Tab, size);
    QCOMPARE(on.wrong.join(u'\n'), QString());
    qsizetype last = 0;
    for (const QString &part : parts) {
        const qsizetype at = on.stops.indexOf(part);
        QVERIFY2(at >= last,
                 qPrintable(part + QStringLiteral(" is not next in ") + on.stops.join(u' ')));
        last = at;
    }
    const Walk back = walked(Qt::Key_Backtab, size);
    QCOMPARE(back.wrong.join(u'\n'), QString());
    parts.removeOne(QStringLiteral("findingSlip")); // From its button back one is past it.
    for (const QString &part : parts)
        QVERIFY2(back.stops.contains(part),
                 qPrintable(part + QStringLiteral(" is not in ") + back.stops.join(u' ')));
}

void TabWalksAllOfABuild::answersKeepTheKeyboard_data()
{
    QTest::addColumn<Qt::Key>("tab");
    QTest::newRow("forwards") << Qt::Key_Tab;
    QTest::newRow("backwards") << Qt::Key_Backtab;
}

/// At every width some answer is the last of its row; the next one must not push it out of it.
void TabWalksAllOfABuild::answersKeepTheKeyboard()
{
    QFETCH(Qt::Key, tab);
    const bool on = tab == Qt::Key_Tab;
    for (int width = 1200; width <= 1500; width += 20) {
        (void)pictureOf(*m_window, QSize(width, 900));
        item(on ? "anythingStopped" : "foldAnswers")->forceActiveFocus(Qt::TabFocusReason);
        int answers = 0;
        for (key(tab);; key(tab), ++answers) {
            (void)asItIsNow();
            const QString name = focusName(*m_window);
            if (name != QStringLiteral("measure") && name != QStringLiteral("choice"))
                break;
        }
        const QString where = focusName(*m_window) + QStringLiteral(" at %1").arg(width);
        QVERIFY2(where.startsWith(on ? u"foldAnswers" : u"anythingStopped"), qPrintable(where));
        QVERIFY2(answers > 5, qPrintable(where));
        // Nothing slipped into the next row, for which all would have been unfolded.
        QVERIFY2(words("foldAnswers").startsWith(u"all"), qPrintable(where));
    }
}

/// What is typed makes the last answer of the row so wide that it goes into the next.
void TabWalksAllOfABuild::whatIsWrittenOnStaysInSight()
{
    const QSize size(1440, 900);
    (void)pictureOf(*m_window, size);
    item("foldAnswers")->forceActiveFocus();
    key(Qt::Key_Backtab);
    QQuickItem *field = m_window->activeFocusItem();
    QCOMPARE(field->objectName(), QStringLiteral("measure"));
    const QImage before = pictureOf(*m_window, size);
    type("1234567890 and much more than there is room for on it");
    QTest::qWait(ScanEar::GapMost * 2);
    const QImage after = asItIsNow();
    QCOMPARE(m_window->activeFocusItem(), field);
    QCOMPARE(wrongWith(*field, before, after), QString());
    key(Qt::Key_Escape);
    (void)pictureOf(*m_window, size);
    press("foldAnswers"); // As it was.
}

void TabWalksAllOfABuild::whatIsFoldedAwayGivesTheKeyboardOn()
{
    (void)pictureOf(*m_window, QSize(1024, 640));
    press("tabBill");
    item("billList")->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_Return); // Shows its place on the map, where the bill is not seen.
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("lineMap"));
    key(Qt::Key_2, Qt::ControlModifier);
    QTRY_VERIFY(item("lineMap") == nullptr);
    QTRY_VERIFY(m_window->activeFocusItem()->isVisible());
    QVERIFY(m_window->activeFocusItem()->inherits("QQuickFlickable"));
    key(Qt::Key_1, Qt::ControlModifier);
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("lineMap"));
}

void TabWalksAllOfABuild::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(TabWalksAllOfABuild)
#include "tst_tab_walks_all_of_a_build.moc"
