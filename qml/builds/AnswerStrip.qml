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

    spacing: 4

    Flow {
        spacing: Theme.gap
        Layout.fillWidth: true

        Repeater {
            model: root.build.answers

            AnswerTag {
                required property string key

                onTyped: text => root.build.answer(key, text)
                onPicked: choice => root.build.choose(key, choice)
                onGivenUp: root.build.giveUp(key)
            }
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
