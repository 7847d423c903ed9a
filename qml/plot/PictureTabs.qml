// SPDX-License-Identifier: MIT
//
// What is looked at of a build: the line itself, the pressure along it. Ctrl and the number choose.

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
}
