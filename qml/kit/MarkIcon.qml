// SPDX-License-Identifier: MIT
//
// One mark of Standing in the theme's ink; its shape says which.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

MarkDrawing {
    implicitWidth: 26
    implicitHeight: implicitWidth
    ink: Theme.markInk(mark)
    paper: Theme.surface
}
