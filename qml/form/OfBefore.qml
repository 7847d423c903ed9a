// SPDX-License-Identifier: MIT
//
// Says that what stands in a sheet was filled in when the desk ended in the midst of it.

import QtQuick.Layouts
import Flarestock.Screens

Words {
    objectName: "ofBefore"
    visible: false
    text: qsTr("Filled in as it was when the desk ended.")
    small: true
    quiet: true
    Layout.fillWidth: true
}
