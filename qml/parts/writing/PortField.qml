// SPDX-License-Identifier: MIT
//
// One port that is typed: its name, its words, what flows there. Below stands how it reads and how
// many cards fit it, or what is wrong with it.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Screens

FocusScope {
    id: root

    required property int index
    required property string key
    required property string name
    required property string words
    required property int role
    required property var roles
    required property string problem
    required property string note

    signal named(string text)
    signal worded(string text)
    signal flows(int chosen)
    signal dropped()
    signal entered()
    signal reached(Item item)

    implicitHeight: column.height
    onActiveFocusChanged: {
        if (activeFocus)
            root.reached(root);
    }

    FontMetrics {
        id: metrics

        font: note.font
    }
    Column {
        id: column

        width: root.width
        spacing: 2

        RowLayout {
            width: column.width
            spacing: 6

            Words {
                text: root.index + 1
                strong: true
                color: Theme.accent
                Layout.preferredWidth: 14
            }
            InkField {
                objectName: "portName"
                name: qsTr("name of port %1").arg(root.index + 1)
                placeholderText: qsTr("name")
                text: root.name
                onTextEdited: root.named(text)
                Keys.onReturnPressed: root.entered()
                Keys.onEnterPressed: root.entered()
                Layout.preferredWidth: 84
            }
            InkField {
                objectName: "portWords"
                name: qsTr("port %1 in words").arg(root.index + 1)
                placeholderText: qsTr("ORB -6 female")
                focus: true
                text: root.words
                onTextEdited: root.worded(text)
                Keys.onReturnPressed: root.entered()
                Keys.onEnterPressed: root.entered()
                Layout.fillWidth: true
            }
            ChoiceBox {
                objectName: "portRole"
                name: qsTr("what flows at port %1").arg(root.index + 1)
                model: root.roles
                currentIndex: root.role
                onActivated: chosen => root.flows(chosen)
                Layout.preferredWidth: 116
            }
            DeskButton {
                objectName: "dropPort"
                framed: false
                text: "×"
                Accessible.name: qsTr("leave port %1 out").arg(root.index + 1)
                onClicked: root.dropped()
            }
        }
        Words {
            id: note

            objectName: "portNote"
            x: 20
            width: column.width - 20
            height: Math.max(implicitHeight, metrics.height) // Its line is kept.
            text: root.problem !== "" ? root.problem : root.note
            small: true
            color: root.problem !== "" ? Theme.stop : Theme.accent
            wrapMode: Text.Wrap
            Accessible.role: Accessible.AlertMessage
            Accessible.ignored: text === ""
            Accessible.name: text
        }
    }
}
