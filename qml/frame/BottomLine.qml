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
    required property string who

    signal takeBack()
    signal whoAsked()

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
            wrapMode: Text.Wrap
            maximumLineCount: 2
            elide: Text.ElideRight
            Accessible.role: Accessible.StaticText
            Accessible.name: text
            Layout.fillWidth: true
        }
        DeskButton {
            objectName: "who"
            text: root.who === "" ? qsTr("Who is at the desk?")
                                  : qsTr("at the desk: %1").arg(root.who)
            framed: false
            small: true
            Accessible.name: root.who === "" ? qsTr("say who is at the desk")
                                             : qsTr("at the desk: %1; change").arg(root.who)
            Layout.maximumWidth: 240
            onClicked: root.whoAsked()
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
