// SPDX-License-Identifier: MIT
//
// Which cards are looked at, and how many there are.

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

RowLayout {
    id: root

    required property PartsDesk parts

    readonly property bool narrow: width < 1000

    signal asked(string deed)

    spacing: narrow ? Theme.gap : Theme.wideGap

    ColumnLayout {
        spacing: 3
        Layout.fillWidth: true

        Words {
            objectName: "partsTitle"
            text: root.parts.heading
            strong: true
            font.pixelSize: root.narrow ? Theme.headText : Theme.titleText
            wrapMode: Text.Wrap
            maximumLineCount: 2
            elide: Text.ElideRight
            Layout.fillWidth: true
        }
        Words {
            objectName: "partsAbout"
            text: root.parts.about
            quiet: true
            small: root.narrow
            wrapMode: Text.Wrap
            Layout.fillWidth: true
        }
    }
    DeskButton {
        objectName: "lookUp"
        text: qsTr("Look up")
        Accessible.description: qsTr("Ctrl+L")
        onClicked: root.asked("tables")
    }
    DeskButton {
        objectName: "templates"
        text: qsTr("Templates")
        Accessible.description: qsTr("Ctrl+T")
        onClicked: root.asked("templates")
    }
    DeskButton {
        objectName: "suppliers"
        text: qsTr("Suppliers")
        onClicked: root.asked("suppliers")
    }
    DeskButton {
        objectName: "importList"
        text: qsTr("Import a list")
        onClicked: root.asked("import")
    }
    DeskButton {
        objectName: "newCard"
        text: qsTr("New card  Ctrl+N")
        onClicked: root.asked("new")
    }
}
