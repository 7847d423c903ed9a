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

    readonly property bool oneLine: room > both.implicitWidth + 60

    Accessible.role: Accessible.StaticText
    Accessible.name: says

    Words {
        id: both

        visible: root.oneLine
        anchors.horizontalCenter: parent.horizontalCenter
        anchors.bottom: parent.top
        anchors.bottomMargin: root.thickness / 2 + 3
        text: root.dash === "" ? root.length : qsTr("%1  ·  %2").arg(root.dash).arg(root.length)
        small: true
        quiet: true
    }
    Words {
        visible: !root.oneLine
        anchors.horizontalCenter: parent.horizontalCenter
        anchors.bottom: parent.top
        anchors.bottomMargin: root.thickness / 2 + 3
        text: root.dash
        small: true
        quiet: true
    }
    Words {
        visible: !root.oneLine
        anchors.horizontalCenter: parent.horizontalCenter
        anchors.top: parent.top
        anchors.topMargin: root.thickness / 2 + 2
        text: root.length
        small: true
        quiet: true
    }
}
