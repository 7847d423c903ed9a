// SPDX-License-Identifier: MIT
//
// What a list changes of what the shop has, row by row; Space or Enter leaves one out, or takes it
// in again.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property ListImport list

    implicitHeight: head.height + 4 + lines.contentHeight

    Words {
        id: head

        width: root.width
        text: qsTr("What changes of what the shop has. Space leaves a row out.")
        strong: true
        wrapMode: Text.Wrap
    }
    TickedList {
        id: lines

        objectName: "changedList"
        anchors.fill: parent
        anchors.topMargin: head.height + 4
        model: root.list.changes
        Accessible.name: qsTr("what changes, %1").arg(count)
        onTicked: row => root.list.changes.toggle(row)
        delegate: ChangedLine {
            objectName: "changedLine"
            width: lines.width
            current: ListView.isCurrentItem && lines.activeFocus
            onClicked: {
                lines.currentIndex = index;
                lines.forceActiveFocus(Qt.MouseFocusReason);
                root.list.changes.toggle(index);
            }
        }
    }
}
