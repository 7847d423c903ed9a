// SPDX-License-Identifier: MIT
//
// A column that scrolls where it is longer than its place; what gets the keyboard comes into sight.

import QtQuick
import QtQuick.Controls
import Flarestock.Screens

Flickable {
    id: root

    required property string name
    default property alias work: column.data

    function show(item: Item) {
        sight.show(item);
    }

    contentHeight: column.height
    boundsBehavior: Flickable.StopAtBounds
    clip: true
    activeFocusOnTab: contentHeight > height
    Accessible.role: Accessible.Pane
    Accessible.name: name
    ScrollBar.vertical: SlimScrollBar {}
    Keys.onUpPressed: contentY = Math.max(0, contentY - 40)
    Keys.onDownPressed: contentY = Math.min(Math.max(0, contentHeight - height), contentY + 40)

    InSight {
        id: sight

        flick: root
    }
    Column {
        id: column

        width: root.width - 12
        spacing: Theme.gap
    }
    Rectangle {
        visible: root.activeFocus
        parent: root
        anchors.fill: parent
        color: "transparent"
        border.color: Theme.accent
        border.width: Theme.ring
        radius: Theme.corner
    }
}
