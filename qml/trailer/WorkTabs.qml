// SPDX-License-Identifier: MIT
//
// The work at the trailer, of which one piece is shown at a time.

import QtQuick
import Flarestock.Screens

Flow {
    id: root

    required property int shown
    required property bool withDrawer
    required property int lacking
    required property int over
    required property int away

    signal chosen(int part)

    spacing: 4

    GroupButton {
        objectName: "workDrawer"
        visible: root.withDrawer
        text: qsTr("Drawer")
        checked: root.shown === 0
        onClicked: root.chosen(0)
    }
    GroupButton {
        objectName: "workIn"
        text: root.lacking > 0 ? qsTr("Bring in: %1").arg(root.lacking) : qsTr("Bring in")
        checked: root.shown === 1
        onClicked: root.chosen(1)
    }
    GroupButton {
        objectName: "workOut"
        text: root.over > 0 ? qsTr("Take out: %1").arg(root.over) : qsTr("Take out")
        checked: root.shown === 2
        onClicked: root.chosen(2)
    }
    GroupButton {
        objectName: "workCarry"
        text: root.width < 520 ? qsTr("Spares") : qsTr("How many to carry")
        checked: root.shown === 3
        onClicked: root.chosen(3)
    }
    GroupButton {
        objectName: "workCopies"
        text: root.away > 0 ? qsTr("Copies: %1 away").arg(root.away) : qsTr("Copies")
        checked: root.shown === 4
        onClicked: root.chosen(4)
    }
}
