// SPDX-License-Identifier: MIT
//
// Pieces as blocks, in the colours of the day or of the night.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

BlocksDrawing {
    height: 12
    ink: Theme.accent
    lackInk: Theme.caution
    lackFill: Theme.cautionFill
    overInk: Theme.quiet
    Accessible.ignored: true
}
