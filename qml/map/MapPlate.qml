// SPDX-License-Identifier: MIT
//
// A station on the map: role, part, and what the part is known for. A part that is not on the shelf
// has a broken outline; a picked one carries the word.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Item {
    id: root

    required property string role
    required property string part
    required property string fact
    required property bool picked
    required property bool outdone
    required property bool echo
    required property bool lacks
    required property string says
    property bool opened: false

    signal pressed()

    Accessible.role: Accessible.Button
    Accessible.name: says
    Accessible.onPressAction: root.pressed()

    TagDrawing {
        anchors.fill: parent
        fill: root.echo ? Theme.window : root.opened ? Theme.accentFill : Theme.surface
        edge: root.opened ? Theme.accent : root.lacks ? Theme.caution
                                         : root.echo ? Theme.ruleStrong : Theme.ink
        edgeWidth: root.opened ? 2.5 : root.lacks ? 2 : 1.2
        cut: root.echo ? 0 : 6
        broken: root.lacks
        hole: "transparent"
    }
    Column {
        anchors.centerIn: parent
        width: parent.width - 14

        Line {
            text: root.outdone ? qsTr("⚐ %1").arg(root.role)
                : root.picked ? qsTr("⚑ %1").arg(root.role) : root.role
            small: true
            color: root.outdone ? Theme.caution : Theme.quiet
        }
        Line {
            width: parent.width - 10 // Beside it stand the marks of the ports.
            x: 5
            text: root.part
            strong: true
        }
        Line {
            visible: text !== ""
            text: root.fact
            small: true
            quiet: true
        }
    }

    component Line: Words {
        width: parent.width
        horizontalAlignment: Text.AlignHCenter
        fontSizeMode: Text.HorizontalFit
        minimumPixelSize: 10
        elide: Text.ElideRight
    }
}
