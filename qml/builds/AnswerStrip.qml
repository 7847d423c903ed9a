// SPDX-License-Identifier: MIT
//
// All the answers of a build in a row that wraps; under them what is wrong with one, in words.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

ColumnLayout {
    id: root

    required property BuildDesk build
    property bool unfolded: false

    readonly property real rowHeight: 52

    spacing: 4

    RowLayout {
        spacing: Theme.gap

        Flow {
            id: flow

            spacing: Theme.gap
            clip: true
            Layout.fillWidth: true
            Layout.preferredHeight: root.unfolded ? implicitHeight : root.rowHeight
            Layout.alignment: Qt.AlignTop

            Repeater {
                model: Steps {
                    of: root.build.answers
                }

                AnswerTag {
                    required property string key
                    required otherwise

                    readonly property bool below: y >= root.rowHeight
                    readonly property bool slipped: below && active // As others grew before it.

                    enabled: root.unfolded || !below || active
                    onSlippedChanged: root.unfolded = root.unfolded || slipped
                    onTyped: text => root.build.answer(key, text)
                    onPicked: choice => root.build.choose(key, choice)
                    onGivenUp: root.build.giveUp(key)
                }
            }
        }
        DeskButton {
            objectName: "foldAnswers"
            visible: flow.implicitHeight > root.rowHeight + 1
            implicitHeight: root.rowHeight
            text: root.unfolded ? qsTr("fewer ▴") : qsTr("all %1 ▾").arg(root.build.answers.count)
            Accessible.name: root.unfolded ? qsTr("fewer answers") : qsTr("all answers")
            Layout.alignment: Qt.AlignTop
            onClicked: root.unfolded = !root.unfolded
        }
    }
    Words {
        objectName: "answerProblem"
        visible: text !== ""
        text: root.build.answerProblem
        color: Theme.stop
        wrapMode: Text.WordWrap
        Accessible.role: Accessible.AlertMessage
        Accessible.name: text
        Layout.fillWidth: true
    }
}
