// SPDX-License-Identifier: MIT
//
// One of the lists that can show, with its mark and its state in words.

import QtQuick
import QtQuick.Controls
import Flarestock.Screens

AbstractButton {
    id: root

    required property string title
    required property string detail
    required property int mark
    required property string says

    implicitHeight: 48
    implicitWidth: words.width + 54
    hoverEnabled: true
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.PageTab
    Accessible.name: says
    Accessible.selectable: true
    Accessible.selected: checked
    Keys.onReturnPressed: root.clicked()
    Keys.onEnterPressed: root.clicked()

    background: Rectangle {
        radius: Theme.corner
        color: root.checked || root.hovered ? Theme.accentFill : Theme.surface
        border.color: root.visualFocus || root.checked ? Theme.accent : Theme.rule
        border.width: root.visualFocus ? 3 : root.checked ? Theme.ring : 1
    }
    MarkIcon {
        x: 8
        anchors.verticalCenter: parent.verticalCenter
        mark: root.mark
    }
    Column {
        id: words

        x: 40
        anchors.verticalCenter: parent.verticalCenter
        spacing: 1

        Words {
            text: root.title
            strong: true
        }
        Words {
            text: root.detail
            small: true
            quiet: true
        }
    }
}
