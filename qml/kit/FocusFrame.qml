// SPDX-License-Identifier: MIT
//
// The frame round whatever has the keyboard.

import QtQuick
import Flarestock.Screens

Rectangle {
    anchors.fill: parent
    color: "transparent"
    border.color: Theme.accent
    border.width: Theme.ring
    radius: Theme.corner
}
