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

    property real byDateRoom: 0 // For all of them, where there is none for that button above.

    signal chosen(int part)
    signal pictureChosen(int picture)
    signal byDate()

    spacing: 4

    PictureTabs {
        id: pictures

        picture: root.part === 0 ? root.picture : -1
        onChosen: picture => {
            root.chosen(0);
            root.pictureChosen(picture);
        }
    }
    GroupButton {
        id: bill

        objectName: "tabBill"
        text: root.findings === "" ? qsTr("Bill and findings: %1").arg(root.total)
                                   : qsTr("Bill: %1").arg(root.total)
        checked: root.part === 1
        onClicked: root.chosen(1)
    }
    GroupButton {
        id: slips

        objectName: "tabFindings"
        visible: root.findings !== ""
        text: qsTr("Before you build: %1").arg(root.findings)
        checked: root.part === 2
        onClicked: root.chosen(2)
    }
    DeskButton {
        objectName: "buildsByDate"
        visible: pictures.width + bill.width + (slips.visible ? slips.width : 0) + implicitWidth
                 + 3 * root.spacing <= root.byDateRoom // Else Ctrl+D and the list of builds do.
        text: qsTr("By date…")
        framed: false
        Accessible.name: qsTr("Builds by date")
        Accessible.description: qsTr("Ctrl+D")
        onClicked: root.byDate()
    }
}
