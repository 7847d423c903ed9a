// SPDX-License-Identifier: MIT
//
// What would now be taken where the builder has picked something else, and a button to take it.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Item {
    id: root

    required property string words
    required property string pick

    signal taken()

    implicitHeight: column.height + 16

    TagDrawing {
        anchors.fill: parent
        fill: Theme.cautionFill
        edge: Theme.caution
        cut: 5
        broken: true
        hole: "transparent"
    }
    Column {
        id: column

        x: 12
        y: 8
        width: root.width - 22
        spacing: 6

        Words {
            width: column.width
            text: qsTr("⚐ %1").arg(root.words)
            small: true
            color: Theme.caution
            wrapMode: Text.Wrap
        }
        DeskButton {
            objectName: "takeBetter"
            width: Math.min(implicitWidth, column.width)
            text: qsTr("take %1").arg(root.pick)
            onClicked: root.taken()
        }
    }
}
