// SPDX-License-Identifier: MIT
//
// How far something long has come, in words and as a bar, and a button that stops it.

import QtQuick
import QtQuick.Layouts
import Flarestock.Screens

RowLayout {
    id: root

    required property string words
    required property double share // Below 0: nobody knows.
    required property bool canStop

    signal stopped()

    spacing: Theme.gap

    ColumnLayout {
        spacing: 4
        Layout.fillWidth: true

        Words {
            objectName: "copyProgress"
            text: root.words
            wrapMode: Text.Wrap
            Accessible.role: Accessible.ProgressBar
            Accessible.name: text
            Layout.fillWidth: true
        }
        Rectangle {
            implicitHeight: 8
            radius: 4
            color: Theme.stripe
            border.color: Theme.rule
            Layout.fillWidth: true

            Rectangle {
                width: parent.width * Math.max(0.03, Math.min(1, root.share))
                height: parent.height
                radius: 4
                color: Theme.accent
            }
        }
    }
    DeskButton {
        objectName: "stopCopy"
        visible: root.canStop
        text: qsTr("Stop")
        onClicked: root.stopped()
    }
}
