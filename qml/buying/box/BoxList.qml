// SPDX-License-Identifier: MIT
//
// What should be in a box. Up and down walk it, the space bar ticks, plus and minus count, Enter
// goes to the mark of the piece in hand.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property BoxPage box
    readonly property int row: list.currentIndex

    signal markAsked()

    function enter() {
        list.forceActiveFocus(Qt.OtherFocusReason);
    }
    function show(at: int) {
        list.currentIndex = at;
    }

    Timer {
        id: soon // Once the view has laid out what is there now, something of it is in hand.

        interval: 0
        onTriggered: {
            if (list.count > 0 && list.currentIndex < 0)
                list.currentIndex = 0;
        }
    }
    Connections {
        target: root.box

        function onTicked(row: int) {
            list.currentIndex = row;
            list.positionViewAtIndex(row, ListView.Contain);
        }
    }
    ListView {
        id: list

        objectName: "boxList"
        anchors.fill: parent
        anchors.margins: 2
        model: root.box.ticks
        clip: true
        focus: true
        activeFocusOnTab: true
        keyNavigationEnabled: true
        boundsBehavior: Flickable.StopAtBounds
        highlightMoveDuration: 0
        Accessible.role: Accessible.List
        Accessible.name: qsTr("what should be in the box, %1").arg(root.box.count)
        ScrollBar.vertical: SlimScrollBar {}
        onCountChanged: soon.restart()
        onCurrentIndexChanged: {
            root.box.row = currentIndex;
            soon.restart();
        }
        Keys.onSpacePressed: root.box.toggle(currentIndex)
        Keys.onReturnPressed: root.markAsked()
        Keys.onEnterPressed: root.markAsked()
        Keys.onPressed: event => {
            if (event.key !== Qt.Key_Plus && event.key !== Qt.Key_Minus)
                return;
            root.box.step(currentIndex, event.key === Qt.Key_Plus ? 1 : -1);
            event.accepted = true;
        }
        delegate: TickLine {
            objectName: "tickLine"
            width: list.width
            current: ListView.isCurrentItem
            inHand: list.activeFocus
            onClicked: {
                const wasInHand = list.currentIndex === index;
                list.currentIndex = index;
                root.enter();
                if (wasInHand || !full && came === "") // Else the touch only takes it in hand.
                    root.box.toggle(index);
            }
        }
    }
    FocusFrame {
        visible: list.activeFocus
    }
}
