// SPDX-License-Identifier: MIT
//
// The last thing that happened, in a sentence, and the way back.

import QtQuick
import QtQuick.Layouts
import Flarestock.Screens

Rectangle {
    id: root

    required property string sentence
    required property bool canTakeBack

    signal takeBack()

    implicitHeight: 44
    color: Theme.side

    RowLayout {
        anchors.fill: parent
        anchors.leftMargin: Theme.wideGap
        anchors.rightMargin: Theme.wideGap
        spacing: Theme.wideGap

        Words {
            objectName: "lastStep"
            text: root.sentence
            elide: Text.ElideRight
            Accessible.role: Accessible.StaticText
            Accessible.name: text
            Layout.fillWidth: true
        }
        DeskButton {
            objectName: "takeBack"
            text: qsTr("Take back  Ctrl+Z")
            framed: false
            enabled: root.canTakeBack
            Accessible.name: qsTr("Take back the last step")
            onClicked: root.takeBack()
        }
    }
}
