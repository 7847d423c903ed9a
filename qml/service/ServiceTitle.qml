// SPDX-License-Identifier: MIT
//
// What is looked at, how far the car ran, and the two questions that one comes with.

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

RowLayout {
    id: root

    required property ServiceDesk service

    readonly property bool narrow: width < 1000

    signal dueAsked()

    spacing: narrow ? Theme.gap : Theme.wideGap

    ColumnLayout {
        spacing: 3
        Layout.fillWidth: true

        Words {
            objectName: "serviceTitle"
            text: root.service.heading
            strong: true
            font.pixelSize: root.narrow ? Theme.headText : Theme.titleText
            wrapMode: Text.Wrap
            Layout.fillWidth: true
        }
        Words {
            objectName: "serviceAbout"
            text: root.service.about
            quiet: true
            small: root.narrow
            wrapMode: Text.Wrap
            Layout.fillWidth: true
        }
    }
    QuestionTag {
        objectName: "overdue"
        question: qsTr("Past its time?")
        answer: root.service.overdue
        mark: root.service.overdueMark
        onClicked: root.dueAsked()
    }
    QuestionTag {
        objectName: "dueNext"
        question: qsTr("What comes next?")
        answer: root.service.dueNext
        mark: Standing.Note
        onClicked: root.dueAsked()
    }
}
