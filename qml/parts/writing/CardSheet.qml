// SPDX-License-Identifier: MIT
//
// A card that is written: its fields at the left; at the right its drawing, its ports in words and
// what the port in hand meets, while one types. Enter writes it down.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

WorkSheet {
    id: root

    required property CardEditor editor
    property bool busy: false

    function begin() {
        root.open();
        fieldSide.contentY = 0;
        portSide.contentY = 0;
        if (fields.count > 0)
            fields.itemAt(0).forceActiveFocus(Qt.TabFocusReason);
    }

    objectName: "cardSheet"
    title: editor.title
    about: editor.isOfBefore ? qsTr("Filled in as it was when the desk ended.") : ""
    widest: 1220
    saidBelow: true
    height: ground ? ground.height - 30 : 600
    onClosed: editor.close()

    RowLayout {
        spacing: Theme.wideGap
        Layout.fillWidth: true
        Layout.fillHeight: true

        ScrolledColumn {
            id: fieldSide

            name: qsTr("fields of the card")
            Layout.fillWidth: true
            Layout.fillHeight: true

            GridLayout {
                width: parent.width
                columns: width > 520 ? 2 : 1
                columnSpacing: Theme.wideGap
                rowSpacing: Theme.gap

                Repeater {
                    id: fields

                    model: root.editor.fields

                    CardField {
                        Layout.fillWidth: true
                        Layout.preferredWidth: 1
                        Layout.alignment: Qt.AlignTop
                        onFilledIn: filled => root.editor.fill(key, filled)
                        onEntered: root.editor.finish()
                        onReached: item => fieldSide.show(item)
                    }
                }
            }
        }
        ScrolledColumn {
            id: portSide

            name: qsTr("ports, and what they meet")
            Layout.preferredWidth: Math.max(450, root.width * 0.42)
            Layout.fillHeight: true

            CardDrawing {
                width: parent.width
                height: 120
                visible: root.editor.body !== ""
                number: root.editor.number
                title: root.editor.standing
                ports: root.editor.portTexts
                body: root.editor.body
                bend: root.editor.bend
            }
            PortFieldList {
                width: parent.width
                editor: root.editor
                onReached: item => portSide.show(item)
                onEntered: root.editor.finish()
            }
            MeetingList {
                width: parent.width
                visible: root.editor.meets !== ""
                port: root.editor.meets
                meetings: root.editor.meetings
            }
            Words {
                width: parent.width
                visible: root.editor.meets === ""
                text: qsTr("Type a port, ORB -6 female for example. "
                           + "What it meets stands here at once.")
                quiet: true
                wrapMode: Text.Wrap
            }
        }
    }
    RowLayout {
        spacing: Theme.gap

        DeskButton {
            objectName: "writeCard"
            text: qsTr("Write it down")
            enabled: !root.busy
            onClicked: root.editor.finish()
        }
        DeskButton {
            text: qsTr("Not now  Esc")
            framed: false
            onClicked: root.close()
        }
        Words {
            objectName: "cardStanding"
            visible: root.problem === ""
            verticalAlignment: Text.AlignVCenter
            text: root.editor.standing
            quiet: true
            wrapMode: Text.Wrap
            Layout.fillWidth: true
        }
        SheetProblem {
            visible: root.problem !== ""
            text: root.problem
            linesKept: 2
        }
    }
}
