// SPDX-License-Identifier: MIT
//
// What buying comes to today, in a sentence, and the two questions that one comes with.

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

RowLayout {
    id: root

    required property BuyingDesk buying

    readonly property bool narrow: width < 1000
    readonly property int open: buying.owed.open

    signal owedAsked()
    signal slipsAsked()

    spacing: narrow ? Theme.gap : Theme.wideGap

    ColumnLayout {
        spacing: 3
        Layout.fillWidth: true

        Words {
            objectName: "buyingTitle"
            text: root.buying.heading
            strong: true
            font.pixelSize: root.narrow ? Theme.headText : Theme.titleText
            wrapMode: Text.Wrap
            Layout.fillWidth: true
        }
        Words {
            objectName: "buyingAbout"
            text: root.buying.about
            quiet: true
            small: root.narrow
            wrapMode: Text.Wrap
            Layout.fillWidth: true
        }
    }
    QuestionTag {
        objectName: "inTime"
        question: qsTr("Can it all be here in time?")
        answer: root.buying.inTime
        mark: !root.buying.known ? Standing.Note
            : root.buying.canBeInTime ? Standing.Made : Standing.Short
        onClicked: root.slipsAsked()
    }
    QuestionTag {
        objectName: "owed"
        question: qsTr("Anything owed?")
        answer: !root.buying.known ? qsTr("not known yet")
            : root.open === 0 ? qsTr("nothing")
            : root.open === 1 ? qsTr("1 claim") : qsTr("%1 claims").arg(root.open)
        mark: !root.buying.known ? Standing.Note
            : root.open === 0 ? Standing.Made : Standing.Short
        onClicked: root.owedAsked()
    }
}
