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
    property bool roomy: true

    readonly property bool wanted: cell.need !== undefined
    readonly property bool lacking: wanted && cell.lacks > 0
    readonly property bool turned: cell.changed === true

    signal clicked()
    signal entered()

    color: current ? Theme.accentFill : inColumn ? Theme.stripe : "transparent"
    Accessible.role: Accessible.Cell
    Accessible.name: cell.says === undefined ? "" : cell.says
    Accessible.focusable: true
    Accessible.selected: current

    MouseArea {
        anchors.fill: parent
        onClicked: root.clicked()
        onDoubleClicked: root.entered()
    }
    Rectangle {
        anchors.right: parent.right
        width: 1
        height: parent.height
        color: Theme.rule
    }
    Item {
        anchors.fill: parent
        anchors.leftMargin: 8
        anchors.rightMargin: 8
        anchors.topMargin: 5

        Words {
            id: need

            visible: root.wanted
            text: root.wanted ? root.cell.need : ""
            strong: true
        }
        TallyDrawing {
            visible: root.wanted
            x: need.width + 8
            y: 3
            width: parent.width - x - (root.turned ? 14 : 0)
            height: 11
            own: root.wanted ? root.cell.reserved : 0
            here: root.wanted ? root.cell.here : 0
            coming: root.wanted ? root.cell.coming : 0
            lacks: root.wanted ? root.cell.lacks : 0
            pieces: root.wanted && root.cell.pieces
            ink: Theme.accent
            lackInk: root.wanted && root.cell.late ? Theme.stop : Theme.caution
            paper: Theme.surface
        }
        Words {
            visible: !root.wanted && !root.turned
            text: "–"
            quiet: true
        }
        Words {
            y: 20
            width: parent.width
            height: parent.height - y - 3 - (before.visible ? before.height : 0)
            text: root.wanted ? [root.cell.got, root.cell.more].filter(one => one).join("\n") : ""
            small: true
            color: root.lacking ? (root.cell.late ? Theme.stop : Theme.caution) : Theme.ink
            wrapMode: Text.Wrap
            fontSizeMode: Text.Fit
            minimumPixelSize: 10
            elide: Text.ElideRight
        }
        Words {
            id: before

            visible: root.turned
            anchors.bottom: parent.bottom
            anchors.bottomMargin: 4
            width: parent.width
            height: 14
            text: root.turned ? root.cell.before : ""
            small: true
            quiet: true
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: 10
            elide: Text.ElideRight
        }
    }
    Item { // A turned corner.
        visible: root.turned
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
    FocusFrame {
        visible: root.current
    }
}
