// SPDX-License-Identifier: MIT
//
// By what the stock is narrowed: a tag each, and one touch back to all of it.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Flow {
    id: root

    required property Rows fields
    property bool isNarrowed: false
    property string allName: qsTr("show all of the stock again")

    signal narrowed(string field, int choice)
    signal cleared()

    spacing: Theme.gap

    Repeater {
        model: Steps {
            of: root.fields
        }

        AnswerTag {
            required property string key

            objectName: "narrow-" + key
            form: "choice"
            problem: ""
            onPicked: choice => root.narrowed(key, choice)
        }
    }
    DeskButton {
        objectName: "clearNarrowing"
        visible: root.isNarrowed
        implicitHeight: 52
        framed: false
        text: qsTr("all of it")
        Accessible.name: root.allName
        onClicked: root.cleared()
    }
}
