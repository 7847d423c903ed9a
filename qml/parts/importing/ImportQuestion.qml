// SPDX-License-Identifier: MIT
//
// One row of a list that is not clear: what stands there, what is wrong, what it is taken to mean;
// and two answers.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property ListImport list

    function enter() { // Enter alone drops nothing that stands in the row.
        if (root.list.losesNothing)
            take.forceActiveFocus(Qt.TabFocusReason);
        else
            leave.forceActiveFocus(Qt.TabFocusReason);
    }

    objectName: "importQuestion"
    implicitHeight: column.implicitHeight

    ColumnLayout {
        id: column

        width: root.width
        height: root.height
        spacing: Theme.gap

        Words {
            objectName: "questionCount"
            text: Gaps.fillAll(qsTr("Question %1 of %2  ·  %3"),
                               [root.list.question, root.list.questions, root.list.where])
            strong: true
            color: Theme.accent
            wrapMode: Text.Wrap
            Layout.fillWidth: true
        }
        Rectangle {
            color: Theme.stripe
            border.color: Theme.rule
            radius: Theme.corner
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.minimumHeight: 90
            Layout.preferredHeight: Math.min(220, cells.height + 16)

            Flickable {
                id: flick

                anchors.fill: parent
                anchors.margins: 8
                contentHeight: cells.height
                boundsBehavior: Flickable.StopAtBounds
                clip: true
                activeFocusOnTab: contentHeight > height
                Accessible.role: Accessible.Pane
                Accessible.name: qsTr("the row as it stands in the file")
                ScrollBar.vertical: SlimScrollBar {}
                Keys.onUpPressed: contentY = Math.max(0, contentY - 40)
                Keys.onDownPressed: contentY = Math.min(Math.max(0, contentHeight - height),
                                                        contentY + 40)

                Column {
                    id: cells

                    width: flick.width - 12
                    spacing: 3

                    Repeater {
                        model: root.list.cells

                        Words {
                            required property string title
                            required property string value
                            required property bool wrong
                            required property string says

                            width: cells.width
                            text: wrong ? Gaps.fill(qsTr("! %1: %2"), title, value) : says
                            strong: wrong
                            color: wrong ? Theme.stop : Theme.ink
                            wrapMode: Text.Wrap
                        }
                    }
                }
            }
            FocusFrame {
                visible: flick.activeFocus
            }
        }
        Words {
            objectName: "rowWrong"
            text: root.list.wrong
            color: Theme.stop
            wrapMode: Text.Wrap
            Accessible.role: Accessible.AlertMessage
            Accessible.name: text
            Layout.fillWidth: true
        }
        Words {
            text: qsTr("Understood:")
            small: true
            quiet: true
        }
        Words {
            objectName: "rowMeant"
            text: root.list.meant
            strong: true
            wrapMode: Text.Wrap
            Layout.fillWidth: true
        }
        Flow {
            spacing: Theme.gap
            Layout.fillWidth: true

            DeskButton {
                id: take

                objectName: "takeRow"
                text: qsTr("Take it so")
                enabled: root.list.canTake
                Accessible.description: root.list.meant
                onClicked: root.list.answer(true)
            }
            DeskButton {
                id: leave

                objectName: "leaveRow"
                text: qsTr("Leave it out")
                onClicked: root.list.answer(false)
            }
        }
    }
}
