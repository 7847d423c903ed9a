// SPDX-License-Identifier: MIT
//
// One thing that the maker of a part says, with its unit.

import QtQuick
import Flarestock.Screens

Rectangle {
    id: root

    required property string title
    required property string value
    required property string says
    property real widest: 600

    implicitWidth: Math.min(widest, Math.max(name.implicitWidth, figure.implicitWidth) + 20)
    implicitHeight: words.height + 12
    radius: Theme.corner
    color: Theme.stripe
    border.color: Theme.rule
    Accessible.role: Accessible.StaticText
    Accessible.name: says

    Column {
        id: words

        x: 10
        y: 6
        width: root.width - 20
        spacing: 1

        Words {
            id: name

            width: words.width
            text: root.title
            small: true
            quiet: true
            wrapMode: Text.Wrap
        }
        Words {
            id: figure

            width: words.width
            text: root.value
            strong: true
            wrapMode: Text.Wrap
        }
    }
}
