// SPDX-License-Identifier: MIT
//
// What is not there, in words inside a broken outline.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Item {
    id: root

    required property string text

    implicitWidth: words.implicitWidth + 16
    implicitHeight: 20

    TagDrawing {
        anchors.fill: parent
        fill: Theme.cautionFill
        edge: Theme.caution
        hole: "transparent"
        cut: 4
        broken: true
    }
    Words {
        id: words

        anchors.fill: parent
        anchors.leftMargin: 8
        anchors.rightMargin: 7
        text: root.text
        small: true
        strong: true
        color: Theme.caution
        horizontalAlignment: Text.AlignRight
        verticalAlignment: Text.AlignVCenter
        elide: Text.ElideLeft
    }
}
