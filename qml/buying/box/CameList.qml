// SPDX-License-Identifier: MIT
//
// What a box has brought, line by line, with what it did to cost.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

Flickable {
    id: root

    required property Rows rows

    objectName: "cameList"
    contentHeight: column.height
    clip: true
    activeFocusOnTab: true
    boundsBehavior: Flickable.StopAtBounds
    ScrollBar.vertical: SlimScrollBar {}
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("what came, %1").arg(root.rows.count)
    Keys.onUpPressed: contentY = Math.max(0, contentY - 40)
    Keys.onDownPressed: contentY = Math.min(Math.max(0, contentHeight - height), contentY + 40)

    Column {
        id: column

        width: root.width - 12
        spacing: 8

        Repeater {
            model: root.rows

            FactLine {
                width: column.width
            }
        }
    }
    FocusFrame {
        visible: root.activeFocus
    }
}
