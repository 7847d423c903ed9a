// SPDX-License-Identifier: MIT
//
// Which paragraph is in hand, what is wrong with it as a whole, and what can be done with it.

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

ColumnLayout {
    id: root

    required property TemplateForm form

    signal takenOut()

    spacing: 2

    RowLayout {
        spacing: 2
        Layout.fillWidth: true

        Words {
            objectName: "paragraphTitle"
            text: root.form.chosenTitle
            strong: true
            font.pixelSize: Theme.headText
            wrapMode: Text.Wrap
            maximumLineCount: 2
            elide: Text.ElideRight
            Layout.fillWidth: true
        }
        DeskButton {
            objectName: "moveUp"
            visible: root.form.canRemove
            enabled: root.form.canMoveUp
            text: "↑"
            framed: false
            Accessible.name: qsTr("move it up")
            onClicked: root.form.move(false)
        }
        DeskButton {
            objectName: "moveDown"
            visible: root.form.canRemove
            enabled: root.form.canMoveDown
            text: "↓"
            framed: false
            Accessible.name: qsTr("move it down")
            onClicked: root.form.move(true)
        }
        DeskButton {
            objectName: "removeParagraph"
            visible: root.form.canRemove
            text: qsTr("Take it out")
            framed: false
            small: true
            onClicked: {
                root.form.remove();
                root.takenOut();
            }
        }
    }
    Words {
        objectName: "paragraphProblem"
        visible: text !== ""
        text: root.form.problem
        small: true
        color: Theme.stop
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
        Accessible.name: text
        Layout.fillWidth: true
    }
}
