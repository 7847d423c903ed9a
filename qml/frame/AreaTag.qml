// SPDX-License-Identifier: MIT
//
// One area, as a tag on its hook.

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

AbstractButton {
    id: root

    required property int number
    required property bool current

    implicitWidth: 26 + measure.width + 20 // Name and number, also while it is the one that shows.
    implicitHeight: 50
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.PageTab
    Accessible.name: text
    Accessible.description: qsTr("Alt+%1").arg(number)
    Accessible.selectable: true
    Accessible.selected: current
    Keys.onReturnPressed: root.clicked()
    Keys.onEnterPressed: root.clicked()

    background: Item {
        TagDrawing {
            anchors.fill: parent
            anchors.leftMargin: 6
            anchors.rightMargin: root.current ? -6 : 8
            anchors.topMargin: 3
            anchors.bottomMargin: 3
            fill: root.current ? Theme.surface : "transparent"
            edge: root.visualFocus ? Theme.accent : root.current ? Theme.ruleStrong : Theme.rule
            edgeWidth: root.visualFocus ? Theme.ring : 1
            hole: root.current ? Theme.side : "transparent"
        }
    }
    contentItem: Item {
        Words {
            anchors.verticalCenter: parent.verticalCenter
            x: 26
            text: root.text
            strong: root.current
        }
        Words {
            anchors.verticalCenter: parent.verticalCenter
            anchors.right: parent.right
            anchors.rightMargin: root.current ? 2 : 12
            text: root.number
            small: true
            quiet: true
        }
    }

    TextMetrics {
        id: measure

        font.family: Theme.family
        font.pixelSize: Theme.text
        font.bold: true
        text: root.text
    }
}
