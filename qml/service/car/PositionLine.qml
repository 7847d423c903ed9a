// SPDX-License-Identifier: MIT
//
// One position of a car on its pipe: how it stands, what is there, since when, how far it ran, and
// until when it may.

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

AbstractButton {
    id: root

    required property int index
    required property string kind // "station", "element", "hose", "ring", "own"
    required property int mark
    required property string title
    required property string piece
    required property string since
    required property string use
    required property string washed
    required property string standing
    required property double share
    required property string note
    required property string says
    required property ServiceColumns columns
    property bool current: false
    property bool inHand: false // The list that it stands in has the keyboard.

    readonly property bool begins: ListView.previousSection !== ListView.section
    readonly property bool ends: ListView.nextSection !== ListView.section

    implicitHeight: Math.max(kind === "ring" ? 44 : 54, body.height + 14)
    focusPolicy: Qt.NoFocus
    padding: 0
    hoverEnabled: true
    Accessible.role: Accessible.ListItem
    Accessible.name: says
    Accessible.selectable: true
    Accessible.selected: current

    background: Rectangle {
        color: root.current ? Theme.accentFill : root.index % 2 ? Theme.stripe : Theme.surface

        Rectangle {
            visible: root.current
            width: root.inHand ? 5 : 3
            height: parent.height
            color: Theme.accent
        }
    }
    Pipe {
        x: 26 - width / 2
        width: root.kind === "hose" ? 8 : root.kind === "ring" ? 10 : 12
        height: root.height
        visible: root.kind !== "own"
        begins: root.begins
        ends: root.ends
    }
    Rectangle {
        x: 26 - width / 2
        y: (root.height - height) / 2
        width: root.kind === "ring" || root.kind === "hose" ? 24 : 30
        height: width
        radius: root.kind === "station" ? Theme.corner : width / 2
        color: Theme.surface
        border.color: Theme.pipe
        border.width: 1

        MarkIcon {
            anchors.fill: parent
            anchors.margins: 1
            mark: root.mark
        }
    }
    Row {
        id: body

        x: root.columns.mark
        y: (root.height - height) / 2

        Column {
            width: root.columns.piece
            leftPadding: root.kind === "element" || root.kind === "ring" ? 14 : 0
            spacing: 1

            Sentence {
                width: parent.width - parent.leftPadding - 10
                sentence: root.title
                strong: true
            }
            Sentence {
                visible: text !== ""
                width: parent.width - parent.leftPadding - 10
                sentence: root.piece
                small: true
                quiet: true
            }
        }
        Column {
            visible: root.columns.hasSince
            width: root.columns.since
            bottomPadding: 1 // An item without height would be left out of its row.
            spacing: 1

            Words {
                visible: text !== ""
                width: parent.width - 10
                text: root.since
                small: true
                wrapMode: Text.Wrap
            }
            Words {
                visible: text !== ""
                width: parent.width - 10
                text: root.use
                small: true
                quiet: true
                wrapMode: Text.Wrap
            }
        }
        Words {
            visible: root.columns.hasWashed
            width: root.columns.washed
            rightPadding: 12
            text: root.washed === "" ? "" : qsTr("washed\n%1").arg(root.washed)
            small: true
            quiet: true
            horizontalAlignment: Text.AlignRight
        }
        Column {
            width: root.columns.state
            spacing: 4

            Sentence {
                width: parent.width - 6
                sentence: root.standing
                small: true
                strong: root.mark !== Standing.Made
                color: Theme.markInk(root.mark)
            }
            WearBar {
                visible: root.share >= 0
                width: parent.width - 6
                share: root.share
                ink: Theme.markInk(root.mark)
            }
            Sentence {
                visible: text !== ""
                width: parent.width - 6
                sentence: root.note
                small: true
                quiet: true
            }
        }
    }
}
