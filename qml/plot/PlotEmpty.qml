// SPDX-License-Identifier: MIT
//
// Instead of a picture: a line that ends in nothing, why there is none, and what would help.

import QtQuick
import Flarestock.Screens

Column {
    id: root

    required property string why
    required property string what

    spacing: Theme.gap
    topPadding: 24

    Row {
        x: 24
        spacing: 4

        Repeater {
            model: 3

            Rectangle {
                required property int index

                width: 34
                height: 6 - 2 * index
                y: index
                radius: 2
                color: Theme.pipe
            }
        }
    }
    Words {
        objectName: "plotWhyNone"
        x: 24
        width: root.width - 48
        text: root.why
        strong: true
        font.pixelSize: Theme.headText
        wrapMode: Text.Wrap
    }
    Words {
        x: 24
        width: root.width - 48
        text: root.what
        wrapMode: Text.Wrap
    }
}
