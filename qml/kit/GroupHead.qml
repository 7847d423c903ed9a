// SPDX-License-Identifier: MIT
//
// The name of a group of bill lines, at the head of it.

import QtQuick
import Flarestock.Screens

Rectangle {
    id: root

    required property string section

    width: ListView.view ? ListView.view.width : 0
    height: 26
    color: Theme.surface

    Words {
        x: 12
        height: parent.height
        verticalAlignment: Text.AlignBottom
        bottomPadding: 3
        text: root.section
        small: true
        strong: true
        color: Theme.accent
    }
    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: 1
        color: Theme.rule
    }
}
