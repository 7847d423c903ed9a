// SPDX-License-Identifier: MIT
//
// One supplier in a list.

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

AbstractButton {
    id: root

    required property string key
    required property string label
    required property string detail
    property bool current: false

    implicitHeight: 46
    focusPolicy: Qt.NoFocus
    padding: 0
    Accessible.role: Accessible.ListItem
    Accessible.name: Gaps.fill(qsTr("%1, %2"), label, detail)
    background: Rectangle {
        color: root.current ? Theme.accentFill : Theme.surface
        border.color: root.current ? Theme.accent : Theme.rule
    }
    contentItem: Item {
        Words {
            x: 12
            y: 6
            width: parent.width - 24
            text: root.label
            strong: true
            elide: Text.ElideRight
        }
        Words {
            x: 12
            y: 25
            width: parent.width - 24
            text: root.detail
            small: true
            quiet: true
            elide: Text.ElideRight
        }
    }
}
