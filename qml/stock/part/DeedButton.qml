// SPDX-License-Identifier: MIT
//
// Something that can be done with what is in hand. Where there is nothing to do it with it is
// written in quiet ink; pressed, it says why.

import QtQuick
import Flarestock.Screens

DeskButton {
    id: root

    required property string key
    required property string label
    required property bool ready
    required property string detail
    required property string says

    objectName: "deed-" + key
    text: label
    padding: 11
    quiet: !ready
    Accessible.name: label
    Accessible.description: detail
}
