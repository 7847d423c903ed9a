// SPDX-License-Identifier: MIT
//
// A copy goes along: to which file, who has it, and which drawers go with it.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

WorkSheet {
    id: root

    required property var places
    required property string suggested
    required property KeptFields kept
    property bool busy: false
    property var staying: [] // Drawers that do not go along.

    readonly property var filled: ({
        file: file.text === suggested ? "" : file.text, // Another day another one is suggested.
        with: withWhom.text,
        name: copyName.text,
        staying: staying
    })

    signal fileAsked()
    signal taken(var departure)

    function setFile(path: string) {
        file.text = path;
    }
    function toggle(place: string) {
        const at = root.staying.indexOf(place);
        root.staying = at < 0 ? root.staying.concat([place])
                              : root.staying.filter(one => one !== place);
    }
    function fill(departure: var) {
        file.text = departure.file || suggested;
        withWhom.text = departure.with ?? "";
        copyName.text = departure.name ?? "";
        staying = Array.from(departure.staying ?? []);
    }
    function begin() {
        fill({});
        const before = kept.takenUp(filled);
        ofBefore.visible = Object.keys(before).length > 0;
        if (ofBefore.visible)
            fill(before);
        withWhom.forceActiveFocus(Qt.TabFocusReason);
    }
    function finish() {
        root.taken({
            file: file.text,
            name: copyName.text,
            with: withWhom.text,
            places: root.places.filter(one => root.staying.indexOf(one) < 0)
        });
    }

    title: qsTr("Take a copy along")
    about: qsTr("The copy is one file for another machine. Until it is brought back, what lies in "
                + "these drawers is used there and not here.")
    widest: 620
    saidBelow: true
    onOpened: begin()
    onClosed: kept.putAway()
    onFilledChanged: {
        if (opened)
            kept.keep(filled);
    }

    component Label: Words {
        small: true
        quiet: true
        Layout.fillWidth: true
    }

    OfBefore {
        id: ofBefore
    }
    Label {
        text: qsTr("the new file")
    }
    RowLayout {
        spacing: Theme.gap
        Layout.fillWidth: true

        InkField {
            id: file

            objectName: "copyFile"
            name: qsTr("the new file")
            Layout.fillWidth: true
            onAccepted: root.finish()
        }
        DeskButton {
            objectName: "chooseCopyFile"
            text: qsTr("Choose…")
            onClicked: root.fileAsked()
        }
    }
    Label {
        text: qsTr("who has it")
    }
    InkField {
        id: withWhom

        objectName: "copyWith"
        name: qsTr("who has it")
        Layout.fillWidth: true
        onAccepted: root.finish()
    }
    Label {
        text: qsTr("what it is called; empty: as its file")
    }
    InkField {
        id: copyName

        objectName: "copyName"
        name: qsTr("what the copy is called")
        Layout.fillWidth: true
        onAccepted: root.finish()
    }
    Label {
        text: qsTr("the drawers that go along")
    }
    Flow {
        spacing: 6
        Layout.fillWidth: true

        Repeater {
            model: root.places

            AbstractButton {
                id: place

                required property string modelData
                readonly property bool goes: root.staying.indexOf(modelData) < 0

                objectName: "goes-" + modelData
                implicitHeight: Theme.target
                implicitWidth: label.implicitWidth + 56
                focusPolicy: Qt.StrongFocus
                Accessible.role: Accessible.CheckBox
                Accessible.name: modelData
                Accessible.checkable: true
                Accessible.checked: goes
                Keys.onReturnPressed: place.clicked()
                onClicked: root.toggle(modelData)
                background: Rectangle {
                    radius: Theme.corner
                    color: place.goes ? Theme.accentFill : Theme.surface
                    border.color: place.visualFocus ? Theme.accent : Theme.ruleStrong
                    border.width: place.visualFocus ? Theme.ring : 1
                }
                Item {
                    anchors.fill: parent

                    TickBox {
                        x: 4
                        anchors.verticalCenter: parent.verticalCenter
                        ticked: place.goes
                    }
                    Words {
                        id: label

                        x: 36
                        anchors.verticalCenter: parent.verticalCenter
                        text: place.modelData
                    }
                }
            }
        }
    }
    Flow {
        spacing: Theme.gap
        Layout.fillWidth: true
        Layout.topMargin: 4

        DeskButton {
            objectName: "takeIt"
            text: qsTr("Take it along")
            enabled: !root.busy
            onClicked: root.finish()
        }
        DeskButton {
            text: qsTr("Not now  Esc")
            framed: false
            onClicked: root.close()
        }
    }
    SheetProblem {
        text: root.problem
        linesKept: 2
    }
}
