// SPDX-License-Identifier: MIT
//
// Which build is on the desk, whose, by when and after which template; and the two questions.

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

RowLayout {
    id: root

    required property BuildDesk build

    readonly property bool narrow: width < 1000

    signal otherBuild()
    signal byDate()
    signal showShort()
    signal showFindings()

    spacing: narrow ? Theme.gap : Theme.wideGap

    ColumnLayout {
        spacing: 3
        Layout.fillWidth: true

        Words {
            objectName: "buildTitle"
            text: root.build.title
            strong: true
            font.pixelSize: root.narrow ? Theme.headText : Theme.titleText
            wrapMode: Text.Wrap
            maximumLineCount: 2
            elide: Text.ElideRight
            Layout.fillWidth: true
        }
        Words {
            text: root.build.about
            quiet: true
            small: root.narrow
            wrapMode: Text.Wrap
            maximumLineCount: 2
            elide: Text.ElideRight
            Layout.fillWidth: true
        }
    }
    DeskButton {
        objectName: "buildsByDate"
        visible: !root.narrow // Then it stands beside the tabs.
        text: qsTr("By date…")
        Accessible.name: qsTr("Builds by date")
        Accessible.description: qsTr("Ctrl+D")
        onClicked: root.byDate()
    }
    DeskButton {
        objectName: "otherBuild"
        text: qsTr("Other build…")
        Accessible.description: qsTr("Ctrl+B")
        onClicked: root.otherBuild()
    }
    QuestionTag {
        objectName: "everythingHere"
        question: qsTr("Is everything here?")
        answer: root.build.everythingHere
        mark: root.build.isEverythingHere ? Standing.Made : Standing.Short
        onClicked: root.showShort()
    }
    QuestionTag {
        objectName: "anythingStopped"
        question: qsTr("Is anything stopped?")
        answer: root.build.anythingStopped
        mark: root.build.stoppedMark
        onClicked: root.showFindings()
    }
}
