// SPDX-License-Identifier: MIT
//
// The piece in hand: its serial, batch or name, the bin that it goes to, how much of a length, one
// more or one less, and what is wrong with it. Enter in a field writes it and goes back to the box.
// The buttons stand in the same columns whatever is in hand, so that a hand finds them unseen.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

RowLayout {
    id: root

    required property BoxPage box
    required property int row

    property string markHint: ""
    property bool length: false
    property bool content: true

    signal troubleAsked()
    signal back()

    function enter() {
        if (mark.visible)
            mark.forceActiveFocus(Qt.TabFocusReason);
        else if (place.visible)
            place.forceActiveFocus(Qt.TabFocusReason);
    }
    function cell(name: string): var {
        const value = box.ticks.cell(row, name);
        return value === undefined ? "" : value;
    }
    function sync() {
        markHint = cell("markHint");
        length = cell("length") === true;
        content = cell("content") !== false;
        mark.text = cell("mark");
        place.text = cell("to");
        amount.text = cell("came") === "" ? cell("typed") : "";
    }

    spacing: 6
    onRowChanged: sync()
    Component.onCompleted: sync()

    Connections {
        target: root.box

        function onChanged() {
            root.sync();
        }
    }
    InkField {
        id: mark

        objectName: "handMark"
        visible: root.markHint !== ""
        name: root.markHint
        placeholderText: root.markHint
        Layout.fillWidth: true
        Layout.minimumWidth: 110
        onEditingFinished: {
            if (text !== root.cell("mark"))
                root.box.setMark(root.row, text);
        }
        onAccepted: root.back()
    }
    InkField {
        id: place

        objectName: "handPlace"
        visible: !root.content
        name: qsTr("the bin that it goes to")
        placeholderText: qsTr("bin")
        Layout.preferredWidth: 100
        onEditingFinished: {
            if (text !== root.cell("to"))
                root.box.setPlace(root.row, text);
        }
        onAccepted: root.back()
    }
    Item {
        visible: root.markHint === ""
        Layout.fillWidth: true
        implicitHeight: Theme.target
    }
    Item {
        implicitWidth: counted.implicitWidth
        implicitHeight: counted.implicitHeight
        Layout.minimumWidth: implicitWidth

        Row {
            id: counted

            visible: !root.length
            spacing: root.spacing

            DeskButton {
                objectName: "oneLess"
                text: "−"
                Accessible.name: qsTr("one less is there")
                onClicked: root.box.step(root.row, -1)
            }
            DeskButton {
                objectName: "oneMore"
                text: "+"
                Accessible.name: qsTr("one more is there")
                onClicked: root.box.step(root.row, 1)
            }
        }
        InkField {
            id: amount

            objectName: "handAmount"
            visible: root.length
            anchors.fill: parent
            name: qsTr("how much of it came")
            onAccepted: {
                root.box.setAmount(root.row, text);
                root.back();
            }
        }
    }
    Item {
        implicitWidth: trouble.implicitWidth
        implicitHeight: trouble.implicitHeight
        Layout.minimumWidth: implicitWidth

        DeskButton {
            id: trouble

            objectName: "trouble"
            visible: !root.content
            text: qsTr("Something is wrong")
            padding: 10
            onClicked: root.troubleAsked()
        }
    }
}
