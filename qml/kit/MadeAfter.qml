// SPDX-License-Identifier: MIT
//
// What a screen needs later than the rest, as its sheets: made after it while nobody looks at it,
// so that no piece of making is long; and at once where somebody does, who may ask for it.

import QtQuick
import Flarestock.Desk

Loader {
    required property bool current // Somebody looks at the screen.

    asynchronous: Pace.inSteps && !current
}
