// SPDX-License-Identifier: MIT
//
// What is written at a run: its dash above the stroke, its length below, or both above where there
// is room.

import QtQuick
import Flarestock.Screens

Item {
    id: root

    required property string dash
    required property string length
    required property real thickness
    required property real room
    required property string says

    readonly property string both: dash === "" ? length : qsTr("%1  ·  %2").arg(dash).arg(length)
    readonly property bool oneLine: room > measure.width + 60

    Accessible.role: Accessible.StaticText
    Accessible.name: says

    component Label: Words {
        small: true
        quiet: true
        leftPadding: 3
        rightPadding: 3

        // Keeps the words clear of a pipe that crosses behind them.
        Rectangle {
            anchors.fill: parent
            z: -1
            color: Theme.surface
        }
    }

    Label {
        visible: root.dash !== "" || root.oneLine
        anchors.horizontalCenter: parent.horizontalCenter
        anchors.bottom: parent.top
        anchors.bottomMargin: root.thickness / 2 + 3
        text: root.oneLine ? root.both : root.dash
    }
    Label {
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
        text: root.both
    }
}
