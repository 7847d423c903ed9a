// SPDX-License-Identifier: MIT
//
// What of the stock is looked at, and the two questions that one comes with.

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

RowLayout {
    id: root

    required property StockDesk stock

    readonly property bool narrow: width < 1000

    signal belowAsked()
    signal whatIsThis()

    spacing: narrow ? Theme.gap : Theme.wideGap

    ColumnLayout {
        spacing: 3
        Layout.fillWidth: true

        Words {
            objectName: "stockTitle"
            text: root.stock.heading
            strong: true
            font.pixelSize: root.narrow ? Theme.headText : Theme.titleText
            wrapMode: Text.Wrap
            maximumLineCount: 2
            elide: Text.ElideRight
            Layout.fillWidth: true
        }
        Words {
            objectName: "stockAbout"
            text: root.stock.about
            quiet: true
            small: root.narrow
            wrapMode: Text.Wrap
            maximumLineCount: 2
            elide: Text.ElideRight
            Layout.fillWidth: true
        }
    }
    QuestionTag {
        objectName: "belowKept"
        question: qsTr("Below what we keep?")
        answer: root.stock.belowWords
        mark: !root.stock.known ? Standing.Note
            : root.stock.belowCount === 0 ? Standing.Made : Standing.Short
        onClicked: root.belowAsked()
    }
    QuestionTag {
        objectName: "whatIsThis"
        question: qsTr("Unmarked fitting?")
        answer: qsTr("What is this?")
        mark: Standing.Note
        Accessible.description: qsTr("Ctrl+M")
        onClicked: root.whatIsThis()
    }
}
