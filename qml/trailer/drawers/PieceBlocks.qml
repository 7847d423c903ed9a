// SPDX-License-Identifier: MIT
//
// Pieces as blocks: full is there, a broken outline should be there and is not, a cross is one that
// is to go. Beyond what fits, one block stands for several.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Row {
    id: root

    required property int there
    required property int lack
    required property int over
    property int most: 20

    readonly property int all: there + lack + over
    readonly property real scaled: all > most ? most / all : 1
    readonly property int lackBlocks: lack > 0 ? Math.max(1, Math.round(lack * scaled)) : 0
    readonly property int overBlocks: over > 0 ? Math.max(1, Math.round(over * scaled)) : 0
    readonly property int thereBlocks: Math.min(there, Math.max(0, Math.min(all, most) - lackBlocks
                                                                   - overBlocks))
    readonly property int blocks: thereBlocks + lackBlocks + overBlocks
    readonly property real block: Math.max(3, Math.min(14, width / Math.max(1, blocks) - spacing))

    height: 12
    spacing: 2
    Accessible.ignored: true

    Repeater {
        model: root.thereBlocks

        Rectangle {
            width: root.block
            height: root.height
            color: Theme.accent
        }
    }
    Repeater {
        model: root.lackBlocks

        TagDrawing {
            width: root.block
            height: root.height
            fill: Theme.cautionFill
            edge: Theme.caution
            hole: "transparent"
            cut: 0
            broken: true
        }
    }
    Repeater {
        model: root.overBlocks

        Rectangle {
            width: root.block
            height: root.height
            color: "transparent"
            border.color: Theme.ruleStrong

            Rectangle {
                anchors.centerIn: parent
                width: parent.width - 4
                height: 1.5
                color: Theme.quiet
            }
            Rectangle {
                anchors.centerIn: parent
                width: 1.5
                height: parent.height - 4
                color: Theme.quiet
            }
        }
    }
}
