// SPDX-License-Identifier: MIT
//
// What is open, and how it stands, by shape and in words.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Item {
    id: root

    required property Opened opened

    implicitHeight: lines.height

    MarkIcon {
        mark: root.opened.mark
        toBuy: root.opened.toBuy
    }
    Column {
        id: lines

        x: 34
        width: root.width - x
        spacing: 2

        Words {
            objectName: "openedTitle"
            width: lines.width
            text: root.opened.title
            strong: true
            font.pixelSize: Theme.headText
            wrapMode: Text.Wrap
        }
        Words {
            width: lines.width
            text: root.opened.standing
            small: true
            color: Theme.markInk(root.opened.mark)
            wrapMode: Text.Wrap
        }
        Words {
            width: lines.width
            text: root.opened.subtitle
            small: true
            quiet: true
            wrapMode: Text.Wrap
        }
    }
}
