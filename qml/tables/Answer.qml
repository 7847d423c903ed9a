// SPDX-License-Identifier: MIT
//
// A sentence of what was looked up.

import QtQuick
import QtQuick.Layouts
import Flarestock.Screens

Words {
    visible: text !== ""
    wrapMode: Text.Wrap
    Accessible.role: Accessible.StaticText
    Accessible.name: text
    Layout.fillWidth: true
}
