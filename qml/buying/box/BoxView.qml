// SPDX-License-Identifier: MIT
//
// A box on the bench: what should be in it, ticked off one by one by keyboard, by hand or by
// scanner; the piece in hand with its mark and its bin; what lacks; and once it is put away, what
// it brought.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property BoxPage box
    property bool busy: false
    property string problem: ""

    readonly property bool isPutAway: box.result !== ""

    signal troubleAsked()
    signal gone()

    function enter() {
        if (isPutAway)
            done.forceActiveFocus(Qt.TabFocusReason);
        else
            list.enter();
    }

    onIsPutAwayChanged: {
        if (root.visible)
            root.enter();
    }

    ColumnLayout {
        anchors.fill: parent
        anchors.margins: 12
        spacing: 6

        RowLayout {
            spacing: Theme.gap
            Layout.fillWidth: true

            Words {
                objectName: "boxHeading"
                text: root.box.heading
                strong: true
                font.pixelSize: Theme.headText
                wrapMode: Text.Wrap
                Layout.fillWidth: true
            }
            Words {
                objectName: "boxCount"
                visible: !root.isPutAway
                text: root.box.count
                quiet: true
            }
            DeskButton {
                objectName: "tickAll"
                visible: !root.isPutAway
                text: qsTr("All of it is there")
                onClicked: root.box.tickAll()
            }
        }
        BoxList {
            id: list

            visible: !root.isPutAway
            box: root.box
            focus: !root.isPutAway
            Layout.fillWidth: true
            Layout.fillHeight: true
            onMarkAsked: hand.enter()
        }
        BoxHand {
            id: hand

            visible: !root.isPutAway
            box: root.box
            row: list.row
            Layout.fillWidth: true
            onTroubleAsked: {
                root.box.beginTrouble(list.row);
                root.troubleAsked();
            }
            onBack: list.enter()
        }
        ShortLine {
            objectName: "boxLacks"
            visible: !root.isPutAway && text !== ""
            text: root.box.lacking
            Layout.fillWidth: true
        }
        Repeater {
            model: root.isPutAway ? null : root.box.troubles

            RowLayout {
                id: trouble

                required property int index
                required property string sentence

                spacing: Theme.gap
                Layout.fillWidth: true

                Words {
                    text: qsTr("! %1").arg(trouble.sentence)
                    color: Theme.caution
                    wrapMode: Text.Wrap
                    Layout.fillWidth: true
                }
                DeskButton {
                    text: qsTr("not so")
                    framed: false
                    Accessible.name: qsTr("it is not so: %1").arg(trouble.sentence)
                    onClicked: root.box.dropTrouble(trouble.index)
                }
            }
        }
        Words {
            objectName: "boxResult"
            visible: root.isPutAway
            text: root.box.result
            strong: true
            wrapMode: Text.Wrap
            Layout.fillWidth: true
        }
        CameList {
            visible: root.isPutAway
            rows: root.box.came
            Layout.fillWidth: true
            Layout.fillHeight: true
        }
        Words {
            objectName: "boxProblem"
            visible: text !== ""
            text: root.problem
            color: Theme.stop
            wrapMode: Text.Wrap
            Accessible.role: Accessible.AlertMessage
            Accessible.name: text
            Layout.fillWidth: true
        }
        Flow {
            spacing: Theme.gap
            Layout.fillWidth: true

            InkField {
                objectName: "deliveryNote"
                visible: !root.isPutAway
                width: 200
                name: qsTr("number of the delivery note")
                placeholderText: qsTr("delivery note")
                text: root.box.document
                onEditingFinished: root.box.document = text
            }
            DeskButton {
                objectName: "putAway"
                visible: !root.isPutAway
                text: qsTr("Put it away")
                enabled: !root.busy
                onClicked: root.box.putAway()
            }
            DeskButton {
                id: done

                objectName: "boxDone"
                text: root.isPutAway ? qsTr("Done") : qsTr("Leave it")
                framed: root.isPutAway
                Accessible.name: root.isPutAway ? qsTr("back to the orders")
                                                : qsTr("leave the box as it is, nothing is booked")
                onClicked: root.gone()
            }
        }
    }
}
