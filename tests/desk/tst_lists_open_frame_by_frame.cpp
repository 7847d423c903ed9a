// SPDX-License-Identifier: MIT
//
// Where somebody sits at the window, a list that comes on the screen makes no line together with
// its rows, and then one with each frame; two lists beside one another take turns. The line that
// has been chosen is in hand all the same.

#include "app/desk/launch/screens.h"
#include "app/desk/rows/pace.h"
#include "app/desk/rows/rows.h"
#include "app/desk/shop/look.h"

#include <QQmlComponent>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTest>

using namespace flarestock;

namespace {

constexpr int InSight = 6;

/// Two lists of lines of 100, six of which are in sight; one keeps in hand what is chosen.
const char TwoLists[] = R"(
import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Window {
    id: root

    required property Rows rows
    property string chosen: ""
    property int made: 0

    width: 400
    height: 590
    visible: true

    component Line: Item {
        objectName: "line"
        width: 100
        height: 100
        Component.onCompleted: ++root.made
    }
    GroupedList {
        objectName: "left"
        width: 200
        height: parent.height
        model: root.rows
        delegate: Line {}
    }
    GroupedList {
        id: right

        objectName: "right"
        x: 200
        width: 200
        height: parent.height
        model: root.rows
        delegate: Line {}

        ChosenLine {
            list: right
            rows: root.rows
            chosen: root.chosen
        }
    }
}
)";

std::vector<Row> rowsOf(int count)
{
    std::vector<Row> rows;
    rows.reserve(static_cast<std::size_t>(count));
    for (int at = 0; at < count; ++at)
        rows.push_back({QString::number(at), {at}});
    return rows;
}

} // namespace

class ListsOpenFrameByFrame : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { Pace::instance().setInSteps(true); }
    void cleanup() { Pace::instance().setInSteps(false); }
    void oneLineWithEachFrame();
    void aFrameIsTakenOnce();

private:
    QQuickWindow *m_window = nullptr;
};

void ListsOpenFrameByFrame::oneLineWithEachFrame()
{
    const Look look(nullptr);
    Screens screens;
    Rows rows({QStringLiteral("value")});
    QQmlComponent component(&screens.engine());
    component.setData(TwoLists, QUrl(QStringLiteral("qrc:/two_lists.qml")));
    const std::unique_ptr<QObject> made(component.createWithInitialProperties(
        {{QStringLiteral("rows"), QVariant::fromValue(&rows)}}));
    QVERIFY2(made, qPrintable(component.errorString()));
    m_window = qobject_cast<QQuickWindow *>(made.get());
    QVERIFY(QTest::qWaitForWindowExposed(m_window));
    QTest::qWait(100); // It is on the screen, and empty.
    int before = 0;
    int most = 0;
    connect(m_window, &QQuickWindow::frameSwapped, this, [&] {
        const int now = m_window->property("made").toInt();
        most = std::max(most, now - std::exchange(before, now));
    });
    rows.become(rowsOf(40));
    m_window->setProperty("chosen", QStringLiteral("2"));
    QCOMPARE(m_window->property("made").toInt(), 0);
    const auto *right = m_window->findChild<QQuickItem *>(QStringLiteral("right"));
    QTRY_COMPARE(right->property("currentIndex").toInt(), 2);
    QTRY_COMPARE(m_window->property("made").toInt(), 2 * InSight);
    QTest::qWait(100);
    QCOMPARE(m_window->property("made").toInt(), 2 * InSight); // Nothing out of sight is made.
    QVERIFY2(most <= 2, qPrintable(QString::number(most))); // Frames may be longer than the pace.
}

void ListsOpenFrameByFrame::aFrameIsTakenOnce()
{
    QTest::qWait(2 * Pace::FrameMs);
    QVERIFY(Pace::instance().takesFrame());
    QVERIFY(!Pace::instance().takesFrame());
    QTest::qWait(2 * Pace::FrameMs);
    QVERIFY(Pace::instance().takesFrame());
}

QTEST_MAIN(ListsOpenFrameByFrame)
#include "tst_lists_open_frame_by_frame.moc"
