// SPDX-License-Identifier: MIT
//
// A joint on the map.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Screens

Item {
    id: root

    required property int mark
    required property bool toBuy
    required property bool picked
    required property bool outdone
    required property bool found
    required property string says
    property bool opened: false

    signal pressed()

    width: 28
    height: 28
    Accessible.role: Accessible.Button
    Accessible.name: says
    Accessible.onPressAction: root.pressed()

    Rectangle {
        anchors.centerIn: parent
        width: root.opened ? 34 : root.toBuy ? 25 : 20
        height: width
        radius: width / 2
        color: root.opened ? Theme.accentFill : Theme.surface
        border.color: Theme.accent
        border.width: root.opened ? 2.5 : 0
    }
    // What was looked for: four corners round it, as one marks a place on a drawing.
    Repeater {
        model: root.found ? 4 : 0

        Item {
            id: corner

            required property int index

            readonly property bool atRight: index % 2 === 1
            readonly property bool atBottom: index > 1

            x: atRight ? root.width - 5 : -9
            y: atBottom ? root.height - 5 : -9
            width: 14
            height: 14

            Rectangle {
                y: corner.atBottom ? 11 : 0
                width: 14
                height: 3
                color: Theme.accent
            }
            Rectangle {
                x: corner.atRight ? 11 : 0
                width: 3
                height: 14
                color: Theme.accent
            }
        }
    }
    MarkIcon {
        anchors.fill: parent
        mark: root.mark
        toBuy: root.toBuy
    }
    // A pennant: the builder has decided on this one. An empty one: something else would now be
    // taken.
    Words {
        visible: root.picked
        x: parent.width / 2 + 6
        y: -14
        text: root.outdone ? "⚐" : "⚑"
        font.pixelSize: 16
        color: root.outdone ? Theme.caution : Theme.accent
        style: Text.Outline
        styleColor: Theme.surface
    }
}
