// SPDX-License-Identifier: MIT
//
// A whole line of what is not there, inside a broken outline.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Item {
    id: root

    required property string text

    implicitHeight: words.implicitHeight + 12

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

        x: 12
        y: 6
        width: root.width - 24
        text: root.text
        color: Theme.caution
        wrapMode: Text.Wrap
    }
}
