// SPDX-License-Identifier: MIT
//
// A field to write into, with what belongs there as its name.

import QtQuick
import QtQuick.Controls
import Flarestock.Screens

TextField {
    id: root

    required property string name

    implicitHeight: Theme.target
    leftPadding: 10
    color: Theme.ink
    placeholderTextColor: Theme.quiet
    font.family: Theme.family
    font.pixelSize: Theme.text
    selectByMouse: true
    Accessible.name: name
    Keys.onPressed: event => { // Alt+4 leads to an area, and is no 4.
        event.accepted = event.modifiers === Qt.AltModifier && event.text !== "";
    }
    background: Rectangle {
        radius: Theme.corner
        color: Theme.surface
        border.color: root.activeFocus ? Theme.accent : Theme.ruleStrong
        border.width: root.activeFocus ? Theme.ring : 1
    }
    onActiveFocusChanged: {
        if (activeFocus)
            selectAll();
    }
}
