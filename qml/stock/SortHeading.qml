// SPDX-License-Identifier: MIT
//
// The heading of a column that sorts by it: an arrow says which way it is sorted now.

import QtQuick
import QtQuick.Controls
import Flarestock.Screens

AbstractButton {
    id: root

    property int by: 0      // The order that it stands for.
    property int order: 0   // The one that holds.
    property bool downwards: false
    property bool figure: true // Of a column of figures, which stand at its right.
    property string title

    readonly property bool holds: by === order

    objectName: "sort-" + by
    height: Theme.target
    padding: 0
    leftPadding: figure ? 10 : 0 // What it wraps at is not the heading before.
    hoverEnabled: true
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.Button
    Accessible.name: holds ? downwards ? qsTr("%1, sorted downwards").arg(title)
                                       : qsTr("%1, sorted upwards").arg(title)
                           : qsTr("sort by %1").arg(title)
    Keys.onReturnPressed: root.clicked()
    Keys.onEnterPressed: root.clicked()

    background: Rectangle {
        color: root.hovered ? Theme.accentFill : "transparent"
        radius: Theme.corner
        border.color: Theme.accent
        border.width: root.visualFocus ? Theme.ring : 0
    }
    contentItem: Words {
        text: !root.holds ? root.title : root.downwards ? qsTr("%1 ▾").arg(root.title)
                                                        : qsTr("%1 ▴").arg(root.title)
        small: true
        strong: root.holds
        color: root.holds ? Theme.accent : Theme.quiet
        wrapMode: Text.Wrap
        horizontalAlignment: root.figure ? Text.AlignRight : Text.AlignLeft
        verticalAlignment: Text.AlignVCenter
    }
}
