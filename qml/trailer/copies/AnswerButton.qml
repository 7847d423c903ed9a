// SPDX-License-Identifier: MIT
//
// One of several answers, of which one holds; it may be longer than a line.

import QtQuick
import QtQuick.Controls
import Flarestock.Screens

AbstractButton {
    id: root

    implicitHeight: Math.max(Theme.target, words.height + 14)
    hoverEnabled: true
    focusPolicy: Qt.StrongFocus
    checkable: false
    Accessible.role: Accessible.RadioButton
    Accessible.name: text
    Accessible.checkable: true
    Accessible.checked: checked
    Keys.onReturnPressed: root.clicked()
    Keys.onEnterPressed: root.clicked()

    background: Rectangle {
        radius: Theme.corner
        color: root.checked || root.hovered ? Theme.accentFill : Theme.surface
        border.color: root.visualFocus || root.checked ? Theme.accent : Theme.ruleStrong
        border.width: root.visualFocus ? 3 : root.checked ? Theme.ring : 1
    }
    Rectangle {
        x: 10
        anchors.verticalCenter: parent.verticalCenter
        width: 16
        height: 16
        radius: 8
        color: "transparent"
        border.color: root.checked ? Theme.accent : Theme.ruleStrong
        border.width: 1.5

        Rectangle {
            anchors.centerIn: parent
            visible: root.checked
            width: 8
            height: 8
            radius: 4
            color: Theme.accent
        }
    }
    Words {
        id: words

        x: 36
        anchors.verticalCenter: parent.verticalCenter
        width: root.width - 46
        text: root.text
        strong: root.checked
        wrapMode: Text.Wrap
    }
}
