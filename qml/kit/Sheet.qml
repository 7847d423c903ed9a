// SPDX-License-Identifier: MIT
//
// A sheet of paper: the ground of one part of a screen.

import QtQuick
import Flarestock.Screens

Rectangle {
    color: Theme.surface
    border.color: Theme.rule
    border.width: 1
    radius: Theme.corner
}
