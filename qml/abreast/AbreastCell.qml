// SPDX-License-Identifier: MIT
//
// What one build needs of one part and gets of it, drawn piece by piece and in words; where a day
// that is tried changes it, a turned corner and what it was before.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Rectangle {
    id: root

    required property var cell
    property bool current: false // It is in hand.
    property bool inColumn: false // Its build is.

    readonly property bool wanted: cell.need !== undefined
    readonly property bool lacking: wanted && cell.lacks > 0
    readonly property bool turned: cell.changed === true
    readonly property color lackInk: wanted && cell.late ? Theme.stop : Theme.caution

    component TurnedCorner: Item {
        id: corner

        required property string before

        Words {
            anchors.bottom: parent.bottom
            anchors.bottomMargin: 4
            x: 8
            width: parent.width - 16
            height: 14
            text: corner.before
            small: true
            quiet: true
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: 10
            elide: Text.ElideRight
        }
        Item {
            anchors.right: parent.right
            anchors.rightMargin: 1
            width: 15
            height: 15
            clip: true

            Rectangle {
                x: 4
                y: -11
                width: 22
                height: 22
                rotation: 45
                color: Theme.cautionFill
                border.color: Theme.caution
                border.width: 2
            }
        }
    }

    color: current ? Theme.accentFill : inColumn ? Theme.stripe : "transparent"
    Accessible.role: Accessible.Cell
    Accessible.name: cell.says === undefined ? "" : cell.says
    Accessible.focusable: true
    Accessible.selected: current

    Words {
        id: need

        x: 8
        y: 5
        text: root.wanted ? root.cell.need : root.turned ? "" : "–"
        strong: root.wanted
        quiet: !root.wanted
    }
    TallyDrawing {
        visible: root.wanted
        x: need.x + need.width + 8
        y: 8
        width: parent.width - x - (root.turned ? 22 : 8)
        height: 11
        own: root.wanted ? root.cell.reserved : 0
        here: root.wanted ? root.cell.here : 0
        coming: root.wanted ? root.cell.coming : 0
        lacks: root.wanted ? root.cell.lacks : 0
        pieces: root.wanted && root.cell.pieces
        ink: Theme.accent
        lackInk: root.lackInk
        paper: Theme.surface
    }
    Words {
        x: 8
        y: 25
        width: parent.width - 16
        height: parent.height - y - 3 - (root.turned ? 14 : 0)
        text: root.wanted ? [root.cell.got, root.cell.more].filter(one => one).join("\n") : ""
        small: true
        color: root.lacking ? root.lackInk : Theme.ink
        wrapMode: Text.Wrap
        fontSizeMode: Text.Fit
        minimumPixelSize: 10
        elide: Text.ElideRight
    }
    Loader {
        anchors.fill: parent
        active: root.turned
        sourceComponent: TurnedCorner {
            before: root.cell.before // qmllint disable unqualified
        }
    }
    Rectangle {
        anchors.right: parent.right
        width: 1
        height: parent.height
        color: Theme.rule
    }
}
