// SPDX-License-Identifier: MIT
//
// One row of a list that changes what the shop has: what it was, what it becomes, and a box that
// is ticked where it is taken in.

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

AbstractButton {
    id: root

    required property int index
    required property string title
    required property string says
    required property bool ticked
    property bool current: false

    implicitHeight: Math.max(48, words.height + 12)
    focusPolicy: Qt.NoFocus
    Keys.forwardTo: ListView.view ? [ListView.view] : []
    Accessible.role: Accessible.CheckBox
    Accessible.checkable: true
    Accessible.checked: ticked
    Accessible.name: Gaps.fill(qsTr("%1. %2"), title, says)

    background: Rectangle {
        color: root.current ? Theme.accentFill : root.index % 2 ? Theme.stripe : Theme.surface
    }
    TickBox {
        x: 12
        anchors.verticalCenter: parent.verticalCenter
        ticked: root.ticked
    }
    Column {
        id: words

        x: 48
        anchors.verticalCenter: parent.verticalCenter
        width: root.width - x - 20
        spacing: 1

        Words {
            width: words.width
            text: root.ticked ? root.title : qsTr("%1  ·  left out").arg(root.title)
            strong: true
            quiet: !root.ticked
            wrapMode: Text.Wrap
        }
        Words {
            width: words.width
            text: root.says
            quiet: !root.ticked
            wrapMode: Text.Wrap
        }
    }
}
