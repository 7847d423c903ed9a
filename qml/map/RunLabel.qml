// SPDX-License-Identifier: MIT
//
// What is written at a run: its dash above the stroke, its length below, or both above where there
// is room. A picked run has a pennant, an empty one where another line would now be taken.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Item {
    id: root

    required property string dash
    required property string length
    required property real thickness
    required property real room
    required property bool picked
    required property bool outdone
    required property string says
    property bool opened: false

    readonly property string pennant: outdone ? "⚐ " : picked ? "⚑ " : ""
    readonly property string size: pennant + dash
    readonly property string both: dash === "" ? pennant + length
                                               : Gaps.fill(qsTr("%1  ·  %2"), size, length)
    readonly property bool oneLine: room > measure.width + 60

    signal pressed()

    Accessible.role: Accessible.Button
    Accessible.name: says
    Accessible.onPressAction: root.pressed()

    component Label: Words {
        id: label

        property bool opened: false
        property bool outdone: false

        small: true
        strong: opened
        color: outdone ? Theme.caution : opened ? Theme.accent : Theme.quiet
        leftPadding: 3
        rightPadding: 3

        // Keeps the words clear of a pipe that crosses behind them.
        Rectangle {
            anchors.fill: parent
            z: -1
            color: label.opened ? Theme.accentFill : Theme.surface
        }
    }

    Label {
        opened: root.opened
        outdone: root.outdone
        visible: root.size !== "" || root.oneLine
        anchors.horizontalCenter: parent.horizontalCenter
        anchors.bottom: parent.top
        anchors.bottomMargin: root.thickness / 2 + 3
        text: root.oneLine ? root.both : root.size
    }
    Label {
        opened: root.opened
        outdone: root.outdone
        visible: !root.oneLine
        anchors.horizontalCenter: parent.horizontalCenter
        anchors.top: parent.top
        anchors.topMargin: root.thickness / 2 + 2
        text: root.length
    }
    TextMetrics {
        id: measure

        font.family: Theme.family
        font.pixelSize: Theme.smallText
        font.bold: root.opened
        text: root.both
    }
}
