// SPDX-License-Identifier: MIT
//
// The copy that is looked at: what it would bring, what disagrees, and the button that brings it.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Column {
    id: root

    required property CopiesDesk copies

    signal refused(Item item) // Why it was not brought, to come into sight.

    spacing: 8

    Words {
        width: root.width
        text: root.copies.lookedTitle
        strong: true
        font.pixelSize: Theme.headText
        wrapMode: Text.Wrap
    }
    Words {
        objectName: "lookedAbout"
        width: root.width
        text: root.copies.lookedAbout
        wrapMode: Text.Wrap
    }
    Repeater {
        model: root.copies.questions

        QuestionSlip {
            id: slip

            width: root.width
            onDecided: choice => root.copies.choose(index, choice)
            onSaid: more => root.copies.say(index, more)
        }
    }
    Timer {
        id: soon // Once it has its place.

        interval: 0
        onTriggered: root.refused(problem)
    }
    Words {
        id: problem

        objectName: "bringProblem"
        width: root.width
        visible: text !== ""
        text: root.copies.problem
        color: Theme.stop
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
        Accessible.name: text
        onTextChanged: soon.restart()
    }
    Flow {
        width: root.width
        spacing: Theme.gap

        DeskButton {
            objectName: "bringCopy"
            visible: root.copies.canBring
            text: root.copies.openCount > 0
                ? qsTr("Bring it back: %1 to decide first").arg(root.copies.openCount)
                : qsTr("Bring it back")
            quiet: root.copies.openCount > 0
            enabled: !root.copies.busy
            onClicked: root.copies.bring(false)
        }
        DeskButton {
            objectName: "bringOn"
            visible: root.copies.canBring
            text: qsTr("Bring it, and it stays away")
            framed: false
            enabled: !root.copies.busy
            onClicked: root.copies.bring(true)
        }
        DeskButton {
            objectName: "putCopyAway"
            text: qsTr("Close this look")
            framed: false
            enabled: !root.copies.busy
            onClicked: root.copies.putAway()
        }
    }
    Repeater {
        model: root.copies.came

        Item {
            id: came

            required property string what
            required property string detail
            required property string says

            width: root.width
            height: lines.height + 8
            Accessible.role: Accessible.ListItem
            Accessible.name: says

            Column {
                id: lines

                width: came.width

                Words {
                    width: came.width
                    text: came.what
                    wrapMode: Text.Wrap
                }
                Words {
                    width: came.width
                    text: came.detail
                    small: true
                    quiet: true
                    wrapMode: Text.Wrap
                }
            }
        }
    }
}
