// SPDX-License-Identifier: MIT
//
// A piece of the pipe that positions are strung on, with the flow's arrow; it begins and ends in
// the middle of its line.

import QtQuick
import Flarestock.Screens

Item {
    id: root

    property bool begins: false
    property bool ends: false

    Rectangle {
        y: root.begins ? root.height / 2 : 0
        width: root.width
        height: (root.ends ? root.height / 2 : root.height) - y
        color: Theme.pipe
    }
    Words {
        visible: !root.ends
        anchors.bottom: parent.bottom
        anchors.horizontalCenter: parent.horizontalCenter
        text: "▾"
        color: Theme.pipeArrow
        font.pixelSize: 9
    }
}
