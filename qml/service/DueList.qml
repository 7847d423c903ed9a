// SPDX-License-Identifier: MIT
//
// What is due across all cars, by day and event.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property Rows rows
    required property string selected
    property string nothing: ""

    signal chosen(string key)
    signal entered()
    signal stepped(int tabs)

    WorkList {
        id: list

        objectName: "dueList"
        anchors.fill: parent
        anchors.margins: 1
        rows: root.rows
        selected: root.selected
        nothing: root.nothing
        Accessible.name: qsTr("what is due now or later, %1").arg(count)
        onChosen: key => root.chosen(key)
        onEntered: root.entered()
        onStepped: tabs => root.stepped(tabs)
        delegate: DueEntry {
            required property string key

            objectName: "dueEntry"
            width: list.width
            current: ListView.isCurrentItem
            inHand: list.activeFocus
            onClicked: {
                list.forceActiveFocus(Qt.MouseFocusReason);
                root.chosen(key);
            }
            onDoubleClicked: root.entered()
        }
    }
}
