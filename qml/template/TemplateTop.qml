// SPDX-License-Identifier: MIT
//
// Which template is typed, how it stands, and what can be done with it.

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

RowLayout {
    id: root

    required property TemplateEditor editor
    property bool busy: false
    property string turns: "" // What is shown instead, where there is room for one.

    signal turned()
    signal leaveAsked()

    spacing: Theme.gap

    ColumnLayout {
        spacing: 2
        Layout.fillWidth: true

        Words {
            objectName: "templateTitle"
            text: root.editor.title
            strong: true
            font.pixelSize: Theme.headText
            wrapMode: Text.Wrap
            maximumLineCount: 2
            elide: Text.ElideRight
            Layout.fillWidth: true
        }
        Words {
            objectName: "templateStanding"
            text: root.editor.standing
            quiet: true
            small: true
            Layout.fillWidth: true
        }
    }
    DeskButton {
        objectName: "turnTemplate"
        visible: text !== ""
        text: root.turns
        onClicked: root.turned()
    }
    DeskButton {
        objectName: "writeTemplate"
        text: qsTr("Write it down  Ctrl+S")
        enabled: !root.busy
        onClicked: root.editor.finish()
    }
    DeskButton {
        objectName: "leaveTemplate"
        text: qsTr("Close  Esc")
        framed: false
        Accessible.description: qsTr("What is typed is kept.")
        onClicked: root.leaveAsked()
    }
}
