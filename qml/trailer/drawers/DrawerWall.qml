// SPDX-License-Identifier: MIT
//
// The trailer with its drawers. Arrow keys walk them and pull the one in hand out, Enter goes to
// what lies in it.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property Rows drawers
    required property string pulledOut
    property string nothing: ""
    property bool withWheels: true // There is room to draw what it stands on.

    readonly property int across: width >= 640 ? 3 : 2
    readonly property int down: Math.ceil(drawers.count / across)
    readonly property real wanted: down * 104 + 16 + (withWheels ? 34 : 0)

    signal chosen(string drawer)
    signal entered()

    function enter() {
        grid.forceActiveFocus(Qt.OtherFocusReason);
    }
    function goTo(row: int) {
        if (row >= 0 && row < drawers.count)
            root.chosen(drawers.cell(row, "key"));
    }

    ChosenLine {
        list: grid
        rows: root.drawers
        chosen: root.pulledOut
    }
    Rectangle {
        id: body

        width: parent.width - (root.withWheels ? 26 : 0)
        height: parent.height - (root.withWheels ? 34 : 0)
        radius: 10
        color: Theme.side
        border.color: Theme.ruleStrong
        border.width: Theme.ring

        GridView {
            id: grid

            objectName: "drawerWall"
            anchors.fill: parent
            anchors.margins: 8
            model: root.drawers
            displayMarginEnd: unfolding.margin
            clip: true
            cacheBuffer: 0
            focus: true
            activeFocusOnTab: true
            keyNavigationEnabled: false
            boundsBehavior: Flickable.StopAtBounds
            highlightMoveDuration: 0
            cellWidth: Math.floor(width / root.across)
            cellHeight: Math.max(100, Math.min(root.withWheels ? 124 : 160,
                                               Math.floor(height / Math.max(1, root.down))))
            Accessible.role: Accessible.List
            Accessible.name: qsTr("drawers of the trailer")
            ScrollBar.vertical: SlimScrollBar {}
            Keys.onLeftPressed: root.goTo(currentIndex - 1)
            Keys.onRightPressed: root.goTo(currentIndex + 1)
            Keys.onUpPressed: root.goTo(currentIndex - root.across)
            Keys.onDownPressed: root.goTo(currentIndex + root.across)
            Keys.onReturnPressed: root.entered()
            Keys.onEnterPressed: root.entered()

            Unfolding {
                id: unfolding

                list: grid
                step: grid.cellHeight
            }

            delegate: Item {
                id: cell

                required property int index
                required property string key
                required property string title
                required property string count
                required property string stands
                required property int mark
                required property int there
                required property int lack
                required property int over
                required property string away
                required property string says

                objectName: "drawerCell"
                width: grid.cellWidth
                height: grid.cellHeight

                DrawerFront {
                    anchors.fill: parent
                    anchors.margins: 3
                    key: cell.key
                    title: cell.title
                    count: cell.count
                    stands: cell.stands
                    mark: cell.mark
                    there: cell.there
                    lack: cell.lack
                    over: cell.over
                    away: cell.away
                    says: cell.says
                    current: cell.GridView.isCurrentItem
                    inHand: grid.activeFocus
                    onClicked: {
                        root.enter();
                        root.chosen(key);
                    }
                    onDoubleClicked: root.entered()
                }
            }
        }
        Words {
            anchors.centerIn: parent
            width: parent.width - 48
            visible: text !== ""
            text: root.nothing
            quiet: true
            wrapMode: Text.Wrap
            horizontalAlignment: Text.AlignHCenter
        }
    }
    Item {
        visible: root.withWheels
        anchors.top: body.bottom
        width: parent.width
        height: 34

        Repeater {
            model: 2

            Rectangle { // A wheel.
                required property int index

                x: body.width * 0.5 - 36 + index * 40
                y: -8
                width: 34
                height: 34
                radius: 17
                color: Theme.window
                border.color: Theme.pipe
                border.width: 5
            }
        }
        Rectangle { // The drawbar.
            x: body.width
            y: -8
            width: 24
            height: 4
            color: Theme.pipe
        }
        Rectangle { // Its leg.
            x: body.width + 14
            y: -4
            width: 3
            height: 30
            color: Theme.pipe
        }
        Rectangle { // The ground.
            y: 27
            width: parent.width
            height: 1
            color: Theme.rule
        }
    }
}
