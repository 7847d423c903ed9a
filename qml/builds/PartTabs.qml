// SPDX-License-Identifier: MIT
//
// What a small window shows one at a time: the line in its pictures, the bill, the findings.

import QtQuick
import Flarestock.Screens

Row {
    id: root

    required property int part
    required property int picture // Which one of the line's shows, where the line does.
    required property string total
    required property string findings // Empty where they stand beside the bill.

    signal chosen(int part)
    signal pictureChosen(int picture)

    spacing: 4

    PictureTabs {
        picture: root.part === 0 ? root.picture : -1
        onChosen: picture => {
            root.chosen(0);
            root.pictureChosen(picture);
        }
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
