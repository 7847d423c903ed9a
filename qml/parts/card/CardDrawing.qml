// SPDX-License-Identifier: MIT
//
// A part drawn from the words of its ports.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Rectangle {
    id: root

    required property string number
    required property string title
    required property var ports
    required property string body
    required property int bend

    radius: Theme.corner
    color: Theme.stripe
    border.color: Theme.rule

    PartDrawing {
        objectName: "cardDrawing"
        anchors.fill: parent
        anchors.margins: 6
        ports: root.ports
        body: root.body
        bend: root.bend
        ink: Theme.ink
        quiet: Theme.pipe
        accent: Theme.accent
        paper: Theme.stripe
        Accessible.role: Accessible.Graphic
        Accessible.name: Gaps.fill(qsTr("drawing of %1, %2"), root.number, root.title)
    }
    Words {
        x: 8
        y: 5
        width: parent.width - 16
        text: qsTr("drawn from the words")
        small: true
        quiet: true
    }
}
