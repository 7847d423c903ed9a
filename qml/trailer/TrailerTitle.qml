// SPDX-License-Identifier: MIT
//
// For which event the trailer is packed, and whether all of it is there.

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

RowLayout {
    id: root

    required property TrailerDesk trailer

    readonly property bool narrow: width < 1000

    signal lackAsked()
    signal copiesAsked()

    spacing: narrow ? Theme.gap : Theme.wideGap

    ColumnLayout {
        spacing: 3
        Layout.fillWidth: true

        Words {
            objectName: "trailerTitle"
            text: root.trailer.heading
            strong: true
            font.pixelSize: root.narrow ? Theme.headText : Theme.titleText
            wrapMode: Text.Wrap
            Layout.fillWidth: true
        }
        Words {
            visible: !root.narrow
            text: root.trailer.about
            quiet: true
            wrapMode: Text.Wrap
            Layout.fillWidth: true
        }
    }
    AnswerTag {
        objectName: "packFor"
        title: qsTr("packed for")
        form: "choice"
        choices: root.trailer.events
        answer: root.trailer.packed
        problem: ""
        onPicked: choice => root.trailer.packFor(choice)
    }
    QuestionTag {
        objectName: "allThere"
        question: qsTr("Is it all there?")
        answer: root.trailer.allThere
        mark: root.trailer.allThereMark
        onClicked: root.lackAsked()
    }
    QuestionTag {
        objectName: "copiesAway"
        question: qsTr("Is a copy away?")
        answer: root.trailer.copies.awayWords
        mark: root.trailer.copies.awayCount > 0 ? Standing.Note : Standing.Made
        onClicked: root.copiesAsked()
    }
}
