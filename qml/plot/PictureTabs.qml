// SPDX-License-Identifier: MIT
//
// What is looked at of a build: the line itself, the pressure along it, whether the pump carries
// it, what the money goes into. Ctrl and the number choose.

import QtQuick
import Flarestock.Screens

Row {
    id: root

    required property int picture // Which one shows; -1 where none does.

    signal chosen(int picture)

    GroupButton {
        objectName: "pictureLine"
        text: qsTr("Line map")
        checked: root.picture === 0
        Accessible.description: qsTr("Ctrl+1")
        onClicked: root.chosen(0)
    }
    GroupButton {
        objectName: "picturePressure"
        text: qsTr("Pressure")
        checked: root.picture === 1
        Accessible.description: qsTr("Ctrl+2")
        onClicked: root.chosen(1)
    }
    GroupButton {
        objectName: "picturePump"
        text: qsTr("Pump")
        checked: root.picture === 2
        Accessible.description: qsTr("Ctrl+3")
        onClicked: root.chosen(2)
    }
    GroupButton {
        objectName: "pictureCost"
        text: qsTr("Cost")
        checked: root.picture === 3
        Accessible.description: qsTr("Ctrl+4")
        onClicked: root.chosen(3)
    }
}
