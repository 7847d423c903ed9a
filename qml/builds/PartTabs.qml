// SPDX-License-Identifier: MIT
//
// What a small window shows one at a time: the map, the bill, the findings.

import QtQuick
import Flarestock.Screens

Row {
    id: root

    required property int part
    required property string total
    required property string findings // Empty where they stand beside the bill.

    signal chosen(int part)

    spacing: 4

    GroupButton {
        objectName: "tabMap"
        text: qsTr("Line map")
        checked: root.part === 0
        onClicked: root.chosen(0)
    }
    GroupButton {
        objectName: "tabBill"
        text: root.findings === "" ? qsTr("Bill and findings: %1").arg(root.total)
                                   : qsTr("Bill: %1").arg(root.total)
        checked: root.part === 1
        onClicked: root.chosen(1)
    }
    GroupButton {
        objectName: "tabFindings"
        visible: root.findings !== ""
        text: qsTr("Before you build: %1").arg(root.findings)
        checked: root.part === 2
        onClicked: root.chosen(2)
    }
}
