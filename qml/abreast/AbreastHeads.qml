// SPDX-License-Identifier: MIT
//
// The heads of the builds, by their days. Left and right walk them; with Ctrl they try the day of
// the one in hand earlier or later, with Shift besides by a week; Enter asks for a day.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property Rows heads
    required property AbreastColumns columns
    required property int column

    signal stepped(int by)
    signal chosen(int column)
    signal moved(int column, int days)
    signal dayAsked(int column)
    signal downAsked()

    activeFocusOnTab: true
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("builds by their days; Ctrl and an arrow tries another day")
    Keys.onLeftPressed: event => {
        if (event.modifiers & Qt.ControlModifier)
            root.moved(root.column, event.modifiers & Qt.ShiftModifier ? -7 : -1);
        else
            root.stepped(-1);
    }
    Keys.onRightPressed: event => {
        if (event.modifiers & Qt.ControlModifier)
            root.moved(root.column, event.modifiers & Qt.ShiftModifier ? 7 : 1);
        else
            root.stepped(1);
    }
    Keys.onDownPressed: root.downAsked()
    Keys.onReturnPressed: root.dayAsked(root.column)
    Keys.onEnterPressed: root.dayAsked(root.column)
    Keys.onSpacePressed: root.dayAsked(root.column)

    Item {
        width: root.columns.part
        height: parent.height
        visible: root.columns.count > 0

        Column {
            x: 12
            y: 8
            width: parent.width - 20
            spacing: 2

            Words {
                objectName: "abreastWhich"
                width: parent.width
                text: root.columns.shown < root.columns.count
                      ? Gaps.fillAll(qsTr("builds %1 to %2 of %3, the earliest first"),
                                     [root.columns.first + 1,
                                      root.columns.first + root.columns.shown,
                                      root.columns.count])
                      : qsTr("the earliest build first")
                small: true
                quiet: true
                wrapMode: Text.Wrap
            }
            Row {
                visible: root.columns.shown < root.columns.count
                spacing: 4

                DeskButton {
                    objectName: "earlierBuilds"
                    text: "◂"
                    focusPolicy: Qt.NoFocus
                    enabled: root.columns.first > 0
                    Accessible.name: qsTr("the builds before them")
                    onClicked: root.columns.show(root.columns.first - 1)
                }
                DeskButton {
                    objectName: "laterBuilds"
                    text: "▸"
                    focusPolicy: Qt.NoFocus
                    enabled: root.columns.first + root.columns.shown < root.columns.count
                    Accessible.name: qsTr("the builds after them")
                    onClicked: root.columns.show(root.columns.first + root.columns.shown)
                }
            }
        }
    }
    Repeater {
        model: Steps {
            of: root.heads
        }

        AbreastHead {
            id: head

            required property int index
            required property string key

            objectName: "abreastHead"
            visible: index >= root.columns.first
                     && index < root.columns.first + root.columns.shown
            x: root.columns.part + (index - root.columns.first) * root.columns.build
            width: root.columns.build
            height: root.height
            current: index === root.column
            inHand: current && root.activeFocus
            onClicked: {
                root.forceActiveFocus(Qt.MouseFocusReason);
                root.chosen(index);
            }
            onMoved: days => root.moved(index, days)
            onDayAsked: root.dayAsked(index)
        }
    }
}
