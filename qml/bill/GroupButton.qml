// SPDX-License-Identifier: MIT
//
// One of a few choices of which one holds: the one that holds is underlined.

import QtQuick
import QtQuick.Controls
import Flarestock.Screens

AbstractButton {
    id: root

    implicitHeight: Theme.target
    implicitWidth: implicitContentWidth + 20
    hoverEnabled: true
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.RadioButton
    Accessible.name: text
    Accessible.checkable: true
    Accessible.checked: checked
    Keys.onReturnPressed: root.clicked()

    background: Rectangle {
        color: root.hovered ? Theme.accentFill : "transparent"
        radius: Theme.corner
        border.color: Theme.accent
        border.width: root.visualFocus ? Theme.ring : 0

        Rectangle {
            visible: root.checked
            anchors.bottom: parent.bottom
            anchors.bottomMargin: 5
            anchors.horizontalCenter: parent.horizontalCenter
            width: root.implicitContentWidth
            height: 2
            color: Theme.accent
        }
    }
    contentItem: Words {
        text: root.text
        strong: root.checked
        color: root.checked ? Theme.accent : Theme.quiet
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
    }
}
