// SPDX-License-Identifier: MIT
//
// What a template can get more of.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Flow {
    id: root

    readonly property var kinds: [
        { kind: TemplateForm.Station, name: "addStation", words: qsTr("+ station") },
        { kind: TemplateForm.Run, name: "addRun", words: qsTr("+ run") },
        { kind: TemplateForm.Question, name: "addQuestion", words: qsTr("+ question") },
        { kind: TemplateForm.Module, name: "addModule", words: qsTr("+ module") },
        { kind: TemplateForm.Extra, name: "addExtra", words: qsTr("+ extra") }
    ]

    signal asked(int kind)

    spacing: 2

    Repeater {
        model: root.kinds

        DeskButton {
            required property var modelData

            objectName: modelData.name
            text: modelData.words
            framed: false
            small: true
            leftPadding: 4
            rightPadding: 4
            padding: 4
            onClicked: root.asked(modelData.kind)
        }
    }
}
