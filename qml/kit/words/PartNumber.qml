// SPDX-License-Identifier: MIT
//
// A part number: one line, never two. Where its column is too narrow the middle gives way, as
// numbers differ at their ends; who shows it says all of it to a screen reader.

import QtQuick
import Flarestock.Screens

Words {
    strong: true
    elide: Text.ElideMiddle
}
