// SPDX-License-Identifier: MIT
//
// The name of a group of lines, at the head of it.

import QtQuick
import Flarestock.Screens

Rectangle {
    id: root

    // A list gives it as a name of the context; one that stands over another group later keeps
    // what it was given as a property, as the list has one of that name, too (Qt 6.4).
    property string group: section // qmllint disable unqualified

    width: ListView.view ? ListView.view.width : 0
    height: 26
    color: Theme.surface

    Words {
        x: 12
        height: parent.height
        verticalAlignment: Text.AlignBottom
        bottomPadding: 3
        text: root.group
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
