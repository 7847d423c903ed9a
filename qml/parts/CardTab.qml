// SPDX-License-Identifier: MIT
//
// One card of the index, as its edge shows in the drawer: the number and a few words.

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

AbstractButton {
    id: root

    required property int index
    required property string part
    required property string what
    property bool current: false
    property bool inHand: false // The list that it stands in has the keyboard.

    implicitHeight: 46
    focusPolicy: Qt.NoFocus
    padding: 0
    Accessible.role: Accessible.ListItem
    Accessible.name: Gaps.fill(qsTr("%1, %2"), part, what)
    Accessible.selectable: true
    Accessible.selected: current

    background: Rectangle {
        color: root.current ? Theme.accentFill : root.index % 2 ? Theme.stripe : Theme.surface

        Rectangle {
            anchors.bottom: parent.bottom
            width: parent.width
            height: 1
            color: Theme.rule
        }
        Rectangle {
            visible: root.current
            width: root.inHand ? 5 : 3
            height: parent.height
            color: Theme.accent
        }
    }
    contentItem: Item {
        PartNumber {
            x: 12
            y: 6
            width: parent.width - 24
            text: root.part
        }
        Words {
            x: 12
            y: 25
            width: parent.width - 24
            text: root.what
            small: true
            quiet: true
            elide: Text.ElideRight
        }
    }
}
