// SPDX-License-Identifier: MIT
//
// A line of plain text in the desk's hand.

import QtQuick
import Flarestock.Screens

Text {
    property bool quiet: false
    property bool small: false
    property bool strong: false

    textFormat: Text.PlainText
    color: quiet ? Theme.quiet : Theme.ink
    font.family: Theme.family
    font.pixelSize: small ? Theme.smallText : Theme.text
    font.bold: strong
}
